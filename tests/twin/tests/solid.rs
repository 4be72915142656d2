//! The conduction solver against exact series (Carslaw and Jaeger 1959), and its own convergence
//! where no series exists.

use core::f64::consts::PI;

use twin::solid::{self, Body, Brick, Constant, Ellipsoid, Field, Mesh, series};

/// Largest departure from an exact series at 12 cells along the shortest semi-axis; 0.1 % was seen
/// on spheres and 0.2 % on bricks.
const SERIES_TOLERANCE: f64 = 0.004;
/// Largest change of an ellipsoid's answer from 8 to 16 cells; 0.2 % was seen.
const CONVERGENCE_TOLERANCE: f64 = 0.005;
/// Heat may only be lost to rounding.
const ENERGY_TOLERANCE: f64 = 1e-9;

const BIOTS: [f64; 4] = [0.3, 1.0, 3.0, 10.0];
const RATIO: f64 = 0.4;

/// The Fourier number at which an exact centre solution falls to `ratio`, by bisection.
fn fourier_at(ratio: f64, centre: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (0.0, 100.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if centre(middle) > ratio { low = middle } else { high = middle }
    }
    low
}

#[track_caller]
fn assert_close(got: f64, wanted: f64, relative: f64) {
    assert!((got / wanted - 1.0).abs() <= relative, "got {got}, wanted {wanted}");
}

#[test]
fn sphere_centre_follows_the_series() {
    for biot in BIOTS {
        let exact = fourier_at(RATIO, |f| series::sphere(biot, f));
        assert_close(
            solid::ellipsoid_centre_time([1.0; 3], biot, RATIO, 12),
            exact,
            SERIES_TOLERANCE,
        );
    }
}

#[test]
fn brick_centre_follows_the_product_of_slabs() {
    let half_edges = [1.0, 2.0, 3.0];
    for biot in BIOTS {
        let exact = fourier_at(RATIO, |f| series::brick(half_edges, biot, f));
        assert_close(
            solid::brick_centre_time(half_edges, biot, RATIO, 12),
            exact,
            SERIES_TOLERANCE,
        );
    }
}

#[test]
fn ellipsoid_answers_settle_as_the_mesh_gets_finer() {
    for semi_axes in [[1.0, 2.5, 4.0], [1.0, 1.0, 4.0]] {
        for biot in [0.5, 3.0] {
            let coarse = solid::ellipsoid_centre_time(semi_axes, biot, RATIO, 8);
            let fine = solid::ellipsoid_centre_time(semi_axes, biot, RATIO, 16);
            assert_close(coarse, fine, CONVERGENCE_TOLERANCE);
        }
    }
}

#[test]
fn an_ellipsoid_lies_between_its_sphere_and_its_slab() {
    let ellipsoid = solid::ellipsoid_centre_time([1.0, 2.5, 4.0], 1.0, RATIO, 8);
    let sphere = fourier_at(RATIO, |f| series::sphere(1.0, f));
    let slab = fourier_at(RATIO, |f| series::slab(1.0, f));
    assert!(sphere < ellipsoid && ellipsoid < slab, "{sphere} {ellipsoid} {slab}");
}

#[test]
fn slab_and_sphere_series_give_the_one_term_table_values() {
    // First terms at Bi 1, Incropera table 5.1: slab 0.8603, 1.1191; sphere 1.5708, 1.2732.
    let late = 2.0_f64;
    assert_close(series::slab(1.0, late), 1.1191 * (-0.8603_f64.powi(2) * late).exp(), 2e-4);
    assert_close(series::sphere(1.0, late), 1.2732 * (-(0.5 * PI).powi(2) * late).exp(), 2e-4);
}

fn octant(extent: [f64; 3], cells: usize) -> Mesh {
    Mesh { origin: [0.0; 3], spacing: extent.map(|e| e / cells as f64), count: [cells; 3] }
}

#[test]
fn cut_cells_keep_volume_and_surface() {
    let ball = Body::new(&Ellipsoid { semi_axes: [1.0; 3] }, octant([1.0; 3], 12));
    assert_close(ball.volume(), 4.0 / 3.0 * PI / 8.0, 0.002);
    assert_close(ball.area(), 4.0 * PI / 8.0, 0.005);
    // A prolate ellipsoid's surface in closed form: 2 pi a^2 (1 + c/(a e) asin e).
    let (a, c) = (1.0_f64, 4.0_f64);
    let e = (1.0 - a * a / (c * c)).sqrt();
    let long = Body::new(&Ellipsoid { semi_axes: [a, a, c] }, octant([a, a, c], 12));
    assert_close(long.area(), 2.0 * PI * a * a * (1.0 + c / (a * e) * e.asin()) / 8.0, 0.005);
    let brick = Body::new(&Brick { half_edges: [1.0, 2.0, 3.0] }, octant([1.0, 2.0, 3.0], 5));
    assert_close(brick.volume(), 6.0, 1e-9);
    assert_close(brick.area(), 11.0, 1e-9);
}

#[test]
fn heat_that_enters_is_heat_that_is_stored() {
    let body = Body::new(&Ellipsoid { semi_axes: [1.0, 2.0, 3.0] }, octant([1.0, 2.0, 3.0], 8));
    let unit = Constant { conductivity: 1.0, heat_capacity: 1.0 };
    let step = 0.5 * solid::longest_step(&body, 1.0, 2.0);
    let mut field = Field::uniform(&body, 0.0);
    let mut entered = 0.0;
    for _ in 0..300 {
        entered += field.advance(&body, &unit, step, |p, t, _| {
            (1.0 - t) * solid::robin(2.0, body.patches[p].gap)
        });
    }
    assert!(entered > 0.1 * body.volume());
    assert_close(field.heat(&body, 1.0), entered, ENERGY_TOLERANCE);
}
