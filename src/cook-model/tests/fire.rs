//! A fire that goes out is noticed by what is read, and is seen to before anything else.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::duties::{Act, Duty, duties, in_order};
use cook_model::cook::{Seen, What};
use cook_model::quantity::{Temperature, minutes};
use support::{Cook, at, piece, pulled, read};

fn pit(fahrenheit: f64) -> What {
    What::PitRead { temperature: Temperature::from_f(fahrenheit) }
}

/// Two on since the start, aimed at 250 F, each read at an opening of half a minute from minute 40.
fn looked_at_40() -> Cook {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(250.0) });
    cook.write(2.0, pit(252.0));
    cook.write(40.0, What::RoundBegan { pieces: vec![piece(1), piece(2)] });
    cook.write(40.2, read(1, 128.0, 2));
    cook.write(40.5, read(2, 126.0, 2));
    cook.write(40.7, What::RoundEnded);
    cook
}

fn due(cook: &Cook, minute: f64) -> Vec<Duty> {
    let all = duties(&Seen::of(&cook.log, at(minute)));
    let now = at(minute);
    let due = in_order(&all, now).into_iter().filter(|duty| duty.is_due(now));
    due.cloned().collect()
}

fn acts(cook: &Cook, minute: f64) -> Vec<Act> {
    due(cook, minute).into_iter().map(|duty| duty.act).collect()
}

// Common practice, no source: a pit of 250 F is back within ten minutes of a short opening. One that shows
// 140 F some minutes after it has no fire.
#[test]
fn a_dead_fire_is_not_taken_for_an_open_lid() {
    for (after, fahrenheit) in [(1.5, 110.0), (4.0, 140.0), (5.0, 170.0), (8.0, 200.0)] {
        let mut cook = looked_at_40();
        cook.write(40.7 + after, pit(fahrenheit));
        let first = acts(&cook, 40.8 + after).first().cloned();
        assert_eq!(first, Some(Act::MendFire), "{fahrenheit} F {after} min after the lid");
    }
    for (after, fahrenheit) in [(0.5, 170.0), (2.0, 205.0), (5.0, 238.0)] {
        let mut cook = looked_at_40();
        cook.write(40.7 + after, pit(fahrenheit));
        let first = acts(&cook, 40.8 + after);
        assert!(!first.contains(&Act::MendFire), "{fahrenheit} F {after} min after the lid");
    }
}

// On a fire that burns no core cools (common practice, no source).
#[test]
fn a_core_that_cools_on_the_pit_sends_the_cook_to_the_pit() {
    let mut cook = looked_at_40();
    cook.write(41.0, pit(235.0));
    cook.write(60.0, read(1, 148.0, 2));
    cook.write(68.0, read(1, 141.0, 2));
    let reading = cook.write(68.5, read(1, 141.0, 2));
    cook.write(68.6, What::ReadingVouched { reading });
    assert!(acts(&cook, 69.0).contains(&Act::ReadPit), "{:?}", acts(&cook, 69.0));
    // One that warms does not, half an hour not being over.
    let mut cook = looked_at_40();
    cook.write(41.0, pit(235.0));
    cook.write(60.0, read(1, 148.0, 2));
    cook.write(68.0, read(1, 153.0, 2));
    assert!(!acts(&cook, 69.0).contains(&Act::ReadPit));
}

// The dial is looked at before the lid goes up, not when it has just come down.
#[test]
fn the_pit_is_not_read_while_the_air_comes_back() {
    let mut cook = looked_at_40();
    assert!(!acts(&cook, 41.5).contains(&Act::ReadPit));
    assert!(acts(&cook, 46.0).contains(&Act::ReadPit), "38 minutes after it was last read");
    cook.write(60.0, What::RoundBegan { pieces: vec![piece(1)] });
    assert_eq!(acts(&cook, 60.1), [Act::ReadPit]);
    cook.write(60.2, pit(250.0));
    assert_eq!(acts(&cook, 60.3), [Act::Read]);
}

/// Typed right after the lid was up it says nothing of how hot the pit was before and after, so what is read
/// then is not too hot for it.
#[test]
fn a_dial_that_the_lid_cooled_takes_no_proof_away() {
    let mut cook = looked_at_40();
    cook.write(41.0, pit(150.0));
    cook.write(70.0, read(1, 166.0, 2));
    cook.write(70.2, pulled(1));
    let seen = Seen::of(&cook.log, at(70.5));
    assert!(seen.state.pieces[0].proof.is_some());
}

/// What a cook is asked about a reading ends with the next one: nobody remembers what was typed half an
/// hour ago.
#[test]
fn a_reading_too_cool_to_prove_anything_is_asked_about_at_once_or_not() {
    let mut cook = looked_at_40();
    let odd = cook.write(50.0, read(1, 99.0, 2));
    let asks = |cook: &Cook, minute: f64| {
        let seen = Seen::of(&cook.log, at(minute));
        let asked = seen.state.question(seen.forecast.as_ref().unwrap());
        asked.map(|surprise| surprise.entry)
    };
    assert_eq!(asks(&cook, 50.1), Some(odd));
    let mut later = cook.clone();
    later.write(65.0, pit(250.0));
    assert_eq!(asks(&later, 65.0), None);
    cook.write(52.0, read(1, 141.0, 2));
    assert_eq!(asks(&cook, 52.1), None);
}

/// What was called off by the app's own word is not put back a minute later without a reading.
#[test]
fn what_was_called_off_is_read_at_rest_before_it_goes_back() {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::PullTargetSet { piece: None, target: Some(Temperature::from_f(156.0)) });
    cook.write(30.0, pit(225.0));
    cook.write(62.0, read(1, 156.0, 2));
    cook.write(62.2, pulled(1));
    let all = duties(&Seen::of(&cook.log, at(63.0)));
    let of_piece = |act: Act| {
        let mut own = all.iter().filter(|duty| duty.act == act && duty.pieces.contains(&piece(1)));
        own.next().map(|duty| duty.from)
    };
    assert_eq!(of_piece(Act::PutBack), None);
    assert!(of_piece(Act::Prove).unwrap() >= at(62.2) + minutes(3.0));
}
