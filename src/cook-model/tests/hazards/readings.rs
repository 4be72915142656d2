//! What was read, with what, of which piece: slips of the hand and of the thermometer.

use cook_model::cook::{Seen, Stage, What};
use cook_model::history::Instrument;
use cook_model::quantity::{Temperature, TemperatureDifference};
use cook_model::safety::{ProofRule, Shortfall, shortfall};

use crate::support::{Cook, at, held_rule, leave_in, piece, pulled, put_on, read, set_out, undo};
use crate::{proved_cook, shown, why_not};

#[test]
fn no_forecast_has_looked_at_the_reading_yet() {
    let cook = proved_cook();
    assert_eq!(Seen::facts(&cook.log, at(76.0)).state.pieces[0].proof, None);
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
    for minute in [20.0, 25.0, 30.0, 38.0, 42.0, 46.0, 50.0] {
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
    let entry = cook.write(75.0, read(1, 153.0, 2));
    cook.write(75.0, read(1, 153.0, 2));
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

/// A cook of two on a pit set to 250 F, and the core of piece 1 that is expected at a minute: the
/// middle and the top of the band.
fn expected(minute: f64) -> (Cook, f64, f64) {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(250.0) });
    let coming = Seen::of(&cook.log, at(minute)).forecast.unwrap();
    let core = coming.piece(piece(1)).unwrap().core_at(at(minute));
    (cook, core.middle.f(), core.high.f())
}

#[test]
fn the_wrong_piece_was_read_and_no_other_reading_says_so() {
    for minute in [30.0, 42.0, 46.0, 50.0] {
        let (mut cook, middle, high) = expected(minute);
        assert!(high < 160.0, "{high} at minute {minute}");
        let reading = cook.write(minute, read(1, 166.0, 2));
        let seen = Seen::of(&cook.log, at(minute));
        let asked = seen.state.question(seen.forecast.as_ref().unwrap());
        let asked = asked.unwrap_or_else(|| panic!("not asked at minute {minute}"));
        assert_eq!((asked.entry, asked.read.f().round()), (reading, 166.0));
        // What else is known is told with the question, as it was before the reading.
        assert!((asked.expected.middle.f() - middle).abs() < 2.0, "{asked:?}");
        assert!(seen.state.pieces[0].proof.is_none());
        // Doubt does not lapse while time goes by, nor with what is done to the piece.
        cook.write(minute + 1.0, pulled(1));
        for later in [minute + 10.0, minute + 60.0] {
            assert!(shown(&cook, later).pieces[0].proof.is_none(), "{later}");
        }
        cook.write(minute + 61.0, leave_in(2, 150.0, 1));
        assert!(shown(&cook, minute + 61.0).pieces[0].proof.is_none());
        // One who has looked again and says that it is right is believed.
        cook.write(minute + 62.0, What::ReadingVouched { reading });
        assert!(shown(&cook, minute + 62.0).pieces[0].proof.is_some());
    }
}

#[test]
fn a_reading_that_is_to_be_expected_is_taken_unasked() {
    // Four in five are within the band; a reading at its top is nothing to ask about.
    for minute in [62.0, 70.0, 80.0] {
        let (mut cook, middle, high) = expected(minute);
        for f in [middle, high].into_iter().filter(|f| *f >= 165.0) {
            let reading = cook.write(minute, read(1, f, 2));
            let seen = Seen::of(&cook.log, at(minute));
            assert_eq!(seen.state.question(seen.forecast.as_ref().unwrap()), None, "{minute}");
            assert!(seen.state.pieces[0].proof.is_some());
            cook.write(minute, What::Undone { entry: reading });
        }
    }
}
