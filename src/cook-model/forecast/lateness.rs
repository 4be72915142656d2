//! How far a piece runs behind its trace: what the model misses, as a process of its own.
//!
//! Lateness `w`, s, grows with the error of the piece's pace `v`, which comes and goes (Ornstein &
//! Uhlenbeck 1930): dw = v dt, dv = -v dt / T + noise. An instant-read shows the trace less `w` times
//! its rate, plus the thermometer's own error `b`. All three are filtered out (Kalman 1960) reading by
//! reading for every cell, so that one reading fixes the level and two the slope; the filter itself is
//! the same for all cells, and its doubt grows with the time since the last reading.

use super::{cells, prior};

/// Lateness, pace, and the thermometer's own error.
type Three = [f64; 3];

/// A reading further off than this, in standard deviations, moves the filter no more than one this far
/// off: it is likely to be a slip.
const MOVES: f64 = 3.0;

/// What is known of a piece's lateness.
pub(super) struct Lateness {
    /// When it began to heat, and up to when readings were taken in; s since the clock's zero.
    on: f64,
    last: f64,
    /// Of the three, alike in all cells.
    covariance: [Three; 3],
    /// By cell.
    means: Vec<Three>,
}

/// What one reading is to the filter.
pub(super) struct Told {
    /// How fast the core rises there, K/s.
    pub rate: f64,
    /// How far the reading may be off the core besides, K.
    pub spread: f64,
}

impl Lateness {
    /// Of a piece that began to heat at a time, s; its thermometer's own error has a standard
    /// deviation, K.
    pub(super) fn begin(on: f64, instrument: f64) -> Self {
        let square = |x: f64| x * x;
        let covariance = [
            [square(prior::BEGINS_LATE), 0.0, 0.0],
            [0.0, square(prior::PACE), 0.0],
            [0.0, 0.0, square(instrument)],
        ];
        Self { on, last: on, covariance, means: vec![[0.0; 3]; cells::COUNT] }
    }

    /// Lets time pass until a moment, s; openings of the lid meanwhile put the lateness in doubt by so
    /// many s more.
    pub(super) fn pass(&mut self, until: f64, lid: f64) {
        let span = (until - self.last).max(0.0);
        let (ahead, kept) = grown(span);
        for mean in &mut self.means {
            mean[0] += ahead * mean[1];
            mean[1] *= kept;
        }
        self.covariance = carried(&self.covariance, span);
        self.covariance[0][0] += lid * lid;
        self.last = self.last.max(until);
    }

    /// How a reading is foreseen: by how much it is expected to differ from each cell's trace, K, and
    /// the standard deviation of that.
    pub(super) fn foreseen(&self, told: &Told) -> (impl Fn(usize) -> f64 + '_, f64) {
        let rate = told.rate;
        let by = move |cell: usize| self.means[cell][2] - rate * self.means[cell][0];
        (by, libm::sqrt(self.variance(told)))
    }

    fn variance(&self, told: &Told) -> f64 {
        let shown = self.shown(told.rate);
        shown[2] - told.rate * shown[0] + told.spread * told.spread
    }

    /// Covariances of the three with what a thermometer shows.
    fn shown(&self, rate: f64) -> Three {
        self.covariance.map(|row| row[2] - rate * row[0])
    }

    /// Takes a reading in that is so many K off each cell's trace.
    pub(super) fn take(&mut self, told: &Told, off: impl Fn(usize) -> f64) {
        let variance = self.variance(told);
        let shown = self.shown(told.rate);
        let spread = libm::sqrt(variance);
        for (cell, mean) in self.means.iter_mut().enumerate() {
            let surprise = off(cell) - (mean[2] - told.rate * mean[0]);
            let moves = (surprise / spread).clamp(-MOVES, MOVES) * spread / variance;
            for (mean, shown) in mean.iter_mut().zip(shown) {
                *mean += shown * moves;
            }
        }
        for (row, own) in self.covariance.iter_mut().zip(shown) {
            for (entry, other) in row.iter_mut().zip(shown) {
                *entry -= own * other / variance;
            }
        }
    }

    /// How late a cell is at a time, s: as foreseen after the last reading, in proportion before it.
    pub(super) fn of(&self, cell: usize, at: f64) -> f64 {
        let [late, pace, _] = self.means[cell];
        if at < self.last {
            return late * ((at - self.on) / (self.last - self.on)).max(0.0);
        }
        late + pace * grown(at - self.last).0
    }

    /// How late a cell was at the last reading, s.
    pub(super) fn now(&self, cell: usize) -> f64 {
        self.means[cell][0]
    }

    /// The standard deviation of lateness at a time, s.
    pub(super) fn spread(&self, at: f64) -> f64 {
        let covariance = carried(&self.covariance, (at - self.last).max(0.0));
        libm::sqrt(covariance[0][0].max(0.0))
    }
}

/// How much lateness a unit of pace brings in a span, s, and what is left of it.
fn grown(span: f64) -> (f64, f64) {
    let kept = libm::exp(-span / prior::PACE_LASTS);
    (prior::PACE_LASTS * (1.0 - kept), kept)
}

/// The covariance after a span, s.
fn carried(covariance: &[Three; 3], span: f64) -> [Three; 3] {
    let (ahead, kept) = grown(span);
    let [[ww, wv, wb], [_, vv, vb], [_, _, bb]] = *covariance;
    let (time, size) = (prior::PACE_LASTS, prior::PACE * prior::PACE);
    let lost = 1.0 - kept;
    let new_vv = size * (1.0 - kept * kept);
    let new_wv = size * time * lost * lost;
    let new_ww = size * time * time * (2.0 * span / time - 3.0 + 4.0 * kept - kept * kept);
    let ww = ww + 2.0 * ahead * wv + ahead * ahead * vv + new_ww.max(0.0);
    let wv = kept * (wv + ahead * vv) + new_wv;
    let wb = wb + ahead * vb;
    let (vv, vb) = (kept * kept * vv + new_vv, kept * vb);
    [[ww, wv, wb], [wv, vv, vb], [wb, vb, bb]]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_readings_doubt_grows_as_an_integrated_process_does() {
        // The variance of the integral of the process from its stationary law: 2 s2 T2 (t/T - 1 +
        // exp(-t/T)) (any textbook of stochastic processes).
        let lateness = Lateness::begin(0.0, 0.5);
        for minutes in [1.0, 10.0, 60.0] {
            let turns = 60.0 * minutes / prior::PACE_LASTS;
            let exact = 2.0 * (turns - 1.0 + libm::exp(-turns));
            let begun = prior::BEGINS_LATE * prior::BEGINS_LATE;
            let size = prior::PACE * prior::PACE_LASTS;
            let spread = lateness.spread(60.0 * minutes);
            let whole = libm::sqrt(begun + size * size * exact);
            assert!((spread / whole - 1.0).abs() < 1e-9, "{minutes} min: {spread} for {whole}");
        }
    }

    #[test]
    fn one_reading_fixes_the_level_and_two_the_slope() {
        let told = Told { rate: 0.02, spread: 0.1 };
        let mut lateness = Lateness::begin(0.0, 0.1);
        let before = lateness.spread(4500.0);
        lateness.pass(3000.0, 0.0);
        // Four minutes late: 4.8 K cold.
        lateness.take(&told, |_| -4.8);
        let one = lateness.spread(4500.0);
        assert!((lateness.of(0, 3000.0) - 240.0).abs() < 20.0);
        lateness.pass(3780.0, 0.0);
        lateness.take(&told, |_| -7.2);
        let two = lateness.spread(4500.0);
        assert!((lateness.of(0, 3780.0) - 360.0).abs() < 20.0);
        // It goes on falling behind.
        assert!(lateness.of(0, 4500.0) > 380.0);
        assert!(two < 0.7 * one && one < 0.7 * before, "{two} {one} {before}");
    }
}
