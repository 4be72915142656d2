//! When to open the lid, and which pieces to read then.

use super::normal::Normal;
use super::outcome::{Check, PAST_BY};
use super::view::Run;
use crate::history::PieceHistory;
use crate::piece::PieceId;
use crate::quantity::{Moment, Span, TemperatureDifference, minutes, seconds, to_seconds};

/// Pieces due within this time of the first are read at the same opening: to read one early costs
/// seconds, another opening 2 to 3 minutes of the cook.
pub const ONE_OPENING: Span = Span::minutes(6);
/// How well a pull time is known after a reading, as a standard deviation, s.
const AFTER_READING: f64 = 75.0;
/// No opening follows another sooner than this, s.
const APART: f64 = 120.0;

/// A piece that is not likely to get to its pull temperature is looked at so long after it went on
/// or was poked: something is amiss (common practice, no source).
const LOOK_EVERY: Span = Span::minutes(30);
/// One that was poked is looked at again at the latest when a core that rises by this much a minute
/// would be past its pull temperature, whatever the forecast says of it: where it sweats as much as
/// it is heated, forecasts are at their worst.
const SLOW_RISE: TemperatureDifference = TemperatureDifference::from_f(0.5);
/// But not sooner than this after it was poked.
const SOONEST_LOOK: Span = Span::minutes(6);

/// When a piece is looked at whatever is forecast of it.
pub(super) struct Looks {
    /// If it is not likely to get to its pull temperature.
    pub at_least: Moment,
    /// If it was poked since it went on.
    pub after_poke: Option<Moment>,
}

/// When a piece is looked at whatever is forecast of it; one that is raw as if it went on now.
pub(super) fn looks(history: &PieceHistory, now: Moment) -> Looks {
    let on = history.spells.last().map_or(now, |spell| spell.on);
    let poked = history.last_poke();
    let after_poke = poked.map(|poked| {
        let left = history.pull_at + PAST_BY - poked.temperature;
        poked.at + minutes(left.c() / SLOW_RISE.c()).clamp(SOONEST_LOOK, LOOK_EVERY)
    });
    Looks { at_least: poked.map_or(on, |poked| poked.at) + LOOK_EVERY, after_poke }
}

/// A piece still on the pit.
#[derive(Clone, Copy)]
struct Waiting {
    piece: PieceId,
    /// Middle and spread of its pull time.
    pull: (f64, f64),
    grace: f64,
    due: f64,
}

impl Waiting {
    /// A piece not likely to get to its pull temperature is looked at once: what then, nobody knows.
    fn new(piece: PieceId, run: &Run) -> Self {
        match run.timing {
            Some(t) => Self { piece, pull: t.pull, grace: t.grace, due: run.check_by },
            None => Self { piece, pull: (f64::NEG_INFINITY, 0.0), grace: 0.0, due: run.check_by },
        }
    }
}

/// The openings to come, the pieces' runs given; nothing before `now`, s since `zero`.
///
/// Each opening is as late as the piece due first allows. Pieces due soon after are read too. A
/// piece that is then expected to be ready is pulled; of the others the next due time follows from
/// how well a reading fixes the pull time.
pub(super) fn plan(runs: &[(PieceId, &Run)], risk_z: f64, now: f64, zero: Moment) -> Vec<Check> {
    let mut waiting: Vec<Waiting> =
        runs.iter().map(|(piece, run)| Waiting::new(*piece, run)).collect();
    let mut checks = Vec::new();
    let mut earliest = now;
    // Every opening pulls a piece or narrows one that was not narrow: this is more than enough.
    for _ in 0..3 * runs.len() {
        waiting.sort_by(|a, b| a.due.total_cmp(&b.due));
        let Some(first) = waiting.first() else { break };
        let at = first.due.max(earliest);
        let read = waiting.iter().filter(|w| w.due <= at + to_seconds(ONE_OPENING)).count();
        checks.push(Check {
            at: zero + seconds(at),
            pieces: waiting[..read].iter().map(|w| w.piece).collect(),
        });
        for w in &mut waiting[..read] {
            let spread = w.pull.1.min(AFTER_READING);
            w.pull.1 = spread;
            w.due = (w.pull.0 + w.grace - risk_z * spread).max(w.pull.0);
        }
        waiting.retain(|w| w.pull.0 > at);
        earliest = at + APART;
    }
    checks
}

/// How many standard deviations below the middle a chance lies.
pub(super) fn standard_deviations(normal: &Normal, chance: f64) -> f64 {
    let (mut low, mut high) = (-6.0, 6.0);
    for _ in 0..40 {
        let middle = 0.5 * (low + high);
        if normal.below(-middle) > chance {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
