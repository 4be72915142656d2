//! Where the leave-in's tip is, from all that it showed in one placement.
//!
//! Its readings err alike: the instrument by the same amount in all of them, the model by nearly the
//! same in two that are close in time. What is left beside that, the shape of the curve over time,
//! tells a tip off the middle: it warms far ahead of the core at first. So the common error (a
//! constant) and the model's (a decaying random walk) are filtered out (Kalman, 1960), reading by
//! reading, for every cell and depth; the filter itself is the same for all of them.

use super::cells;
use super::evidence::Seen;
use super::prior;
use super::traces::{Spot, Traces};
use crate::quantity::{Length, Moment, to_seconds};

/// Places looked at for a leave-in, as shares of the half-thickness.
const DEPTHS: [f64; 9] = [0.0, 0.12, 0.24, 0.36, 0.48, 0.6, 0.72, 0.84, 0.96];
/// A reading further off than this, in standard deviations, moves the filter no more than one this
/// far off: it is likely to be a slip.
const MOVES: f64 = 3.5;

/// What the readings of one placement say of where the tip is.
pub(super) struct Seat {
    /// Distances off the middle.
    pub depths: Vec<Length>,
    /// By depth: ln of prior times likelihood of every cell.
    logs: Vec<Vec<f64>>,
}

impl Seat {
    /// Learns where the tip is, and tells the readings, which are in order of time, what it would show
    /// there. `instrument` is the thermometer's own standard deviation, K.
    pub(super) fn of(
        readings: &mut [&mut Seen],
        traces: &Traces,
        zero: Moment,
        instrument: f64,
    ) -> Self {
        let half = traces.body.half_thickness();
        let depths: Vec<Length> = DEPTHS.iter().map(|share| half * *share).collect();
        let shows = |seen: &Seen, depth: &Length| {
            let mut means = traces.all_cells(Spot::Off(*depth), to_seconds(seen.reading.at - zero));
            means.iter_mut().for_each(|mean| *mean += seen.shift);
            means
        };
        // By depth, then reading, then cell.
        let means: Vec<Vec<Vec<f64>>> = depths
            .iter()
            .map(|depth| readings.iter().map(|seen| shows(seen, depth)).collect())
            .collect();
        let filter = filter(readings, instrument);
        let logs = log_prior(&depths)
            .into_iter()
            .zip(&means)
            .map(|(prior, means)| {
                let log = |cell| prior + log_likelihood(&filter, readings, means, cell);
                (0..cells::COUNT).map(log).collect()
            })
            .collect();
        let seat = Self { depths, logs };
        for cell in 0..cells::COUNT {
            let sum = seat.log_sum(cell);
            let chances: Vec<f64> =
                seat.logs.iter().map(|log| libm::exp(log[cell] - sum)).collect();
            for (place, seen) in readings.iter_mut().enumerate() {
                let at_depths = chances.iter().zip(&means);
                seen.mean[cell] =
                    at_depths.map(|(chance, means)| chance * means[place][cell]).sum();
            }
        }
        seat
    }

    /// ln of the likelihood of a cell, the depth summed out.
    pub(super) fn log_sum(&self, cell: usize) -> f64 {
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

/// What the filter does at one reading. Its errors have one standard deviation each: the
/// instrument's in K, the model's as a share of the reading's own.
struct Step {
    /// What is left of the model's error since the reading before.
    left: f64,
    /// The standard deviation of the reading as foreseen from those before, K.
    spread: f64,
    /// By how much instrument's and model's error are moved for each K of surprise.
    gain: (f64, f64),
}

/// The filter for these readings: the same for all cells and depths.
fn filter(readings: &[&mut Seen], instrument: f64) -> Vec<Step> {
    // Variances of the instrument's error and the model's, and their covariance.
    let (mut own, mut model, mut both) = (instrument * instrument, 1.0, 0.0);
    let mut before = readings.first().map(|seen| seen.reading.at);
    let mut steps = Vec::with_capacity(readings.len());
    for seen in readings {
        let gone = before.map_or(0.0, |before| to_seconds(seen.reading.at - before));
        before = Some(seen.reading.at);
        let left = libm::exp(-gone.max(0.0) / prior::LEAVE_IN_DRIFTS);
        both *= left;
        model = 1.0 + left * left * (model - 1.0);
        let drift = seen.drift;
        let with = (own + drift * both, both + drift * model);
        let misfit = prior::MISFIT_LEAVE_IN * prior::MISFIT_LEAVE_IN;
        let variance = with.0 + drift * with.1 + misfit;
        let gain = (with.0 / variance, with.1 / variance);
        own -= gain.0 * with.0;
        both -= gain.0 * with.1;
        model -= gain.1 * with.1;
        steps.push(Step { left, spread: libm::sqrt(variance), gain });
    }
    steps
}

/// ln of the likelihood of a placement's readings for one cell, the tip showing `means` (by reading,
/// then cell).
fn log_likelihood(filter: &[Step], readings: &[&mut Seen], means: &[Vec<f64>], cell: usize) -> f64 {
    let (mut own, mut model, mut log) = (0.0, 0.0, 0.0);
    for ((step, seen), means) in filter.iter().zip(readings).zip(means) {
        model *= step.left;
        let off = seen.reading.temperature.c() - means[cell] - own - seen.drift * model;
        let z = off / step.spread;
        log += seen.log_likelihood(z, step.spread);
        let moves = z.clamp(-MOVES, MOVES) * step.spread;
        own += step.gain.0 * moves;
        model += step.gain.1 * moves;
    }
    log
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
