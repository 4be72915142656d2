//! Draws the ways the day could go, from the forecast of raw pieces and how unsure it is.

use super::draws::{Draw, Draws};
use super::request::{PlanProblem, Request};
use super::spread::{PER_KELVIN, normal_quantile, shared_part};
use crate::forecast::{Band, Forecast, TO_ARRIVE};
use crate::heat::{Body, Leg, Start, Surface, Surroundings, Tuning, trace};
use crate::piece::Piece;
use crate::quantity::{Moment, Temperature, TemperatureDifference, minutes, to_minutes};

/// How many ways the day could go are looked at: a prime, enough for one chance in ten to be known
/// to a few parts in a hundred.
pub(super) const DAYS: usize = 67;
/// The primitive root of that prime which keeps the first twenty coordinates best apart (found by
/// trying all).
const GENERATOR: usize = 28;
/// By how much the pit is made hotter to see what a hot spot does.
const HOTTER: TemperatureDifference = TemperatureDifference::from_c(5.0);
/// Each piece on the pit is read and pulled through an open lid, which costs them all this many minutes
/// more than forecasts reckon with; and a piece is found some minutes after it got to its pull
/// temperature (found on simulated cooks that follow the advice: tests/twin, seeds 0 to 79).
const LID_PER_PIECE: f64 = 1.5;
/// Nobody is at the pit as a call comes, as often as this: not to put pieces on, nor to the look that pulls
/// the last.
const COMES_LATE: f64 = 2.0;
/// On a slow day the cook takes a lever in time, such as a hotter pit: of what such a day takes longer,
/// as a logarithm, this part is left (found likewise).
const LEFT_BY_LEVERS: f64 = 0.8;
/// Standard deviations between the ends of the central 80 % of a normal variable.
const ACROSS: f64 = 2.0 * 1.2816;

/// The draws for a request, by the forecast of its [`raw`](Request::raw) pieces. The logarithm of a
/// piece's time on the pit is taken as normal, with the middle and the spread of that forecast, and a
/// part shared by the whole pit.
pub(super) fn draw_days(request: &Request, raw: &Forecast) -> Result<Draws, PlanProblem> {
    let expected = minutes_on_pit(raw)?;
    let pieces = request.pieces.iter().map(|wanted| &wanted.piece);
    let pulls = raw.pieces.iter().map(|piece| piece.pull_at).zip(&expected);
    let per_kelvin =
        pieces.zip(pulls).map(|(piece, (pull, m))| per_kelvin(request, piece, pull, m.middle));
    let per_kelvin = per_kelvin.collect();
    let rest = to_minutes(request.habits.rest);
    let together = request.pieces.len().min(request.places.len());
    let besides = COMES_LATE * to_minutes(TO_ARRIVE) + LID_PER_PIECE * together as f64;
    let days = Days::new();
    let draws = (0..DAYS)
        .map(|day| {
            let pit = days.deviate(day, 0);
            let on_pit =
                request.pieces.iter().zip(&expected).enumerate().map(|(i, (wanted, m))| {
                    let own = days.deviate(day, i + 1);
                    let shared = shared_part(&wanted.piece);
                    let z = libm::sqrt(shared) * pit + libm::sqrt(1.0 - shared) * own;
                    let slow = if z > 0.0 { LEFT_BY_LEVERS * z } else { z };
                    besides + m.middle * libm::exp(slow * libm::log(m.high / m.low) / ACROSS)
                });
            Draw { on_pit: on_pit.collect(), rest: vec![rest; request.pieces.len()] }
        })
        .collect();
    Ok(Draws::new(draws, per_kelvin))
}

/// By how much the logarithm of a piece's time on the pit changes with each kelvin of its place, by
/// the heat model alone: it is about the same for all that a forecast thinks possible.
fn per_kelvin(request: &Request, piece: &Piece, pull: Temperature, expected: f64) -> f64 {
    let Ok(start) = Start::of_piece(piece) else { return -PER_KELVIN };
    let body = Body::of_piece(piece);
    let time = |hotter| {
        let pit = Leg::pit(Surface::pit(request.pit_kind), &[], request.pit + hotter);
        let end = minutes(2.0 * expected);
        let trace = trace(&body, start, &Surroundings::new(pit), end, &Tuning::default());
        trace.core_reaches(pull).map(to_minutes)
    };
    let times = time(TemperatureDifference::ZERO).zip(time(HOTTER));
    times.map_or(-PER_KELVIN, |(here, there)| libm::log(there / here) / HOTTER.c())
}

/// Minutes on a pit that keeps its target until the pull, for each piece.
fn minutes_on_pit(raw: &Forecast) -> Result<Vec<Band<f64>>, PlanProblem> {
    // A raw piece is forecast as if it went on at once.
    let on_pit = |pull: Moment| to_minutes(pull - raw.at).max(1.0);
    let pieces = raw.pieces.iter();
    pieces.map(|piece| Ok(piece.pull.ok_or(PlanProblem::NeverDone)?.map(on_pit))).collect()
}

/// Points that fill the unit cube evenly, so that few draws stand for many: Korobov's lattice of
/// a prime number of points, each coordinate a permutation of the same even steps. Of each step the
/// standard normal deviate, worked out once.
pub(super) struct Days {
    deviates: Vec<f64>,
}

impl Days {
    pub(super) fn new() -> Self {
        Self { deviates: (0..DAYS).map(|step| normal_quantile(share(step))).collect() }
    }

    /// How one coordinate goes on one of the days, in standard deviations.
    pub(super) fn deviate(&self, day: usize, dimension: usize) -> f64 {
        self.deviates[step(day, dimension)]
    }
}

fn step(day: usize, dimension: usize) -> usize {
    let multiplier = (0..dimension % (DAYS - 1)).fold(1, |m, _| m * GENERATOR % DAYS);
    day * multiplier % DAYS
}

fn share(step: usize) -> f64 {
    (step as f64 + 0.5) / DAYS as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The points of one dimension.
    fn points(dimension: usize) -> Vec<f64> {
        (0..DAYS).map(|day| share(step(day, dimension))).collect()
    }

    #[test]
    fn every_dimension_takes_each_even_step_once() {
        let even: Vec<f64> = (0..DAYS).map(|i| (i as f64 + 0.5) / DAYS as f64).collect();
        for dimension in 0..21 {
            let mut taken = points(dimension);
            taken.sort_by(f64::total_cmp);
            assert_eq!(taken, even, "dimension {dimension}");
        }
    }

    #[test]
    fn dimensions_do_not_go_together() {
        for (a, b) in (0..21).flat_map(|a| (0..a).map(move |b| (a, b))) {
            let covariance: f64 =
                points(a).iter().zip(points(b)).map(|(x, y)| (x - 0.5) * (y - 0.5)).sum::<f64>()
                    / DAYS as f64;
            // The variance of an even spread is 1/12; the worst of 210 pairs of 67 random points
            // would be near 0.35, of this lattice 0.41.
            assert!((covariance * 12.0).abs() < 0.42, "{a} and {b}: {}", covariance * 12.0);
        }
    }
}
