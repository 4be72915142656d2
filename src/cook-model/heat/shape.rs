//! From three dimensions to one coordinate: the geometry exponent and the edge factor.
//!
//! The exponent is the one whose slowest mode, with the surface held at the air's temperature,
//! dies away as fast as the true body's; the edge factor then makes up the true body's surface for
//! its volume, which rules when the surface resists. This is the equivalent heat transfer
//! dimensionality of Cleland & Earle (1982, J. Food Sci. 47) taken at both its limits at once.

use crate::piece::Dimensions;

const PI: f64 = core::f64::consts::PI;

/// Exponent and edge factor of a brick.
pub(super) fn brick(d: &Dimensions) -> (f64, f64) {
    let (b1, b2) = ratios(d);
    let slowest = PI * PI / 4.0 * (1.0 + 1.0 / (b1 * b1) + 1.0 / (b2 * b2));
    let exponent = exponent_of(slowest);
    (exponent, (1.0 + 1.0 / b1 + 1.0 / b2) / exponent)
}

/// Exponent and edge factor of an ellipsoid.
pub(super) fn ellipsoid(d: &Dimensions) -> (f64, f64) {
    let (b1, b2) = ratios(d);
    // Lin, Cleland, Cleland & Serrallach 1996, in ASHRAE Handbook Refrigeration: E at high Bi.
    let f = |b: f64| 1.0 / (b * b) + 0.01 * libm::exp(b - b * b / 6.0);
    let dimensionality = 0.75 + 1.01 * f(b1) + 1.24 * f(b2);
    let exponent = exponent_of(dimensionality * PI * PI / 3.0);
    (exponent, surface_over_volume(b1, b2) / exponent)
}

/// Width and length over thickness.
fn ratios(d: &Dimensions) -> (f64, f64) {
    (d.width.m() / d.thickness.m(), d.length.m() / d.thickness.m())
}

/// The exponent whose first eigenvalue squared, with the surface held, is `square`.
///
/// The eigenvalue is the first zero of the Bessel function of order `n/2 - 1`; its square is
/// `pi^2/4`, 5.7832 and `pi^2` for `n` = 1, 2, 3, and the quadratic through these serves between.
fn exponent_of(square: f64) -> f64 {
    const SLAB: f64 = PI * PI / 4.0;
    const CYLINDER: f64 = 5.783_186;
    const SPHERE: f64 = PI * PI;
    let rise = CYLINDER - SLAB;
    let bend = (SPHERE - 2.0 * CYLINDER + SLAB) / 2.0;
    let b = rise - bend;
    let m = (libm::sqrt(b * b + 4.0 * bend * (square - SLAB)) - b) / (2.0 * bend);
    1.0 + m
}

/// Half-thickness times surface over volume of an ellipsoid of half-axes 1, b1, b2 (Thomsen's
/// formula, within 1.1 %).
fn surface_over_volume(b1: f64, b2: f64) -> f64 {
    const P: f64 = 1.6075;
    let (x, y) = (libm::pow(b1, P), libm::pow(b2, P));
    let mean = libm::pow((x + y + x * y) / 3.0, 1.0 / P);
    3.0 * mean / (b1 * b2)
}
