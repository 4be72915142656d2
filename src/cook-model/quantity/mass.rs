use core::iter::Sum;
use core::ops::{Add, Mul, Sub};

use serde::{Deserialize, Serialize};

use super::MassUnit;

/// Grams in an avoirdupois ounce (exact: 453.59237 / 16).
const G_PER_OUNCE: f64 = 28.349_523_125;
/// Grams in a kilogram (exact).
const G_PER_KG: f64 = 1e3;

/// A mass. Stored, and serialised, in grams, which is what a kitchen scale shows.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Mass(f64);

impl Mass {
    /// No mass at all.
    pub const ZERO: Self = Self(0.0);

    /// A mass from kilograms.
    pub const fn from_kg(kilograms: f64) -> Self {
        Self(kilograms * G_PER_KG)
    }

    /// A mass from grams.
    pub const fn from_g(grams: f64) -> Self {
        Self(grams)
    }

    /// A mass from ounces.
    pub const fn from_ounces(ounces: f64) -> Self {
        Self(ounces * G_PER_OUNCE)
    }

    /// A mass from the number in the person's own unit.
    pub const fn from_unit(value: f64, unit: MassUnit) -> Self {
        match unit {
            MassUnit::Ounce => Self::from_ounces(value),
            MassUnit::Gram => Self::from_g(value),
        }
    }

    /// Kilograms.
    pub const fn kg(self) -> f64 {
        self.0 / G_PER_KG
    }

    /// Grams.
    pub const fn g(self) -> f64 {
        self.0
    }

    /// Ounces; sixteen to the pound.
    pub const fn ounces(self) -> f64 {
        self.0 / G_PER_OUNCE
    }

    /// The number in the person's own unit.
    pub const fn in_unit(self, unit: MassUnit) -> f64 {
        match unit {
            MassUnit::Ounce => self.ounces(),
            MassUnit::Gram => self.g(),
        }
    }
}

impl Add for Mass {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Mass {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Mul<f64> for Mass {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

impl Sum for Mass {
    fn sum<I: Iterator<Item = Self>>(masses: I) -> Self {
        masses.fold(Self::ZERO, Add::add)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pound_is_453_59237_g() {
        assert!((Mass::from_ounces(16.0).g() - 453.592_37).abs() < 1e-9);
        assert!((Mass::from_g(453.592_37).ounces() - 16.0).abs() < 1e-9);
    }
}
