//! How people type what they read, and what they say when asked about it.

use rand::RngExt;
use rand_chacha::ChaCha8Rng;

/// The chance that a reading is typed wrongly (common practice, no source).
const SLIP: f64 = 0.02;
/// Asked about a figure that they mistyped, so many look and see it; of those who read the wrong piece
/// fewer do.
const SEES_DIGITS: f64 = 0.95;
const SEES_PIECE: f64 = 0.5;

/// What went wrong with a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// Two of its digits were swapped.
    Digits,
    /// The piece beside it was read.
    Neighbour,
}

impl Slip {
    /// Whether one happens.
    pub fn draw(luck: &mut ChaCha8Rng) -> Option<Self> {
        let (slips, digits) = (luck.random_bool(SLIP), luck.random_bool(0.5));
        slips.then_some(if digits { Self::Digits } else { Self::Neighbour })
    }

    /// Whether it is seen by who is asked about the reading.
    pub fn is_seen(self, luck: &mut ChaCha8Rng) -> bool {
        luck.random_bool(match self {
            Self::Digits => SEES_DIGITS,
            Self::Neighbour => SEES_PIECE,
        })
    }
}

/// The whole Fahrenheit degrees that a thermometer shows.
pub fn shown(celsius: f64) -> i32 {
    (celsius * 1.8 + 32.0).round() as i32
}

/// A figure with two neighbouring digits swapped.
pub fn swapped(figure: i32, luck: &mut ChaCha8Rng) -> i32 {
    let mut digits: Vec<char> = figure.to_string().chars().collect();
    let pairs = digits.len().saturating_sub(1);
    if pairs > 0 {
        let first = luck.random_range(0..pairs);
        digits.swap(first, first + 1);
    }
    digits.into_iter().collect::<String>().parse().unwrap_or(figure)
}
