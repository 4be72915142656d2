//! What each reading of a piece says of its speed and offset.

use super::cells;
use super::prior;
use super::seat::Seat;
use super::sorted::{Misfit, Sorted};
use super::traces::{Spot, Traces};
use crate::history::{CoreReading, Instrument, LidOpening, PieceHistory, Tolerances};
use crate::quantity::{Moment, to_seconds};
use crate::safety::could_prove;

/// Half the span over which a rate of rise is taken, s.
const RATE_STEP: f64 = 120.0;
/// More likely than not.
const LIKELY: f64 = 0.5;
/// A maker's tolerance is taken as two standard deviations.
const TOLERANCE_SPREADS: f64 = 2.0;

/// What readings are held against, besides the traces of their piece.
pub(super) struct Given<'a> {
    /// Spans count from here.
    pub zero: Moment,
    pub tolerances: &'a Tolerances,
    pub openings: &'a [LidOpening],
    /// Readings sorted already.
    pub sorted: &'a Sorted,
}

impl Given<'_> {
    /// How much of the time between two moments is in doubt for the lid having been opened, as a
    /// standard deviation; all in s.
    fn lid_doubt(&self, from: f64, to: f64) -> f64 {
        let between = self.openings.iter().filter(|opening| {
            let at = to_seconds(opening.at - self.zero);
            from <= at && at < to
        });
        let doubts = between.map(|opening| {
            let (always, per_open) = prior::LID_COST;
            prior::LID_DOUBT * (60.0 * always + per_open * to_seconds(opening.lasted))
        });
        libm::sqrt(doubts.map(|doubt| doubt * doubt).sum())
    }
}

/// All that the readings of one piece say.
pub(super) struct Evidence {
    /// ln of the likelihood of every cell.
    pub log: Vec<f64>,
    /// What each single reading says, in order of time.
    pub seen: Vec<Seen>,
    /// The placement the leave-in is in now, if it was read there.
    pub seat: Option<Seat>,
    /// Whether an instant-read was taken beside it since.
    pub poked: bool,
    /// When the piece was last read, s since the clock's zero.
    pub last: Option<f64>,
}

/// One reading against every cell.
pub(super) struct Seen {
    pub reading: CoreReading,
    /// What the thermometer would show, C, by cell; for a leave-in, were it in the middle.
    pub mean: Vec<f64>,
    /// How far it may be off that, K.
    pub spread: f64,
    /// The part of it that a leave-in's readings of about the same time have in common, K.
    pub drift: f64,
    /// How much more it is expected to show than its trace, K.
    pub shift: f64,
    /// The chance that it is a slip, before looking at it.
    pub slip: f64,
    /// Whether the others let it count.
    pub counts: bool,
}

impl Evidence {
    /// What all readings say.
    pub(super) fn of(piece: &PieceHistory, traces: &Traces, given: &Given<'_>) -> Self {
        let Given { zero, sorted, .. } = *given;
        let counts = |reading: &CoreReading| !sorted.slips.contains(&reading.entry);
        let last = piece.readings.iter().rfind(|reading| counts(reading));
        let mut evidence = Self {
            log: vec![0.0; cells::COUNT],
            seen: Vec::with_capacity(piece.readings.len()),
            seat: None,
            poked: poked(piece, &counts),
            last: last.map(|reading| to_seconds(reading.at - zero)),
        };
        for reading in &piece.readings {
            let at = to_seconds(reading.at - zero);
            let last = evidence.last.unwrap_or(at);
            let mut seen = Seen::of(reading, traces, given, at, last);
            seen.counts = counts(reading);
            if sorted.believed.contains(&reading.entry) {
                seen.slip = 0.0;
            }
            if seen.counts && reading.instrument == Instrument::InstantRead {
                for (log, mean) in evidence.log.iter_mut().zip(&seen.mean) {
                    *log += seen.log_at(*mean);
                }
            }
            evidence.seen.push(seen);
        }
        evidence.add_leave_in(piece, traces, given);
        evidence
    }

    /// ln of the likelihood of every cell by all but some of the hot readings.
    pub(super) fn log_but(&self, leave_out: impl Fn(&Seen) -> bool) -> Vec<f64> {
        let mut log = self.log.clone();
        for seen in self.seen.iter().filter(|seen| seen.is_hot() && leave_out(seen)) {
            log.iter_mut().zip(&seen.mean).for_each(|(log, mean)| *log -= seen.log_at(*mean));
        }
        log
    }

    /// The readings more likely slips than not, the cells having these weights.
    pub(super) fn misfits(&self, weights: &[f64]) -> Vec<Misfit> {
        let numbered = self.seen.iter().enumerate();
        numbered
            .filter(|(_, seen)| seen.slip_chance_over(weights) > LIKELY)
            .map(|(number, seen)| {
                let expected: f64 = weights.iter().zip(&seen.mean).map(|(w, mean)| w * mean).sum();
                let reading = &seen.reading;
                let low = reading.temperature.c() < expected;
                Misfit { number, entry: reading.entry, at: reading.at, low }
            })
            .collect()
    }

    /// Adds each placement of the leave-in, its unknown depth summed out.
    fn add_leave_in(&mut self, piece: &PieceHistory, traces: &Traces, given: &Given<'_>) {
        let instrument = given.tolerances.leave_in.c() / TOLERANCE_SPREADS;
        let placement =
            |at: Moment| piece.placements.iter().filter(|seated| **seated <= at).count();
        let newest = piece.placements.len();
        for number in 0..=newest {
            let mut of_it: Vec<&mut Seen> = self
                .seen
                .iter_mut()
                .filter(|seen| seen.counts && seen.reading.instrument == Instrument::LeaveIn)
                .filter(|seen| placement(seen.reading.at) == number)
                .collect();
            if of_it.is_empty() {
                continue;
            }
            let seat = Seat::of(&mut of_it, traces, given.zero, instrument);
            for (cell, log) in self.log.iter_mut().enumerate() {
                *log += seat.log_sum(cell);
            }
            if number == newest {
                self.seat = Some(seat);
            }
        }
    }
}

/// Whether an instant-read that counts was taken since the leave-in was last put in.
fn poked(piece: &PieceHistory, counts: &impl Fn(&CoreReading) -> bool) -> bool {
    let seated = piece.placements.iter().max();
    let since = |reading: &CoreReading| seated.is_none_or(|seated| *seated <= reading.at);
    let instant = |reading: &CoreReading| reading.instrument == Instrument::InstantRead;
    piece.readings.iter().any(|reading| instant(reading) && since(reading) && counts(reading))
}

impl Seen {
    fn of(reading: &CoreReading, traces: &Traces, given: &Given<'_>, at: f64, last: f64) -> Self {
        let tolerances = given.tolerances;
        let expected = |spot, at| traces.at(spot, (0.0, 0.0), at);
        let rise = expected(Spot::Core, at + RATE_STEP) - expected(Spot::Core, at - RATE_STEP);
        let rate = rise.abs() / (2.0 * RATE_STEP);
        let before = (last - at).max(0.0);
        let lid = rate * given.lid_doubt(at, last);
        let (tolerance, depth) = match (reading.instrument, reading.places) {
            (Instrument::LeaveIn, _) => (tolerances.leave_in, (0.0, 0.0)),
            (Instrument::InstantRead, 0 | 1) => (tolerances.instant_read, prior::POKED_ONCE),
            (Instrument::InstantRead, _) => (tolerances.instant_read, prior::POKED),
        };
        let excess = (expected(Spot::Surface, at) - expected(Spot::Core, at)).max(0.0);
        let instrument = tolerance.c() / TOLERANCE_SPREADS;
        let (misfit, drift, shift) = match reading.instrument {
            Instrument::InstantRead => (prior::MISFIT, prior::DRIFT * rate * before, 0.0),
            Instrument::LeaveIn => {
                let (shift, drift) = prior::leave_in_before(before);
                (prior::MISFIT_LEAVE_IN, drift, shift)
            }
        };
        let drift = libm::hypot(drift, lid);
        let parts = [instrument, misfit, depth.1 * excess, drift];
        let mut mean = traces.all_cells(Spot::Core, at);
        for mean in &mut mean {
            *mean += depth.0 * excess + shift;
        }
        Self {
            reading: *reading,
            mean,
            spread: libm::sqrt(parts.iter().map(|part| part * part).sum()),
            drift,
            shift,
            slip: if reading.vouched { 0.0 } else { prior::SLIP.0 },
            counts: true,
        }
    }

    /// ln of the likelihood of a poke where the thermometer would show `mean`.
    pub(super) fn log_at(&self, mean: f64) -> f64 {
        let z = (self.reading.temperature.c() - mean) / self.spread;
        self.log_likelihood(z, self.spread)
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
        cells.map(|(weight, mean)| weight * self.slip_chance(*mean)).sum()
    }

    /// The chance that it is a slip where the thermometer would show `mean`.
    fn slip_chance(&self, mean: f64) -> f64 {
        if self.slip == 0.0 {
            return 0.0;
        }
        let z = (self.reading.temperature.c() - mean) / self.spread;
        let slip = self.slip_likelihood(self.spread);
        slip / (slip + (1.0 - self.slip) * libm::exp(-0.5 * z * z))
    }
}
