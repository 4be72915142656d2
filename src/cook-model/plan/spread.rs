//! How unsure a plan is of a piece's speed before anything was read.
use crate::piece::Piece;

/// Spread of the logarithm of the speed that all pieces of a cook share.
pub(super) const SHARED: f64 = 0.12;

/// Spread of the logarithm of one piece's own speed.
pub(super) fn own(piece: &Piece) -> f64 {
    let thickness = 1.7 * piece.thickness_spread();
    libm::sqrt(thickness * thickness + 0.08 * 0.08)
}

/// The value of a standard normal variable below which a share of its chances lies.
pub(super) fn normal_quantile(share: f64) -> f64 {
    let (mut low, mut high) = (-8.0, 8.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if 0.5 * libm::erfc(-middle / core::f64::consts::SQRT_2) < share {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
