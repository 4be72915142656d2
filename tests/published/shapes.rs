//! Bricks and ellipsoids of breast-like proportions: the model, and what it is held to.
//!
//! Sources: for bricks the exact product of three slab series (Carslaw & Jaeger 1959, section 5.6);
//! for ellipsoids, which have none, the fine three-dimensional solution of this project's second
//! simulator, whose own tests hold it to the series for spheres and bricks.

use cook_model::heat::{
    Body, Conductivity, Diffusivity, HeatTransferCoefficient, Leg, Medium, Start, Surface,
    Surroundings, Trace, Tuning, trace,
};
use cook_model::piece::Dimensions;
use cook_model::quantity::{Length, Span, Temperature, seconds, to_seconds};
use twin::solid::{ellipsoid_centre_time, series};

/// Width over thickness, and length over width: 30 proportions.
pub const WIDTHS: [f64; 5] = [1.9, 2.2, 2.6, 3.1, 3.7];
/// See [`WIDTHS`].
pub const LENGTHS: [f64; 6] = [1.3, 1.5, 1.7, 1.9, 2.1, 2.3];
/// Biot numbers.
pub const BIOTS: [f64; 5] = [0.3, 0.8, 2.0, 5.0, 10.0];
/// Unfulfilled changes at the centre.
pub const RATIOS: [f64; 3] = [0.4, 0.2, 0.1];
/// Cells along each semi-axis of the fine solution: within 0.3 % of twice as many.
const FINE_CELLS: usize = 9;

const HALF_M: f64 = 0.02;
const ALPHA: f64 = 1.4e-7;
const K: f64 = 0.5;

/// A body of a width over the thickness, and a length over the width.
pub fn dimensions(width: f64, length: f64) -> Dimensions {
    let thickness = Length::from_m(2.0 * HALF_M);
    Dimensions { thickness, width: thickness * width, length: thickness * (width * length) }
}

/// Its medium.
pub fn medium() -> Medium {
    Medium::of_diffusivity(Conductivity::from_w_per_mk(K), Diffusivity::from_m2_per_s(ALPHA))
}

/// A body at 1 C cooling in surroundings at 0 C, to well below a tenth.
pub fn cooling(body: &Body, biot: f64) -> Trace {
    let h = HeatTransferCoefficient::from_w_per_m2k(biot * K / HALF_M);
    let leg = Leg::steady(Surface::convective(h), Temperature::from_c(0.0));
    let until = seconds((3.0 + 4.0 / biot) * HALF_M * HALF_M / ALPHA);
    let start = Start::cooked(Temperature::from_c(1.0));
    trace(body, start, &Surroundings::new(leg), until, &Tuning::default())
}

/// The Fourier number at which the centre has a part of its change still to come; not a number if
/// it never has.
pub fn fourier(trace: &Trace, ratio: f64) -> f64 {
    let at = trace.core_falls_to(Temperature::from_c(ratio), Span::zero());
    at.map_or(f64::NAN, to_seconds) * ALPHA / (HALF_M * HALF_M)
}

/// The exact one of a brick of such half-edges.
pub fn brick_fourier(half_edges: [f64; 3], biot: f64, ratio: f64) -> f64 {
    let (mut low, mut high) = (0.01, 60.0);
    for _ in 0..40 {
        let middle = 0.5 * (low + high);
        if series::brick(half_edges, biot, middle) > ratio { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

/// The fine solution's one of an ellipsoid of such half-axes.
pub fn ellipsoid_fourier(half_axes: [f64; 3], biot: f64, ratio: f64) -> f64 {
    ellipsoid_centre_time(half_axes, biot, ratio, FINE_CELLS)
}
