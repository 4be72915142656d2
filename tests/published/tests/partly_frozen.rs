//! A start with ice left in the middle, against an explicit enthalpy scheme written for this test
//! (the formulation of Mannapperuma & Singh 1988, J. Food Sci. 53:626: heat is followed, and the
//! temperature found from it) on four times as many cells.

use cook_model::heat::{
    Body, Composition, HeatTransferCoefficient, Leg, Medium, Start, Surface, Surroundings, Trace,
    Tuning, trace,
};
use cook_model::piece::{Piece, Shape};
use cook_model::quantity::{Length, Mass, Temperature, minutes, to_minutes, to_seconds};

const HALF_M: f64 = 0.019;
const H: f64 = 20.0;
const AIR: f64 = 121.0;
const OUTSIDE: f64 = 3.0;
/// Where lean meat begins to freeze, C.
const FREEZES: f64 = -1.1;
/// Of the freezable water, how much is ice, and how far out.
const ICE: f64 = 0.4;
const ICY: f64 = 0.5;
/// Temperatures of the core, C, and the part by which the times they are reached may differ: the
/// model lets heat through ice too readily, which has faded by the time of a pull.
const TARGETS: [(f64, f64); 3] = [(10.0, 0.12), (40.0, 0.03), (71.1, 0.015)];

fn body() -> Body {
    Body::slab(Length::from_m(2.0 * HALF_M), Medium::raw_breast())
}

fn heated(body: &Body, start: Start) -> Trace {
    let surface = Surface::convective(HeatTransferCoefficient::from_w_per_m2k(H));
    let around = Surroundings::new(Leg::steady(surface, Temperature::from_c(AIR)));
    trace(body, start, &around, minutes(120.0), &Tuning::default())
}

fn icy() -> Start {
    Start::icy_middle(Temperature::from_c(OUTSIDE)).expect("it is not colder than ice outside")
}

/// Seconds until the core of the same slab is at each temperature, C, which rise.
fn explicit(targets: &[f64]) -> Vec<f64> {
    let meat = Composition::RAW_BREAST;
    let at = |c: f64| Temperature::from_c(c);
    let density = meat.density(at(5.0)).kg_per_m3();
    let capacity = |c: f64| density * meat.heat_capacity(at(c)).j_per_kgk();
    // Heat above freezing; the capacity is so nearly straight that its middle value serves.
    let heat = |c: f64| (c - FREEZES) * capacity(0.5 * (c + FREEZES));
    let celsius = |heat: f64| {
        let first = FREEZES + heat.max(0.0) / capacity(30.0);
        FREEZES + heat.max(0.0) / capacity(0.5 * (first + FREEZES))
    };
    let k = |c: f64| meat.conductivity(at(c)).w_per_mk();
    let latent = density * 333.6e3 * (73.90 - 0.4 * 22.50) / (73.90 + 22.50 + 2.62 + 1.1);
    let cells = 112;
    let width = HALF_M / f64::from(cells);
    let mut held: Vec<f64> = (0..cells)
        .map(|i| {
            let place = (f64::from(i) + 0.5) / f64::from(cells);
            if place < ICY { -ICE * latent } else { heat(OUTSIDE) * (place - ICY) / (1.0 - ICY) }
        })
        .collect();
    let step = 0.4 * width * width * capacity(60.0) / k(100.0);
    let (mut now, mut reached) = (0.0, Vec::new());
    while reached.len() < targets.len() {
        let t: Vec<f64> = held.iter().map(|heat| celsius(*heat)).collect();
        let mut inflow = 0.0;
        for i in 0..held.len() {
            let outward = match t.get(i + 1) {
                Some(next) => k(0.5 * (t[i] + next)) * (next - t[i]) / width,
                None => (AIR - t[i]) / (1.0 / H + 0.5 * width / k(t[i])),
            };
            held[i] += step * (outward - inflow) / width;
            inflow = outward;
        }
        now += step;
        while reached.len() < targets.len() && celsius(held[0]) >= targets[reached.len()] {
            reached.push(now);
        }
    }
    reached
}

#[test]
fn an_icy_middle_thaws_and_cooks_as_the_enthalpy_scheme_has_it() {
    let trace = heated(&body(), icy());
    let theirs = explicit(&TARGETS.map(|(target, _)| target));
    for ((target, within), theirs) in TARGETS.into_iter().zip(theirs) {
        let ours = trace.core_reaches(Temperature::from_c(target)).map_or(f64::NAN, to_seconds);
        assert!((ours / theirs - 1.0).abs() < within, "{target} C: {ours:.0} s, {theirs:.0} s");
    }
}

#[test]
fn the_middle_stands_still_until_its_ice_has_melted() {
    let trace = heated(&body(), icy());
    let even = heated(&body(), Start::cooked(Temperature::from_c(OUTSIDE)));
    for minute in [0.0, 2.0, 4.0] {
        let core = trace.core(minutes(minute)).c();
        assert!((core - FREEZES).abs() < 0.05, "{core} C after {minute} min");
    }
    let at =
        |trace: &Trace| trace.core_reaches(Temperature::from_f(160.0)).map_or(f64::NAN, to_minutes);
    let later = at(&trace) - at(&even);
    assert!((2.0..20.0).contains(&later), "{later} min later");
}

#[test]
fn its_ice_is_in_the_books() {
    let piece = Piece {
        weight: Mass::from_g(320.0),
        thickest: Some(Length::from_mm(38.0)),
        shape: Shape::Natural,
        start: Temperature::from_c(OUTSIDE),
        icy: true,
    };
    let start = Start::of_piece(&piece).expect("it is not colder than ice outside");
    let trace = heated(&Body::of_piece(&piece), start);
    let (stored, received) =
        (|m| trace.stored(minutes(m)).j_per_m2(), |m| trace.received(minutes(m)).j_per_m2());
    let off = received(60.0) - (stored(60.0) - stored(0.0));
    assert!(off.abs() < 1e-3 * received(60.0), "{off} of {} J/m2", received(60.0));
}
