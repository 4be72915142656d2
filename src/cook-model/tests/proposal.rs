//! The pull temperature proposed, and the time back on the pit.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::What;
use cook_model::forecast::forecast;
use cook_model::quantity::{Moment, Temperature, to_minutes};
use cook_model::safety::ProofRule;
use support::{Cook, at, held_rule, piece, pulled, put_on, read, set_out};

/// One piece on the pit, read when it is likely to be at 150 F; with the moment.
fn nearly_done(thickest_mm: f64) -> (Cook, Moment) {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, thickest_mm));
    cook.write(0.0, put_on(1));
    let coming = forecast(&cook.state().history, at(0.0));
    let curve = &coming.piece(piece(1)).unwrap().curve;
    let hot = curve.iter().find(|(_, core)| core.middle >= Temperature::from_f(150.0)).unwrap();
    let minute = to_minutes(hot.0 - at(0.0));
    cook.write(minute, read(1, 150.0, 2));
    (cook, hot.0)
}

fn lowest(cook: &Cook, now: Moment) -> f64 {
    cook.state().propose_pull(piece(1), now).unwrap().lowest.f()
}

#[test]
fn nothing_is_proposed_before_a_reading() {
    let mut cook = Cook::two_on();
    assert_eq!(cook.state().propose_pull(piece(1), at(30.0)), None);
    cook.write(60.0, read(1, 140.0, 1));
    assert!(cook.state().propose_pull(piece(1), at(60.0)).is_some());
    assert_eq!(cook.state().propose_pull(piece(2), at(60.0)), None);
    cook.write(61.0, pulled(1));
    assert_eq!(cook.state().propose_pull(piece(1), at(61.0)), None);
}

#[test]
fn a_thin_piece_must_stay_on_longer_than_a_thick_one() {
    let mut before = 185.0;
    for mm in [20.0, 25.0, 35.0, 45.0] {
        let (cook, now) = nearly_done(mm);
        let pull = lowest(&cook, now);
        assert!((158.0..=168.0).contains(&pull), "{mm} mm: {pull}");
        assert!(pull <= before, "{mm} mm: {pull} after {before}");
        before = pull;
    }
    // The custom of 160 F leaves a thin piece unproved.
    let (cook, now) = nearly_done(25.0);
    assert!(cook.state().propose_pull(piece(1), now).unwrap().chosen_is_too_low());
}

#[test]
fn the_rule_chosen_moves_the_proposal() {
    let (mut cook, now) = nearly_done(38.0);
    let instant = lowest(&cook, now);
    let mut stricter = cook.clone();
    let rule = ProofRule::Stricter { at_least: Temperature::from_f(170.0) };
    stricter.write(1.0, What::ProofRuleSet { rule });
    let raised = lowest(&stricter, now) - instant;
    assert!((3.0..=6.0).contains(&raised), "{raised}");
    cook.write(1.0, held_rule());
    let lowered = instant - lowest(&cook, now);
    assert!(lowered > 5.0, "{lowered}");
}

#[test]
fn a_rest_that_does_not_prove_goes_back_on_for_a_while() {
    let (mut cook, now) = nearly_done(38.0);
    let minute = to_minutes(now - at(0.0));
    assert_eq!(cook.state().time_back_on(piece(1), now), None);
    cook.write(minute + 6.0, read(1, 158.0, 2));
    cook.write(minute + 7.0, pulled(1));
    cook.write(minute + 15.0, read(1, 161.0, 2));
    let back = |cook: &Cook, minute: f64| {
        to_minutes(cook.state().time_back_on(piece(1), at(minute)).unwrap().middle)
    };
    let soon = back(&cook, minute + 16.0);
    assert!((2.0..40.0).contains(&soon), "{soon}");
    // Left to cool, it needs longer.
    let later = back(&cook, minute + 40.0);
    assert!(later > soon, "{later} after {soon}");
}
