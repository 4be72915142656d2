//! What each reading of a piece says of its speed and offset.

use super::cells;
use super::prior;
use super::sorted::{Misfit, Sorted};
use super::traces::{Spot, Traces};
use crate::history::{CoreReading, Instrument, LidOpening, PieceHistory, Tolerances};
use crate::quantity::{Length, Moment, to_seconds};

/// Places looked at for a leave-in, as shares of the half-thickness.
const DEPTHS: [f64; 9] = [0.0, 0.12, 0.24, 0.36, 0.48, 0.6, 0.72, 0.84, 0.96];
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
    /// The chance that it is a slip, before looking at it.
    pub slip: f64,
    /// Whether the others let it count.
    pub counts: bool,
}

/// What the readings of one placement say of where the tip is.
pub(super) struct Seat {
    /// Distances off the middle.
    pub depths: Vec<Length>,
    /// By depth: ln of prior times likelihood of every cell.
    pub logs: Vec<Vec<f64>>,
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
                    *log += seen.log_likelihood(*mean);
                }
            }
            evidence.seen.push(seen);
        }
        evidence.add_leave_in(piece, traces, zero);
        evidence
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
    fn add_leave_in(&mut self, piece: &PieceHistory, traces: &Traces, zero: Moment) {
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
            let seat = Seat::of(&mut of_it, traces, zero);
            for (cell, log) in self.log.iter_mut().enumerate() {
                *log += seat.log_sum(cell);
            }
            if number == newest {
                self.seat = Some(seat);
            }
        }
    }
}

impl Seen {
    fn of(reading: &CoreReading, traces: &Traces, given: &Given<'_>, at: f64, last: f64) -> Self {
        let tolerances = given.tolerances;
        let expected = |spot, at| traces.at(spot, (0.0, 0.0), at);
        let rise = expected(Spot::Core, at + RATE_STEP) - expected(Spot::Core, at - RATE_STEP);
        let rate = rise.abs() / (2.0 * RATE_STEP);
        let drift = prior::DRIFT * rate * (last - at).max(0.0);
        let lid = rate * given.lid_doubt(at, last);
        let (tolerance, depth) = match (reading.instrument, reading.places) {
            (Instrument::LeaveIn, _) => (tolerances.leave_in, (0.0, 0.0)),
            (Instrument::InstantRead, 0 | 1) => (tolerances.instant_read, prior::POKED_ONCE),
            (Instrument::InstantRead, _) => (tolerances.instant_read, prior::POKED),
        };
        let excess = (expected(Spot::Surface, at) - expected(Spot::Core, at)).max(0.0);
        let instrument = tolerance.c() / TOLERANCE_SPREADS;
        let (misfit, drifts) = match reading.instrument {
            Instrument::InstantRead => (prior::MISFIT, 1.0),
            Instrument::LeaveIn => (prior::MISFIT_LEAVE_IN, prior::DRIFT_LEAVE_IN),
        };
        let parts = [instrument, misfit, depth.1 * excess, drifts * drift, drifts * lid];
        let mut mean = traces.all_cells(Spot::Core, at);
        for mean in &mut mean {
            *mean += depth.0 * excess;
        }
        Self {
            reading: *reading,
            mean,
            spread: libm::sqrt(parts.iter().map(|part| part * part).sum()),
            slip: if reading.vouched { 0.0 } else { prior::SLIP.0 },
            counts: true,
        }
    }

    /// ln of the likelihood where the thermometer would show `mean`. A slip may show anything; a
    /// reading that the cook vouched for is none.
    fn log_likelihood(&self, mean: f64) -> f64 {
        let z = (self.reading.temperature.c() - mean) / self.spread;
        let log_good = -0.5 * z * z;
        if self.slip == 0.0 {
            return log_good;
        }
        libm::log((1.0 - self.slip) * libm::exp(log_good) + self.slip_likelihood())
    }

    /// The likelihood of this reading as a slip, on the scale of a good one's.
    fn slip_likelihood(&self) -> f64 {
        let tall = self.spread * libm::sqrt(2.0 * core::f64::consts::PI);
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
        let slip = self.slip_likelihood();
        slip / (slip + (1.0 - self.slip) * libm::exp(-0.5 * z * z))
    }
}

impl Seat {
    /// Learns where the tip is, and tells the readings what it would show there.
    fn of(readings: &mut [&mut Seen], traces: &Traces, zero: Moment) -> Self {
        let half = traces.body.half_thickness();
        let depths: Vec<Length> = DEPTHS.iter().map(|share| half * *share).collect();
        let shows = |seen: &Seen, depth: &Length| {
            traces.all_cells(Spot::Off(*depth), to_seconds(seen.reading.at - zero))
        };
        // By reading, then depth, then cell.
        let means: Vec<Vec<Vec<f64>>> = readings
            .iter()
            .map(|seen| depths.iter().map(|depth| shows(seen, depth)).collect())
            .collect();
        let mut logs: Vec<Vec<f64>> =
            log_prior(&depths).into_iter().map(|log| vec![log; cells::COUNT]).collect();
        for (seen, by_depth) in readings.iter().zip(&means) {
            for (logs, means) in logs.iter_mut().zip(by_depth) {
                for (log, mean) in logs.iter_mut().zip(means) {
                    *log += seen.log_likelihood(*mean);
                }
            }
        }
        let seat = Self { depths, logs };
        for cell in 0..cells::COUNT {
            let sum = seat.log_sum(cell);
            for (seen, by_depth) in readings.iter_mut().zip(&means) {
                let at_depths = seat.logs.iter().zip(by_depth);
                seen.mean[cell] =
                    at_depths.map(|(log, mean)| libm::exp(log[cell] - sum) * mean[cell]).sum();
            }
        }
        seat
    }

    /// ln of the likelihood of a cell, the depth summed out.
    fn log_sum(&self, cell: usize) -> f64 {
        let most = self.logs.iter().map(|log| log[cell]).fold(f64::NEG_INFINITY, f64::max);
        let sum: f64 = self.logs.iter().map(|log| libm::exp(log[cell] - most)).sum();
        most + libm::log(sum)
    }

    /// The chance of each depth, given the weights of the cells.
    pub(super) fn chances(&self, weights: &[f64]) -> Vec<f64> {
        let mut chances = vec![0.0; self.depths.len()];
        for (cell, weight) in weights.iter().enumerate().filter(|(_, weight)| **weight > 0.0) {
            let sum = self.log_sum(cell);
            for (chance, log) in chances.iter_mut().zip(&self.logs) {
                *chance += weight * libm::exp(log[cell] - sum);
            }
        }
        chances
    }
}

/// ln of the chance of each depth before any reading: in the middle give or take a little, or,
/// if it missed, anywhere.
fn log_prior(depths: &[Length]) -> Vec<f64> {
    let near: Vec<f64> = depths
        .iter()
        .map(|depth| {
            let z = depth.mm() / prior::SEATED_MM;
            libm::exp(-0.5 * z * z)
        })
        .collect();
    let all_near: f64 = near.iter().sum();
    let anywhere = prior::MISSED / depths.len() as f64;
    near.iter().map(|near| libm::log((1.0 - prior::MISSED) * near / all_near + anywhere)).collect()
}
