//! The pull order, and how sure it is.

use super::normal::Normal;
use super::outcome::Probability;
use super::posterior::Joint;
use super::view::Run;
use crate::history::PieceHistory;
use crate::piece::PieceId;

/// A piece not yet off: its place in the history, and its way to its pull.
pub(super) struct Runner<'a> {
    pub piece: &'a PieceHistory,
    pub place: usize,
    pub run: Run,
}

/// The pieces by the middle of their pull time, those that hardly get there last; and for each but
/// the last the chance that it is ready before the next.
///
/// A slow pit is slow for both pieces of a pair: their times are compared for each pair of shared
/// values, and these summed out.
pub(super) fn pull_order(
    mut runners: Vec<Runner<'_>>,
    joint: &Joint,
    normal: &Normal,
) -> (Vec<PieceId>, Vec<Probability>) {
    runners.sort_by(|a, b| {
        let middle = |r: &Runner<'_>| r.run.timing.map_or(f64::INFINITY, |timing| timing.pull.0);
        middle(a).total_cmp(&middle(b)).then(a.piece.id.cmp(&b.piece.id))
    });
    let pairs = joint.pairs();
    let moments: Vec<_> = runners.iter().map(|r| joint.moments(r.place, &r.run.reaches)).collect();
    let certainty = moments
        .windows(2)
        .zip(runners.windows(2))
        .map(|(moments, runners)| {
            let own =
                |r: &Runner<'_>| r.run.timing.map_or(0.0, |timing| timing.drift * timing.drift);
            let drift = own(&runners[0]) + own(&runners[1]);
            let pairs = pairs.iter().zip(moments[0].iter().zip(&moments[1]));
            let chance = pairs
                .map(|(weight, (first, next))| {
                    let variance = first.variance + next.variance + drift;
                    let apart = next.mean - first.mean;
                    weight * normal.below(apart / libm::sqrt(variance.max(1.0)))
                })
                .sum();
            Probability::new(chance)
        })
        .collect();
    (runners.iter().map(|runner| runner.piece.id).collect(), certainty)
}
