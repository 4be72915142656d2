//! What lateness and doubted readings do to what is told of a piece.

use super::normal::Part;
use super::prior;
use super::view::{NEGLIGIBLE, TIME_MISFIT, View};
use crate::quantity::to_seconds;

/// Of a low reading that nothing bears out, the chance that it is right all the same: enough for the
/// window to hold what it says.
const DOUBTED: f64 = 0.22;
/// How well the time from there is known, as a part of it.
const DOUBTED_SPREAD: f64 = 0.2;
/// However ready a piece looks by a single reading, no more is claimed than this.
const SURE_OF_ONE: f64 = 0.97;
/// The span over which a rate is taken, s.
const RATE_SPAN: f64 = 60.0;
/// C; nothing wet is hotter.
pub(super) const BOILING: f64 = 100.0;

impl View<'_> {
    /// When a cell gets to where its trace is at a time, s.
    pub(super) fn late(&self, cell: usize, at: f64) -> f64 {
        at + self.evidence.lateness.of(cell, at)
    }

    /// How far the core may be off its cell's trace at a time, K.
    pub(super) fn misfit(&self, at: f64) -> f64 {
        let at = self.on_the_pit(at);
        libm::hypot(prior::MISFIT, self.evidence.lateness.spread(at) * self.rate(at))
    }

    /// How much colder than its trace a cell's core is at a time, K.
    pub(super) fn behind(&self, at: f64) -> impl Fn(usize) -> f64 + '_ {
        let at = self.on_the_pit(at);
        let rate = self.rate(at);
        move |cell| self.evidence.lateness.of(cell, at) * rate
    }

    /// A time, or when the piece came off if that was before: lateness is of heating.
    fn on_the_pit(&self, at: f64) -> f64 {
        let off = self.history.off().map(|off| to_seconds(off - self.setting.zero));
        off.map_or(at, |off| at.min(off))
    }

    /// How fast the core rises at a time, K/s.
    pub(super) fn rate(&self, at: f64) -> f64 {
        ((self.expected(at) - self.expected(at - RATE_SPAN)) / RATE_SPAN).max(0.0)
    }

    /// No more is claimed than this: one reading alone may be a slip.
    pub(super) fn sure(&self) -> f64 {
        let counted = self.evidence.seen.iter().filter(|seen| seen.counts).count();
        if counted < 2 { SURE_OF_ONE } else { 1.0 }
    }

    /// What a low reading taken for a slip would have it, of the times by cell: as long after it as
    /// the typical trace takes from there.
    pub(super) fn doubted(&self, all: &[Option<f64>]) -> Option<Part> {
        let (at, shown) = self.evidence.doubted?;
        let (mut weight, mut sum) = (0.0, 0.0);
        for (cell, share) in self.cells() {
            let Some(reached) = all[cell] else { continue };
            weight += share;
            sum += share * reached;
        }
        let there = self.traces.passes(self.typical(), shown.c());
        let left = (sum / weight.max(NEGLIGIBLE) - there).max(0.0);
        let spread = DOUBTED_SPREAD * left + TIME_MISFIT;
        Some(Part { weight: DOUBTED, mean: at + left, spread })
    }
}
