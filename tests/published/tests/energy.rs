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

/// Heat a cook has received, evaporated and stored from a minute on, J/m2.
struct Books {
    received: f64,
    evaporated: f64,
    stored: f64,
}

impl Books {
    fn assert_balanced(&self) {
        let lost = self.received - self.evaporated - self.stored;
        assert!(lost.abs() < TOLERANCE * self.received, "{lost} of {} J/m2", self.received);
        assert!(self.evaporated > 0.1 * self.received && self.stored > 0.1 * self.received);
    }
}

/// Until the surface is at some 85 C: from 88 C on the model lets the drive of evaporation level
/// off.
const TO: f64 = 70.0;

/// As the trace itself keeps them, the water by its heat of vaporisation (steam table, straight
/// between 2501 kJ/kg at 0 C and 2257 at 100 C).
fn kept(trace: &Trace, from: f64) -> Books {
    let rise = |f: &dyn Fn(f64) -> f64| f(TO) - f(from);
    let steps = 2000;
    let step = (TO - from) / f64::from(steps);
    let evaporated = (0..steps)
        .map(|i| {
            let at = |part: f64| minutes(from + (f64::from(i) + part) * step);
            let water = |part: f64| trace.evaporated(at(part)).kg_per_m2();
            (water(1.0) - water(0.0)) * (2.501e6 - 2440.0 * trace.surface(at(0.5)).c())
        })
        .sum();
    Books {
        received: rise(&|minute| trace.received(minutes(minute)).j_per_m2()),
        evaporated,
        stored: rise(&|minute| trace.stored(minutes(minute)).j_per_m2()),
    }
}

/// By the laws, from the surface's temperature.
fn worked_out(surface: &Surface, trace: &Trace, from: f64) -> Books {
    let steps = 8000;
    let step = (TO - from) / f64::from(steps);
    let mut books = Books { received: 0.0, evaporated: 0.0, ..kept(trace, from) };
    for i in 0..steps {
        let at = minutes(from + (f64::from(i) + 0.5) * step);
        let lost = trace.evaporated(at).kg_per_m2();
        let (gain, loss) = fluxes(surface, trace.surface(at).c(), 121.0, lost);
        books.received += gain * step * 60.0;
        books.evaporated += loss * step * 60.0;
    }
    books
}

#[test]
fn heat_in_is_heat_stored_and_evaporated() {
    let (_, trace) = slab_cook(1);
    assert!(trace.surface(minutes(TO)).c() < 88.0);
    for from in [0.0, 5.0, 20.0] {
        kept(&trace, from).assert_balanced();
    }
}

#[test]
fn heat_by_the_laws_is_heat_stored_and_evaporated() {
    // On steps fine enough to read the surface off between them to 0.02 C: 0.05 C of it are 0.1 %
    // of the heat.
    let (surface, trace) = slab_cook(4);
    for from in [1.0, 20.0] {
        worked_out(&surface, &trace, from).assert_balanced();
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
        icy: false,
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
