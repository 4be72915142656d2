//! What each reading of a piece says of its speed and offset.

use super::cells;
use super::lateness::{Expected, Lateness};
use super::prior;
use super::seat::Seat;
use super::shown::{Seen, TOLERANCE_SPREADS};
use super::sorted::{Misfit, Sorted};
use super::traces::Traces;
use crate::history::{CoreReading, Instrument, LidOpening, PieceHistory, Tolerances};
use crate::quantity::{Moment, to_seconds};

/// More likely than not.
const LIKELY: f64 = 0.5;

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
    /// How much of the time is in doubt for each opening of the lid: when it was, and a variance, both in s.
    pub(super) fn lid_doubts(&self) -> Vec<(f64, f64)> {
        let doubt = |opening: &LidOpening| {
            let (always, per_open) = prior::LID_COST;
            let cost = 60.0 * always + per_open * to_seconds(opening.lasted);
            let doubt = prior::LID_DOUBT * cost;
            (to_seconds(opening.at - self.zero), doubt * doubt)
        };
        self.openings.iter().map(doubt).collect()
    }

    /// Likewise between two moments, as a standard deviation, s.
    pub(super) fn lid_doubt(&self, from: f64, to: f64) -> f64 {
        let between = self.lid_doubts().into_iter().filter(|(at, _)| (from..to).contains(at));
        libm::sqrt(between.map(|(_, variance)| variance).sum())
    }
}

/// All that the readings of one piece say.
pub(super) struct Evidence {
    /// ln of the likelihood of every cell.
    pub log: Vec<f64>,
    /// The same by the leave-in alone.
    leave_in: Vec<f64>,
    /// What each single reading says, in order of time.
    pub seen: Vec<Seen>,
    /// How late the piece is beside its trace.
    pub late: Lateness,
    /// The placement the leave-in is in now, if it was read there.
    pub seat: Option<Seat>,
    /// Whether an instant-read was taken beside it since.
    pub poked: bool,
    /// When the piece was last read, s since the clock's zero.
    pub last: Option<f64>,
}

impl Evidence {
    /// What all readings say.
    pub(super) fn of(piece: &PieceHistory, traces: &Traces, given: &Given<'_>) -> Self {
        let Given { zero, sorted, .. } = *given;
        let counts = |reading: &CoreReading| !sorted.slips.contains(&reading.entry);
        let last = piece.readings.iter().rfind(|reading| counts(reading));
        let late = Lateness::new(&piece.spells, given);
        let mut evidence = Self {
            log: vec![0.0; cells::COUNT],
            leave_in: vec![0.0; cells::COUNT],
            seen: Vec::with_capacity(piece.readings.len()),
            seat: None,
            poked: poked(piece, &counts),
            last: last.map(|reading| to_seconds(reading.at - zero)),
            late,
        };
        for reading in &piece.readings {
            let last = evidence.last.unwrap_or_else(|| to_seconds(reading.at - zero));
            let mut seen = Seen::of(reading, traces, given, &evidence.late, last);
            seen.counts = counts(reading);
            if sorted.believed.contains(&reading.entry) {
                seen.slip = 0.0;
            }
            evidence.seen.push(seen);
        }
        evidence.follow();
        evidence.add_leave_in(piece, traces, given);
        evidence.follow();
        evidence
    }

    /// Follows the lateness from reading to reading.
    fn follow(&mut self) {
        let following = self.seen.iter().filter(|seen| seen.counts && seen.is_followed());
        let (late, log, expected) = self.late.by(following);
        self.log = sum(&log, &self.leave_in);
        let mut expected = expected.into_iter();
        for seen in self.seen.iter_mut().filter(|seen| seen.is_followed()) {
            let expected = if seen.counts { expected.next() } else { Some(late.expected(seen)) };
            if let Some(Expected { mean, spread }) = expected {
                (seen.mean, seen.spread) = (mean, spread);
            }
        }
        self.late = late;
    }

    /// The lateness, and ln of the likelihood of every cell, by some of the readings only.
    pub(super) fn by(&self, keep: impl Fn(&Seen) -> bool) -> (Lateness, Vec<f64>) {
        let kept = self.seen.iter().filter(|seen| seen.counts && seen.is_followed() && keep(seen));
        let (late, log, _) = self.late.by(kept);
        (late, sum(&log, &self.leave_in))
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

    /// Adds each placement of the leave-in, its unknown depth summed out. Of the newest the last reading
    /// holds the lateness.
    fn add_leave_in(&mut self, piece: &PieceHistory, traces: &Traces, given: &Given<'_>) {
        let instrument = given.tolerances.leave_in.c() / TOLERANCE_SPREADS;
        let placement =
            |at: Moment| piece.placements.iter().filter(|seated| **seated <= at).count();
        let newest = piece.placements.len();
        for number in 0..=newest {
            let mut of_it: Vec<&mut Seen> = self
                .seen
                .iter_mut()
                .filter(|seen| seen.counts && seen.is_leave_in())
                .filter(|seen| placement(seen.reading.at) == number)
                .collect();
            if of_it.is_empty() {
                continue;
            }
            let seat = Seat::of(&mut of_it, traces, &self.late, instrument);
            for (cell, log) in self.leave_in.iter_mut().enumerate() {
                *log += seat.log_sum(cell);
            }
            if number == newest {
                if let Some(last) = of_it.last_mut() {
                    last.hold_by(&seat, &self.late);
                }
                self.seat = Some(seat);
            }
        }
    }
}

fn sum(one: &[f64], other: &[f64]) -> Vec<f64> {
    one.iter().zip(other).map(|(one, other)| one + other).collect()
}

/// Whether an instant-read that counts was taken since the leave-in was last put in.
fn poked(piece: &PieceHistory, counts: &impl Fn(&CoreReading) -> bool) -> bool {
    let seated = piece.placements.iter().max();
    let since = |reading: &CoreReading| seated.is_none_or(|seated| *seated <= reading.at);
    let instant = |reading: &CoreReading| reading.instrument == Instrument::InstantRead;
    piece.readings.iter().any(|reading| instant(reading) && since(reading) && counts(reading))
}
