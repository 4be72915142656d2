//! The cook that is forecast.

use chrono::DateTime;
use cook_model::cook::{DeviceId, Log, What, fold};
use cook_model::heat::{Body, Leg, PitKind, Start, Surface, Surroundings, Trace, Tuning, trace};
use cook_model::history::{History, Instrument};
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{
    Length, Mass, Moment, Span, Temperature, TemperatureDifference, minutes,
};

const PHONE: DeviceId = DeviceId(1);
/// Readings are spread over these minutes of the cook.
const READ: (f64, f64) = (15.0, 45.0);
/// The pit.
pub const PIT: Temperature = Temperature::from_f(250.0);
/// By how much readings scatter, F.
const SCATTER_F: f64 = 1.5;

/// A regular scatter between -1 and 1: the fraction of multiples of the golden section.
fn scattered(i: u32) -> f64 {
    let turn = f64::from(i) * 0.618_033_988_749_895;
    2.0 * (turn - turn.floor()) - 1.0
}

/// A piece of usual size: 26 to 46 mm.
pub fn facts(number: u32) -> Piece {
    let mm = 36.0 + 10.0 * scattered(number);
    Piece {
        weight: Mass::from_g(0.0045 * mm * mm * mm + 50.0),
        thickest: Some(Length::from_mm(mm)),
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    }
}

/// How the piece really heats: a little quicker or slower than expected.
fn truth(number: u32, facts: &Piece) -> Trace {
    let around = Surroundings::new(Leg::pit(Surface::pit(PitKind::Indirect), &[], PIT));
    let speed = 1.0 + 0.08 * scattered(3 * number + 1);
    let tuning = Tuning { speed, ..Tuning::default() };
    let start = Start::even(facts.start).unwrap_or(Start::cooked(facts.start));
    trace(&Body::of_piece(facts), start, &around, minutes(READ.1), &tuning)
}

/// So many pieces, each read so many times with the instant-read; the first also wears the leave-in.
pub fn cook(pieces: u32, readings: u32) -> (History, Moment) {
    let zero = DateTime::from_timestamp(1_780_000_000, 0).unwrap_or_default();
    let mut log = Log::default();
    let mut write = |at: Span, what: What| {
        log.insert(log.next(PHONE, zero + at, zero + at, what));
    };
    let all: Vec<(PieceId, Piece)> = (1..=pieces).map(|n| (PieceId(n), facts(n))).collect();
    for (piece, facts) in &all {
        write(
            Span::zero(),
            What::PieceSetOut { piece: *piece, facts: *facts, name: String::new() },
        );
    }
    for (piece, _) in &all {
        write(Span::zero(), What::PutOn { piece: *piece });
    }
    let cores: Vec<Trace> = all.iter().map(|(piece, facts)| truth(piece.0, facts)).collect();
    for reading in 0..readings {
        for (i, (piece, _)) in all.iter().enumerate() {
            let part = (f64::from(reading) + i as f64 / all.len() as f64) / f64::from(readings);
            let at = minutes(READ.0 + part * (READ.1 - READ.0));
            let off = SCATTER_F * scattered(17 * piece.0 + reading);
            let temperature = cores[i].core(at) + TemperatureDifference::from_f(off);
            let instrument = if i == 0 { Instrument::LeaveIn } else { Instrument::InstantRead };
            write(at, What::CoreRead { piece: *piece, temperature, instrument, places: 2 });
        }
    }
    (fold(&log).history, zero + minutes(READ.1))
}
