//! A round is one opening of the lid: what belongs to it, and what does not.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::duties::{Act, Duty, duties};
use cook_model::cook::{Seen, Stage, What};
use cook_model::quantity::{Temperature, to_minutes};
use support::{Cook, at, piece, pulled, put_on, read, set_out};

/// Three pieces on since the start, one of which came off at 50 minutes, and a fourth that is raw.
fn two_on_one_off_one_raw() -> Cook {
    let mut cook = Cook::default();
    (1..=4).for_each(|number| {
        cook.write(0.0, set_out(number, 32.0 + 2.0 * f64::from(number)));
    });
    (1..=3).for_each(|number| {
        cook.write(0.0, put_on(number));
    });
    cook.write(1.0, pit(250.0));
    cook.write(50.0, read(1, 163.0, 2));
    cook.write(50.2, pulled(1));
    cook.write(50.4, What::RoundEnded);
    cook
}

fn pit(fahrenheit: f64) -> What {
    What::PitRead { temperature: Temperature::from_f(fahrenheit) }
}

fn due(cook: &Cook, minute: f64) -> Vec<Duty> {
    let all = duties(&Seen::of(&cook.log, at(minute)));
    all.into_iter().filter(|duty| duty.is_due(at(minute))).collect()
}

#[test]
fn a_round_is_of_what_is_on_the_pit() {
    let mut cook = two_on_one_off_one_raw();
    // The whole rack was named: one of it rests on the board, one is raw in its bag.
    cook.write(60.0, What::RoundBegan { pieces: (1..=4).map(piece).collect() });
    cook.write(60.1, pit(250.0));
    let round = cook.state().rounds.pop().unwrap();
    assert_eq!(round.pieces, [piece(2), piece(3)]);
    for (number, minute) in [(2, 60.4), (3, 60.6)] {
        let asked: Vec<Duty> =
            due(&cook, minute).into_iter().filter(|duty| duty.act == Act::Read).collect();
        assert!(matches!(&asked[..], [only] if only.pieces == [piece(number)]), "{asked:?}");
        cook.write(minute, read(number, 140.0, 2));
    }
    assert_eq!(cook.state().rounds[0].next(), None);
}

#[test]
fn what_is_read_on_the_board_lifts_no_lid_and_answers_nothing() {
    let mut cook = two_on_one_off_one_raw();
    let before = cook.state().history.pit.lid.len();
    cook.write(60.0, What::RoundBegan { pieces: vec![piece(2), piece(3)] });
    cook.write(60.5, read(1, 166.0, 2));
    let state = cook.state();
    assert_eq!(state.history.pit.lid.len(), before, "{:?}", state.history.pit.lid);
    assert_eq!(state.rounds[0].next(), Some(piece(2)));
}

#[test]
fn what_is_thrown_away_is_waited_for_no_longer() {
    let mut cook = two_on_one_off_one_raw();
    cook.write(60.0, What::RoundBegan { pieces: vec![piece(2), piece(3)] });
    cook.write(60.4, read(2, 140.0, 2));
    cook.write(60.6, What::Discarded { piece: piece(3) });
    assert_eq!(cook.state().rounds[0].next(), None);
}

#[test]
fn a_finished_round_is_over_and_the_lid_is_down() {
    let mut cook = two_on_one_off_one_raw();
    cook.write(60.0, What::RoundBegan { pieces: vec![piece(2), piece(3)] });
    cook.write(60.4, read(2, 140.0, 2));
    cook.write(60.6, read(3, 138.0, 2));
    // Common practice, no source: when all was read the lid comes down. What is tapped three minutes
    // later is tapped with the lid shut, and what is due is due.
    cook.write(63.6, pit(245.0));
    let state = cook.state();
    let opening = state.history.pit.lid.last().unwrap();
    let minutes = to_minutes(opening.lasted);
    assert!(minutes < 1.0, "the lid was up for {minutes} min");
    assert_eq!(state.round(at(63.0)), None);
    assert_eq!(state.at_stage(Stage::On), [piece(2), piece(3)]);
    assert!(due(&cook, 63.7).iter().all(|duty| duty.act != Act::Read));
}
