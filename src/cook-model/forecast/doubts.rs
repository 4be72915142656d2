//! Which readings the cook is asked about before they count.
//!
//! A reading that is likelier a slip than not moves no forecast. But a hot one can prove a piece, and
//! one is enough: so it is asked about sooner, where by all the other readings an honest one so hot is
//! rare. How rare goes by what rests on it: one that proves by the rule in force, sooner than one that
//! only stops a clock. That is so however long the piece has been on, and costs an honest cook a
//! needless question, and a tap. Hot readings that do not fit are no witnesses for each other: who reads
//! the wrong piece, or types in the wrong unit, does so again.

use super::evidence::{Evidence, Seen};
use super::normal::{Mixture, Normal, Part};
use super::outcome::{Probability, Surprise};
use super::posterior::Joint;
use super::sorted::in_one_go;
use super::view::{View, band};
use crate::history::EntryId;
use crate::quantity::Temperature;
use crate::safety::ProofRule;

/// How far a hot reading may be off what all others let expect besides what the forecast owns to, K: lids,
/// fires and the shape of a breast do more than it knows (standard deviation; chosen with the study of
/// conduct, `figures 8 2000000 12` and `3000000`: of a hundred honest readings 12 and 10 were asked about
/// without it, 6 and 3 with it).
const MISSES: f64 = 1.5;

/// A reading that would prove its piece is asked about where an honest one so hot is rarer than this; one
/// that only stops a clock where it is rarer than that (our choice, with the study of conduct: `figures 8
/// 2000000 12`, `6 3000000 12` and `20 4000000 4`: of a hundred honest readings 4.9, 5.2 and 3.8 are
/// asked about; with the chance of a slip, 0.02, for both 5.2, 5.2 and 3.0; with 0.06 and 0.01, 5.4, 5.0
/// and 5.2).
const RARE_PROOF: f64 = 0.035;
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
        let without = |leave_out: &dyn Fn(&Seen) -> bool| -> Vec<Vec<f64>> {
            let logs: Vec<Vec<f64>> = evidence.iter().map(|own| own.log_but(leave_out)).collect();
            let joint = joint(&logs);
            (0..logs.len()).map(|piece| joint.weights(piece)).collect()
        };
        let cold = without(&|seen| seen.is_hot());
        let hot = evidence.iter().zip(&cold).flat_map(|(own, weights)| {
            own.seen.iter().filter(|seen| seen.is_hot()).map(move |seen| (seen, weights))
        });
        let proves_from = rule.proves_from();
        let unfit = hot.filter(|(seen, weights)| is_too_hot(seen, weights, proves_from, normal));
        let unfit: Vec<EntryId> = unfit.map(|(seen, _)| seen.reading.entry).collect();
        let weights = without(&|seen| unfit.contains(&seen.reading.entry));
        Some(Self { proves_from, weights, unfit })
    }
}

impl View<'_> {
    /// The readings to ask the cook about.
    pub(super) fn surprises(&self, place: usize, judged: Option<&Judged>) -> Vec<Surprise> {
        let seen = &self.evidence.seen;
        let slips = seen.iter().filter(|seen| !seen.counts).map(|seen| self.surprise(seen));
        let mut asked: Vec<Surprise> = slips.collect();
        let Some(judged) = judged else { return asked };
        let hot: Vec<(&Seen, Vec<f64>)> = seen
            .iter()
            .filter(|seen| seen.is_hot())
            .map(|hot| (hot, judged_by(hot, seen, &judged.weights[place], &judged.unfit)))
            .collect();
        let too_hot: Vec<&Seen> = hot
            .iter()
            .filter(|(seen, weights)| is_too_hot(seen, weights, judged.proves_from, self.normal))
            .map(|(seen, _)| *seen)
            .collect();
        // What is read again until it would do is asked about too.
        let in_that_go =
            |seen: &Seen| too_hot.iter().any(|other| in_one_go(other.reading.at, seen.reading.at));
        let doubted = hot.iter().filter(|(seen, _)| in_that_go(seen));
        asked.extend(doubted.map(|(seen, weights)| View { weights, ..*self }.surprise(seen)));
        asked
    }

    fn surprise(&self, seen: &Seen) -> Surprise {
        let would_show = self.mixture(|cell| Some((seen.mean[cell], seen.spread)));
        Surprise {
            piece: self.history.id,
            entry: seen.reading.entry,
            read: seen.reading.temperature,
            expected: band(&would_show, Temperature::from_c),
            slip: Probability::new(seen.slip_chance_over(self.weights)),
        }
    }
}

/// The weights that a hot reading is judged by: without itself, and without what was read of its piece in
/// the same go, for the same slip is made again.
fn judged_by(hot: &Seen, of_piece: &[Seen], weights: &[f64], unfit: &[EntryId]) -> Vec<f64> {
    let counted = |seen: &&Seen| seen.is_hot() && !unfit.contains(&seen.reading.entry);
    let mut without = weights.to_vec();
    let in_this_go = |seen: &&Seen| in_one_go(seen.reading.at, hot.reading.at);
    for seen in of_piece.iter().filter(counted).filter(in_this_go) {
        let cells = without.iter_mut().zip(&seen.mean);
        cells.for_each(|(weight, mean)| *weight *= libm::exp(-seen.log_at(*mean)));
    }
    let sum: f64 = without.iter().sum();
    without.iter_mut().for_each(|weight| *weight /= sum);
    without
}

/// Whether an honest reading so hot is too rare to be taken unasked, the cells having these weights.
fn is_too_hot(seen: &Seen, weights: &[f64], proves_from: Temperature, normal: &Normal) -> bool {
    let rare = if seen.reading.for_proof >= proves_from { RARE_PROOF } else { RARE_HOT };
    let parts = weights.iter().zip(&seen.mean).map(|(weight, mean)| Part {
        weight: *weight,
        mean: *mean,
        spread: libm::hypot(seen.spread, MISSES),
    });
    let would_show = Mixture { normal, parts: parts.collect() };
    1.0 - would_show.below(seen.reading.temperature.c()) < rare
}
