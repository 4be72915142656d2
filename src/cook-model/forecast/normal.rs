//! The normal distribution, and quantiles of weighted mixtures of it.

use core::f64::consts::FRAC_1_SQRT_2;

/// Beyond so many standard deviations nothing is left.
const REACH: f64 = 6.0;
/// Table rows per standard deviation: a straight line between them is good to 4e-6.
const ROWS: f64 = 128.0;
/// Halvings of the bracket of a quantile: to a millionth of it.
const HALVINGS: usize = 20;

/// A table of the standard normal distribution function: a forecast asks for it a million times.
pub(super) struct Normal {
    rows: Vec<f64>,
}

impl Normal {
    pub(super) fn new() -> Self {
        let count = (2.0 * REACH * ROWS) as usize + 2;
        let z = |row: usize| row as f64 / ROWS - REACH;
        Self { rows: (0..count).map(|row| 0.5 * libm::erfc(-z(row) * FRAC_1_SQRT_2)).collect() }
    }

    /// The chance of a standard normal value at or below `z`.
    pub(super) fn below(&self, z: f64) -> f64 {
        if z >= REACH {
            return 1.0;
        }
        if z > -REACH {
            let place = (z + REACH) * ROWS;
            let row = place as usize;
            let share = place - row as f64;
            return self.rows[row] + share * (self.rows[row + 1] - self.rows[row]);
        }
        0.0
    }
}

/// One part of a mixture: a weight, a mean and a standard deviation above zero.
#[derive(Clone, Copy, Debug)]
pub(super) struct Part {
    pub weight: f64,
    pub mean: f64,
    pub spread: f64,
}

/// A mixture of normal distributions whose weights sum to one.
pub(super) struct Mixture<'a> {
    pub normal: &'a Normal,
    pub parts: Vec<Part>,
}

impl Mixture<'_> {
    /// The same with one part more, which takes its weight from all others.
    pub(super) fn and(mut self, part: Option<Part>) -> Self {
        if let Some(part) = part {
            self.parts.iter_mut().for_each(|other| other.weight *= 1.0 - part.weight);
            self.parts.push(part);
        }
        self
    }

    /// The chance of a value at or below `x`.
    pub(super) fn below(&self, x: f64) -> f64 {
        self.parts.iter().map(|p| p.weight * self.normal.below((x - p.mean) / p.spread)).sum()
    }

    /// The value that a given chance lies below.
    pub(super) fn quantile(&self, chance: f64) -> f64 {
        let ends = |sign: f64| self.parts.iter().map(move |p| p.mean + sign * REACH * p.spread);
        let mut low = ends(-1.0).fold(f64::INFINITY, f64::min);
        let mut high = ends(1.0).fold(f64::NEG_INFINITY, f64::max);
        for _ in 0..HALVINGS {
            let middle = 0.5 * (low + high);
            if self.below(middle) < chance {
                low = middle;
            } else {
                high = middle;
            }
        }
        0.5 * (low + high)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_holds_the_usual_percentage_points() {
        // Percentage points of the normal distribution, any statistical table.
        let normal = Normal::new();
        for (z, chance) in [(0.0, 0.5), (1.2816, 0.9), (1.96, 0.975), (-2.3263, 0.01)] {
            assert!((normal.below(z) - chance).abs() < 1e-4, "{} at {z}", normal.below(z));
        }
    }

    #[test]
    fn a_mixture_of_one_has_the_quantiles_of_its_part() {
        let normal = Normal::new();
        let parts = vec![Part { weight: 1.0, mean: 50.0, spread: 2.0 }];
        let mixture = Mixture { normal: &normal, parts };
        assert!((mixture.quantile(0.9) - (50.0 + 2.0 * 1.2816)).abs() < 1e-3);
        assert!((mixture.quantile(0.5) - 50.0).abs() < 1e-3);
    }
}
