//! From what each piece's readings say to what is known of every piece: the shared part of speed
//! and offset is learned from all, so that a check of one piece sharpens the rest.
//!
//! For every pair of shared values the own part of each piece is summed out over the cells; the
//! pieces are independent given the pair. Cost grows linearly in pieces.

use super::cells::{self, OFFSETS};
use super::prior;

/// Shared values looked at, in standard deviations: speed finely, offset coarsely.
const SHARED_SPEEDS: usize = 13;
const SPEED_STEP: f64 = 0.45;
const SHARED_OFFSETS: usize = 5;
const OFFSET_STEP: f64 = 1.0;

/// One pair of shared values.
const PAIRS: usize = SHARED_SPEEDS * SHARED_OFFSETS;

/// What is known of one piece before the others are asked.
pub(super) struct Known<'a> {
    /// ln of the likelihood of every cell.
    pub log: &'a [f64],
    /// Mean and standard deviation of the own part of ln(speed).
    pub own_speed: (f64, f64),
}

/// What is known of all pieces together.
pub(super) struct Joint {
    parts: Vec<Part>,
    /// ln of the weight of each pair, but for a constant.
    shared: Vec<f64>,
}

/// A mean and a variance.
#[derive(Clone, Copy, Debug)]
pub(super) struct Moments {
    pub mean: f64,
    pub variance: f64,
}

impl Joint {
    /// Asks all pieces; `shared_speed` is the standard deviation of the shared ln(speed).
    pub(super) fn of(pieces: &[Known<'_>], shared_speed: f64) -> Self {
        let parts: Vec<Part> = pieces.iter().map(|piece| Part::of(piece, shared_speed)).collect();
        let mut shared = log_prior();
        for part in &parts {
            for (sum, log) in shared.iter_mut().zip(&part.log_pair) {
                *sum += log;
            }
        }
        Self { parts, shared }
    }

    /// The weights of a piece's cells, which sum to one.
    pub(super) fn weights(&self, piece: usize) -> Vec<f64> {
        self.parts[piece].posterior(&self.shared)
    }

    /// The weight of each pair of shared values; they sum to one.
    pub(super) fn pairs(&self) -> Vec<f64> {
        let most = self.shared.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let pairs: Vec<f64> = self.shared.iter().map(|log| libm::exp(log - most)).collect();
        let sum: f64 = pairs.iter().sum();
        pairs.into_iter().map(|pair| pair / sum).collect()
    }

    /// Mean and variance of a value given by cell, were each pair the true one.
    pub(super) fn moments(&self, piece: usize, value: &[f64]) -> Vec<Moments> {
        self.parts[piece].moments(value)
    }
}

/// ln of the chance of each pair before any reading, but for a constant.
fn log_prior() -> Vec<f64> {
    let log = |spreads: f64| -0.5 * spreads * spreads;
    evenly(SHARED_SPEEDS, SPEED_STEP)
        .flat_map(|speed| evenly(SHARED_OFFSETS, OFFSET_STEP).map(move |offset| (speed, offset)))
        .map(|(speed, offset)| log(speed) + log(offset))
        .collect()
}

/// So many values around nought.
fn evenly(count: usize, step: f64) -> impl Iterator<Item = f64> {
    (0..count).map(move |i| step * (i as f64 - 0.5 * (count - 1) as f64))
}

/// One piece while all are combined.
struct Part {
    /// Likelihood of every cell, the greatest being one.
    likelihood: Vec<f64>,
    /// Chance of each cell speed for each shared speed.
    by_speed: Vec<Vec<f64>>,
    /// Chance of each cell offset for each shared offset.
    by_offset: Vec<Vec<f64>>,
    /// ln of the likelihood of each pair.
    log_pair: Vec<f64>,
}

impl Part {
    fn of(known: &Known<'_>, shared_speed: f64) -> Self {
        let most = known.log.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let likelihood: Vec<f64> = known.log.iter().map(|log| libm::exp(log - most)).collect();
        let (mean, spread) = known.own_speed;
        let by_speed: Vec<Vec<f64>> = evenly(SHARED_SPEEDS, SPEED_STEP * shared_speed)
            .map(|shared| chances(cells::speeds().map(|cell| cell - shared - mean), spread))
            .collect();
        let by_offset: Vec<Vec<f64>> = evenly(SHARED_OFFSETS, OFFSET_STEP * prior::SHARED_OFFSET)
            .map(|shared| chances(OFFSETS.iter().map(|cell| cell - shared), prior::OWN_OFFSET))
            .collect();
        let mut log_pair = Vec::with_capacity(PAIRS);
        for speeds in &by_speed {
            let mut per_offset = [0.0; OFFSETS.len()];
            for (row, chance) in likelihood.chunks_exact(OFFSETS.len()).zip(speeds) {
                for (sum, cell) in per_offset.iter_mut().zip(row) {
                    *sum += chance * cell;
                }
            }
            for offsets in &by_offset {
                let sum: f64 = offsets.iter().zip(&per_offset).map(|(a, b)| a * b).sum();
                log_pair.push(most + libm::log(sum.max(f64::MIN_POSITIVE)));
            }
        }
        Self { likelihood, by_speed, by_offset, log_pair }
    }

    /// Mean and variance of a value over the cells for each pair.
    fn moments(&self, value: &[f64]) -> Vec<Moments> {
        let mut moments = Vec::with_capacity(PAIRS);
        for speeds in &self.by_speed {
            // Sums of weight, weight x value, weight x value squared, by offset.
            let mut sums = [[0.0; 3]; OFFSETS.len()];
            let rows =
                self.likelihood.chunks_exact(OFFSETS.len()).zip(value.chunks_exact(OFFSETS.len()));
            for ((row, values), chance) in rows.zip(speeds) {
                for ((sum, cell), value) in sums.iter_mut().zip(row).zip(values) {
                    let weight = chance * cell;
                    sum[0] += weight;
                    sum[1] += weight * value;
                    sum[2] += weight * value * value;
                }
            }
            for offsets in &self.by_offset {
                let total = |power: usize| -> f64 {
                    offsets.iter().zip(&sums).map(|(chance, sum)| chance * sum[power]).sum()
                };
                let weight = total(0).max(f64::MIN_POSITIVE);
                let mean = total(1) / weight;
                moments
                    .push(Moments { mean, variance: (total(2) / weight - mean * mean).max(0.0) });
            }
        }
        moments
    }

    /// The cells' weights, given what all pieces say of the pairs.
    fn posterior(&self, shared: &[f64]) -> Vec<f64> {
        // What the others say: this piece's own word is in its likelihood.
        let logs: Vec<f64> =
            shared.iter().zip(&self.log_pair).map(|(all, own)| all - own).collect();
        let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let pairs: Vec<f64> = logs.iter().map(|log| libm::exp(log - most)).collect();
        let mut weights = vec![0.0; cells::COUNT];
        for (speeds, row) in self.by_speed.iter().zip(pairs.chunks_exact(SHARED_OFFSETS)) {
            let mut per_offset = [0.0; OFFSETS.len()];
            for (offsets, pair) in self.by_offset.iter().zip(row) {
                for (sum, chance) in per_offset.iter_mut().zip(offsets) {
                    *sum += pair * chance;
                }
            }
            for (cells, chance) in weights.chunks_exact_mut(OFFSETS.len()).zip(speeds) {
                for (cell, offset) in cells.iter_mut().zip(&per_offset) {
                    *cell += chance * offset;
                }
            }
        }
        for (weight, likelihood) in weights.iter_mut().zip(&self.likelihood) {
            *weight *= likelihood;
        }
        let sum: f64 = weights.iter().sum();
        for weight in &mut weights {
            *weight /= sum.max(f64::MIN_POSITIVE);
        }
        weights
    }
}

/// The chance of each distance from a shared value, summing to one.
fn chances(distances: impl Iterator<Item = f64>, spread: f64) -> Vec<f64> {
    let mut chances: Vec<f64> = distances
        .map(|distance| libm::exp(-0.5 * (distance / spread) * (distance / spread)))
        .collect();
    let sum: f64 = chances.iter().sum();
    for chance in &mut chances {
        *chance /= sum.max(f64::MIN_POSITIVE);
    }
    chances
}
