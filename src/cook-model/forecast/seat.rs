//! Where the leave-in's tip is, from all that it showed in one placement.
//!
//! Its readings err alike: the instrument by the same amount in all of them, the model by nearly the
//! same in two that are close in time. What is left beside that, the shape of the curve over time,
//! tells a tip off the middle: it warms far ahead of the core at first. So the common error (a
//! constant) and the model's (a decaying random walk) are filtered out (Kalman, 1960), reading by
//! reading, for every cell and place; the filter itself is the same for all of them.

use super::cells;
use super::lateness::Lateness;
use super::prior;
use super::shown::Seen;
use super::traces::{RATE_OVER, Spot, Traces};
use crate::quantity::{Length, to_seconds};

/// Places looked at for a tip put in with care, all within what is called misplaced: the middles of so
/// many equal steps.
const SEATED_PLACES: usize = 4;
/// Likewise for one that missed, from there to just under the surface, in shares of the half-thickness.
const MISSED_PLACES: usize = 5;
const UNDER_SURFACE: f64 = 0.96;
/// A reading further off than this, in standard deviations, moves the filter no more than one this
/// far off: it is likely to be a slip.
const MOVES: f64 = 3.5;

/// Where a tip may be.
pub(super) struct Place {
    /// Distance off the middle.
    pub depth: Length,
    /// Whether it is one of a leave-in that missed.
    pub missed: bool,
    /// The chance of it before any reading.
    chance: f64,
}

/// What the readings of one placement say of where the tip is.
pub(super) struct Seat {
    pub places: Vec<Place>,
    /// By place: ln of prior times likelihood of every cell.
    logs: Vec<Vec<f64>>,
    /// How far its last reading may be off for not knowing the place, in the piece as expected, K.
    pub last_spread: f64,
}

impl Seat {
    /// Learns where the tip is, and tells the readings, which are in order of time, what it would show
    /// there; `late` is how late the piece is by its instant-reads. `instrument` is the thermometer's own
    /// standard deviation, K.
    pub(super) fn of(
        readings: &mut [&mut Seen],
        traces: &Traces,
        late: &Lateness,
        instrument: f64,
    ) -> Self {
        let places = places(traces.body.half_thickness());
        let shows = |seen: &Seen, place: &Place| {
            let (at, on) = (seen.since_zero, late.last_on(seen.since_zero));
            let shown = |at| traces.all_cells(Spot::Off(place.depth), at);
            let rates = shown(on).into_iter().zip(shown(on - RATE_OVER));
            let rates = rates.map(|(to, from)| (to - from) / RATE_OVER);
            // The tip is in the same meat as the pokes, which tell how late that is.
            let behind = rates.zip(late.lates(at)).map(|(rate, late)| rate * late);
            let means = shown(at).into_iter().zip(behind);
            means.map(|(mean, behind)| mean - behind).collect()
        };
        // By place, then reading, then cell.
        let means: Vec<Vec<Vec<f64>>> = places
            .iter()
            .map(|place| readings.iter().map(|seen| shows(seen, place)).collect())
            .collect();
        let filter = filter(readings, instrument);
        let logs = places
            .iter()
            .zip(&means)
            .map(|(place, means)| {
                let prior = libm::log(place.chance);
                let log = |cell| prior + log_likelihood(&filter, readings, means, cell);
                (0..cells::COUNT).map(log).collect()
            })
            .collect();
        let mut seat = Self { places, logs, last_spread: 0.0 };
        for cell in 0..cells::COUNT {
            let sum = seat.log_sum(cell);
            let chances: Vec<f64> =
                seat.logs.iter().map(|log| libm::exp(log[cell] - sum)).collect();
            for (number, seen) in readings.iter_mut().enumerate() {
                let at_places = chances.iter().zip(&means);
                seen.mean[cell] =
                    at_places.map(|(chance, means)| chance * means[number][cell]).sum();
            }
            if cell == cells::COUNT / 2 {
                let last = readings.len() - 1;
                let off = |means: &Vec<Vec<f64>>| means[last][cell] - readings[last].mean[cell];
                let at_places = chances.iter().zip(&means);
                let variance: f64 =
                    at_places.map(|(chance, means)| chance * off(means) * off(means)).sum();
                seat.last_spread = libm::sqrt(variance);
            }
        }
        seat
    }

    /// ln of the likelihood of a cell, the place summed out.
    pub(super) fn log_sum(&self, cell: usize) -> f64 {
        let most = self.logs.iter().map(|log| log[cell]).fold(f64::NEG_INFINITY, f64::max);
        let sum: f64 = self.logs.iter().map(|log| libm::exp(log[cell] - most)).sum();
        most + libm::log(sum)
    }

    /// The chance of each place, given the weights of the cells.
    pub(super) fn chances(&self, weights: &[f64]) -> Vec<f64> {
        let mut chances = vec![0.0; self.places.len()];
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

/// Where the tip may be in a piece of a half-thickness: near the middle, or, if it missed, as likely
/// as not at any depth from what is called misplaced to the surface. No place stands for depths on
/// both sides of that limit, whatever the thickness.
fn places(half: Length) -> Vec<Place> {
    let limit = prior::MISPLACED_MM;
    let outermost = (UNDER_SURFACE * half.mm()).max(limit + 1.0);
    let middles = |from: f64, to: f64, count: usize| {
        (0..count).map(move |i| from + (to - from) * (i as f64 + 0.5) / count as f64)
    };
    let place = |mm, missed, chance| Place { depth: Length::from_mm(mm), missed, chance };
    let near = middles(0.0, limit, SEATED_PLACES);
    let all_near: f64 = near.clone().map(prior::seated).sum();
    near.map(|mm| place(mm, false, (1.0 - prior::MISSED) * prior::seated(mm) / all_near))
        .chain(
            middles(limit, outermost, MISSED_PLACES)
                .map(|mm| place(mm, true, prior::MISSED / MISSED_PLACES as f64)),
        )
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_place_straddles_the_limit_and_all_chances_make_one() {
        for half in [5.0, 8.0, 14.5, 19.0, 30.0] {
            let places = places(Length::from_mm(half));
            let chance = |missed| {
                let of_kind = places.iter().filter(|place| place.missed == missed);
                of_kind.map(|place| place.chance).sum::<f64>()
            };
            assert!((chance(true) - prior::MISSED).abs() < 1e-12, "{half} mm");
            assert!((chance(false) + prior::MISSED - 1.0).abs() < 1e-12, "{half} mm");
            for place in &places {
                assert_eq!(place.depth.mm() > prior::MISPLACED_MM, place.missed, "{half} mm");
            }
        }
    }
}
