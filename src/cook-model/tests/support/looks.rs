//! A cook looked at: what the card says, and all that is to be done.

use cook_model::cook::duties::{Act, Duty, duties, in_order};
use cook_model::cook::{Seen, What};
use cook_model::quantity::{Moment, Temperature, to_minutes};

use super::{Cook, at, piece, pulled, put_on, read, set_out};

impl Cook {
    pub fn seen(&self) -> Seen {
        Seen::of(&self.log, at(600.0))
    }

    /// What the card says at a minute.
    pub fn card(&self, minute: f64) -> Duty {
        let all = duties(&self.seen());
        in_order(&all, at(minute)).first().map(|duty| (*duty).clone()).unwrap()
    }

    pub fn all(&self) -> Vec<Duty> {
        duties(&self.seen())
    }

    /// When the core of a piece is likely at a temperature, in minutes.
    pub fn likely_at(&self, number: u32, fahrenheit: f64) -> f64 {
        let seen = self.seen();
        let piece = seen.piece_forecast(piece(number)).unwrap();
        to_minutes(piece.reaches(Temperature::from_f(fahrenheit)).unwrap() - at(0.0))
    }
}

/// One breast pulled where it was read so hot, when that is likely, and covered; and the minute of that reading.
pub fn at_rest(mut cook: Cook, fahrenheit: f64) -> (Cook, f64) {
    let minute = cook.likely_at(1, fahrenheit);
    cook.write(minute, read(1, fahrenheit, 2));
    cook.write(minute + 0.5, pulled(1));
    cook.write(minute + 1.0, What::Covered { piece: piece(1) });
    (cook, minute)
}

/// So many breasts of growing size, all on the pit since the start.
pub fn on_the_pit(thickest_mm: &[f64]) -> Cook {
    let mut cook = Cook::default();
    for (number, mm) in (1..).zip(thickest_mm) {
        cook.write(0.0, set_out(number, *mm));
        cook.write(0.0, put_on(number));
    }
    cook.write(1.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    cook
}

/// A moment some minutes after a look.
pub fn after(seen: &Seen, minute: f64) -> Moment {
    seen.at + (at(minute) - at(0.0))
}

pub fn acts(all: &[Duty]) -> Vec<&Act> {
    all.iter().map(|duty| &duty.act).collect()
}
