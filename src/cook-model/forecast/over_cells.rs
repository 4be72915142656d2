//! What the cells of a piece say together: how hot its core is, and when it gets where.

use super::cells;
use super::normal::{Mixture, Part};
use super::prior;
use super::rests::carried;
use super::traces::{RATE_OVER, Spot};
use super::view::View;
use crate::quantity::Temperature;

/// Cells with less weight than this are left out: they move no figure that is shown.
pub(super) const NEGLIGIBLE: f64 = 1e-5;
/// No time is forecast better than this, s: nobody pulls to the second.
const TIME_MISFIT: f64 = 20.0;
/// A window with less than this chance of being reached within the horizon is not told.
pub(super) const REACHED: f64 = 0.5;

impl View<'_> {
    /// The cells that matter, with their weights.
    pub(super) fn cells(&self) -> impl Iterator<Item = (usize, f64)> {
        self.weights.iter().copied().enumerate().filter(|(_, weight)| *weight > NEGLIGIBLE)
    }

    /// How much of the time is in doubt for the model's own error, as a standard deviation, s.
    pub(super) fn drift(&self, at: f64) -> f64 {
        libm::sqrt(self.evidence.late.variance(at))
    }

    /// How far the core may be off its cell's trace at a time, K.
    pub(super) fn misfit(&self, at: f64) -> f64 {
        let on = self.evidence.late.last_on(at);
        let expected = |at| self.traces.at(Spot::Core, self.typical(), at);
        let rate = (expected(on) - expected(on - RATE_OVER)) / RATE_OVER;
        libm::hypot(prior::MISFIT, self.drift(at) * rate)
    }

    /// The core at a time, by cell: as late as each is beside its trace, and at rest as far off it as it
    /// was when it was pulled.
    pub(super) fn cores(&self, at: f64) -> Vec<f64> {
        let late = &self.evidence.late;
        let lates = late.lates(at);
        let usual: f64 = self.cells().map(|(cell, weight)| weight * lates[cell]).sum();
        let on = late.last_on(at);
        // Straight over the lateness that is usual, and so right for it; of a piece ahead of its trace as
        // it rose before, where the trace had come off by then.
        let small = usual.abs() < RATE_OVER || !late.is_on(on - usual);
        let over = if small { RATE_OVER } else { usual };
        let all = |at| self.traces.all_cells(Spot::Core, at);
        let (upto, from) = (all(on), all(on - over));
        if on >= at {
            let rows = upto.into_iter().zip(from).zip(lates);
            return rows.map(|((to, from), late)| to - (to - from) * late / over).collect();
        }
        let rows = all(at).into_iter().zip(upto).zip(from).zip(all(on - 2.0 * over)).zip(lates);
        rows.zip(late.paces(on))
            .map(|(((((core, to), from), before), late), pace)| {
                let share = late / over;
                let faster = pace * (1.0 + ((from - before) / (to - from) - 1.0) * share);
                to - (to - from) * share + carried(core - to, faster)
            })
            .collect()
    }

    /// The core of one cell at a time, likewise.
    pub(super) fn core_of(&self, cell: usize, values: (f64, f64), at: f64) -> f64 {
        let late = &self.evidence.late;
        let on = late.last_on(at);
        let at_trace = |at| self.traces.at(Spot::Core, values, at);
        let rate = |at| at_trace(at) - at_trace(at - RATE_OVER);
        let behind = late.late(cell, at);
        let when = on - behind;
        let (pulled, faster) = if late.is_on(when) {
            (at_trace(when), rate(when) / rate(on))
        } else {
            (at_trace(on) - rate(on) * behind / RATE_OVER, 1.0)
        };
        if on >= at {
            return pulled;
        }
        pulled + carried(at_trace(at) - at_trace(on), late.pace(cell, on) * faster)
    }

    /// Mean ln(speed) and offset.
    pub(super) fn typical(&self) -> (f64, f64) {
        let mut mean = (0.0, 0.0);
        for ((speed, offset), weight) in cells::each().zip(self.weights) {
            mean.0 += weight * speed;
            mean.1 += weight * offset;
        }
        mean
    }

    /// The core at a time.
    pub(super) fn core(&self, at: f64) -> Mixture<'_> {
        let all = self.cores(at);
        let spread = self.misfit(at);
        self.mixture(|cell| Some((all[cell], spread)))
    }

    /// When the core gets to a temperature, by cell.
    pub(super) fn reaches(&self, temperature: Temperature) -> Vec<Option<f64>> {
        let late = &self.evidence.late;
        let on_trace = self.traces.reaches(temperature).into_iter().enumerate();
        on_trace.map(|(cell, at)| at.map(|at| late.arrives(cell, at))).collect()
    }

    /// When the core gets somewhere, of the times by cell; none if it is not likely to.
    pub(super) fn crossing(&self, all: &[Option<f64>]) -> Option<Mixture<'_>> {
        (self.reached(all) > REACHED).then(|| self.times(all, 0.0))
    }

    /// The chance of getting somewhere, of the times by cell.
    pub(super) fn reached(&self, all: &[Option<f64>]) -> f64 {
        self.cells().filter(|(cell, _)| all[*cell].is_some()).map(|(_, weight)| weight).sum()
    }

    /// When the core gets somewhere if it does, of the times by cell; `more` is some other doubt about the
    /// time, a standard deviation, s.
    pub(super) fn times(&self, all: &[Option<f64>], more: f64) -> Mixture<'_> {
        self.mixture(|cell| {
            let at = all[cell]?;
            let drift = self.drift(at);
            Some((at, libm::hypot(libm::hypot(drift, TIME_MISFIT), more)))
        })
    }

    /// A mixture with one part a cell, its mean and spread given.
    pub(super) fn mixture(&self, part: impl Fn(usize) -> Option<(f64, f64)>) -> Mixture<'_> {
        let mut parts: Vec<Part> = self
            .cells()
            .filter_map(|(cell, weight)| {
                let (mean, spread) = part(cell)?;
                Some(Part { weight, mean, spread })
            })
            .collect();
        let sum: f64 = parts.iter().map(|part| part.weight).sum();
        for part in &mut parts {
            part.weight /= sum;
        }
        Mixture { normal: self.normal, parts }
    }
}
