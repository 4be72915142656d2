//! What safety asks to be watched: clocks, prompts, and lethality as information.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::duties::{Act, Duty, duties};
use cook_model::cook::{Seen, Stage, What, forecast_lethality};
use cook_model::forecast::forecast;
use cook_model::quantity::minutes;
use cook_model::safety::{ClockKind, FatColumn, Prompt, hold_progress};
use support::{Cook, at, held_rule, leave_in, packed, piece, pulled, put_on, read, set_out, undo};

#[test]
fn the_probe_is_to_be_cleaned_after_a_reading_under_140_f() {
    let mut cook = Cook::two_on();
    assert_eq!(cook.state().prompts(), []);
    cook.write(50.0, leave_in(1, 120.0, 1));
    assert_eq!(cook.state().prompts(), [], "nobody pulls a leave-in for the next piece");
    let after = cook.write(55.0, read(1, 128.0, 1));
    assert_eq!(cook.state().prompts(), [Prompt::CleanProbe { after }]);
    // One tap, and gone; undone, and back.
    let dismissal =
        cook.write(56.0, What::PromptDismissed { prompt: Prompt::CleanProbe { after } });
    assert_eq!(cook.state().prompts(), []);
    cook.write(56.5, undo(dismissal.count));
    assert_eq!(cook.state().prompts(), [Prompt::CleanProbe { after }]);
    // A probe that was in a hot piece is clean enough.
    cook.write(57.0, read(2, 141.0, 1));
    assert_eq!(cook.state().prompts(), []);
    let again = cook.write(58.0, read(1, 130.0, 1));
    assert_eq!(cook.state().prompts(), [Prompt::CleanProbe { after: again }]);
    cook.write(59.0, What::PromptsSet { shown: false });
    assert_eq!(cook.state().prompts(), []);
}

#[test]
fn a_clean_plate_is_asked_for_at_the_pull() {
    let mut cook = Cook::two_on();
    cook.write(70.0, read(1, 159.0, 1));
    assert_eq!(cook.state().prompts(), []);
    cook.write(72.0, read(1, 165.0, 1));
    assert_eq!(cook.state().prompts(), [Prompt::CleanPlate]);
    cook.write(73.0, pulled(1));
    assert_eq!(cook.state().prompts(), [Prompt::CleanPlate]);
    let mut dismissed = cook.clone();
    dismissed.write(74.0, What::PromptDismissed { prompt: Prompt::CleanPlate });
    dismissed.write(80.0, pulled(2));
    assert_eq!(dismissed.state().prompts(), []);
    cook.write(90.0, packed(1));
    assert_eq!(cook.state().prompts(), []);
}

#[test]
fn the_clocks_of_all_pieces_run_out_in_order() {
    let mut cook = Cook::two_on();
    let clocks_at = |cook: &Cook, minute: f64| {
        let state = cook.state();
        state.clocks(&forecast(&state.history, at(minute)))
    };
    let clocks = clocks_at(&cook, 10.0);
    let kinds: Vec<_> = clocks.iter().map(|(number, clock)| (*number, clock.kind)).collect();
    assert_eq!(kinds, [(piece(1), ClockKind::WarmUp), (piece(2), ClockKind::WarmUp)]);
    for (_, clock) in &clocks {
        assert!(!clock.is_expected_to_run_out(), "a 250 F pit passes 140 F well within 4 h");
        assert_eq!(clock.deadline, at(240.0));
    }
    cook.write(75.0, read(1, 160.0, 2));
    cook.write(76.0, pulled(1));
    let clocks = clocks_at(&cook, 80.0);
    let kinds: Vec<_> = clocks.iter().map(|(number, clock)| (*number, clock.kind)).collect();
    assert_eq!(kinds, [(piece(1), ClockKind::ToFridge), (piece(2), ClockKind::WarmUp)]);
    assert_eq!(clocks[0].1.left(at(80.0)), minutes(116.0));
}

#[test]
fn lethality_by_the_forecast_grows_and_proves_nothing() {
    let mut cook = Cook::two_on();
    cook.write(60.0, read(1, 150.0, 2));
    let state = cook.state();
    let coming = forecast(&state.history, at(60.0));
    let killed = |minute: f64| forecast_lethality(&coming, piece(1), at(minute)).log10();
    assert!(killed(20.0) < 0.01);
    assert!(killed(50.0) < killed(60.0) && killed(60.0) < killed(80.0));
    assert!(killed(100.0) > 7.0);
    assert!(state.heed(&coming).pieces[0].proof.is_none());
}

#[test]
fn a_misplaced_leave_in_is_told_and_its_readings_are_not_asked_about() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 30.5));
    cook.write(0.0, put_on(1));
    for (minute, fahrenheit) in [(20.0, 92.0), (30.0, 118.0), (38.0, 139.0)] {
        cook.write(minute, leave_in(1, fahrenheit, 1));
    }
    let poke = cook.write(38.5, read(1, 122.0, 1));
    cook.write(38.7, What::ReadingVouched { reading: poke });
    let state = cook.state();
    let coming = forecast(&state.history, at(39.0));
    assert!(coming.piece(piece(1)).unwrap().seating.unwrap().is_suspect());
    let doubted: Vec<_> = coming.surprises.iter().map(|surprise| surprise.entry).collect();
    assert!(!doubted.is_empty() && !doubted.contains(&poke), "{doubted:?}");
    assert_eq!(state.question(&coming), None);
    // A wild poke is another matter.
    let wild = cook.write(39.0, read(1, 61.0, 1));
    let state = cook.state();
    let coming = forecast(&state.history, at(39.5));
    assert_eq!(state.question(&coming).map(|surprise| surprise.entry), Some(wild));
    cook.write(39.6, What::ReadingVouched { reading: wild });
    let state = cook.state();
    assert_ne!(state.question(&coming).map(|surprise| surprise.entry), Some(wild));
}

#[test]
fn under_the_table_the_next_reading_is_due_when_it_completes_the_hold() {
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(62.0, pulled(1));
    cook.write(63.0, What::Covered { piece: piece(1) });
    cook.write(65.0, read(1, 153.0, 2));
    let step = |cook: &Cook, minute: f64| -> Duty {
        let own = duties(&Seen::of(&cook.log, at(minute)));
        own.into_iter().find(|duty| duty.act == Act::Prove).unwrap()
    };
    // The 150 F row, 12 % fat: 4.2 minutes; the thermometer may show 2 F too much.
    let due = step(&cook, 66.0);
    assert_eq!((due.act, due.from), (Act::Prove, at(69.2)));
    let state = cook.state();
    let hold = hold_progress(&state.history, &state.history.pieces[0], FatColumn::Twelve, &[]);
    assert!((hold.unwrap().at_least.f() - 152.0).abs() < 1e-6, "{hold:?}");
    // A colder reading meanwhile: by the row of 144 F, 16.6 minutes in all.
    cook.write(68.0, read(1, 150.5, 2));
    let due = step(&cook, 69.0);
    assert_eq!((due.act, due.from), (Act::Prove, at(81.6)));
    cook.write(75.0, read(1, 150.0, 2));
    cook.write(81.6, read(1, 149.0, 2));
    assert_eq!(cook.stage(1), Stage::Proved);
}
