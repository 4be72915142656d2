//! Check 1: slab, cylinder and sphere against their series solutions.
//!
//! Source: Carslaw & Jaeger 1959, Conduction of Heat in Solids, 2nd ed., sections 3.11, 7.7 and 9.4
//! (Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, equations 5.39-5.51, give the same
//! with the table of first roots that `tables/eigenvalues.csv` agrees with to its last digit).
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use cook_model::heat::{
    Body, Conductivity, Diffusivity, HeatTransferCoefficient, Leg, Medium, Start, Surface,
    Surroundings, Trace, Tuning, trace,
};
use cook_model::quantity::{Length, Temperature, seconds};

/// What the model may be off by, of the whole change of temperature.
const TOLERANCE: f64 = 0.002;
/// Terms of the series; at Fourier number 0.02 the rest is under 1e-9.
const TERMS: usize = 40;

const HALF_M: f64 = 0.02;
const ALPHA: f64 = 1.4e-7;
const K: f64 = 0.5;
const BIOTS: [f64; 10] = [0.05, 0.1, 0.3, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0];
const FOURIERS: [f64; 10] = [0.02, 0.03, 0.05, 0.1, 0.2, 0.4, 0.8, 1.2, 2.0, 3.0];

#[derive(Clone, Copy, Debug, PartialEq)]
enum Solid {
    Slab,
    Cylinder,
    Sphere,
}

impl Solid {
    /// Zero at a root of the boundary condition.
    fn condition(self, z: f64, biot: f64) -> f64 {
        match self {
            Self::Slab => z * z.sin() - biot * z.cos(),
            Self::Cylinder => z * libm::j1(z) - biot * libm::j0(z),
            Self::Sphere => (1.0 - biot) * z.sin() - z * z.cos(),
        }
    }

    fn coefficient(self, z: f64) -> f64 {
        match self {
            Self::Slab => 4.0 * z.sin() / (2.0 * z + (2.0 * z).sin()),
            Self::Cylinder => {
                let (j0, j1) = (libm::j0(z), libm::j1(z));
                2.0 / z * j1 / (j0 * j0 + j1 * j1)
            }
            Self::Sphere => 4.0 * (z.sin() - z * z.cos()) / (2.0 * z - (2.0 * z).sin()),
        }
    }

    fn shape(self, z: f64, x: f64) -> f64 {
        match self {
            Self::Slab => (z * x).cos(),
            Self::Cylinder => libm::j0(z * x),
            Self::Sphere if x == 0.0 => 1.0,
            Self::Sphere => (z * x).sin() / (z * x),
        }
    }

    /// The roots, found by walking up in steps far shorter than they are apart, then halving.
    fn roots(self, biot: f64) -> Vec<f64> {
        let f = |z: f64| self.condition(z, biot);
        let (step, mut low, mut roots) = (0.05, 1e-9, Vec::new());
        while roots.len() < TERMS {
            let high = low + step;
            if f(low).signum() != f(high).signum() {
                let (mut a, mut b) = (low, high);
                for _ in 0..60 {
                    let middle = 0.5 * (a + b);
                    if f(a).signum() == f(middle).signum() { a = middle } else { b = middle }
                }
                roots.push(0.5 * (a + b));
            }
            low = high;
        }
        roots
    }

    fn body(self) -> Body {
        let medium = Medium::of_diffusivity(
            Conductivity::from_w_per_mk(K),
            Diffusivity::from_m2_per_s(ALPHA),
        );
        let across = Length::from_m(2.0 * HALF_M);
        match self {
            Self::Slab => Body::slab(across, medium),
            Self::Cylinder => Body::cylinder(across, medium),
            Self::Sphere => Body::sphere(across, medium),
        }
    }
}

/// A body at 1 C put into surroundings at 0 C.
fn run(body: &Body, biot: f64) -> Trace {
    let h = HeatTransferCoefficient::from_w_per_m2k(biot * K / HALF_M);
    let leg = Leg::steady(Surface::convective(h), Temperature::from_c(0.0));
    let longest = seconds(3.0 * HALF_M * HALF_M / ALPHA + 1.0);
    let start = Start::cooked(Temperature::from_c(1.0));
    trace(body, start, &Surroundings::new(leg), longest, &Tuning::default())
}

fn worst(solid: Solid, body: &Body, biots: &[f64], fouriers: &[f64]) -> (f64, String) {
    let mut worst = (0.0, String::new());
    for &biot in biots {
        let roots = solid.roots(biot);
        let trace = run(body, biot);
        for &fourier in fouriers {
            let at = seconds(fourier * HALF_M * HALF_M / ALPHA);
            for (x, got) in [(0.0, trace.core(at).c()), (1.0, trace.surface(at).c())] {
                let exact: f64 = roots
                    .iter()
                    .map(|z| {
                        let fading = (-z * z * fourier).exp();
                        solid.coefficient(*z) * fading * solid.shape(*z, x)
                    })
                    .sum();
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
