//! Draws by seed, each purpose with a stream of its own, so that no draw shifts another's.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rand_distr::{Distribution, StandardNormal};

/// Beyond so many standard deviations a cook would notice.
const NOTICED: f64 = 2.5;

/// A stream of draws.
#[derive(Clone, Debug)]
pub struct Chance(ChaCha8Rng);

impl Chance {
    /// The stream of a purpose, for a seed.
    pub fn of(seed: u64, purpose: u64) -> Self {
        let mut luck = ChaCha8Rng::seed_from_u64(seed);
        luck.set_stream(purpose);
        Self(luck)
    }

    /// A standard normal draw.
    pub fn unit(&mut self) -> f64 {
        StandardNormal.sample(&mut self.0)
    }

    /// A normal draw, cut off where it would be noticed.
    pub fn normal(&mut self, mean: f64, spread: f64) -> f64 {
        mean + spread * self.unit().clamp(-NOTICED, NOTICED)
    }

    /// A draw whose logarithm is normal around that of `median`.
    pub fn scale(&mut self, median: f64, spread: f64) -> f64 {
        median * self.normal(0.0, spread).exp()
    }

    /// Any number from `low` to `high`, all alike likely.
    pub fn range(&mut self, low: f64, high: f64) -> f64 {
        if low < high { self.0.random_range(low..high) } else { low }
    }

    /// True with a chance.
    pub fn happens(&mut self, chance: f64) -> bool {
        self.range(0.0, 1.0) < chance
    }

    /// A whole number, both ends included.
    pub fn count(&mut self, low: usize, high: usize) -> usize {
        self.0.random_range(low..=high)
    }
}
