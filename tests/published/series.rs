//! Slab, cylinder and sphere: their series solutions, and the model beside them.
//!
//! Source: Carslaw & Jaeger 1959, Conduction of Heat in Solids, 2nd ed., sections 3.11, 7.7 and 9.4
//! (Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, equations 5.39-5.51).

use cook_model::heat::{
    Body, Conductivity, Diffusivity, HeatTransferCoefficient, Leg, Medium, Start, Surface,
    Surroundings, Trace, Tuning, trace,
};
use cook_model::quantity::{Length, Span, Temperature, seconds};

/// Terms of the series; at Fourier number 0.02 the rest is under 1e-9.
const TERMS: usize = 40;

const HALF_M: f64 = 0.02;
const ALPHA: f64 = 1.4e-7;
const K: f64 = 0.5;
/// Biot numbers checked.
pub const BIOTS: [f64; 10] = [0.05, 0.1, 0.3, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0];
/// Fourier numbers checked.
pub const FOURIERS: [f64; 10] = [0.02, 0.03, 0.05, 0.1, 0.2, 0.4, 0.8, 1.2, 2.0, 3.0];

/// A solid that has a series solution along one coordinate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Solid {
    /// Heated from both faces.
    Slab,
    /// Long.
    Cylinder,
    /// All round.
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

    /// The coefficient that goes with a root.
    pub fn coefficient(self, z: f64) -> f64 {
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
    pub fn roots(self, biot: f64) -> Vec<f64> {
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

    /// The model's body.
    pub fn body(self) -> Body {
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

    /// The unfulfilled change at a place, 0 the middle, 1 the surface.
    pub fn unfulfilled(self, roots: &[f64], fourier: f64, x: f64) -> f64 {
        let term = |z: &f64| self.coefficient(*z) * (-z * z * fourier).exp() * self.shape(*z, x);
        roots.iter().map(term).sum()
    }
}

/// The span that a Fourier number stands for.
pub fn span(fourier: f64) -> Span {
    seconds(fourier * HALF_M * HALF_M / ALPHA)
}

/// A body at 1 C put into surroundings at 0 C.
pub fn run(body: &Body, biot: f64) -> Trace {
    let h = HeatTransferCoefficient::from_w_per_m2k(biot * K / HALF_M);
    let leg = Leg::steady(Surface::convective(h), Temperature::from_c(0.0));
    let longest = seconds(3.0 * HALF_M * HALF_M / ALPHA + 1.0);
    let start = Start::cooked(Temperature::from_c(1.0));
    trace(body, start, &Surroundings::new(leg), longest, &Tuning::default())
}
