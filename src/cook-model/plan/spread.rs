//! How what is not known of a piece's time is shared among pieces.

use crate::forecast::prior;
use crate::piece::Piece;

/// A kelvin of air makes about this part of the time (the heat model at 250 F, 38 mm: 5 F are
/// 4.5 %).
pub(super) const PER_KELVIN: f64 = 0.016;

/// The share of the variance of ln(time), before any reading, that all pieces have in common.
pub(super) fn shared_part(piece: &Piece) -> f64 {
    let square = |x: f64| x * x;
    let shared = square(prior::shared_speed(core::iter::once(piece)))
        + square(PER_KELVIN * prior::SHARED_OFFSET);
    let own = square(prior::own_speed(piece))
        + square(PER_KELVIN * prior::OWN_OFFSET)
        + square(prior::PACE_OVER_A_COOK);
    shared / (shared + own)
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_of_the_normal_distribution() {
        // Any statistical table: the 50, 90, 97.5 and 99.9 % points.
        for (share, z) in [(0.5, 0.0), (0.9, 1.2816), (0.975, 1.9600), (0.999, 3.0902)] {
            assert!((normal_quantile(share) - z).abs() < 5e-5, "{share}");
        }
    }
}
