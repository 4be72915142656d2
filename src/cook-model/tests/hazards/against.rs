//! What speaks against a proof: a colder reading that nothing explains, until it is resolved.

use cook_model::cook::duties::{Act, Duty, duties};
use cook_model::cook::{Seen, Stage, What};
use cook_model::quantity::Temperature;
use cook_model::safety::Shortfall;

use crate::support::{Cook, OTHER_PHONE, at, leave_in, packed, piece, pulled, read, undo};
use crate::{proved_cook, why_not};

fn vouch(cook: &mut Cook, minute: f64, reading: cook_model::history::EntryId) {
    cook.write(minute, What::ReadingVouched { reading });
}

#[test]
fn a_colder_reading_half_an_hour_later_on_the_pit() {
    // Where the pit is hot no core cools: half an hour explains nothing.
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(106.0, read(1, 150.0, 1));
    cook.write(108.0, read(1, 152.0, 1));
    cook.write(109.0, pulled(1));
    assert!(!cook.is_proved(1));
    assert_eq!(cook.stage(1), Stage::Resting);
    // The fire had failed: then it may have cooled, and was hot when it was read.
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(78.0, What::PitRead { temperature: Temperature::from_f(80.0) });
    cook.write(106.0, read(1, 150.0, 1));
    cook.write(109.0, pulled(1));
    assert!(cook.is_proved(1));
}

#[test]
fn a_colder_reading_at_rest_that_cooling_cannot_explain() {
    // A breast 38 mm thick cannot lose 30 F in ten minutes of still air, and can in an hour
    // (lumped cooling at a generous 20 W/m2K: a textbook figure, from memory).
    let mut cook = proved_cook();
    cook.write(86.5, read(1, 136.0, 1));
    assert!(!cook.is_proved(1));
    let mut cook = proved_cook();
    cook.write(140.0, read(1, 136.0, 1));
    assert!(cook.is_proved(1));
}

#[test]
fn nothing_warms_a_resting_piece_by_more_than_carryover() {
    // 5 to 25 F are told of carryover, by size: not 40.
    let proved = |first: f64| {
        let mut cook = Cook::two_on();
        cook.write(75.0, pulled(1));
        cook.write(76.0, read(1, first, 2));
        cook.write(86.0, read(1, 166.0, 2));
        cook.is_proved(1)
    };
    assert!(proved(150.0) && !proved(126.0));
}

#[test]
fn to_vouch_for_the_hotter_does_not_silence_the_colder() {
    let mut cook = Cook::two_on();
    let hot = cook.write(75.0, read(1, 166.0, 2));
    let cold = cook.write(78.0, read(1, 150.0, 1));
    vouch(&mut cook, 78.5, hot);
    vouch(&mut cook, 79.0, cold);
    cook.write(80.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Taken back, it is resolved.
    cook.write(81.0, undo(cold.count));
    assert!(cook.is_proved(1));
}

#[test]
fn the_clock_was_set_back_between_the_two() {
    // By the times alone the colder one came first.
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(65.5, What::ClockJumped);
    let cold = cook.write(66.0, read(1, 150.0, 1));
    cook.write(67.0, pulled(1));
    assert!(!cook.is_proved(1));
    cook.write(68.0, undo(cold.count));
    assert!(cook.is_proved(1), "without the colder one");
    // Set forward: what seems an hour of cooling was a minute.
    let mut cook = proved_cook();
    cook.write(137.0, What::ClockJumped);
    cook.write(137.5, read(1, 136.0, 1));
    assert!(!cook.is_proved(1));
    // Set forward before a reading: what seems an hour on the pit was six minutes.
    let mut cook = Cook::two_on();
    cook.write(5.0, leave_in(1, 45.0, 1));
    cook.write(65.0, What::ClockJumped);
    cook.write(66.0, read(1, 166.0, 2));
    cook.write(67.0, pulled(1));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::TooFast));
    assert!(!cook.is_proved(1));
}

#[test]
fn the_other_phones_clock_was_set_back_between_the_two() {
    // By the times alone the colder one, typed on a phone whose clock had just jumped, came first.
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write_as(OTHER_PHONE, 65.5, 65.5, What::ClockJumped);
    cook.write_as(OTHER_PHONE, 66.0, 66.0, read(1, 150.0, 1));
    cook.write(76.0, pulled(1));
    assert!(!cook.is_proved(1));
}

#[test]
fn poking_until_one_is_lucky() {
    // A rest that peaks at 163 F by a thermometer that scatters: one of many shows 166.
    let mut cook = Cook::two_on();
    cook.write(75.0, pulled(1));
    for (minute, f) in [(78.0, 162.0), (79.0, 163.0), (80.0, 162.5), (81.0, 166.0)] {
        cook.write(minute, read(1, f, 2));
    }
    assert!(!cook.is_proved(1));
    assert!(matches!(why_not(&cook, 1), Some(Shortfall::Contradicted { .. })));
    // Nor does a colder one afterwards count for nothing.
    let mut cook = proved_cook();
    cook.write(77.0, read(1, 166.0, 2));
    cook.write(78.0, read(1, 163.5, 2));
    let reading = cook.state().history.pieces[0].readings[1].entry;
    assert!(matches!(why_not_by(&cook, reading), Some(Shortfall::Contradicted { .. })));
    // Readings of one core by one thermometer differ by 2 F: each within 1 F (makers, from memory).
    let mut cook = proved_cook();
    cook.write(77.0, read(1, 166.0, 2));
    cook.write(78.0, read(1, 164.5, 2));
    let reading = cook.state().history.pieces[0].readings[1].entry;
    assert_eq!(why_not_by(&cook, reading), None);
    // Read again when it is worth it, carryover has done its work.
    let mut cook = Cook::two_on();
    cook.write(75.0, pulled(1));
    cook.write(76.0, read(1, 161.0, 2));
    cook.write(82.0, read(1, 166.0, 2));
    assert!(cook.is_proved(1));
}

fn why_not_by(cook: &Cook, reading: cook_model::history::EntryId) -> Option<Shortfall> {
    let state = cook.state();
    let history = &state.history.pieces[0];
    let read = history.readings.iter().find(|one| one.entry == reading).unwrap();
    cook_model::safety::shortfall(&state.history, history, state.settings.proof_rule, &[], read)
}

#[test]
fn the_proof_was_undone_after_packing() {
    let mut cook = proved_cook();
    cook.write(90.0, packed(1));
    assert!(!cook.state().pieces[0].is_packed_unproved());
    cook.write(91.0, undo(5));
    let state = cook.state();
    assert_eq!(state.pieces[0].stage, Stage::Packed);
    assert!(state.pieces[0].is_packed_unproved());
}

/// What is packed and not proved any more is not eaten: that is said where all is said that is to be done,
/// until it is thrown away or proved again.
#[test]
fn what_lost_its_proof_after_packing_is_to_be_thrown_away() {
    let asked = |cook: &Cook, minute: f64| {
        let all = duties(&Seen::of(&cook.log, at(minute)));
        let of_it = |duty: &&Duty| duty.act == Act::Discard && duty.pieces == [piece(1)];
        all.iter().find(of_it).is_some_and(|duty| duty.is_due(at(minute)))
    };
    let mut cook = proved_cook();
    cook.write(90.0, packed(1));
    assert!(!asked(&cook, 91.0));
    let undoing = cook.write(91.0, undo(5));
    assert!(asked(&cook, 92.0) && asked(&cook, 5000.0));
    // No forecast has looked yet: a piece is not called lost before it has.
    let opened = duties(&Seen::facts(&cook.log, at(92.0)));
    assert!(opened.iter().all(|duty| duty.act != Act::Discard || duty.pieces != [piece(1)]));
    let mut right_again = cook.clone();
    right_again.write(93.0, What::Undone { entry: undoing });
    assert!(!asked(&right_again, 94.0));
    cook.write(93.0, What::Discarded { piece: piece(1) });
    assert!(!asked(&cook, 94.0));
    // A reading that does not fit is asked about first: it may be right.
    let mut doubted = Cook::two_on();
    let reading = doubted.write(30.0, read(1, 166.0, 2));
    doubted.write(31.0, pulled(1));
    doubted.write(32.0, packed(1));
    assert!(!asked(&doubted, 33.0));
    doubted.write(34.0, What::ReadingVouched { reading });
    assert!(!asked(&doubted, 35.0));
}
