//! What one reading is worth.

use cook_model::cook::What;
use cook_model::quantity::minutes;
use cook_model::safety::{ProofRule, Shortfall, could_prove, shortfall};

use crate::support::{Cook, PHONE, at, leave_in, piece, pulled, put_on, read};
use crate::{why_not, why_not_the_first};

/// A reading is for the log as it is read: minutes late it still is, the better part of an hour late it
/// is remembered (our choice).
#[test]
fn a_reading_typed_late_is_a_memory() {
    for (late, why) in [(2.0, None), (25.0, None), (40.0, Some(Shortfall::TypedLate))] {
        let mut cook = Cook::two_on();
        cook.write_as(PHONE, 75.0, 75.0 + late, read(1, 166.0, 2));
        assert_eq!(why_not(&cook), why, "{late} min");
    }
}

/// Two phones' clocks agree to seconds; a reading minutes ahead of its typing is of a wrong clock.
#[test]
fn a_reading_from_the_future_is_of_a_wrong_clock() {
    for (ahead, why) in [(0.8, None), (2.0, Some(Shortfall::FromTheFuture))] {
        let mut cook = Cook::two_on();
        cook.write_as(PHONE, 75.0 + ahead, 75.0, read(1, 166.0, 2));
        assert_eq!(why_not(&cook), why, "{ahead} min");
    }
}

/// FDA Food Code 2022, 3-401.11(A)(3), from memory: poultry at 165 F or above; and USDA: measured in the
/// thickest part, in more than one place.
#[test]
fn just_165_f_in_two_places_proves() {
    let why = |f: f64, places| {
        let mut cook = Cook::two_on();
        cook.write(80.0, read(1, f, places));
        why_not(&cook)
    };
    assert_eq!(why(165.0, 2), None);
    assert_eq!(why(164.9, 2), Some(Shortfall::TooCool));
    assert_eq!(why(165.0, 1), Some(Shortfall::OnePlace));
}

/// Two good thermometers, each within 2 F (Food Code 2022, 4-203.11, from memory), seldom differ by more
/// than 3 F at one core: what is colder than that, moments later, is another spot.
#[test]
fn a_colder_spot_is_told_from_two_thermometers() {
    for (colder, stands) in [(164.0, true), (163.4, true), (162.4, false)] {
        let mut cook = Cook::two_on();
        cook.write(80.0, read(1, 166.0, 2));
        cook.write(80.2, read(1, colder, 2));
        let spoken_against =
            matches!(why_not_the_first(&cook), Some(Shortfall::Contradicted { .. }));
        assert_eq!(spoken_against, !stands, "{colder} F");
    }
}

/// A lower reading before a hotter one: the same core, a moment later, is not ten degrees hotter.
#[test]
fn nothing_warms_by_ten_degrees_in_a_moment() {
    for (f, why) in [(165.0, None), (172.0, Some(Shortfall::TooFast))] {
        let mut cook = Cook::two_on();
        cook.write(80.0, read(1, 162.5, 2));
        cook.write(80.2, read(1, f, 2));
        assert_eq!(why_not(&cook), why, "{f} F");
    }
}

/// One look at a resting piece: pokes within a few minutes of each other are of one core, which hardly
/// moves meanwhile (1 F in 5 min is told of rests near their peak; common practice, no source), and one
/// thermometer repeats to 1 F (makers, from memory), so two differ by 2 F at the most. A quarter of an
/// hour later it may have cooled by as much.
#[test]
fn poking_again_within_minutes_is_the_same_look() {
    for (second, apart, stands) in
        [(163.4, 1.0, true), (162.6, 1.0, false), (162.6, 4.0, false), (162.6, 7.0, true)]
    {
        let mut cook = Cook::two_on();
        cook.write(78.0, pulled(1));
        cook.write(80.0, read(1, 165.2, 2));
        cook.write(80.0 + apart, read(1, second, 2));
        let spoken_against =
            matches!(why_not_the_first(&cook), Some(Shortfall::Contradicted { .. }));
        assert_eq!(spoken_against, !stands, "{second} F after {apart} min");
    }
    // The lucky one may as well be the later.
    let mut cook = Cook::two_on();
    cook.write(78.0, pulled(1));
    cook.write(80.0, read(1, 162.6, 2));
    cook.write(84.0, read(1, 165.2, 2));
    assert!(matches!(why_not(&cook), Some(Shortfall::Contradicted { .. })));
}

/// Encyclopedias tell 5 to 25 F of carryover: at rest nothing rises by 40.
#[test]
fn a_rest_adds_carryover_and_no_more() {
    for (f, why) in [(165.0, None), (172.0, Some(Shortfall::TooFast))] {
        let mut cook = Cook::two_on();
        cook.write(78.0, pulled(1));
        cook.write(79.0, read(1, 141.0, 2));
        cook.write(95.0, read(1, f, 2));
        assert_eq!(why_not(&cook), why, "{f} F");
    }
}

/// Put back, it is another spell: what was read before proves nothing now, and what is of a time at rest
/// is of neither spell, though it was typed after the put-back.
#[test]
fn a_reading_is_of_its_own_spell() {
    let mut cook = Cook::two_on();
    cook.write(50.0, pulled(1));
    cook.write(70.0, put_on(1));
    cook.write_as(PHONE, 68.0, 71.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook), Some(Shortfall::BeforeThisSpell));
    // Nor does it stop a clock of the spell that it says it is of.
    let mut cook = Cook::two_on();
    cook.write(65.0, pulled(1));
    cook.write(70.0, put_on(1));
    cook.write_as(PHONE, 60.0, 72.0, read(1, 150.0, 2));
    let warm = cook.state().life(piece(1), at(75.0)).unwrap().warm;
    assert_eq!(warm, minutes(75.0));
}

/// What a person should hear first: that a leave-in proves nothing, before that it was too cool.
#[test]
fn the_first_reason_is_told() {
    let mut cook = Cook::two_on();
    cook.write(75.0, leave_in(1, 150.0, 1));
    assert_eq!(why_not(&cook), Some(Shortfall::LeaveIn));
    let state = cook.state();
    let reading = &state.history.piece(piece(1)).unwrap().readings[0];
    assert!(!could_prove(reading));
}

/// One look is two pokes at rest: what was read on the pit a moment before the pull is of a warmer place.
#[test]
fn a_look_at_rest_is_not_one_with_the_pit() {
    for (first, second) in [(160.0, 166.0), (166.0, 163.5)] {
        let mut cook = Cook::two_on();
        cook.write(75.0, read(1, first, 2));
        cook.write(76.0, pulled(1));
        cook.write(78.0, read(1, second, 2));
        assert!(cook.is_proved(1), "{first}, then {second}");
    }
}

/// A doubted reading proves nothing until the cook has said that it is right.
#[test]
fn a_vouched_reading_is_not_doubted() {
    let mut cook = Cook::two_on();
    let reading = cook.write(75.0, read(1, 166.0, 2));
    let why = |cook: &Cook| {
        let state = cook.state();
        let history = state.history.piece(piece(1)).unwrap();
        shortfall(&state.history, history, ProofRule::Instant, &[reading], &history.readings[0])
    };
    assert_eq!(why(&cook), Some(Shortfall::Doubted));
    cook.write(76.0, What::ReadingVouched { reading });
    assert_eq!(why(&cook), None);
}

/// A colder reading that would itself prove the piece speaks against nothing: just 165 F among them.
#[test]
fn what_proves_speaks_against_no_other() {
    for (second, stands) in [(165.0, true), (164.9, false)] {
        let mut cook = Cook::two_on();
        cook.write(78.0, pulled(1));
        cook.write(80.0, read(1, 169.0, 2));
        cook.write(81.0, read(1, second, 2));
        assert_eq!(why_not_the_first(&cook).is_none(), stands, "{second} F");
    }
}
