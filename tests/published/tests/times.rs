//! Times to the pull as the app itself foretells them: through the log, the fold and the forecast.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use chrono::DateTime;
use cook_model::cook::{Log, What, fold};
use cook_model::forecast::forecast;
use cook_model::heat::PitKind;
use cook_model::heat::{Body, Leg, LidResponse, Start, Surface, Surroundings, Tuning, trace};
use cook_model::history::DeviceId;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Mass, Temperature, seconds, to_minutes};

/// Grams in an ounce.
const OUNCE: f64 = 28.35;

fn breast(ounces: f64) -> Piece {
    Piece {
        weight: Mass::from_g(OUNCE * ounces),
        thickest: None,
        shape: Shape::Natural,
        start: Temperature::from_f(40.0),
        icy: false,
    }
}

/// Minutes from putting it on to 160 F, as the app foretells them.
fn foretold(ounces: f64, set: f64) -> f64 {
    let now = DateTime::from_timestamp(1_780_000_000, 0).unwrap();
    let piece = PieceId(1);
    let facts = breast(ounces);
    let mut log = Log::default();
    for what in [What::PieceSetOut { piece, facts, name: String::new() }, What::PutOn { piece }] {
        log.insert(log.next(DeviceId(1), now, now, what));
    }
    let mut history = fold(&log).history;
    history.pit.target = Temperature::from_f(set);
    history.pit.aims.clear();
    history.pieces[0].pull_at = Temperature::from_f(160.0);
    to_minutes(forecast(&history, now).pieces[0].pull.unwrap().middle - now)
}

/// Common practice, no source: breasts of 6 to 12 oz take about 60-90 min at 225 F, 45-75 at 250, 40-55
/// at 275 and 30-45 at 300. "About": a tenth either way, and the middle weight well inside.
#[test]
fn breasts_take_the_times_of_the_trade() {
    for (set, from, to) in
        [(225.0, 60.0, 90.0), (250.0, 45.0, 75.0), (275.0, 40.0, 55.0), (300.0, 30.0, 45.0)]
    {
        let [small, usual, large] = [6.0, 8.5, 12.0].map(|ounces| foretold(ounces, set));
        assert!((from * 0.9..to * 1.1).contains(&small), "6 oz at {set} F: {small}");
        assert!((from..to).contains(&usual), "8.5 oz at {set} F: {usual}");
        assert!((from * 0.9..to * 1.2).contains(&large), "12 oz at {set} F: {large}");
    }
}

/// USDA's roasting table (from memory): boneless breast halves of 4 oz at 350 F, 20 to 30 min. An oven
/// opened once to put them in; done at the 165 F of the same table.
#[test]
fn four_ounces_roast_at_350_f_as_usda_says() {
    let body = Body::of_piece(&breast(4.0));
    let oven = Leg::pit(Surface::pit(PitKind::Indirect), &[], Temperature::from_f(350.0));
    let oven = oven.lid_open(seconds(0.0), seconds(20.0), &LidResponse::default());
    let start = Start::cooked(Temperature::from_f(40.0));
    let around = Surroundings::new(oven);
    let roast = trace(&body, start, &around, seconds(7200.0), &Tuning::default());
    let took = to_minutes(roast.core_reaches(Temperature::from_f(165.0)).unwrap());
    assert!((20.0..=30.0).contains(&took), "{took} min");
}
