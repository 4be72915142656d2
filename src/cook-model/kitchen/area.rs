//! The surface a rub has to cover.

use core::f64::consts::PI;

use super::amounts::Area;
use crate::piece::{Piece, Shape};

/// Exponent of Thomsen's formula for the surface of an ellipsoid (K. Thomsen 2004; within 1.1 %
/// for any three axes).
const THOMSEN: f64 = 1.6075;

/// The whole surface of a raw piece, from the dimensions the heat model gives it: an ellipsoid,
/// or an oval plate where it was pounded even.
pub fn surface_area(piece: &Piece) -> Area {
    let size = piece.dimensions();
    // Half axes, cm.
    let [a, b, c] = [size.length, size.width, size.thickness].map(|d| d.mm() / 20.0);
    Area::from_cm2(match piece.shape {
        Shape::Natural | Shape::Thick => ellipsoid(a, b, c),
        Shape::Even => plate(a, b, 2.0 * c),
    })
}

fn ellipsoid(a: f64, b: f64, c: f64) -> f64 {
    let [a, b, c] = [a, b, c].map(|axis| libm::pow(axis, THOMSEN));
    4.0 * PI * libm::pow((a * b + a * c + b * c) / 3.0, 1.0 / THOMSEN)
}

/// Both faces and the edge of an ellipse of half axes `a` and `b`, so high. The perimeter is
/// Ramanujan's first approximation (1914).
fn plate(a: f64, b: f64, height: f64) -> f64 {
    let perimeter = PI * (3.0 * (a + b) - libm::sqrt((3.0 * a + b) * (a + 3.0 * b)));
    2.0 * PI * a * b + perimeter * height
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_formulas_meet_their_closed_forms() {
        // Sphere: 4 pi r^2. Oblate spheroid of axes 2, 2, 1: 34.688 (closed form
        // 2 pi a^2 (1 + (1 - e^2) / e artanh e), e^2 = 3/4). Disc of radius 3, height 2: 30 pi.
        assert!((ellipsoid(2.0, 2.0, 2.0) - 16.0 * PI).abs() < 1e-9);
        let e = libm::sqrt(0.75);
        let oblate = 8.0 * PI * (1.0 + 0.25 / e * libm::atanh(e));
        assert!((ellipsoid(2.0, 2.0, 1.0) / oblate - 1.0).abs() < 0.011);
        assert!((plate(3.0, 3.0, 2.0) - 30.0 * PI).abs() < 1e-9);
    }
}
