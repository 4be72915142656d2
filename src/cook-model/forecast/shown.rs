//! What one reading shows, against what every cell lets expect.

use super::evidence::Given;
use super::lateness::Lateness;
use super::prior;
use super::seat::Seat;
use super::traces::{Spot, Traces};
use crate::history::{CoreReading, Instrument};
use crate::quantity::to_seconds;
use crate::safety::could_prove;

/// Half the span over which a rate of rise is taken, s.
const RATE_STEP: f64 = 120.0;
/// A maker's tolerance is taken as two standard deviations.
pub(super) const TOLERANCE_SPREADS: f64 = 2.0;

/// One reading against every cell.
pub(super) struct Seen {
    pub reading: CoreReading,
    /// When, s since the clock's zero.
    pub since_zero: f64,
    /// What the thermometer would show, C, by cell, were the meat on its trace; for a leave-in, were its
    /// tip in the middle.
    pub on_trace: Vec<f64>,
    /// How fast that rises, K/s, by cell, and for the piece as expected: at rest, as it was pulled.
    pub slopes: Vec<f64>,
    pub slope: f64,
    /// How far it may be off what the meat is there, K.
    pub noise: f64,
    /// What the thermometer is expected to show, C, by cell, by the readings before it.
    pub mean: Vec<f64>,
    /// How far it may be off that, K.
    pub spread: f64,
    /// The part of it that a leave-in's readings of about the same time have in common, K.
    pub drift: f64,
    /// The chance that it is a slip, before looking at it.
    pub slip: f64,
    /// Whether the others let it count.
    pub counts: bool,
    /// Whether the piece had come off.
    pub at_rest: bool,
    /// Whether the lateness follows it: every instant-read, and the last of a leave-in.
    followed: bool,
}

impl Seen {
    /// A reading of a piece last read at a time, s since the clock's zero.
    pub(super) fn of(
        reading: &CoreReading,
        traces: &Traces,
        given: &Given<'_>,
        late: &Lateness,
        last: f64,
    ) -> Self {
        let at = to_seconds(reading.at - given.zero);
        let on = late.last_on(at);
        let (from, to) = (on - RATE_STEP, if on < at { on } else { on + RATE_STEP });
        let expected = |spot, at| traces.at(spot, (0.0, 0.0), at);
        let slope = (expected(Spot::Core, to) - expected(Spot::Core, from)) / (to - from);
        let before = traces.all_cells(Spot::Core, from);
        let slopes = traces.all_cells(Spot::Core, to).into_iter().zip(before);
        let tolerances = given.tolerances;
        let (tolerance, depth) = match (reading.instrument, reading.places) {
            (Instrument::LeaveIn, _) => (tolerances.leave_in, (0.0, 0.0)),
            (Instrument::InstantRead, 0 | 1) => (tolerances.instant_read, prior::POKED_ONCE),
            (Instrument::InstantRead, _) => (tolerances.instant_read, prior::POKED),
        };
        let excess = (expected(Spot::Surface, at) - expected(Spot::Core, at)).max(0.0);
        let risen = expected(Spot::Core, at) - expected(Spot::Core, on);
        let instrument = tolerance.c() / TOLERANCE_SPREADS;
        let (misfit, drift) = match reading.instrument {
            Instrument::InstantRead => (prior::MISFIT, 0.0),
            Instrument::LeaveIn => {
                let drift = prior::leave_in_before((last - at).max(0.0));
                let lid = slope.abs() * given.lid_doubt(at, last);
                (prior::MISFIT_LEAVE_IN, libm::hypot(drift, lid))
            }
        };
        let parts = [instrument, misfit, depth.1 * excess, prior::RISE_SPREAD * risen.max(0.0)];
        let noise = libm::sqrt(parts.iter().map(|part| part * part).sum());
        let mut on_trace = traces.all_cells(Spot::Core, at);
        for mean in &mut on_trace {
            *mean += depth.0 * excess;
        }
        Self {
            reading: *reading,
            since_zero: at,
            slopes: slopes.map(|(after, before)| (after - before) / (to - from)).collect(),
            slope,
            noise,
            mean: on_trace.clone(),
            on_trace,
            spread: libm::hypot(noise, drift),
            drift,
            slip: if reading.vouched { 0.0 } else { prior::SLIP.0 },
            counts: true,
            at_rest: on < at,
            followed: reading.instrument == Instrument::InstantRead,
        }
    }

    /// Takes it as what holds the lateness, its tip being where its placement has it: as far as that is
    /// known for the piece as expected.
    pub(super) fn hold_by(&mut self, seat: &Seat, late: &Lateness) {
        let rows = self.mean.iter().zip(&self.slopes).zip(late.lates(self.since_zero));
        self.on_trace = rows.map(|((mean, slope), late)| mean + slope * late).collect();
        self.noise = libm::hypot(self.noise, seat.last_spread);
        self.followed = true;
    }

    /// Whether the lateness follows it.
    pub(super) fn is_followed(&self) -> bool {
        self.followed
    }

    /// Whether it was read by the leave-in.
    pub(super) fn is_leave_in(&self) -> bool {
        self.reading.instrument == Instrument::LeaveIn
    }

    /// Whether it was read before another.
    pub(super) fn is_before(&self, other: &Self) -> bool {
        self.since_zero < other.since_zero
    }

    /// Whether it counts, a proof could rest on it alone, and the cook has not vouched for it yet.
    pub(super) fn is_hot(&self) -> bool {
        self.counts && could_prove(&self.reading) && !self.reading.vouched
    }

    /// ln of the likelihood where it is `z` standard deviations off, one being `spread`, K. A slip may
    /// show anything; a reading that the cook vouched for is none.
    pub(super) fn log_likelihood(&self, z: f64, spread: f64) -> f64 {
        let log_good = -0.5 * z * z;
        if self.slip == 0.0 {
            return log_good;
        }
        libm::log((1.0 - self.slip) * libm::exp(log_good) + self.slip_likelihood(spread))
    }

    /// The likelihood of this reading as a slip, on the scale of a good one's.
    fn slip_likelihood(&self, spread: f64) -> f64 {
        let tall = spread * libm::sqrt(2.0 * core::f64::consts::PI);
        self.slip * tall / prior::SLIP.1
    }

    /// The chance that it is a slip, the cells having these weights.
    pub(super) fn slip_chance_over(&self, weights: &[f64]) -> f64 {
        let cells = weights.iter().zip(&self.mean).filter(|(weight, _)| **weight > 0.0);
        let chance = |mean: f64| {
            let z = (self.reading.temperature.c() - mean) / self.spread;
            self.slip_chance(z, self.spread)
        };
        cells.map(|(weight, mean)| weight * chance(*mean)).sum()
    }

    /// The chance that it is a slip where it is `z` standard deviations off, one being `spread`, K.
    pub(super) fn slip_chance(&self, z: f64, spread: f64) -> f64 {
        if self.slip == 0.0 {
            return 0.0;
        }
        let slip = self.slip_likelihood(spread);
        slip / (slip + (1.0 - self.slip) * libm::exp(-0.5 * z * z))
    }
}
