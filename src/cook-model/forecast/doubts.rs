//! Which readings the cook is asked about before they count.
//!
//! A reading that is likelier a slip than not moves no forecast. But a hot one can prove a piece, and
//! one is enough: so it is asked about sooner, where by all the other readings an honest one so hot is
//! rare. How rare goes by what rests on it: one that proves by the rule in force, sooner than one that
//! only stops a clock. That is so however long the piece has been on, and costs an honest cook a
//! needless question, and a tap. Hot readings that do not fit are no witnesses for each other: who reads
//! the wrong piece, or types in the wrong unit, does so again. Nor is a piece at rest one for what it showed
//! before: how it is kept, the forecast does not know.

use super::evidence::Evidence;
use super::lateness::Expected;
use super::normal::{Mixture, Normal, Part};
use super::outcome::{Probability, Surprise};
use super::posterior::Joint;
use super::shown::Seen;
use super::sorted::in_one_go;
use super::view::{View, band};
use crate::history::EntryId;
use crate::quantity::Temperature;
use crate::safety::ProofRule;

/// A reading that would prove its piece is asked about where an honest one so hot is rarer than this, one in
/// fourteen; one that only stops a clock where it is rarer than that (our choice; how often it asks honest
/// cooks stands in the study of conduct).
const RARE_PROOF: f64 = 0.07;
const RARE_HOT: f64 = 0.01;

/// What hot readings are judged by.
pub(super) struct Judged {
    /// From here up a reading proves by the rule in force, alone or with others.
    proves_from: Temperature,
    /// By piece the weight of every cell, without the hot readings that do not fit.
    pub weights: Vec<Vec<f64>>,
    /// Those readings, of all pieces.
    pub unfit: Vec<EntryId>,
}

impl Judged {
    /// Judges the hot readings of all pieces, which are joined by what they have in common, by the others
    /// alone; none where nothing hot was read.
    pub(super) fn of(
        evidence: &[Evidence],
        rule: ProofRule,
        normal: &Normal,
        joint: impl Fn(&[Vec<f64>]) -> Joint,
    ) -> Option<Self> {
        evidence.iter().flat_map(|own| &own.seen).any(Seen::is_hot).then_some(())?;
        let by = |keep: &dyn Fn(&Seen) -> bool| -> Vec<Vec<f64>> {
            let logs: Vec<Vec<f64>> = evidence.iter().map(|own| own.by(keep).1).collect();
            let joint = joint(&logs);
            (0..logs.len()).map(|piece| joint.weights(piece)).collect()
        };
        let cold = by(&|seen| !seen.is_hot() && !seen.at_rest);
        let hot = evidence.iter().zip(&cold).flat_map(|(own, weights)| {
            own.seen.iter().filter(|seen| seen.is_hot()).map(move |seen| (own, seen, weights))
        });
        let proves_from = rule.proves_from();
        let unfit = hot.filter(|(own, seen, weights)| {
            let expected = own
                .by(|other| !other.is_hot() && !other.at_rest && other.is_before(seen))
                .0
                .expected(seen);
            is_too_hot(seen, &expected, weights, proves_from, normal)
        });
        let unfit: Vec<EntryId> = unfit.map(|(_, seen, _)| seen.reading.entry).collect();
        let weights = by(&|seen| !unfit.contains(&seen.reading.entry) && !seen.at_rest);
        Some(Self { proves_from, weights, unfit })
    }

    /// The weights that a hot reading of a piece is judged by, and what it was expected to show: without
    /// what does not fit, and without what was read hot of its piece in the same go, itself too, for the
    /// same slip is made again.
    fn of_one(&self, hot: &Seen, own: &Evidence, place: usize) -> (Vec<f64>, Expected) {
        let fits = |seen: &Seen| !self.unfit.contains(&seen.reading.entry) && !seen.at_rest;
        let in_this_go = |seen: &Seen| seen.is_hot() && in_one_go(seen.reading.at, hot.reading.at);
        let with = own.by(fits).1;
        let without = own.by(|seen| fits(seen) && !in_this_go(seen)).1;
        let logs = without.iter().zip(&with);
        let weights = self.weights[place].iter().zip(logs);
        let mut weights: Vec<f64> =
            weights.map(|(weight, (less, all))| weight * libm::exp(less - all)).collect();
        let sum: f64 = weights.iter().sum();
        weights.iter_mut().for_each(|weight| *weight /= sum);
        let before = |seen: &Seen| fits(seen) && !in_this_go(seen) && seen.is_before(hot);
        (weights, own.by(before).0.expected(hot))
    }
}

impl View<'_> {
    /// The readings to ask the cook about.
    pub(super) fn surprises(&self, place: usize, judged: Option<&Judged>) -> Vec<Surprise> {
        let seen = &self.evidence.seen;
        let slips = seen.iter().filter(|seen| !seen.counts).map(|seen| self.surprise(seen));
        let mut asked: Vec<Surprise> = slips.collect();
        let Some(judged) = judged else { return asked };
        let hot: Vec<(&Seen, Vec<f64>, Expected)> = seen
            .iter()
            .filter(|seen| seen.is_hot())
            .map(|hot| {
                let (weights, expected) = judged.of_one(hot, self.evidence, place);
                (hot, weights, expected)
            })
            .collect();
        let too_hot: Vec<&Seen> = hot
            .iter()
            .filter(|(seen, weights, expected)| {
                is_too_hot(seen, expected, weights, judged.proves_from, self.normal)
            })
            .map(|(seen, ..)| *seen)
            .collect();
        // What is read again until it would do is asked about too.
        let in_that_go =
            |seen: &Seen| too_hot.iter().any(|other| in_one_go(other.reading.at, seen.reading.at));
        let doubted = hot.iter().filter(|(seen, ..)| in_that_go(seen));
        asked.extend(doubted.map(|(seen, weights, expected)| {
            View { weights, ..*self }.surprise_beside(seen, &expected.mean, expected.spread)
        }));
        asked
    }

    fn surprise(&self, seen: &Seen) -> Surprise {
        self.surprise_beside(seen, &seen.mean, seen.spread)
    }

    /// A reading beside what it was expected to show, by cell, and how far it might have been off that.
    fn surprise_beside(&self, seen: &Seen, mean: &[f64], spread: f64) -> Surprise {
        let would_show = self.mixture(|cell| Some((mean[cell], spread)));
        Surprise {
            piece: self.history.id,
            entry: seen.reading.entry,
            read: seen.reading.temperature,
            expected: band(&would_show, Temperature::from_c),
            slip: Probability::new(seen.slip_chance_over(self.weights)),
        }
    }
}

/// Whether an honest reading so hot is too rare to be taken unasked, the cells having these weights.
fn is_too_hot(
    seen: &Seen,
    expected: &Expected,
    weights: &[f64],
    proves_from: Temperature,
    normal: &Normal,
) -> bool {
    let rare = if seen.reading.for_proof >= proves_from { RARE_PROOF } else { RARE_HOT };
    let parts = weights.iter().zip(&expected.mean).map(|(weight, mean)| Part {
        weight: *weight,
        mean: *mean,
        spread: expected.spread,
    });
    let would_show = Mixture { normal, parts: parts.collect() };
    1.0 - would_show.below(seen.reading.temperature.c()) < rare
}
