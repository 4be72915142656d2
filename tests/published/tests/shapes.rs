//! Check 2: bricks and ellipsoids of breast-like proportions (see [`published::shapes`] for the
//! sources).

use cook_model::heat::{Body, Medium};
use cook_model::piece::Dimensions;
use published::shapes::{
    BIOTS, LENGTHS, RATIOS, WIDTHS, brick_fourier, cooling, dimensions, ellipsoid_fourier, fourier,
    medium,
};

/// Largest part by which a time may be off.
const TOLERANCE: f64 = 0.04;

/// Worst departure over all proportions, Biot numbers and ratios.
fn worst(
    body: impl Fn(&Dimensions, Medium) -> Body,
    exact: impl Fn([f64; 3], f64, f64) -> f64,
) -> (f64, String) {
    let mut worst = (0.0, String::new());
    for width in WIDTHS {
        for length in LENGTHS {
            let body = body(&dimensions(width, length), medium());
            for biot in BIOTS {
                let trace = cooling(&body, biot);
                for ratio in RATIOS {
                    let exact = exact([1.0, width, width * length], biot, ratio);
                    let off = (fourier(&trace, ratio) / exact - 1.0).abs();
                    assert!(off.is_finite());
                    if off > worst.0 {
                        worst = (off, format!("{width} {length} Bi {biot} to {ratio}"));
                    }
                }
            }
        }
    }
    worst
}

#[test]
fn bricks_follow_the_product_solution() {
    let (off, what) = worst(Body::brick, brick_fourier);
    assert!(off < TOLERANCE, "off by {off}: {what}");
}

#[test]
fn ellipsoids_follow_the_fine_solution() {
    let (off, what) = worst(Body::ellipsoid, ellipsoid_fourier);
    assert!(off < TOLERANCE, "off by {off}: {what}");
}
