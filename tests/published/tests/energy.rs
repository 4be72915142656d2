//! Check 8: energy is conserved, to 0.1 %.
//!
//! What enters is worked out here from the trace's surface temperature alone, with the laws written
//! anew: Newton, Stefan-Boltzmann, and the Lewis relation with Antoine's equation (Incropera &
//! DeWitt, chapters 1 and 6).
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use cook_model::heat::{
    Body, Leg, Medium, PitKind, Start, Surface, Surroundings, Trace, Tuning, resume, trace,
};
use cook_model::piece::{Piece, Shape};
use cook_model::quantity::{Length, Mass, Temperature, minutes};

const TOLERANCE: f64 = 1e-3;

/// Heat in by convection and radiation, and out by evaporation, W/m2.
fn fluxes(surface: &Surface, at: f64, air: f64, lost: f64) -> (f64, f64) {
    let h = surface.convection.w_per_m2k();
    let fourth = |t: f64| (t + 273.15).powi(4);
    let sensible =
        h * (air - at) + surface.emissivity * 5.670374419e-8 * (fourth(air) - fourth(at));
    let Some(evaporation) = surface.evaporation else { return (sensible, 0.0) };
    let saturated = 0.133322 * 10f64.powf(8.07131 - 1730.63 / (233.426 + at));
    let vapour = evaporation.vapour.kpa();
    let half = evaporation.halves_after.kg_per_m2();
    let wetness = if saturated < vapour { 1.0 } else { half / (half + lost.max(0.0)) };
    let drive = ((101.325 - vapour) / (101.325 - saturated)).ln();
    let water = wetness * h / (1013.0 * 0.9) * 0.622 * drive;
    (sensible, water * (2.501e6 - 2440.0 * at))
}

fn slab_cook(refinement: usize) -> (Surface, Trace) {
    let surface = Surface::pit(PitKind::Indirect);
    let around = Surroundings::new(Leg::pit(surface, &[], Temperature::from_c(121.0)));
    let body = Body::slab(Length::from_mm(38.0), Medium::raw_breast()).refined(refinement);
    let start = Start::even(Temperature::from_c(4.0)).unwrap();
    (surface, trace(&body, start, &around, minutes(90.0), &Tuning::default()))
}

/// The books of a cook from a minute on: heat received, evaporated and stored, J/m2.
fn books(surface: &Surface, trace: &Trace, from: f64) -> [f64; 3] {
    let to = 90.0;
    let steps = 8000;
    let step = (to - from) / f64::from(steps);
    let (mut sensible, mut evaporated) = (0.0, 0.0);
    for i in 0..steps {
        let at = minutes(from + (f64::from(i) + 0.5) * step);
        let lost = trace.evaporated(at).kg_per_m2();
        let (gain, loss) = fluxes(surface, trace.surface(at).c(), 121.0, lost);
        sensible += gain * step * 60.0;
        evaporated += loss * step * 60.0;
    }
    let stored = |minute: f64| trace.stored(minutes(minute)).j_per_m2();
    let received = |minute: f64| trace.received(minutes(minute)).j_per_m2();
    let own = received(to) - received(from);
    assert!((sensible / own - 1.0).abs() < TOLERANCE, "{sensible} worked out, {own} kept");
    [sensible, evaporated, stored(to) - stored(from)]
}

#[test]
fn heat_in_is_heat_stored_and_evaporated() {
    // On the usual steps from when the surface no longer races ahead of what can be read off
    // between them; on finer steps from the first minute on.
    for (refinement, from) in [(1, 30.0), (4, 1.0)] {
        let (surface, trace) = slab_cook(refinement);
        let [sensible, evaporated, stored] = books(&surface, &trace, from);
        let balance = sensible - evaporated - stored;
        assert!(balance.abs() < TOLERANCE * sensible, "{balance} of {sensible} J/m2 is lost");
        assert!(evaporated > 0.1 * sensible && stored > 0.1 * sensible);
    }
}

#[test]
fn a_whole_breast_balances_through_cook_and_rest() {
    // Without evaporation what a breast has received is what it has stored, on both coordinates,
    // while it heats and while it cools.
    let piece = Piece {
        weight: Mass::from_g(320.0),
        thickest: Some(Length::from_mm(38.0)),
        shape: Shape::Natural,
        start: Temperature::from_c(4.0),
    };
    let body = Body::of_piece(&piece);
    let start = Start::even(piece.start).unwrap();
    let dry = Surface { evaporation: None, ..Surface::pit(PitKind::Pellet) };
    let around = Surroundings::new(Leg::pit(dry, &[], Temperature::from_c(121.0)));
    let on = trace(&body, start, &around, minutes(40.0), &Tuning::default());
    let around =
        around.then(minutes(40.0), Leg::steady(Surface::under_foil(), Temperature::from_c(20.0)));
    let rest = resume(&body, &on.state(minutes(40.0)), &around, minutes(100.0), &Tuning::default());
    let most = rest.received(minutes(40.0)).j_per_m2();
    assert!(rest.received(minutes(100.0)).j_per_m2() < 0.9 * most);
    for (trace, at) in [(&on, 10.0), (&on, 40.0), (&rest, 50.0), (&rest, 100.0)] {
        let stored = trace.stored(minutes(at)).j_per_m2() - on.stored(minutes(0.0)).j_per_m2();
        let off = trace.received(minutes(at)).j_per_m2() - stored;
        assert!(off.abs() < TOLERANCE * most, "{off} of {most} J/m2 at {at} min");
    }
}
