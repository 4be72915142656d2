//! The cook's instruments and how they err.

use rand::{Rng, RngExt};
use rand_distr::{Distribution, StandardNormal};

use crate::piece::Piece;

/// Spread of where one poke of an instant-read ends around the coldest spot, m.
const POKE_SPREAD: f64 = 4.0e-3;
/// Spread of where a well-placed leave-in sits around the coldest spot, m; twice it along.
const SEAT_SPREAD: f64 = 2.0e-3;
/// A misplaced leave-in is this far off, m.
const MISPLACED: core::ops::Range<f64> = 6.0e-3..15.0e-3;
/// Spread of the shown figure around the instrument's own error, C.
const FLICKER: f64 = 0.25;
/// Makers' tolerances, C: 1, 2 and 4 F.
pub const INSTANT_TOLERANCE: f64 = 1.0 / 1.8;
/// The leave-in's.
pub const LEAVE_IN_TOLERANCE: f64 = 2.0 / 1.8;
/// The pit thermometer's.
pub const PIT_TOLERANCE: f64 = 4.0 / 1.8;
/// Instruments show whole Fahrenheit degrees.
const SHOWN_STEP: f64 = 5.0 / 9.0;

/// An instrument's fixed error, C.
#[derive(Clone, Copy, Debug)]
pub struct Instrument {
    /// What it shows over what is there.
    pub bias: f64,
}

impl Instrument {
    /// An instrument whose maker states a tolerance in C: taken as two standard deviations.
    pub fn of_tolerance(tolerance: f64, luck: &mut impl Rng) -> Self {
        Self { bias: 0.5 * tolerance * normal(luck) }
    }

    /// What it shows, C.
    pub fn shows(&self, celsius: f64, luck: &mut impl Rng) -> f64 {
        let seen = celsius + self.bias + FLICKER * normal(luck);
        // Rounded on the Fahrenheit scale.
        ((seen + 160.0 / 9.0) / SHOWN_STEP).round() * SHOWN_STEP - 160.0 / 9.0
    }

    /// The lowest of two to four pokes at a piece, as a careful cook takes it, C.
    pub fn pokes(&self, piece: &Piece, luck: &mut impl Rng) -> f64 {
        let pokes = luck.random_range(2..=4);
        (0..pokes)
            .map(|_| {
                let there = piece.near_coldest(POKE_SPREAD * normal(luck));
                self.shows(there, luck)
            })
            .fold(f64::INFINITY, f64::min)
    }
}

/// Where a leave-in's tip is in its piece.
#[derive(Clone, Copy, Debug)]
pub struct Seat {
    /// Above the coldest spot, m.
    pub up: f64,
    /// Towards the thin end, m.
    pub along: f64,
}

impl Seat {
    /// A leave-in put in with care.
    pub fn careful(luck: &mut impl Rng) -> Self {
        Self { up: SEAT_SPREAD * normal(luck), along: 2.0 * SEAT_SPREAD * normal(luck) }
    }

    /// A leave-in that missed.
    pub fn missed(luck: &mut impl Rng) -> Self {
        let up = luck.random_range(MISPLACED);
        let up = if luck.random_bool(0.5) { up } else { -up };
        Self { up, along: 2.0 * SEAT_SPREAD * normal(luck) }
    }
}

fn normal(luck: &mut impl Rng) -> f64 {
    StandardNormal.sample(luck)
}
