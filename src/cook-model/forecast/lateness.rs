//! How late a piece is beside its trace: the model's own error, as a process in time.
//!
//! No trace is the meat: a surface dries otherwise, a fire wanders unseen, and so a piece falls behind or
//! gets ahead at a pace that stays for a while and then gives way to another. The pace is a stationary
//! process that forgets (Ornstein & Uhlenbeck, 1930); the lateness is its sum over the time on the pit.
//! Each reading tells of it, so that one fixes where the piece is and two how fast it goes (Kalman, 1960).
//! The filter's doubt is the same for all cells, its means are each cell's own.

use super::cells;
use super::evidence::Given;
use super::prior;
use super::shown::Seen;
use crate::history::Spell;
use crate::quantity::{Moment, to_seconds};

/// Lateness, s, and pace, as they stand for one cell.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Mean {
    late: f64,
    pace: f64,
}

/// Variances of lateness and pace, and their covariance.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Doubt {
    late: f64,
    both: f64,
    pace: f64,
}

/// As it stands at one moment.
#[derive(Clone)]
struct Knot {
    /// s since the clock's zero.
    at: f64,
    means: Vec<Mean>,
    doubt: Doubt,
}

/// What a thermometer is expected to show, C by cell, and how far it may be off that, K.
pub(super) struct Expected {
    pub mean: Vec<f64>,
    pub spread: f64,
}

/// The lateness of one piece over time, by cell.
pub(super) struct Lateness {
    stays: Stays,
    /// What an opened lid adds to the doubt: when, and as a variance.
    lids: Vec<(f64, f64)>,
    /// As it went on, and after each reading that counts.
    knots: Vec<Knot>,
}

impl Lateness {
    /// Before any reading.
    pub(super) fn new(spells: &[Spell], given: &Given<'_>) -> Self {
        let stays = Stays::of(spells, given.zero);
        let begun = Knot {
            at: stays.0.first().map_or(0.0, |(on, _)| *on),
            means: vec![Mean::default(); cells::COUNT],
            doubt: Doubt { late: 0.0, both: 0.0, pace: prior::PACE.0 * prior::PACE.0 },
        };
        Self { stays, lids: given.lid_doubts(), knots: vec![begun] }
    }

    /// The same piece, had only these readings been taken, in order of time; the ln of the likelihood of
    /// every cell by them; and what each was expected to show.
    pub(super) fn by<'a>(
        &self,
        readings: impl Iterator<Item = &'a Seen>,
    ) -> (Self, Vec<f64>, Vec<Expected>) {
        let (stays, lids) = (self.stays.clone(), self.lids.clone());
        let mut late = Self { stays, lids, knots: self.knots[..1].to_vec() };
        let mut log = vec![0.0; cells::COUNT];
        let expected = readings.map(|seen| late.learn(seen, &mut log)).collect();
        (late, log, expected)
    }

    /// What a reading is expected to show by those before it.
    pub(super) fn expected(&self, seen: &Seen) -> Expected {
        let variance = self.variance(seen.since_zero);
        let rows = seen.on_trace.iter().zip(&seen.slopes).zip(self.lates(seen.since_zero));
        let mean = rows.map(|((on_trace, slope), late)| on_trace - slope * late).collect();
        let spread = libm::sqrt(seen.noise * seen.noise + seen.slope * seen.slope * variance);
        Expected { mean, spread }
    }

    /// Learns from a reading, and says what it was expected to show.
    fn learn(&mut self, seen: &Seen, log: &mut [f64]) -> Expected {
        let at = seen.since_zero;
        let expected = self.expected(seen);
        let doubt = self.doubt(at);
        let variance = expected.spread * expected.spread;
        let gain = (-seen.slope * doubt.late / variance, -seen.slope * doubt.both / variance);
        let means = self.means(at).into_iter().enumerate().map(|(cell, Mean { late, pace })| {
            let z = (seen.reading.temperature.c() - expected.mean[cell]) / expected.spread;
            if !seen.is_leave_in() {
                log[cell] += seen.log_likelihood(z, expected.spread);
            }
            let moves = z * expected.spread * (1.0 - seen.slip_chance(z, expected.spread));
            Mean { late: late + gain.0 * moves, pace: pace + gain.1 * moves }
        });
        let means = means.collect();
        let doubt = Doubt {
            late: doubt.late + gain.0 * seen.slope * doubt.late,
            both: doubt.both + gain.0 * seen.slope * doubt.both,
            pace: doubt.pace + gain.1 * seen.slope * doubt.both,
        };
        self.knots.push(Knot { at, means, doubt });
        expected
    }

    /// How late each cell is at a moment, s.
    pub(super) fn lates(&self, at: f64) -> Vec<f64> {
        self.means(at).into_iter().map(|mean| mean.late).collect()
    }

    /// How late one cell is at a moment, s.
    pub(super) fn late(&self, cell: usize, at: f64) -> f64 {
        self.way(at).of(cell).late
    }

    /// How many times as fast as its trace at the same height each cell is heated at a moment.
    pub(super) fn paces(&self, at: f64) -> Vec<f64> {
        self.means(at).into_iter().map(|mean| 1.0 - mean.pace).collect()
    }

    /// The same of one cell.
    pub(super) fn pace(&self, cell: usize, at: f64) -> f64 {
        1.0 - self.way(at).of(cell).pace
    }

    fn means(&self, at: f64) -> Vec<Mean> {
        let way = self.way(at);
        (0..cells::COUNT).map(|cell| way.of(cell)).collect()
    }

    /// The way to a moment from the knot before it.
    fn way(&self, at: f64) -> Way<'_> {
        let (before, after) = self.around(at);
        let Some(after) = after else {
            let left = libm::exp(-self.stays.between(before.at, at) / prior::PACE.1);
            return Way::On { before, left };
        };
        let share = (at - before.at).max(0.0) / (after.at - before.at).max(1.0);
        Way::Between { before, after, share: share.min(1.0) }
    }

    /// The variance of the lateness at a moment, s2.
    pub(super) fn variance(&self, at: f64) -> f64 {
        self.doubt(at).late
    }

    fn doubt(&self, at: f64) -> Doubt {
        let (before, after) = self.around(at);
        if let Some(after) = after {
            return Doubt { late: before.doubt.late.max(after.doubt.late), ..before.doubt };
        }
        let lids = self.lids.iter().filter(|(opened, _)| (before.at..at).contains(opened));
        let lids: f64 = lids.map(|(_, variance)| variance).sum();
        let grown = before.doubt.after(self.stays.between(before.at, at));
        Doubt { late: grown.late + lids, ..grown }
    }

    /// The knots before and after a moment.
    fn around(&self, at: f64) -> (&Knot, Option<&Knot>) {
        let next = self.knots.partition_point(|knot| knot.at <= at);
        (&self.knots[next.saturating_sub(1)], self.knots.get(next.max(1)))
    }

    /// When a cell gets where its trace gets at a time, s.
    pub(super) fn arrives(&self, cell: usize, on_trace: f64) -> f64 {
        if self.knots.len() == 1 {
            return on_trace;
        }
        // The pace is well below one, so that each turn brings it nearer.
        (0..TURNS).fold(on_trace, |at, _| on_trace + self.late(cell, at))
    }

    /// The last moment up to one at which the piece was on the pit, s; the moment itself before that.
    pub(super) fn last_on(&self, at: f64) -> f64 {
        self.stays.last_on(at)
    }

    /// Whether the piece is on the pit at a moment; before it went on too.
    pub(super) fn is_on(&self, at: f64) -> bool {
        self.last_on(at) >= at
    }
}

/// Turns until an arrival stands to the second.
const TURNS: usize = 6;

/// From a knot to a moment: straight to the next, or on by the pace, of which a part is left then.
enum Way<'a> {
    Between { before: &'a Knot, after: &'a Knot, share: f64 },
    On { before: &'a Knot, left: f64 },
}

impl Way<'_> {
    fn of(&self, cell: usize) -> Mean {
        match *self {
            Self::Between { before, after, share } => {
                let (from, to) = (before.means[cell], after.means[cell]);
                Mean { late: from.late + share * (to.late - from.late), pace: from.pace }
            }
            Self::On { before, left } => {
                let Mean { late, pace } = before.means[cell];
                Mean { late: late + pace * prior::PACE.1 * (1.0 - left), pace: left * pace }
            }
        }
    }
}

impl Doubt {
    /// So many s on the pit later: what is left of it, and what the process adds.
    fn after(self, seconds: f64) -> Self {
        let (sigma, time) = prior::PACE;
        let left = libm::exp(-seconds / time);
        let (gone, variance) = (1.0 - left, sigma * sigma);
        let reach = time * gone;
        let added = time * time * (2.0 * seconds / time - 3.0 + 4.0 * left - left * left);
        Self {
            late: self.late
                + 2.0 * reach * self.both
                + reach * reach * self.pace
                + variance * added,
            both: left * (self.both + reach * self.pace) + variance * time * gone * gone,
            pace: left * left * self.pace + variance * (1.0 - left * left),
        }
    }
}

/// How far off a time so many s of cooking ahead is, where a reading has just told all but the pace, as a
/// standard deviation, s.
pub(super) fn grows(seconds: f64) -> f64 {
    let known = Doubt { late: 0.0, both: 0.0, pace: prior::PACE.0 * prior::PACE.0 };
    libm::sqrt(known.after(seconds.max(0.0)).late)
}

/// The piece's stays on the pit, from and to, s since the clock's zero.
#[derive(Clone)]
struct Stays(Vec<(f64, f64)>);

impl Stays {
    fn of(spells: &[Spell], zero: Moment) -> Self {
        let since = |at: Moment| to_seconds(at - zero);
        let stay = |spell: &Spell| (since(spell.on), spell.off.map_or(f64::INFINITY, since));
        Self(spells.iter().map(stay).collect())
    }

    /// How much of the time between two moments it was on; all of it for one that did not go on yet.
    fn between(&self, from: f64, to: f64) -> f64 {
        if self.0.is_empty() {
            return (to - from).max(0.0);
        }
        self.0.iter().map(|(on, off)| (to.min(*off) - from.max(*on)).max(0.0)).sum()
    }

    fn last_on(&self, at: f64) -> f64 {
        let off = self.0.iter().rfind(|(on, _)| *on <= at).map_or(at, |(_, off)| *off);
        at.min(off)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_doubt_grows_as_the_process_does() {
        // Uhlenbeck & Ornstein 1930: the variance of the way of a particle at rest in the mean,
        // 2 s2 T2 (t/T - 1 + exp(-t/T)).
        let (sigma, time) = prior::PACE;
        for at in [60.0, 600.0, 3600.0] {
            let share: f64 = at / time;
            let way = 2.0 * sigma * sigma * time * time * (share - 1.0 + libm::exp(-share));
            assert!((grows(at) / way.sqrt() - 1.0).abs() < 1e-9, "{at} s");
        }
        // In two steps as in one.
        let known = Doubt { late: 100.0, both: 3.0, pace: 0.03 };
        let (once, twice) = (known.after(900.0), known.after(300.0).after(600.0));
        assert!((once.late - twice.late).abs() < 1e-6 && (once.both - twice.both).abs() < 1e-9);
    }

    #[test]
    fn at_rest_it_stands_still() {
        let stays = Stays(vec![(0.0, 1000.0), (1600.0, f64::INFINITY)]);
        assert!((stays.between(900.0, 1700.0) - 200.0).abs() < 1e-9);
        assert!((stays.last_on(1200.0) - 1000.0).abs() < 1e-9);
        assert!((stays.last_on(1700.0) - 1700.0).abs() < 1e-9);
    }
}
