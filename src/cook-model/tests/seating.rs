//! What a leave-in shows that is not in the coldest spot.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

#[path = "support/histories.rs"]
mod histories;

use cook_model::forecast::forecast;
use cook_model::history::{CoreReading, Instrument};
use cook_model::quantity::{Length, Temperature};
use histories::{at, cook, first, piece, poked, pull, reading};

#[test]
fn a_leave_in_at_160_with_an_instant_read_at_140_is_misplaced() {
    // Common practice, no source: the cook re-seats it and has 15 to 25 minutes to go.
    for target in [250.0, 275.0] {
        let mut history = cook(vec![piece(1, 280.0, 40.0)]);
        history.pit.target = Temperature::from_f(target);
        history.pieces[0].readings =
            vec![reading(44.0, 160.0, Instrument::LeaveIn), poked(45.0, 140.0)];
        let forecast = forecast(&history, at(45.0));
        let seating = first(&forecast).seating.unwrap();
        assert!(seating.misplaced.value() > 0.9 && seating.poked, "{seating:?}");
        assert!(seating.off_by > Length::from_mm(6.0), "{seating:?}");
        assert!((first(&forecast).core.middle.f() - 140.0).abs() < 3.0);
        assert!(first(&forecast).ready.value() < 0.02);
        let left = pull(&forecast) - 45.0;
        assert!((12.0..25.0).contains(&left), "{left} min at {target} F");
    }
}

#[test]
fn a_seat_missed_by_8_mm_is_told_and_a_thermometer_a_degree_high_is_none() {
    // Fourier's theory of heat: a place off the middle warms first and the middle last, so that
    // the two are far apart early on and close at the end. The figures are those of a 3-D simulation
    // of breasts (tests/twin), 8 mm off the middle: kelvins above the core each 10 min.
    const OFF: [(f64, f64); 4] = [(10.0, 5.5), (20.0, 5.0), (30.0, 3.7), (40.0, 2.4)];
    let mut history = cook(vec![piece(1, 280.0, 36.0)]);
    let curve = first(&forecast(&history, at(0.0))).curve.clone();
    let core = |minute: f64| {
        let after = curve.partition_point(|(when, _)| *when < at(minute));
        curve[after].1.middle.f()
    };
    history.pieces[0].readings.push(poked(41.0, core(41.0)));
    let mut misplaced = |above: &dyn Fn(f64) -> f64, from: f64| {
        let shown = OFF.iter().filter(|(minute, _)| *minute >= from).map(|&(minute, off)| {
            reading(minute, core(minute) + 1.8 * above(off), Instrument::LeaveIn)
        });
        let mut readings: Vec<CoreReading> = shown.collect();
        readings.push(history.pieces[0].readings[history.pieces[0].readings.len() - 1]);
        history.pieces[0].readings = readings;
        first(&forecast(&history, at(41.0))).seating.unwrap().misplaced.value()
    };
    let (whole, last) = (misplaced(&|off| off, 10.0), misplaced(&|off| off, 40.0));
    assert!(whole > 0.9, "{whole}");
    assert!(last > 0.9, "{last} by its last reading, just before the poke");
    // A thermometer that shows 1 F too much in the right place does so from the start.
    let biased = misplaced(&|_| 0.55, 10.0);
    assert!(biased < 0.1, "{biased}");
}

#[test]
fn after_re_seating_the_leave_in_is_trusted_afresh() {
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    history.pieces[0].readings = vec![
        reading(44.0, 160.0, Instrument::LeaveIn),
        poked(45.0, 140.0),
        reading(50.0, 145.0, Instrument::LeaveIn),
    ];
    history.pieces[0].placements = vec![at(1.0), at(46.0)];
    let seating = first(&forecast(&history, at(50.0))).seating.unwrap();
    assert!(seating.misplaced.value() < 0.3, "{seating:?}");
    // The poke was beside the old seat.
    assert!(!seating.poked && !seating.is_suspect(), "{seating:?}");
}
