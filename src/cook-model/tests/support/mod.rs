//! A small language for writing cook logs in tests.
#![allow(dead_code, reason = "each test file uses its own part of this")]
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

pub mod logs;
pub mod looks;

use chrono::{DateTime, Utc};
use cook_model::cook::{CookState, DeviceId, EntryId, Log, Stage, What, fold};
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Length, Mass, Moment, Temperature, minutes};
use cook_model::safety::{FatColumn, ProofRule};

/// The phone that most tests write with.
pub const PHONE: DeviceId = DeviceId(7);
/// Another one, in the same cook.
pub const OTHER_PHONE: DeviceId = DeviceId(8);

/// So many minutes after the cook began.
pub fn at(minute: f64) -> Moment {
    DateTime::<Utc>::from_timestamp(1_780_000_000, 0).unwrap() + minutes(minute)
}

/// An entry's id by its place in a log of one phone.
pub fn id(count: u64) -> EntryId {
    EntryId { count, device: PHONE }
}

pub fn piece(number: u32) -> PieceId {
    PieceId(number)
}

pub fn breast(thickest_mm: f64) -> Piece {
    Piece {
        weight: Mass::from_g(240.0),
        thickest: Some(Length::from_mm(thickest_mm)),
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    }
}

pub fn set_out(number: u32, thickest_mm: f64) -> What {
    What::PieceSetOut { piece: piece(number), facts: breast(thickest_mm), name: String::new() }
}

pub fn put_on(number: u32) -> What {
    What::PutOn { piece: piece(number) }
}

pub fn pulled(number: u32) -> What {
    What::Pulled { piece: piece(number) }
}

pub fn packed(number: u32) -> What {
    What::Packed { piece: piece(number) }
}

/// An instant-read reading, the lowest of so many places.
pub fn read(number: u32, fahrenheit: f64, places: u8) -> What {
    What::CoreRead {
        piece: piece(number),
        temperature: Temperature::from_f(fahrenheit),
        instrument: Instrument::InstantRead,
        places,
    }
}

pub fn leave_in(number: u32, fahrenheit: f64, places: u8) -> What {
    What::CoreRead {
        piece: piece(number),
        temperature: Temperature::from_f(fahrenheit),
        instrument: Instrument::LeaveIn,
        places,
    }
}

pub fn undo(count: u64) -> What {
    What::Undone { entry: id(count) }
}

pub fn held_rule() -> What {
    What::ProofRuleSet { rule: ProofRule::Held { fat: FatColumn::Twelve } }
}

/// A log as it grows.
#[derive(Clone, Debug, Default)]
pub struct Cook {
    pub log: Log,
}

impl Cook {
    /// Two breasts of 38 mm, both on the pit since the start.
    pub fn two_on() -> Self {
        let mut cook = Self::default();
        for what in [set_out(1, 38.0), set_out(2, 38.0), put_on(1), put_on(2)] {
            cook.write(0.0, what);
        }
        cook
    }

    /// Writes what happens at this minute, typed at once.
    pub fn write(&mut self, minute: f64, what: What) -> EntryId {
        self.write_as(PHONE, minute, minute, what)
    }

    /// Writes what happened at one minute and was typed at another, by a phone.
    pub fn write_as(&mut self, by: DeviceId, happened: f64, typed: f64, what: What) -> EntryId {
        let entry = self.log.next(by, at(happened), at(typed), what);
        let id = entry.id;
        self.log.insert(entry);
        id
    }

    pub fn state(&self) -> CookState {
        fold(&self.log)
    }

    pub fn stage(&self, number: u32) -> Stage {
        self.state().piece(piece(number)).unwrap().0.stage
    }

    /// Whether anything says that the piece is safe.
    pub fn is_proved(&self, number: u32) -> bool {
        let state = self.state();
        let standing = state.piece(piece(number)).unwrap().0;
        standing.stage == Stage::Proved || standing.proof.is_some()
    }
}
