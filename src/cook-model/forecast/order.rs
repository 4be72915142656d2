//! The pull order, and how sure it is.

use super::normal::Normal;
use super::outcome::Probability;
use super::view::Timing;
use crate::piece::PieceId;

/// Pieces by the middle of their pull time, and for each but the last the chance that it is ready
/// before the next.
pub(super) fn pull_order(
    timings: &[(PieceId, Timing)],
    normal: &Normal,
) -> (Vec<PieceId>, Vec<Probability>) {
    let mut sorted = timings.to_vec();
    sorted.sort_by(|(a, s), (b, t)| s.pull.0.total_cmp(&t.pull.0).then(a.cmp(b)));
    let certainty = sorted
        .windows(2)
        .map(|pair| {
            let ((_, s), (_, t)) = (pair[0], pair[1]);
            let apart = t.pull.0 - s.pull.0;
            Probability::new(normal.below(apart / libm::hypot(s.pull.1, t.pull.1).max(1.0)))
        })
        .collect();
    (sorted.into_iter().map(|(piece, _)| piece).collect(), certainty)
}
