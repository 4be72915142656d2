use core::ops::{Add, Mul, Sub};

use serde::{Deserialize, Serialize};

use super::LengthUnit;

/// Millimetres in an inch (exact, international inch).
const MM_PER_INCH: f64 = 25.4;
/// Millimetres in a metre (exact).
const MM_PER_M: f64 = 1e3;

/// A length. Stored, and serialised, in millimetres, which is what a person measures.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Length(f64);

impl Length {
    /// No length at all.
    pub const ZERO: Self = Self(0.0);

    /// A length from metres.
    pub const fn from_m(metres: f64) -> Self {
        Self(metres * MM_PER_M)
    }

    /// A length from millimetres.
    pub const fn from_mm(millimetres: f64) -> Self {
        Self(millimetres)
    }

    /// A length from inches.
    pub const fn from_inches(inches: f64) -> Self {
        Self(inches * MM_PER_INCH)
    }

    /// A length from the number in the person's own unit.
    pub const fn from_unit(value: f64, unit: LengthUnit) -> Self {
        match unit {
            LengthUnit::Inch => Self::from_inches(value),
            LengthUnit::Millimetre => Self::from_mm(value),
        }
    }

    /// Metres.
    pub const fn m(self) -> f64 {
        self.0 / MM_PER_M
    }

    /// Millimetres.
    pub const fn mm(self) -> f64 {
        self.0
    }

    /// Inches.
    pub const fn inches(self) -> f64 {
        self.0 / MM_PER_INCH
    }

    /// The number in the person's own unit.
    pub const fn in_unit(self, unit: LengthUnit) -> f64 {
        match unit {
            LengthUnit::Inch => self.inches(),
            LengthUnit::Millimetre => self.mm(),
        }
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Mul<f64> for Length {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_inch_is_25_4_mm() {
        assert!((Length::from_inches(1.0).mm() - 25.4).abs() < 1e-12);
        assert!((Length::from_mm(25.4).inches() - 1.0).abs() < 1e-12);
    }
}
