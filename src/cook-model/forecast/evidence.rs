//! What each reading of a piece says of its speed and offset.

use super::cells;
use super::lateness::{Lateness, Told};
use super::prior;
use super::seat::Seat;
use super::sorted::{Misfit, Sorted};
use super::traces::{Spot, Traces};
use crate::heat::LidResponse;
use crate::history::{CoreReading, Instrument, LidOpening, PieceHistory, Tolerances};
use crate::quantity::{Moment, Temperature, to_seconds};

/// Half the span over which a rate of rise is taken, s.
const RATE_STEP: f64 = 120.0;
/// A reading bears an earlier one out that lets expect it within so many K, and so much of the rise
/// between them.
const BORNE_OUT: (f64, f64) = (1.7, 0.5);
/// A poke off the middle shows no more than about this much too high, K: a reading further below an
/// earlier one than that is of something else.
const HIGH_POKE: f64 = 15.0;
/// The chance that a reading is wrong which no wet meat in this pit can show.
const IMPOSSIBLE: f64 = 0.98;
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
    /// How the pit answers its lid.
    pub lid: LidResponse,
    /// What no core can be hotter than.
    pub hottest: Temperature,
    /// Readings sorted already.
    pub sorted: &'a Sorted,
}

impl Given<'_> {
    /// How much of a core is in doubt for what the start may have been, K, as a standard deviation: the
    /// part of the way to the pit's air that is still to go.
    fn start_doubt(&self, traces: &Traces, at: f64) -> f64 {
        let core = |at| traces.at(Spot::Core, (0.0, 0.0), at);
        let (raw, air) = (core(traces.on), self.hottest.c());
        prior::START * ((air - core(at)) / (air - raw).max(1.0)).clamp(0.0, 1.0)
    }

    /// How much of the time between two moments is in doubt for the lid having been opened, as a
    /// standard deviation; all in s.
    fn lid_doubt(&self, from: f64, to: f64) -> f64 {
        let between = self.openings.iter().filter(|opening| {
            let at = to_seconds(opening.at - self.zero);
            from <= at && at < to
        });
        let doubts =
            between.map(|opening| prior::LID_DOUBT * to_seconds(self.lid.costs(opening.lasted)));
        libm::sqrt(doubts.map(|doubt| doubt * doubt).sum())
    }
}

/// ln of the likelihood where a reading is `z` standard deviations off, one being `spread`, K, and the
/// chance of a slip before looking at it is given.
fn seen_log(slip: f64, z: f64, spread: f64) -> f64 {
    let log_good = -0.5 * z * z;
    if slip == 0.0 {
        return log_good;
    }
    libm::log((1.0 - slip) * libm::exp(log_good) + slip_likelihood(slip, spread))
}

/// The likelihood of a slip, on the scale of a good reading's.
fn slip_likelihood(slip: f64, spread: f64) -> f64 {
    slip * spread * libm::sqrt(2.0 * core::f64::consts::PI) / prior::SLIP.1
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
    /// How far it runs behind its trace.
    pub lateness: Lateness,
    /// A low reading taken for a slip that nothing since has contradicted: when, s since the clock's
    /// zero, and what it showed. A tip hardly reads too cold, so the window must hold what it says.
    pub doubted: Option<(f64, Temperature)>,
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
        let instrument = given.tolerances.instant_read.c() / TOLERANCE_SPREADS;
        let on = traces.on;
        let mut evidence = Self {
            log: vec![0.0; cells::COUNT],
            seen: Vec::with_capacity(piece.readings.len()),
            seat: None,
            poked: poked(piece, &counts),
            last: last.map(|reading| to_seconds(reading.at - zero)),
            lateness: Lateness::begin(on, instrument),
            doubted: None,
        };
        let off = piece.off().map(|off| to_seconds(off - zero));
        let mut before = on;
        for reading in &piece.readings {
            let at = to_seconds(reading.at - zero);
            let last = evidence.last.unwrap_or(at);
            let mut seen = Seen::of(reading, traces, given, at, last);
            seen.counts = counts(reading);
            if sorted.believed.contains(&reading.entry) {
                seen.slip = 0.0;
            }
            let passed = at.max(before).min(off.unwrap_or(f64::INFINITY).max(before));
            evidence.lateness.pass(passed, given.lid_doubt(before, passed));
            before = passed;
            evidence.take(&mut seen, traces, passed);
            evidence.doubted = Some((at, reading.temperature))
                .filter(|_| sorted.low.contains(&reading.entry) && evidence.can_show(reading));
            evidence.seen.push(seen);
        }
        evidence.add_leave_in(piece, traces, given);
        evidence
    }

    /// Whether a tip in the meat can show so little after the readings before it.
    fn can_show(&self, reading: &CoreReading) -> bool {
        let counted = self.seen.iter().filter(|seen| seen.counts);
        let most = counted.map(|seen| seen.reading.temperature.c()).fold(f64::MIN, f64::max);
        reading.temperature.c() > most - HIGH_POKE
    }

    /// Takes one reading in, the lateness having been carried to its time.
    fn take(&mut self, seen: &mut Seen, traces: &Traces, at: f64) {
        let celsius = seen.reading.temperature.c();
        let told = |spread| Told { rate: traces.rate(celsius, at), spread };
        if seen.reading.instrument == Instrument::LeaveIn {
            // What it says is in its seat's likelihood: it holds each cell to its trace.
            if seen.counts {
                self.lateness.take(&told(prior::HELD_BY_LEAVE_IN), |_| 0.0);
            }
            return;
        }
        let told = told(seen.spread);
        let raw = seen.mean.clone();
        let (by, spread) = self.lateness.foreseen(&told);
        seen.spread = spread;
        for (cell, (mean, log)) in seen.mean.iter_mut().zip(&mut self.log).enumerate() {
            *mean += by(cell);
            if seen.counts {
                *log += seen_log(seen.slip, (celsius - *mean) / spread, spread);
            }
        }
        drop(by);
        if seen.counts {
            self.lateness.take(&told, |cell| celsius - raw[cell]);
        }
    }

    /// The readings more likely slips than not, the cells having these weights.
    pub(super) fn misfits(&self, weights: &[f64], traces: &Traces, zero: Moment) -> Vec<Misfit> {
        let numbered = self.seen.iter().enumerate();
        numbered
            .filter(|(_, seen)| seen.slip_chance_over(weights) > LIKELY)
            .map(|(number, seen)| {
                let expected: f64 = weights.iter().zip(&seen.mean).map(|(w, mean)| w * mean).sum();
                let reading = &seen.reading;
                let low = reading.temperature.c() < expected;
                let borne_out = self.bears_out(number, traces, zero);
                Misfit { number, entry: reading.entry, at: reading.at, low, borne_out }
            })
            .collect()
    }

    /// Whether the next reading of the piece by the same instrument is where this one lets expect it.
    fn bears_out(&self, number: usize, traces: &Traces, zero: Moment) -> bool {
        let this = &self.seen[number].reading;
        let mut later = self.seen[number + 1..].iter().map(|seen| &seen.reading);
        let Some(next) = later.find(|next| next.instrument == this.instrument) else {
            return false;
        };
        let gone = to_seconds(next.at - this.at);
        let rises = gone * traces.rate(this.temperature.c(), to_seconds(this.at - zero));
        let off = (next.temperature - this.temperature).c() - rises;
        off.abs() < BORNE_OUT.0 + BORNE_OUT.1 * rises
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
        let (tolerance, depth) = match (reading.instrument, reading.places) {
            (Instrument::LeaveIn, _) => (tolerances.leave_in, (0.0, 0.0)),
            (Instrument::InstantRead, 0 | 1) => (tolerances.instant_read, prior::POKED_ONCE),
            (Instrument::InstantRead, _) => (tolerances.instant_read, prior::POKED),
        };
        let excess = (expected(Spot::Surface, at) - expected(Spot::Core, at)).max(0.0);
        let instrument = tolerance.c() / TOLERANCE_SPREADS;
        // An instrument's own error is the lateness filter's where the tip was poked in.
        let (own, misfit, drift, shift) = match reading.instrument {
            Instrument::InstantRead => (0.0, prior::MISFIT, given.start_doubt(traces, at), 0.0),
            Instrument::LeaveIn => {
                let (shift, drift) = prior::leave_in_before(before);
                let drift = libm::hypot(drift, rate * given.lid_doubt(at, last));
                (instrument, prior::MISFIT_LEAVE_IN, drift, shift)
            }
        };
        let parts = [own, misfit, depth.1 * excess, drift];
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
            slip: match (reading.temperature > given.hottest, reading.vouched) {
                (true, _) => IMPOSSIBLE,
                (false, true) => 0.0,
                (false, false) => prior::SLIP.0,
            },
            counts: true,
        }
    }

    /// ln of the likelihood where it is `z` standard deviations off, one being `spread`, K. A slip may
    /// show anything; a reading that the cook vouched for is none.
    pub(super) fn log_likelihood(&self, z: f64, spread: f64) -> f64 {
        seen_log(self.slip, z, spread)
    }

    /// The likelihood of this reading as a slip, on the scale of a good one's.
    fn slip_likelihood(&self, spread: f64) -> f64 {
        slip_likelihood(self.slip, spread)
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
