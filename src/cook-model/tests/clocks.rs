//! The clocks of safety, by their rules.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::history::PieceHistory;
use cook_model::quantity::{Moment, Temperature, minutes};
use cook_model::safety::{ClockKind, cooling, longest_out, to_fridge, warm_up};
use support::{Cook, at, packed, piece, pulled, put_on, read};

fn history(cook: &Cook) -> PieceHistory {
    cook.state().history.piece(piece(1)).unwrap().clone()
}

fn core(points: &[(f64, f64)]) -> Vec<(Moment, Temperature)> {
    points.iter().map(|(minute, f)| (at(*minute), Temperature::from_f(*f))).collect()
}

#[test]
fn the_warm_up_runs_from_going_on_until_a_reading_of_140_f() {
    let mut cook = Cook::two_on();
    let coming = core(&[(50.0, 120.0), (90.0, 139.0), (95.0, 142.0)]);
    let clock = warm_up(&history(&cook), &coming).unwrap();
    assert_eq!((clock.since, clock.deadline), (at(0.0), at(240.0)));
    assert_eq!((clock.done, clock.expected), (None, Some(at(95.0))));
    assert_eq!(clock.left(at(200.0)), minutes(40.0));
    assert!(!clock.has_run_out(at(240.0)) && clock.has_run_out(at(240.1)));
    // The forecast passing 140 F does not stop it; a reading does.
    cook.write(100.0, read(1, 139.9, 1));
    assert_eq!(warm_up(&history(&cook), &coming).unwrap().done, None);
    cook.write(110.0, read(1, 141.0, 1));
    let clock = warm_up(&history(&cook), &[]).unwrap();
    assert_eq!(clock.done, Some(at(110.0)));
    assert_eq!(clock.left(at(300.0)), minutes(130.0));
}

#[test]
fn time_in_the_danger_zone_adds_up_over_a_dying_fire_and_a_put_back() {
    let mut cook = Cook::two_on();
    cook.write(110.0, read(1, 141.0, 1));
    cook.write(120.0, pulled(1));
    cook.write(130.0, read(1, 138.0, 1));
    cook.write(131.0, put_on(1));
    // 110 minutes before, and again since the last reading above 140 F.
    let clock = warm_up(&history(&cook), &[]).unwrap();
    assert_eq!(clock.done, None);
    assert_eq!(clock.left(at(150.0)), minutes(240.0 - 110.0 - 40.0));
    // A pit that is not expected to get there in time.
    let never = core(&[(200.0, 130.0), (400.0, 141.0)]);
    assert!(warm_up(&history(&Cook::two_on()), &never).unwrap().is_expected_to_run_out());
}

#[test]
fn two_hours_to_the_refrigerator_and_one_in_the_heat() {
    let (mild, hot) = (Temperature::from_f(90.0), Temperature::from_f(90.5));
    assert_eq!(longest_out(mild), minutes(120.0));
    assert_eq!(longest_out(hot), minutes(60.0));
    let mut cook = Cook::two_on();
    assert_eq!(to_fridge(&history(&cook), mild, &[]), None);
    cook.write(75.0, read(1, 160.0, 2));
    cook.write(76.0, pulled(1));
    let falling = core(&[(76.0, 155.0), (85.0, 160.0), (110.0, 139.0)]);
    let clock = to_fridge(&history(&cook), mild, &falling).unwrap();
    assert_eq!((clock.since, clock.deadline), (at(76.0), at(196.0)));
    assert_eq!(clock.expected, Some(at(110.0)));
    assert_eq!(to_fridge(&history(&cook), hot, &[]).unwrap().deadline, at(136.0));
    // A reading from the future moves nothing.
    cook.write_as(support::PHONE, 190.0, 80.0, read(1, 145.0, 1));
    assert_eq!(to_fridge(&history(&cook), mild, &[]).unwrap().since, at(76.0));
    // Held hot, it counts from the last reading that shows so.
    cook.write(100.0, read(1, 145.0, 1));
    cook.write(130.0, read(1, 137.0, 1));
    assert_eq!(to_fridge(&history(&cook), mild, &[]).unwrap().since, at(100.0));
    cook.write(140.0, packed(1));
    assert_eq!(to_fridge(&history(&cook), mild, &[]), None);
}

/// FDA Food Code 2022, 3-501.14: 135 to 70 F in 2 h, 41 F within 6 h in all.
#[test]
fn cooling_in_two_steps() {
    let readings = core(&[(10.0, 136.0), (60.0, 90.0), (125.0, 69.0)]);
    let coming = core(&[(125.0, 69.0), (200.0, 50.0), (380.0, 41.0)]);
    let [first, second] = cooling(at(0.0), &readings, &coming);
    assert_eq!((first.kind, second.kind), (ClockKind::CoolTo70, ClockKind::CoolTo41));
    assert_eq!((first.since, first.deadline, second.deadline), (at(10.0), at(130.0), at(370.0)));
    assert_eq!(first.done, Some(at(125.0)));
    assert!(!first.has_run_out(at(500.0)));
    assert!(second.is_expected_to_run_out() && !second.has_run_out(at(370.0)));
    // Nothing read: it runs from when the meat was last hot.
    let [first, _] = cooling(at(0.0), &[], &core(&[(90.0, 70.0)]));
    assert_eq!((first.deadline, first.done), (at(120.0), None));
    assert!(!first.is_expected_to_run_out() && first.has_run_out(at(121.0)));
}
