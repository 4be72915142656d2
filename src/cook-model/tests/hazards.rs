//! The ways in which a person could be led to eat unsafe chicken. After each, nothing may say
//! *proved*. Where a test first shows a proof, it is so that its withdrawal means something.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::{CookState, Log, Stage, What, fold};
use cook_model::forecast::forecast;
use cook_model::history::Instrument;
use cook_model::quantity::{Temperature, TemperatureDifference};
use cook_model::safety::{ProofRule, Shortfall, shortfall};
use support::{
    Cook, OTHER_PHONE, PHONE, at, held_rule, leave_in, packed, piece, pulled, put_on, read,
    set_out, undo,
};

/// Why the last reading of a piece does not prove it.
fn why_not(cook: &Cook, number: u32) -> Option<Shortfall> {
    let state = cook.state();
    let history = state.history.piece(piece(number)).unwrap();
    let rule = state.settings.proof_rule;
    shortfall(&state.history, history, rule, &[], history.readings.last().unwrap())
}

/// The state with the forecast's doubts heeded, as the screens show it.
fn shown(cook: &Cook, minute: f64) -> CookState {
    let state = cook.state();
    let coming = forecast(&state.history, at(minute));
    state.heed_forecast(&coming)
}

/// A cook in which piece 1 was read at 166 F in two places at minute 75, and pulled.
fn proved_cook() -> Cook {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    assert_eq!(cook.stage(1), Stage::Proved);
    cook
}

#[test]
fn no_forecast_has_looked_at_the_reading_yet() {
    let cook = proved_cook();
    let before = forecast(&cook.state().history, at(74.0));
    assert_eq!(cook.state().heed_forecast(&before).pieces[0].proof, None);
    // One that has seen it finds nothing wrong with it.
    assert!(shown(&cook, 76.0).pieces[0].proof.is_some());
}

#[test]
fn the_wrong_unit_was_typed() {
    // A Fahrenheit thermometer shows 74; the phone is set to Celsius and takes it for 165.2 F.
    let typed = Temperature::from_c(74.0);
    for minute in [5.0, 12.0] {
        let mut cook = Cook::two_on();
        cook.write(minute, read(1, typed.f(), 2));
        cook.write(minute + 1.0, pulled(1));
        assert!(!cook.is_proved(1));
        assert_eq!(why_not(&cook, 1), Some(Shortfall::TooFast));
    }
    // Later, only the forecast can tell that it does not fit.
    for minute in [20.0, 25.0, 30.0] {
        let mut cook = Cook::two_on();
        cook.write(minute, read(1, typed.f(), 2));
        let state = shown(&cook, minute);
        assert_eq!(state.pieces[0].proof, None, "at minute {minute}");
    }
}

#[test]
fn the_wrong_piece_was_tapped() {
    // Piece 2 was read at 118 F three minutes before piece 1's 166 F is typed under it.
    let mut cook = Cook::two_on();
    cook.write(72.0, read(2, 118.0, 2));
    cook.write(75.0, read(2, 166.0, 2));
    cook.write(76.0, pulled(2));
    assert!(!cook.is_proved(2));
    assert_eq!(why_not(&cook, 2), Some(Shortfall::TooFast));
    // A piece that went on a moment ago.
    let mut cook = Cook::two_on();
    cook.write(70.0, set_out(3, 38.0));
    cook.write(70.0, put_on(3));
    cook.write(75.0, read(3, 166.0, 2));
    cook.write(76.0, pulled(3));
    assert!(!cook.is_proved(3));
    // Nobody noticed at first; then the piece itself is read, and is colder.
    let mut cook = proved_cook();
    cook.write(78.0, read(1, 149.0, 1));
    assert!(!cook.is_proved(1));
    // Or the cook takes it back.
    let mut cook = proved_cook();
    cook.write(77.0, undo(5));
    assert!(!cook.is_proved(1));
    assert_eq!(cook.stage(1), Stage::Resting);
}

#[test]
fn one_reading_was_used_for_several_pieces() {
    let cook = proved_cook();
    assert!(!cook.is_proved(2));
    // Entries typed at one instant for two pieces: at least one of them is a copy.
    let mut cook = Cook::two_on();
    for number in [1, 2] {
        cook.write(75.0, read(number, 166.0, 2));
    }
    for number in [1, 2] {
        cook.write(76.0, pulled(number));
        assert!(!cook.is_proved(number));
        assert_eq!(why_not(&cook, number), Some(Shortfall::Copied));
    }
    // The same entry met again under another id is one reading at one moment: no time is held.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    let entry = cook.write(75.0, read(1, 151.0, 2));
    cook.write(75.0, read(1, 151.0, 2));
    assert!(entry.count == 6 && !cook.is_proved(1));
}

#[test]
fn the_leave_in_was_misplaced() {
    for rule in [ProofRule::Instant, ProofRule::Held { fat: Default::default() }] {
        let mut cook = Cook::two_on();
        cook.write(0.0, What::ProofRuleSet { rule });
        cook.write(30.0, What::LeaveInSeated { piece: piece(1) });
        for minute in 70..100 {
            // Whatever number of places an entry claims for it.
            cook.write(f64::from(minute), leave_in(1, 175.0, 3));
        }
        let last = cook.log.entries().last().unwrap().id;
        cook.write(100.0, What::SecondPlaceTried { reading: last });
        cook.write(101.0, pulled(1));
        assert!(!cook.is_proved(1));
        assert_eq!(why_not(&cook, 1), Some(Shortfall::LeaveIn));
    }
}

#[test]
fn one_place_only_was_tried() {
    let mut cook = Cook::two_on();
    let first = cook.write(75.0, read(1, 170.0, 1));
    cook.write(76.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Two single pokes may have been the same place.
    cook.write(77.0, read(1, 171.0, 1));
    assert!(!cook.is_proved(1));
    // Said so long after, "no lower" tells nothing of the first poke.
    cook.write(95.0, What::SecondPlaceTried { reading: first });
    assert!(!cook.is_proved(1));
}

#[test]
fn a_colder_spot_was_found() {
    // Before the reading that would prove it, ...
    let mut cook = Cook::two_on();
    cook.write(75.0, leave_in(1, 150.0, 1));
    cook.write(75.5, read(1, 166.0, 2));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::TooFast));
    // ... or after it.
    let mut cook = Cook::two_on();
    let reading = cook.write(75.0, read(1, 166.0, 2));
    let colder = cook.write(76.0, leave_in(1, 158.0, 1));
    cook.write(77.0, pulled(1));
    assert!(!cook.is_proved(1));
    let state = cook.state();
    let history = state.history.piece(piece(1)).unwrap();
    let first = history.readings.iter().find(|read| read.entry == reading).unwrap();
    let why = shortfall(&state.history, history, ProofRule::Instant, &[], first);
    assert_eq!(why, Some(Shortfall::Contradicted { by: colder }));
}

#[test]
fn the_phone_clock_jumped() {
    // Ahead by 50 minutes before the reading, back before the piece goes on again: by the times
    // alone the reading comes after it.
    let mut cook = Cook::two_on();
    cook.write(76.0, pulled(1));
    cook.write(130.0, read(1, 166.0, 2));
    cook.write(85.0, put_on(1));
    cook.write(95.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Ahead by 10 minutes between two readings: the phone noticed, ...
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(75.0, read(1, 151.0, 2));
    let mut noticed = cook.clone();
    noticed.write(85.5, What::ClockJumped);
    noticed.write(86.0, read(1, 151.0, 2));
    assert!(!noticed.is_proved(1));
    // ... or it was set right again afterwards, ...
    let mut put_right = cook.clone();
    put_right.write(86.0, read(1, 151.0, 2));
    assert!(put_right.is_proved(1), "without a sign of the jump");
    put_right.write(77.0, pulled(1));
    assert!(!put_right.is_proved(1));
    // ... or it jumped by an hour.
    cook.write(135.5, read(1, 151.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn too_little_was_read_in_a_hold() {
    // Twenty minutes between two readings: nobody knows what was in between.
    for (gap, held) in [(14.0, true), (15.0, true), (15.1, false), (20.0, false)] {
        let mut cook = Cook::two_on();
        cook.write(0.0, held_rule());
        cook.write(70.0, read(1, 151.0, 2));
        cook.write(70.0 + gap, read(1, 151.0, 2));
        assert_eq!(cook.is_proved(1), held, "{gap} minutes");
    }
    // Some spot was colder in between, whatever it was read with.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(70.0, read(1, 151.0, 2));
    cook.write(73.0, leave_in(1, 148.5, 1));
    cook.write(75.0, read(1, 151.0, 2));
    assert!(!cook.is_proved(1));
    // The core took more than six hours to get there.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(361.0, read(1, 151.0, 2));
    cook.write(367.0, read(1, 151.0, 2));
    assert!(!cook.is_proved(1));
}

/// A stored cook under the rule of time at temperature, with two readings at these local times.
fn stored_hold(first: &str, second: &str) -> Log {
    let entry = |count: u32, at: &str, what: &str| {
        format!(
            r#"{{"v":1,"id":{{"count":{count},"device":7}},"happened":"{at}","typed":"{at}","what":{what}}}"#
        )
    };
    let on = "2026-11-01T00:20:00-05:00";
    let facts = r#"{"weight_g":240,"thickest_mm":38,"start_c":3}"#;
    let reading = r#"{"kind":"core_read","piece":1,"temperature_c":66.2,"instrument":"instant_read","places":2}"#;
    let rule = r#"{"kind":"proof_rule_set","rule":{"kind":"held","fat":"twelve"}}"#;
    let texts = [
        entry(1, on, &format!(r#"{{"kind":"piece_set_out","piece":1,"facts":{facts}}}"#)),
        entry(2, on, rule),
        entry(3, on, r#"{"kind":"put_on","piece":1}"#),
        entry(4, first, reading),
        entry(5, second, reading),
    ];
    let log = Log::from_stored(texts.iter().map(String::as_str));
    assert_eq!(log.set_aside(), []);
    log
}

#[test]
fn the_time_zone_or_daylight_saving_changed() {
    let is_proved = |log: Log| fold(&log).pieces[0].proof.is_some();
    // Five minutes on the wall: in the hour that comes twice the clock shows 01:58 and 01:03.
    let honest = stored_hold("2026-11-01T01:58:00-05:00", "2026-11-01T01:03:00-06:00");
    assert!(is_proved(honest));
    // The clock shows ten minutes, but one of them is in the other zone: an hour and ten.
    let hour_more = stored_hold("2026-11-01T01:40:00-05:00", "2026-11-01T01:50:00-06:00");
    assert!(!is_proved(hour_more));
    // The traveller's phone shows 55 minutes back; it was one minute of heat, and one is too few.
    let minute = stored_hold("2026-11-01T01:59:30-05:00", "2026-11-01T01:00:30-06:00");
    assert!(!is_proved(minute));
}

#[test]
fn a_chain_of_undoing() {
    let mut cook = proved_cook();
    let (reading, undoing, bringing_back) = (5, 7, 8);
    cook.write(77.0, undo(reading));
    assert!(!cook.is_proved(1));
    cook.write(77.5, undo(undoing));
    assert!(cook.is_proved(1));
    cook.write(78.0, undo(bringing_back));
    assert!(!cook.is_proved(1));
    // A reading corrected: the mistyped one undone, the right one typed.
    cook.write(78.5, read(1, 156.0, 2));
    assert!(!cook.is_proved(1));
    // Undoing that the piece went on leaves nothing to prove.
    let mut cook = proved_cook();
    cook.write(77.0, undo(3));
    assert!(!cook.is_proved(1));
    assert_eq!(cook.stage(1), Stage::Raw);
}

#[test]
fn two_devices_wrote_the_log() {
    // The other phone's clock is an hour behind. It puts the piece back, by its time while it was
    // still on; the reading before that proves nothing any more.
    let mut cook = proved_cook();
    cook.write_as(OTHER_PHONE, 20.0, 20.0, put_on(1));
    assert!(!cook.is_proved(1));
    // An hour ahead: a reading from before the put-back carries a later time.
    let mut cook = Cook::two_on();
    cook.write(76.0, pulled(1));
    cook.write_as(OTHER_PHONE, 137.0, 137.0, read(1, 166.0, 2));
    cook.write(85.0, put_on(1));
    cook.write(150.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Time between the readings of two phones is the difference of two clocks.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(75.0, read(1, 151.0, 2));
    cook.write_as(OTHER_PHONE, 85.0, 85.0, read(1, 151.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn two_devices_may_merge_in_any_order() {
    // Both phones go on from one log, apart; each merge sees the same.
    let base = proved_cook();
    let (mut here, mut there) = (base.clone(), base);
    here.write(78.0, What::Covered { piece: piece(1) });
    there.write_as(OTHER_PHONE, 78.5, 78.5, undo(5));
    let merge = |one: &Cook, other: &Cook| {
        let entries = one.log.entries().iter().chain(other.log.entries()).cloned();
        fold(&Log::from_entries(entries))
    };
    assert_eq!(merge(&here, &there), merge(&there, &here));
    assert_eq!(merge(&here, &there).pieces[0].proof, None);
}

#[test]
fn an_imported_file_has_false_times() {
    // Taken after it was typed.
    let mut cook = Cook::two_on();
    cook.write_as(PHONE, 75.0, 60.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::FromTheFuture));
    assert!(!cook.is_proved(1));
    // Typed the next day.
    let mut cook = Cook::two_on();
    cook.write_as(PHONE, 75.0, 1440.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::TypedLate));
    assert!(!cook.is_proved(1));
    // Times stretched so that two readings seem five minutes apart; they were typed within two.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write_as(PHONE, 70.0, 71.9, read(1, 151.0, 2));
    cook.write_as(PHONE, 74.9, 74.0, read(1, 151.0, 2));
    assert!(!cook.is_proved(1));
    // An impossible value.
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 500.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn entries_came_out_of_order() {
    // By time the reading is the first thing of the spell, but it was written before.
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(0.5, put_on(1));
    cook.write(80.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Two readings written in the other order than they were taken hold no time.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write_as(PHONE, 80.0, 80.0, read(1, 151.0, 2));
    cook.write_as(PHONE, 75.0, 80.5, read(1, 151.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn it_was_read_before_it_was_on_or_after_it_was_packed() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(1.0, read(1, 166.0, 2));
    cook.write(2.0, put_on(1));
    cook.write(80.0, pulled(1));
    assert!(!cook.is_proved(1));
    let mut cook = Cook::two_on();
    cook.write(76.0, pulled(1));
    cook.write(80.0, packed(1));
    cook.write(81.0, read(1, 166.0, 2));
    // Said to be from before the packing, but written after it.
    cook.write_as(PHONE, 79.0, 82.0, read(1, 166.0, 2));
    assert!(!cook.is_proved(1));
    assert_eq!(cook.stage(1), Stage::Packed);
}

#[test]
fn it_was_put_back_on() {
    let mut cook = proved_cook();
    cook.write(80.0, put_on(1));
    cook.write(90.0, pulled(1));
    assert!(!cook.is_proved(1));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::BeforeThisSpell));
    // Time held does not run on across it.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(75.0, read(1, 151.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(77.0, put_on(1));
    cook.write(81.0, read(1, 151.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn a_piece_was_renamed() {
    let named = |number, name: &str| match set_out(number, 38.0) {
        What::PieceSetOut { piece, facts, .. } => {
            What::PieceSetOut { piece, facts, name: name.to_owned() }
        }
        other => other,
    };
    let mut cook = Cook::default();
    for what in [named(1, "left"), named(2, "right"), put_on(1), put_on(2)] {
        cook.write(0.0, what);
    }
    cook.write(75.0, read(1, 166.0, 2));
    for (minute, what) in [(76.0, pulled(1)), (76.0, pulled(2))] {
        cook.write(minute, what);
    }
    cook.write(77.0, named(1, "right"));
    cook.write(77.5, named(2, "left"));
    assert!(!cook.is_proved(2), "the proof went with the name");
    // Taken away before it went on and set out again, it is another breast.
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(1.0, What::PieceTakenAway { piece: piece(1) });
    cook.write(2.0, read(1, 166.0, 2));
    cook.write(3.0, set_out(1, 38.0));
    assert!(!cook.is_proved(1));
}

#[test]
fn the_thermometer_reads_high() {
    let checked = |f: f64| What::ThermometerChecked {
        instrument: Instrument::InstantRead,
        offset: TemperatureDifference::from_f(f),
    };
    // Found before or after: 166 shown is 163.
    for minute in [1.0, 77.0] {
        let mut cook = Cook::two_on();
        cook.write(75.0, read(1, 166.0, 2));
        cook.write(76.0, pulled(1));
        assert!(cook.is_proved(1));
        cook.write(minute, checked(-3.0));
        assert!(!cook.is_proved(1), "checked at minute {minute}");
    }
    // One that reads low earns nothing for it.
    let mut cook = Cook::two_on();
    cook.write(1.0, checked(3.0));
    cook.write(75.0, read(1, 163.0, 2));
    cook.write(76.0, pulled(1));
    assert!(!cook.is_proved(1));
}

#[test]
fn a_forecast_was_taken_for_a_reading() {
    // Hours on a hot pit with nothing read: sure to be done by any forecast, proved by none.
    let mut cook = Cook::two_on();
    cook.write(200.0, pulled(1));
    let state = shown(&cook, 205.0);
    assert_eq!(state.pieces[0].stage, Stage::Resting);
    assert_eq!(state.pieces[0].proof, None);
}

#[test]
fn a_stricter_figure_was_chosen_too_low_or_after_the_proof() {
    let rule = |f: f64| What::ProofRuleSet {
        rule: ProofRule::Stricter { at_least: Temperature::from_f(f) },
    };
    let mut cook = Cook::two_on();
    cook.write(0.0, rule(120.0));
    cook.write(75.0, read(1, 160.0, 2));
    cook.write(76.0, pulled(1));
    assert!(!cook.is_proved(1));
    let mut cook = proved_cook();
    cook.write(77.0, rule(170.0));
    assert!(!cook.is_proved(1));
}
