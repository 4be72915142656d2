use core::iter::Sum;
use core::ops::{Add, Mul, Sub};

use serde::{Deserialize, Serialize};

use super::MassUnit;

/// Kilograms in an avoirdupois ounce (exact: 0.45359237 / 16).
const KG_PER_OUNCE: f64 = 0.028_349_523_125;
/// Kilograms in a gram (exact).
const KG_PER_G: f64 = 1e-3;

/// A mass. Stored in kilograms; serialised in grams, which is what a kitchen scale shows.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(from = "f64", into = "f64")]
pub struct Mass(f64);

impl Mass {
    /// No mass at all.
    pub const ZERO: Self = Self(0.0);

    /// A mass from kilograms.
    pub const fn from_kg(kilograms: f64) -> Self {
        Self(kilograms)
    }

    /// A mass from grams.
    pub const fn from_g(grams: f64) -> Self {
        Self(grams * KG_PER_G)
    }

    /// A mass from ounces.
    pub const fn from_ounces(ounces: f64) -> Self {
        Self(ounces * KG_PER_OUNCE)
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
        self.0
    }

    /// Grams.
    pub const fn g(self) -> f64 {
        self.0 / KG_PER_G
    }

    /// Ounces; sixteen to the pound.
    pub const fn ounces(self) -> f64 {
        self.0 / KG_PER_OUNCE
    }

    /// The number in the person's own unit.
    pub const fn in_unit(self, unit: MassUnit) -> f64 {
        match unit {
            MassUnit::Ounce => self.ounces(),
            MassUnit::Gram => self.g(),
        }
    }
}

impl From<f64> for Mass {
    /// From grams: the serialised form.
    fn from(grams: f64) -> Self {
        Self::from_g(grams)
    }
}

impl From<Mass> for f64 {
    /// To grams: the serialised form.
    fn from(mass: Mass) -> f64 {
        mass.g()
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
