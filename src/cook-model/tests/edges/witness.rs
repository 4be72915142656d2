//! What one reading is worth.

use cook_model::safety::Shortfall;

use crate::support::{Cook, PHONE, pulled, read};
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
