//! Draws the ways the day could go, from the heat model and from how unsure it is.

use super::draws::{Draw, Draws};
use super::request::{PlanProblem, Request, Wanted};
use super::spread::{self, normal_quantile};
use crate::heat::{Body, Leg, Start, Surface, Surroundings, Tuning, trace};
use crate::quantity::{Span, TemperatureDifference, to_minutes};

/// How many ways the day could go are looked at: a prime, enough for one chance in ten to be known
/// to a few parts in a hundred.
const DRAWS: usize = 67;
/// The primitive root of that prime which keeps the first twenty coordinates best apart (found by
/// trying all).
const GENERATOR: usize = 28;
/// The longest cook looked at.
const LONGEST: Span = Span::hours(8);
/// By how much the pit is made hotter to see what a hot spot does.
const HOTTER: TemperatureDifference = TemperatureDifference::from_c(5.0);

/// The draws for a request.
///
/// Everything in a piece going `e^u` times faster than expected divides its time on a steady pit
/// by just that, so one trace gives the times for all speeds. `ln` of the speed is normal, with a
/// part shared by the whole pit and a part of the piece's own.
pub(super) fn draw_days(request: &Request) -> Result<Draws, PlanProblem> {
    let mut expected = Vec::with_capacity(request.pieces.len());
    let mut per_kelvin = Vec::with_capacity(request.pieces.len());
    for wanted in &request.pieces {
        let here = minutes_on_pit(request, wanted, TemperatureDifference::ZERO)?;
        let hotter = minutes_on_pit(request, wanted, HOTTER)?;
        expected.push(here);
        per_kelvin.push(libm::log(hotter / here) / HOTTER.c());
    }
    let rest = to_minutes(request.habits.rest);
    let draws = (0..DRAWS)
        .map(|day| {
            let shared = spread::SHARED * normal_quantile(share(day, 0));
            let on_pit =
                request.pieces.iter().zip(&expected).enumerate().map(|(i, (wanted, m))| {
                    let own = spread::own(&wanted.piece) * normal_quantile(share(day, i + 1));
                    m * libm::exp(-shared - own)
                });
            Draw { on_pit: on_pit.collect(), rest: vec![rest; request.pieces.len()] }
        })
        .collect();
    Ok(Draws::new(draws, per_kelvin))
}

/// Minutes on a steady pit until the pull, if all goes as expected.
fn minutes_on_pit(
    request: &Request,
    wanted: &Wanted,
    hotter: TemperatureDifference,
) -> Result<f64, PlanProblem> {
    let start = Start::even(wanted.piece.start).map_err(|_| PlanProblem::NeverDone)?;
    let pit = Leg::pit(Surface::pit(request.pit_kind), &[], request.pit + hotter);
    let body = Body::of_piece(&wanted.piece);
    trace(&body, start, &Surroundings::new(pit), LONGEST, &Tuning::default())
        .core_reaches(request.pull_at)
        .map(to_minutes)
        .ok_or(PlanProblem::NeverDone)
}

/// Points that fill the unit cube evenly, so that few draws stand for many: Korobov's lattice of
/// a prime number of points, each coordinate a permutation of the same even steps.
fn share(day: usize, dimension: usize) -> f64 {
    let multiplier = (0..dimension % (DRAWS - 1)).fold(1, |m, _| m * GENERATOR % DRAWS);
    ((day * multiplier % DRAWS) as f64 + 0.5) / DRAWS as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The points of one dimension.
    fn points(dimension: usize) -> Vec<f64> {
        (0..DRAWS).map(|day| share(day, dimension)).collect()
    }

    #[test]
    fn every_dimension_takes_each_even_step_once() {
        let even: Vec<f64> = (0..DRAWS).map(|i| (i as f64 + 0.5) / DRAWS as f64).collect();
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
                    / DRAWS as f64;
            // The variance of an even spread is 1/12; the worst of 210 pairs of 67 random points
            // would be near 0.35, of this lattice 0.41.
            assert!((covariance * 12.0).abs() < 0.42, "{a} and {b}: {}", covariance * 12.0);
        }
    }
}
