//! Proof by time at temperature. Figures: USDA FSIS, Time-Temperature Tables for Cooking Ready-to-Eat
//! Poultry Products (2005), chicken, 12 % fat: 4.2 minutes at 150 F, 5.4 at 149 F, 35 at 140 F.

use cook_model::cook::What;
use cook_model::history::Tolerances;
use cook_model::quantity::{Temperature, TemperatureDifference, to_minutes};
use cook_model::safety::{FatColumn, LOWEST_HELD, Proof, dwell_at};

use crate::support::{Cook, PHONE, at, held_rule, leave_in, piece, read};

/// Two breasts under the rule, read with a thermometer true to half a degree.
fn by_time() -> Cook {
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    let instant_read = TemperatureDifference::from_f(0.5);
    let tolerances = Tolerances { instant_read, ..Tolerances::default() };
    cook.write(0.0, What::TolerancesSet { tolerances });
    cook
}

fn proof(cook: &Cook) -> Option<Proof> {
    cook.state().piece(piece(1)).unwrap().0.proof
}

fn read_at(times: &[(f64, f64)]) -> Option<Proof> {
    let mut cook = by_time();
    for (minute, f) in times {
        cook.write(*minute, read(1, *f, 2));
    }
    proof(&cook)
}

/// The table's time, and not a moment less; what is shown is the lowest that was read.
#[test]
fn held_for_just_as_long_as_the_table_says() {
    assert_eq!(read_at(&[(75.0, 151.0), (79.1, 151.0)]), None);
    let held = read_at(&[(75.0, 153.0), (77.0, 151.0), (79.3, 154.0)]).unwrap();
    assert!((held.temperature.f() - 151.0).abs() < 0.01, "{:?}", held.temperature);
    assert!(held.held_since.is_some());
    // By the 140 F row: 35 minutes, read every 12 minutes.
    let times = |last: f64| [(75.0, 141.0), (87.0, 142.0), (99.0, 142.0), (last, 141.0)];
    assert!(read_at(&times(110.2)).is_some());
    assert_eq!(read_at(&times(109.5)), None);
    let held = read_at(&times(110.2)).unwrap();
    assert!((held.temperature.f() - 141.0).abs() < 0.01, "{:?}", held.temperature);
}

/// Below the table's first row no time counts.
#[test]
fn below_136_f_no_time_counts() {
    let hours =
        |f: f64| -> Vec<(f64, f64)> { (0..12).map(|i| (80.0 + 10.0 * f64::from(i), f)).collect() };
    assert!(read_at(&hours(137.0)).is_some());
    assert_eq!(read_at(&hours(136.2)), None);
    assert_eq!(read_at(&hours(135.0)), None);
}

/// Between readings a quarter of an hour apart nobody knows (our choice).
#[test]
fn readings_too_far_apart_make_no_hold() {
    assert!(read_at(&[(75.0, 151.0), (89.5, 151.0)]).is_some());
    assert_eq!(read_at(&[(75.0, 151.0), (91.0, 151.0)]), None);
}

/// Minutes decide, so what is typed minutes late or ahead begins or ends no hold (our choice).
#[test]
fn the_readings_of_a_hold_are_typed_as_they_are_read() {
    let typed = |first: f64, second: f64| {
        let mut cook = by_time();
        cook.write_as(PHONE, 75.0, 75.0 + first, read(1, 151.0, 2));
        cook.write_as(PHONE, 82.0, 82.0 + second, read(1, 151.0, 2));
        proof(&cook).is_some()
    };
    assert!(typed(0.0, 0.0) && typed(1.5, 0.0) && typed(0.0, 1.5));
    assert!(!typed(2.5, 2.5) && !typed(2.5, 0.0) && !typed(0.0, 2.5));
    // Of the time between two readings and between their typing the shorter counts.
    let mut cook = by_time();
    cook.write_as(PHONE, 75.0, 76.5, read(1, 151.0, 2));
    cook.write_as(PHONE, 79.5, 79.5, read(1, 151.0, 2));
    assert_eq!(proof(&cook), None);
}

/// FSIS Cooking Guideline (Revised Appendix A, 2021): the core comes from 50 to 130 F within six hours,
/// or the table does not apply.
#[test]
fn no_hold_begins_after_six_hours() {
    let begun = |minute: f64| {
        let early = (200.0, 141.0);
        read_at(&[early, (minute, 152.0), (minute + 6.0, 152.0), (minute + 12.0, 152.0)]).is_some()
    };
    // "Within 6 hours" holds its end.
    assert!(begun(355.0) && begun(360.0));
    assert!(!begun(362.0));
}

/// A leave-in shows one place that may be hotter: it neither ends a hold nor makes one. A colder one ends it.
#[test]
fn a_leave_in_ends_a_hold_only_where_it_is_colder() {
    let with = |f: f64| {
        let mut cook = by_time();
        cook.write(75.0, read(1, 152.0, 2));
        cook.write(78.0, leave_in(1, f, 1));
        cook.write(80.0, read(1, 152.0, 2));
        proof(&cook).is_some()
    };
    assert!(with(158.0) && with(152.0) && !with(146.0));
}

/// A phone's clock that jumped within a hold ends it, also where it had jumped before.
#[test]
fn a_jump_of_the_clock_ends_a_hold() {
    for jumps in [&[10.0, 77.0][..], &[77.0]] {
        let mut cook = by_time();
        for jump in jumps.iter().filter(|jump| **jump < 75.0) {
            cook.write(*jump, What::ClockJumped);
        }
        cook.write(75.0, read(1, 152.0, 2));
        for jump in jumps.iter().filter(|jump| **jump > 75.0) {
            cook.write(*jump, What::ClockJumped);
        }
        cook.write(80.0, read(1, 152.0, 2));
        assert_eq!(proof(&cook), None, "{jumps:?}");
    }
}

/// Of the gap between two readings and the one between their typing the longer counts.
#[test]
fn a_gap_is_as_long_as_its_typing() {
    let mut cook = by_time();
    cook.write(75.0, read(1, 151.0, 2));
    cook.write_as(PHONE, 89.5, 91.0, read(1, 151.0, 2));
    assert_eq!(proof(&cook), None);
}

/// The proof told of is the first that was complete.
#[test]
fn the_first_proof_is_told() {
    let held = read_at(&[(75.0, 151.0), (80.0, 152.0), (85.0, 153.0), (90.0, 154.0)]).unwrap();
    assert_eq!(held.at, at(80.0));
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(80.0, read(1, 170.0, 2));
    let told = proof(&cook).unwrap();
    assert_eq!((told.at, told.temperature.f().round()), (at(75.0), 166.0));
    assert_eq!(told.held_since, None);
}

/// The table as it was read in copies (12 %: 142 to 144 F as the longer of two copies; 5 %: the column
/// from memory), in minutes. Between two rows the colder one holds.
#[test]
fn the_table() {
    let rows = |fat, rows: &[(f64, f64)]| {
        for (f, minutes) in rows {
            let told = dwell_at(Temperature::from_f(*f), fat).unwrap();
            assert!((to_minutes(told) - minutes).abs() < 0.06, "{f} F: {told}");
        }
    };
    rows(
        FatColumn::Twelve,
        &[
            (136.0, 81.4),
            (137.0, 65.5),
            (138.0, 52.9),
            (139.0, 43.0),
            (140.0, 35.0),
            (141.0, 28.7),
            (142.0, 23.7),
            (143.0, 19.8),
            (144.0, 16.6),
            (148.9, 16.6),
            (149.0, 5.4),
            (150.0, 4.2),
            (164.0, 4.2),
        ],
    );
    rows(
        FatColumn::Five,
        &[
            (136.0, 68.4),
            (140.0, 27.5),
            (145.0, 9.2),
            (150.0, 2.8),
            (155.0, 47.7 / 60.0),
            (160.0, 14.8 / 60.0),
        ],
    );
    assert_eq!(dwell_at(Temperature::from_f(135.5), FatColumn::Five), None);
    assert!((LOWEST_HELD.f() - 136.0).abs() < 1e-9);
}
