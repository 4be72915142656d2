//! Halving all steps and cells moves the time to a pull by under 0.1 %.

use cook_model::heat::{
    Body, Leg, LidResponse, PitKind, Start, State, Surface, Surroundings, Tuning, resume,
};
use cook_model::piece::{Piece, Shape};
use cook_model::quantity::{Length, Mass, Temperature, minutes, seconds, to_seconds};

/// Largest part by which a time may move.
const TOLERANCE: f64 = 1e-3;

/// Weight, g; thickness, mm; shape: thin, usual, thick, as light and as heavy as breasts come.
const PIECES: [(f64, f64, Shape); 8] = [
    (120.0, 20.0, Shape::Natural),
    (150.0, 25.0, Shape::Natural),
    (230.0, 32.0, Shape::Natural),
    (320.0, 38.0, Shape::Natural),
    (420.0, 45.0, Shape::Natural),
    (450.0, 55.0, Shape::Thick),
    (200.0, 18.0, Shape::Even),
    (320.0, 25.0, Shape::Even),
];

/// Minutes at which the lid is opened for 40 s, or not.
const OPENED: [&[f64]; 2] = [&[], &[20.0, 27.0, 35.0, 40.0, 43.0, 55.0]];

/// Seconds until a body pulled at 160 F is there.
fn pull(body: &Body, pit: PitKind, air: f64, opened: &[f64]) -> f64 {
    let (air, outside) = (Temperature::from_f(air), Temperature::from_f(70.0));
    let lid = LidResponse::of(pit, air, outside);
    let mut leg = Leg::pit(Surface::pit(pit), &[], air);
    for at in opened {
        leg = leg.lid_open(minutes(*at), seconds(40.0), &lid);
    }
    let begin = State::begin(body, Start::cooked(Temperature::from_f(38.0)));
    let around = Surroundings::new(leg);
    let trace = resume(body, &begin, &around, minutes(400.0), &Tuning::default());
    trace.core_reaches(Temperature::from_f(160.0)).map_or(f64::NAN, to_seconds)
}

#[test]
fn halving_steps_and_cells_moves_a_pull_by_under_a_thousandth() {
    let mut worst = (0.0, String::new());
    for (g, mm, shape) in PIECES {
        let piece = Piece {
            weight: Mass::from_g(g),
            thickest: Some(Length::from_mm(mm)),
            shape,
            start: Temperature::from_f(38.0),
            icy: false,
        };
        let body = Body::of_piece(&piece);
        let finer = body.refined(2);
        for (pit, air) in [(PitKind::Indirect, 250.0), (PitKind::Pellet, 300.0)] {
            for opened in OPENED {
                let (usual, halved) =
                    (pull(&body, pit, air, opened), pull(&finer, pit, air, opened));
                let moved = (usual / halved - 1.0).abs();
                let opened = opened.len();
                let what = format!("{g} g {mm} mm {shape:?} at {air} F, opened {opened} times");
                assert!(moved.is_finite(), "{what}: done in time");
                if moved > worst.0 {
                    worst = (moved, what);
                }
            }
        }
    }
    assert!(worst.0 < TOLERANCE, "{worst:?}");
}
