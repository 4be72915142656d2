//! The edges of the rules of safety: what lies on this side of each, and what on that. The figures are
//! those of the sources, or worked by hand; where a rule is our own choice it is held to what it is for,
//! with room on both sides.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod asked;
mod calls;
mod clocks;
mod entries;
mod fires;
mod holds;
mod kitchen;
mod limits;
mod lives;
mod meters;
mod names;
mod orders;
mod plausible;
mod pulls;
mod rests;
mod sources;
#[path = "../support/mod.rs"]
mod support;
mod witness;

use cook_model::safety::{Shortfall, shortfall};
use support::{Cook, piece};

/// Why the last reading of piece 1 does not prove it by itself; no forecast doubts anything.
fn why_not(cook: &Cook) -> Option<Shortfall> {
    let state = cook.state();
    let history = state.history.piece(piece(1)).unwrap();
    let last = history.readings.iter().max_by_key(|reading| reading.entry).unwrap();
    shortfall(&state.history, history, state.settings.proof_rule, &[], last)
}

/// Why the reading written first of piece 1 does not prove it.
fn why_not_the_first(cook: &Cook) -> Option<Shortfall> {
    let state = cook.state();
    let history = state.history.piece(piece(1)).unwrap();
    let first = history.readings.iter().min_by_key(|reading| reading.entry).unwrap();
    shortfall(&state.history, history, state.settings.proof_rule, &[], first)
}
