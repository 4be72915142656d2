//! Which readings the cook is asked about before they count.
//!
//! A reading that is likelier a slip than not moves no forecast. But a hot one can prove a piece, and
//! one is enough: so it is asked about sooner, where by all the other readings an honest one so hot is
//! rarer than a slip. That is so however long the piece has been on, and costs an honest cook a
//! needless question, and a tap, in one of fifty hot readings at the most.

use super::evidence::Seen;
use super::normal::Mixture;
use super::outcome::{Probability, Surprise};
use super::prior;
use super::view::{View, band};
use crate::history::Instrument;
use crate::quantity::Temperature;
use crate::safety::LOWEST_HELD;

impl View<'_> {
    /// The readings to ask the cook about.
    pub(super) fn surprises(&self) -> impl Iterator<Item = Surprise> {
        self.evidence.seen.iter().filter_map(|seen| {
            if !seen.counts {
                return Some(self.surprise(seen));
            }
            let without = could_prove(seen).then(|| self.without(seen))?;
            let others = View { weights: &without, ..*self };
            others.is_too_hot(seen).then(|| others.surprise(seen))
        })
    }

    /// What the thermometer would show.
    fn would_show(&self, seen: &Seen) -> Mixture<'_> {
        self.mixture(|cell| Some((seen.mean[cell], seen.spread)))
    }

    fn surprise(&self, seen: &Seen) -> Surprise {
        Surprise {
            piece: self.history.id,
            entry: seen.reading.entry,
            read: seen.reading.temperature,
            expected: band(&self.would_show(seen), Temperature::from_c),
            slip: Probability::new(seen.slip_chance_over(self.weights)),
        }
    }

    /// The weights of the cells as they were without this reading.
    fn without(&self, seen: &Seen) -> Vec<f64> {
        let cells = self.weights.iter().zip(&seen.mean);
        let mut weights: Vec<f64> = cells
            .map(|(weight, mean)| {
                let z = (seen.reading.temperature.c() - mean) / seen.spread;
                weight * libm::exp(-seen.log_likelihood(z, seen.spread))
            })
            .collect();
        let sum: f64 = weights.iter().sum();
        weights.iter_mut().for_each(|weight| *weight /= sum);
        weights
    }

    /// Whether an honest reading so hot is rarer than a slip.
    fn is_too_hot(&self, seen: &Seen) -> bool {
        1.0 - self.would_show(seen).below(seen.reading.temperature.c()) < prior::SLIP.0
    }
}

/// Whether a proof could rest on it, and nothing vouches for it yet: neither the cook, nor other
/// readings of the same go.
fn could_prove(seen: &Seen) -> bool {
    let reading = &seen.reading;
    reading.instrument == Instrument::InstantRead
        && reading.for_proof >= LOWEST_HELD
        && seen.slip > 0.0
}
