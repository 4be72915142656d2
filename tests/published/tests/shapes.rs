//! Check 2: bricks and ellipsoids of breast-like proportions.
//!
//! Sources: for bricks the exact product of three slab series (Carslaw & Jaeger 1959, section 5.6);
//! for ellipsoids, which have none, the fine three-dimensional solution of this project's second
//! simulator, whose own tests hold it to the series for spheres and bricks.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use cook_model::heat::{
    Body, Conductivity, Diffusivity, HeatTransferCoefficient, Leg, Medium, Start, Surface,
    Surroundings, Trace, Tuning, trace,
};
use cook_model::piece::Dimensions;
use cook_model::quantity::{Length, Span, Temperature, seconds, to_seconds};
use twin::solid::{ellipsoid_centre_time, series};

/// Largest part by which a time may be off.
const TOLERANCE: f64 = 0.04;
/// Width over thickness, and length over width: 30 proportions.
const WIDTHS: [f64; 5] = [1.9, 2.2, 2.6, 3.1, 3.7];
const LENGTHS: [f64; 6] = [1.3, 1.5, 1.7, 1.9, 2.1, 2.3];
const BIOTS: [f64; 5] = [0.3, 0.8, 2.0, 5.0, 10.0];
const RATIOS: [f64; 3] = [0.4, 0.2, 0.1];
/// Cells along each semi-axis of the fine solution: within 0.3 % of twice as many.
const FINE_CELLS: usize = 9;

const HALF_M: f64 = 0.02;
const ALPHA: f64 = 1.4e-7;
const K: f64 = 0.5;

fn dimensions(width: f64, length: f64) -> Dimensions {
    let thickness = Length::from_m(2.0 * HALF_M);
    Dimensions { thickness, width: thickness * width, length: thickness * (width * length) }
}

fn medium() -> Medium {
    Medium::of_diffusivity(Conductivity::from_w_per_mk(K), Diffusivity::from_m2_per_s(ALPHA))
}

/// A body at 1 C cooling in surroundings at 0 C, to well below a tenth.
fn cooling(body: &Body, biot: f64) -> Trace {
    let h = HeatTransferCoefficient::from_w_per_m2k(biot * K / HALF_M);
    let leg = Leg::steady(Surface::convective(h), Temperature::from_c(0.0));
    let until = seconds((3.0 + 4.0 / biot) * HALF_M * HALF_M / ALPHA);
    let start = Start::cooked(Temperature::from_c(1.0));
    trace(body, start, &Surroundings::new(leg), until, &Tuning::default())
}

/// The Fourier number at which the centre has a part of its change still to come.
fn fourier(trace: &Trace, ratio: f64) -> f64 {
    let at = trace.core_falls_to(Temperature::from_c(ratio), Span::zero()).unwrap();
    to_seconds(at) * ALPHA / (HALF_M * HALF_M)
}

fn brick_fourier(half_edges: [f64; 3], biot: f64, ratio: f64) -> f64 {
    let (mut low, mut high) = (0.01, 60.0);
    for _ in 0..40 {
        let middle = 0.5 * (low + high);
        if series::brick(half_edges, biot, middle) > ratio { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

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
    let (off, what) = worst(Body::ellipsoid, |axes, biot, ratio| {
        ellipsoid_centre_time(axes, biot, ratio, FINE_CELLS)
    });
    assert!(off < TOLERANCE, "off by {off}: {what}");
}
