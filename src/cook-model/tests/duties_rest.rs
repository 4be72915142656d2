//! What the cook is told to do once a piece is off, from the states of a cook.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::What;
use cook_model::cook::duties::{Act, in_order};
use cook_model::quantity::{Temperature, to_minutes};
use support::looks::{acts, at_rest, on_the_pit};
use support::{Cook, at, packed, piece, pulled, put_on, read, set_out};

#[test]
fn what_was_pulled_is_read_once_near_its_peak_and_then_left_alone() {
    let mut cook = on_the_pit(&[38.0]);
    cook.write(0.0, What::PullTargetSet { piece: None, target: Some(Temperature::from_f(162.0)) });
    let (mut cook, minute) = at_rest(cook, 162.0);
    let prove = cook.all().into_iter().find(|duty| duty.act == Act::Prove).unwrap();
    let wait = to_minutes(prove.from - at(minute));
    assert!((1.0..20.0).contains(&wait), "asked for once, near the peak: {wait} min");
    cook.write(minute + wait, read(1, 166.0, 2));
    let left = cook.all();
    assert!(!left.iter().any(|d| matches!(d.act, Act::Prove | Act::PutBack)), "{left:?}");
}

#[test]
fn a_rest_that_fell_short_goes_back_on_and_its_target_is_the_proof_itself() {
    let mut cook = on_the_pit(&[38.0]);
    cook.write(0.0, What::PullTargetSet { piece: None, target: Some(Temperature::from_f(160.0)) });
    let (mut cook, minute) = at_rest(cook, 160.0);
    cook.write(minute + 12.0, read(1, 162.0, 2));
    assert_eq!(cook.card(minute + 13.0).act, Act::PutBack);
    cook.write(minute + 14.0, put_on(1));
    // At 162 F it would be pulled again by the old target.
    cook.write(minute + 20.0, read(1, 162.0, 2));
    assert!(!acts(&cook.all()).contains(&&Act::Pull));
    assert_eq!(cook.seen().history(piece(1)).unwrap().pull_at, Temperature::from_f(165.0));
}

#[test]
fn what_is_to_go_back_is_not_to_be_covered() {
    let mut cook = on_the_pit(&[38.0]);
    let minute = cook.likely_at(1, 161.0);
    cook.write(minute, read(1, 161.0, 2));
    cook.write(minute + 0.5, pulled(1));
    assert!(acts(&cook.all()).contains(&&Act::Cover));
    cook.write(minute + 12.0, read(1, 162.0, 2));
    assert_eq!(cook.card(minute + 12.5).act, Act::PutBack);
    let all = cook.all();
    let asked = in_order(&all, at(minute + 12.5));
    assert!(!asked.iter().any(|duty| duty.act == Act::Cover), "{asked:?}");
}

#[test]
fn a_piece_proved_at_its_pull_is_covered_and_rests_like_any_other() {
    let mut cook = on_the_pit(&[38.0]);
    let minute = cook.likely_at(1, 166.0);
    cook.write(minute, read(1, 166.0, 2));
    cook.write(minute + 0.5, pulled(1));
    assert!(cook.is_proved(1));
    assert_eq!(cook.card(minute + 1.0).act, Act::Cover);
    let served = cook.all().into_iter().find(|duty| duty.act == Act::Serve).unwrap();
    assert!(served.from > at(minute + 5.0), "it rests first: {served:?}");
}

/// A cook whose one piece was proved at a minute, covered, for dinner at another.
fn proved(dinner: Option<f64>) -> (Cook, f64) {
    let mut cook = on_the_pit(&[38.0]);
    let dinner = dinner.map(at);
    cook.write(0.0, What::DinnerSet { at: dinner });
    let (mut cook, minute) = at_rest(cook, 164.0);
    cook.write(minute + 8.0, read(1, 167.0, 2));
    (cook, minute + 8.0)
}

#[test]
fn what_was_out_too_long_is_thrown_away_and_never_served() {
    let (cook, minute) = proved(None);
    // USDA: two hours out of the refrigerator, from when it was last known to be above 140 F.
    assert_eq!(cook.card(minute + 60.0).act, Act::Serve);
    assert_eq!(cook.card(minute + 110.0).act, Act::Chill, "twenty minutes before the limit");
    let late = at(minute + 121.0);
    let all = cook.all();
    let left: Vec<&Act> = in_order(&all, late).into_iter().map(|duty| &duty.act).collect();
    assert_eq!(left, [&Act::Discard]);
}

/// A reading of what is kept hot, which no forecast of a rest may expect, and which is right.
fn keep(cook: &mut Cook, minute: f64, fahrenheit: f64) {
    let reading = cook.write(minute, read(1, fahrenheit, 2));
    cook.write(minute + 0.2, What::ReadingVouched { reading });
}

#[test]
fn done_two_hours_early_is_kept_hot_and_read_again() {
    let (mut cook, minute) = proved(None);
    cook.write(minute + 1.0, What::DinnerSet { at: Some(at(minute + 130.0)) });
    let card = cook.card(minute + 20.0);
    assert_eq!(card.act, Act::KeepHot);
    keep(&mut cook, minute + 21.0, 150.0);
    assert!(!cook.card(minute + 22.0).is_due(at(minute + 22.0)));
    assert_eq!(cook.card(minute + 70.0).act, Act::KeepHot, "read again after 45 minutes");
    keep(&mut cook, minute + 71.0, 147.0);
    assert_eq!(cook.card(minute + 121.0).act, Act::Serve);
}

#[test]
fn a_piece_that_is_not_proved_keeps_dinner_waiting() {
    let (cook, minute) = proved(None);
    let mut two = cook.clone();
    two.write(minute, set_out(2, 60.0));
    two.write(minute, put_on(2));
    assert!(!acts(&two.all()).contains(&&Act::Serve));
    assert!(acts(&cook.all()).contains(&&Act::Serve));
}

#[test]
fn a_second_place_is_asked_for_while_it_counts() {
    let (cook, minute) = {
        let mut cook = on_the_pit(&[38.0]);
        let minute = cook.likely_at(1, 164.0);
        cook.write(minute, read(1, 164.0, 2));
        cook.write(minute + 0.5, pulled(1));
        cook.write(minute + 1.0, What::Covered { piece: piece(1) });
        cook.write(minute + 8.0, read(1, 166.0, 1));
        (cook, minute + 8.0)
    };
    assert!(matches!(cook.card(minute + 1.0).act, Act::TrySecondPlace { .. }));
    assert_eq!(cook.card(minute + 6.0).act, Act::Prove, "too late for a second place: read anew");
}

#[test]
fn once_everything_is_packed_nothing_is_left_to_do() {
    let (mut cook, minute) = proved(None);
    cook.write(minute + 20.0, packed(1));
    let all = cook.all();
    assert!(in_order(&all, at(minute + 600.0)).is_empty(), "{all:?}");
}
