//! Exact series for the centre of a slab, a sphere and a brick with a convective surface
//! (Carslaw and Jaeger 1959, sections 3.11, 5.6 and 9.4), for checking the solver.

/// Roots are sought by bisection to this many halvings.
const HALVINGS: usize = 80;
/// Terms summed; at Fourier numbers above 0.02 the rest is below rounding.
const TERMS: usize = 40;

fn root(f: impl Fn(f64) -> f64, mut low: f64, mut high: f64) -> f64 {
    let sign = f(low).signum();
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if f(middle).signum() == sign { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

/// Unfulfilled temperature change at the centre of a slab, 0 to 1. `biot` and `fourier` are on the
/// half-thickness.
pub fn slab(biot: f64, fourier: f64) -> f64 {
    let pi = core::f64::consts::PI;
    (0..TERMS)
        .map(|n| {
            let low = n as f64 * pi;
            let z = root(|z| z * z.sin() - biot * z.cos(), low, low + 0.5 * pi);
            4.0 * z.sin() / (2.0 * z + (2.0 * z).sin()) * (-z * z * fourier).exp()
        })
        .sum()
}

/// Unfulfilled temperature change at the centre of a sphere, 0 to 1. `biot` and `fourier` are on
/// the radius.
pub fn sphere(biot: f64, fourier: f64) -> f64 {
    let pi = core::f64::consts::PI;
    (0..TERMS)
        .map(|n| {
            let low = n as f64 * pi + 1e-12;
            let z = root(|z| (1.0 - biot) * z.sin() - z * z.cos(), low, low + pi - 2e-12);
            4.0 * (z.sin() - z * z.cos()) / (2.0 * z - (2.0 * z).sin()) * (-z * z * fourier).exp()
        })
        .sum()
}

/// Unfulfilled temperature change at the centre of a brick, 0 to 1: the product of three slabs.
/// `biot` and `fourier` are on the first half-edge.
pub fn brick(half_edges: [f64; 3], biot: f64, fourier: f64) -> f64 {
    half_edges
        .iter()
        .map(|e| {
            let r = e / half_edges[0];
            slab(biot * r, fourier / (r * r))
        })
        .product()
}
