//! Check 1: slab, cylinder and sphere against their series solutions (see [`published::series`] for
//! the source). `tables/eigenvalues.csv` agrees with the handbook's table of first roots to its last
//! digit.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use cook_model::heat::Body;
use published::series::{BIOTS, FOURIERS, Solid, run, span};

/// What the model may be off by, of the whole change of temperature.
const TOLERANCE: f64 = 0.002;

fn worst(solid: Solid, body: &Body, biots: &[f64], fouriers: &[f64]) -> (f64, String) {
    let mut worst = (0.0, String::new());
    for &biot in biots {
        let roots = solid.roots(biot);
        let trace = run(body, biot);
        for &fourier in fouriers {
            let at = span(fourier);
            for (x, got) in [(0.0, trace.core(at).c()), (1.0, trace.surface(at).c())] {
                let exact = solid.unfulfilled(&roots, fourier, x);
                let off = (got - exact).abs();
                if off > worst.0 {
                    worst = (off, format!("Bi {biot} Fo {fourier} x {x}: {got} for {exact}"));
                }
            }
        }
    }
    worst
}

#[test]
fn slab_cylinder_and_sphere_follow_their_series() {
    for solid in [Solid::Slab, Solid::Cylinder, Solid::Sphere] {
        let (off, what) = worst(solid, &solid.body(), &BIOTS, &FOURIERS);
        assert!(off < TOLERANCE, "{solid:?} off by {off}: {what}");
    }
}

#[test]
fn the_roots_are_those_of_the_handbook() {
    // Every row of the table, to its printed digits.
    let mut rows = 0;
    for row in include_str!("../tables/eigenvalues.csv").lines().skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        let solid = match cells[0] {
            "slab" => Solid::Slab,
            "cyl" => Solid::Cylinder,
            _ => Solid::Sphere,
        };
        let number = |i: usize| cells[i].parse::<f64>().unwrap();
        let roots = solid.roots(number(1));
        for (got, wanted) in [
            (roots[0], number(2)),
            (solid.coefficient(roots[0]), number(3)),
            (roots[1], number(4)),
            (roots[2], number(5)),
        ] {
            assert!((got - wanted).abs() < 6e-6, "{row}: {got} for {wanted}");
        }
        rows += 1;
    }
    assert_eq!(rows, 72);
}

#[test]
fn the_solver_is_second_order() {
    // Halving cells and steps twice divides the worst error by sixteen, here by more than ten, once
    // the jump at the start is past.
    for solid in [Solid::Slab, Solid::Cylinder, Solid::Sphere] {
        let error =
            |times| worst(solid, &solid.body().refined(times), &[1.0, 5.0], &FOURIERS[3..]).0;
        let (usual, finer) = (error(1), error(4));
        assert!(usual > 10.0 * finer, "{solid:?}: {usual} {finer}");
    }
}
