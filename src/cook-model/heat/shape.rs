//! From three dimensions to a curvature, a reach and a footprint's exponent.
//!
//! The form of the reduction follows from the geometry; its coefficients were fitted, once, to the
//! times at which a centre reaches 0.4 and 0.1 of its way still to go, in 30 bodies of breast-like
//! proportions (width 1.8 to 3.7 times the thickness, length 1.2 to 2.3 times the width) at Biot
//! numbers 0.3 to 10: for bricks by the exact product of three slab series, for ellipsoids by a fine
//! three-dimensional solution. The fit holds to 2.1 % for ellipsoids and 3.1 % for bricks.
//!
//! Cleland & Earle's equivalent heat transfer dimensionality (1982, J. Food Sci. 47; Lin, Cleland,
//! Cleland & Serrallach 1996) reduces the same bodies to one coordinate. It serves for one time of
//! one process at one Biot number; at any time and with changing surroundings the best single
//! coordinate is 5 to 9 % off over the same range, because heat from the edges arrives later than
//! heat through the faces. Hence the second coordinate here.

use crate::piece::Dimensions;

const PI: f64 = core::f64::consts::PI;

/// A solid reduced to what the solver wants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Reduced {
    /// How the middle thins away: the sum of the surface's curvatures there, in half-thicknesses.
    pub curvature: f64,
    /// Half of the shorter of width and length, in half-thicknesses.
    pub reach: f64,
    /// The footprint's exponent: 1 a long strip, 2 a disc.
    pub exponent: f64,
    /// How unevenly heat from the edge spreads over the thickness.
    pub bend: f64,
    /// The same solid on one coordinate, coarser: its exponent, and how much more surface it has for
    /// its volume than that coordinate gives it.
    pub single: (f64, f64),
    /// How many times an upright edge counts: the corners of a brick, which a footprint without
    /// them lacks, are nearer to the air than the rest of it.
    pub edge: f64,
}

/// A brick.
pub(super) fn brick(d: &Dimensions) -> Reduced {
    let (reach, ratio) = proportions(d);
    let exponent = 1.0 + 0.776 * libm::pow(reach / 2.5, -0.234) * libm::pow(ratio, -2.95);
    let (b1, b2) = (reach, reach * ratio);
    let slowest = PI * PI / 4.0 * (1.0 + 1.0 / (b1 * b1) + 1.0 / (b2 * b2));
    let single = single(slowest, 1.0 + 1.0 / b1 + 1.0 / b2);
    Reduced { curvature: 0.0, reach, exponent, bend: 0.0, single, edge: 1.133 }
}

/// An ellipsoid.
pub(super) fn ellipsoid(d: &Dimensions) -> Reduced {
    let (reach, ratio) = proportions(d);
    let curvature = 1.492 * (1.0 + 1.0 / (ratio * ratio)) / (reach * reach);
    let exponent = 1.0 + 1.287 * libm::pow(reach / 2.5, -0.208) * libm::pow(ratio, -1.247);
    let (b1, b2) = (reach, reach * ratio);
    // Lin, Cleland, Cleland & Serrallach 1996, in ASHRAE Handbook Refrigeration: E at high Bi.
    let f = |b: f64| 1.0 / (b * b) + 0.01 * libm::exp(b - b * b / 6.0);
    let dimensionality = 0.75 + 1.01 * f(b1) + 1.24 * f(b2);
    let single = single(dimensionality * PI * PI / 3.0, surface_over_volume(b1, b2));
    Reduced { curvature, reach, exponent, bend: 2.227, single, edge: 0.0 }
}

/// The shorter of width and length over the thickness, and the longer over the shorter. A piece
/// higher than it is wide is taken as wide as it is high.
fn proportions(d: &Dimensions) -> (f64, f64) {
    let (width, length) = (d.width.m(), d.length.m());
    let (short, long) = (width.min(length), width.max(length));
    ((short / d.thickness.m()).max(1.0), long / short)
}

/// Exponent and edge factor of one coordinate whose slowest mode with the surface held dies away as
/// fast, and which has as much surface for its volume: Cleland & Earle's dimensionality at both its
/// limits.
fn single(slowest_squared: f64, surface_over_volume: f64) -> (f64, f64) {
    let exponent = exponent_of(slowest_squared);
    (exponent, surface_over_volume / exponent)
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
