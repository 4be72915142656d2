//! A cook looked at: what the card says, and all that is to be done.

use cook_model::cook::duties::{Act, Duty, duties, in_order};
use cook_model::cook::{Seen, What};
use cook_model::quantity::{Temperature, to_minutes};

use super::{Cook, at, piece, put_on, set_out};

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

pub fn acts(all: &[Duty]) -> Vec<&Act> {
    all.iter().map(|duty| &duty.act).collect()
}
