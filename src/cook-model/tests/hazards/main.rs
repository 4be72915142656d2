//! The ways in which a person could be led to eat unsafe chicken. After each, nothing may say
//! *proved*. Where a test first shows a proof, it is so that its withdrawal means something.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod against;
mod alike;
mod limits;
mod logs;
mod meters;
mod raw;
mod readings;
mod second_place;
#[path = "../support/mod.rs"]
mod support;
mod times;

use cook_model::cook::{CookState, Seen, Stage};
use cook_model::safety::{Shortfall, shortfall};
use support::{Cook, at, piece, pulled, read};

/// Why the last reading of a piece does not prove it.
fn why_not(cook: &Cook, number: u32) -> Option<Shortfall> {
    let state = cook.state();
    let history = state.history.piece(piece(number)).unwrap();
    let rule = state.settings.proof_rule;
    shortfall(&state.history, history, rule, &[], history.readings.last().unwrap())
}

/// The state with the forecast's doubts heeded, as the screens show it.
fn shown(cook: &Cook, minute: f64) -> CookState {
    Seen::of(&cook.log, at(minute)).state_at(at(minute))
}

/// A cook in which piece 1 was read at 166 F in two places at minute 75, and pulled.
fn proved_cook() -> Cook {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    assert_eq!(cook.stage(1), Stage::Proved);
    cook
}
