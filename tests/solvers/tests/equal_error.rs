//! The trace by the model's own steps and by the general methods, as they are timed, are both within
//! 0.1 F of the converged solution at every minute, and the general ones not needlessly closer.

use bench::Usual;
use cook_model::quantity::{Length, Mass, Temperature, TemperatureDifference};
use solvers::{Method, TIMED, TIMED_BUT_WRONG, cores, moments};

/// The error that counts as equal, F.
const ALLOWED: f64 = 0.1;
/// Tolerance at which a general method is taken to be converged.
const CONVERGED: TemperatureDifference = TemperatureDifference::from_c(1e-4);
/// With so many times the tolerance, no timed method is within the allowed error any more.
const TOO_COARSE: f64 = 1.2;

/// The core at every minute.
fn general(usual: &Usual, method: Method, tolerance: TemperatureDifference) -> Vec<Temperature> {
    cores(usual, method, tolerance, &moments()).unwrap()
}

fn own(usual: &Usual) -> Vec<Temperature> {
    let trace = usual.trace();
    moments().into_iter().map(|at| trace.core(at)).collect()
}

/// The largest difference, F.
fn apart(a: &[Temperature], b: &[Temperature]) -> f64 {
    assert_eq!(a.len(), b.len());
    a.iter().zip(b).map(|(a, b)| (*a - *b).f().abs()).fold(0.0, f64::max)
}

#[test]
fn two_general_methods_converge_to_the_same_solution() {
    let usual = Usual::new();
    let implicit = general(&usual, Method::Radau5, CONVERGED);
    let explicit = general(&usual, Method::DormandPrince, CONVERGED);
    let off = apart(&implicit, &explicit);
    assert!(off < 1e-3, "{off} F");
}

#[test]
fn own_steps_are_within_a_tenth_of_a_degree() {
    for (g, mm) in [(150.0, 25.0), (320.0, 38.0), (420.0, 45.0)] {
        let usual = Usual::of(Mass::from_g(g), Length::from_mm(mm));
        let off = apart(&own(&usual), &general(&usual, Method::Radau5, CONVERGED));
        println!("{mm} mm: {off:.4} F");
        assert!(off < ALLOWED, "{mm} mm: {off} F");
    }
}

#[test]
fn the_timed_tolerances_are_the_largest_that_give_the_same_error() {
    let usual = Usual::new();
    let exact = general(&usual, Method::Radau5, CONVERGED);
    for (method, tolerance) in TIMED {
        let off = apart(&general(&usual, method, tolerance), &exact);
        println!("{method:?}: {off:.4} F");
        assert!(off < ALLOWED, "{method:?}: {off} F");
        let coarse = TemperatureDifference::from_c(TOO_COARSE * tolerance.c());
        let coarser = apart(&general(&usual, method, coarse), &exact);
        assert!(coarser > ALLOWED, "{method:?} at {coarse:?}: {coarser} F");
    }
}

#[test]
fn backward_differentiation_gives_no_trace_within_the_allowed_error() {
    let usual = Usual::new();
    let exact = general(&usual, Method::Radau5, CONVERGED);
    let (method, tolerance) = TIMED_BUT_WRONG;
    let off = apart(&general(&usual, method, tolerance), &exact);
    assert!(off > ALLOWED, "it does now: {off} F; time it with the others");
}
