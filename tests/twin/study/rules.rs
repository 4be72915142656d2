//! Cooking by a rule of the trade: pull when the rule says, reading only what it needs.

use crate::cook::{Cook, Place, Setup};
use crate::diary;
use crate::record::{LOADING, MESH, Record};

use super::forecaster::{Forecaster, of_piece};
use super::table;

/// The rule's temperature, C (165 F): pulled above it, a piece is drier than it need be.
pub(super) const OVER: f64 = 133.0 / 1.8;
/// A cook this long has gone wrong, s.
const TOO_LONG: f64 = 6.0 * 3600.0;

/// What came of one cook by a rule.
#[derive(Clone, Debug, Default)]
pub struct ByRule {
    /// True core of each piece as it was pulled, less its pull temperature, C.
    pub above_pull: Vec<f64>,
    /// Pieces whose true core was above 165 F when pulled.
    pub over: usize,
}

/// Cooks a setup by a rule. Every piece is read at the openings of its record, and pulled at the time
/// the rule then gives.
pub fn cook(rule: &dyn Forecaster, setup: &Setup, record: &Record) -> ByRule {
    let count = setup.told.len();
    let all: Vec<usize> = (0..count).collect();
    let mut cook = Cook::new(setup.clone(), MESH);
    all.iter().for_each(|&piece| cook.put_on(piece));
    cook.open_lid(LOADING);
    let says = |now: f64| -> Vec<f64> {
        let diary = table::log_until(setup, record, now, &all, |_, _| true);
        let said = rule.say(diary.log(), diary::moment(now));
        let minutes = |piece: &usize| Some(of_piece(&said, diary::id(*piece))?.pull?[1]);
        all.iter().map(|piece| minutes(piece).map_or(TOO_LONG, |minutes| 60.0 * minutes)).collect()
    };
    let mut due = says(0.0);
    let mut openings = record.openings.iter().peekable();
    let mut outcome = ByRule::default();
    while cook.places().contains(&Place::On) && cook.now() < TOO_LONG {
        cook.step();
        if let Some(opening) = openings.next_if(|opening| opening.at <= cook.now()) {
            cook.open_lid(opening.lasted);
            due = says(opening.at);
        }
        for &piece in &all {
            if cook.places()[piece] == Place::On && due[piece] <= cook.now() {
                let core = cook.core(piece);
                outcome.above_pull.push(core - setup.pull_at);
                outcome.over += usize::from(core > OVER);
                cook.pull(piece);
            }
        }
    }
    outcome
}
