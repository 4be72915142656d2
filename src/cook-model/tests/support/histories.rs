//! Histories made by hand, for what a forecast makes of them.
#![allow(dead_code, reason = "each test file uses its own part of this")]
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use chrono::DateTime;
use cook_model::cook::{Log, What, fold};
use cook_model::forecast::{Forecast, PieceForecast};
use cook_model::history::{CoreReading, DeviceId, History, Instrument, PieceHistory};
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Length, Mass, Moment, Temperature, minutes, to_minutes};

/// So many minutes after the first piece went on.
pub fn at(minute: f64) -> Moment {
    DateTime::from_timestamp(1_780_000_000, 0).unwrap() + minutes(minute)
}

/// A history with one reading of one piece, as the log's own fold makes it.
pub fn template() -> History {
    let facts = Piece {
        weight: Mass::from_g(280.0),
        thickest: Some(Length::from_mm(40.0)),
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    };
    let piece = PieceId(1);
    let whats = [
        What::PieceSetOut { piece, facts, name: String::new() },
        What::PutOn { piece },
        What::CoreRead {
            piece,
            temperature: Temperature::from_f(100.0),
            instrument: Instrument::InstantRead,
            places: 2,
        },
    ];
    let mut log = Log::default();
    for what in whats {
        log.insert(log.next(DeviceId(1), at(0.0), at(0.0), what));
    }
    fold(&log).history
}

/// At what temperature breasts are often pulled (common practice, no source).
pub const USUAL_PULL: Temperature = Temperature::from_f(160.0);

/// A piece that went on at minute 0, to be pulled at the usual temperature.
pub fn piece(number: u32, grams: f64, mm: f64) -> PieceHistory {
    let mut piece = template().pieces.remove(0);
    piece.id = PieceId(number);
    piece.piece.weight = Mass::from_g(grams);
    piece.piece.thickest = Some(Length::from_mm(mm));
    piece.readings.clear();
    (piece.pull_choice, piece.pull_at) = (Some(USUAL_PULL), USUAL_PULL);
    piece
}

/// A cook of these pieces, on a pit set for 250 F.
pub fn cook(pieces: Vec<PieceHistory>) -> History {
    History { pieces, ..template() }
}

/// One reading of the first piece.
pub fn reading(minute: f64, fahrenheit: f64, instrument: Instrument) -> CoreReading {
    let mut reading = template().pieces[0].readings[0];
    reading.entry.count = 10 + (minute * 60.0) as u64;
    reading.at = at(minute);
    reading.temperature = Temperature::from_f(fahrenheit);
    reading.instrument = instrument;
    reading
}

/// The same by the instant-read.
pub fn poked(minute: f64, fahrenheit: f64) -> CoreReading {
    reading(minute, fahrenheit, Instrument::InstantRead)
}

/// The forecast of the first piece.
pub fn first(forecast: &Forecast) -> &PieceForecast {
    &forecast.pieces[0]
}

/// Minutes from the start to the middle of the first piece's window.
pub fn pull(forecast: &Forecast) -> f64 {
    to_minutes(first(forecast).pull.unwrap().middle - at(0.0))
}

/// Minutes from the low to the high end of the first piece's window.
pub fn width(forecast: &Forecast) -> f64 {
    let window = first(forecast).pull.unwrap();
    to_minutes(window.high - window.low)
}
