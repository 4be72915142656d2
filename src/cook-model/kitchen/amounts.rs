//! Quantities only a kitchen needs, each with its unit in the type.

use core::iter::Sum;
use core::ops::{Add, Mul};

use serde::{Deserialize, Serialize};

use crate::quantity::Mass;

/// Millilitres in a US teaspoon (exact: a sixth of a US fluid ounce of 29.5735295625 ml).
const ML_PER_TEASPOON: f64 = 4.928_921_593_75;

/// A volume, as measured with spoons. Stored, and serialised, in millilitres.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Volume(f64);

impl Volume {
    /// No volume at all.
    pub const ZERO: Self = Self(0.0);

    /// From millilitres.
    pub const fn from_ml(millilitres: f64) -> Self {
        Self(millilitres)
    }

    /// From US teaspoons.
    pub const fn from_teaspoons(teaspoons: f64) -> Self {
        Self(teaspoons * ML_PER_TEASPOON)
    }

    /// Millilitres.
    pub const fn ml(self) -> f64 {
        self.0
    }

    /// US teaspoons; three to the tablespoon.
    pub const fn teaspoons(self) -> f64 {
        self.0 / ML_PER_TEASPOON
    }
}

/// An area of surface. Stored in square centimetres.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Area(f64);

impl Area {
    /// No area at all.
    pub const ZERO: Self = Self(0.0);

    /// From square centimetres.
    pub const fn from_cm2(square_centimetres: f64) -> Self {
        Self(square_centimetres)
    }

    /// Square centimetres.
    pub const fn cm2(self) -> f64 {
        self.0
    }
}

impl Add for Area {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Mul<f64> for Area {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

impl Sum for Area {
    fn sum<I: Iterator<Item = Self>>(areas: I) -> Self {
        areas.fold(Self::ZERO, Add::add)
    }
}

/// A part of a whole, by weight. Serialised as a number from 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Fraction(f64);

impl Fraction {
    /// Nothing of it.
    pub const NONE: Self = Self(0.0);
    /// All of it.
    pub const ALL: Self = Self(1.0);

    /// From per cent by weight. Whether it is one is asked by [`Self::is_possible`].
    pub const fn from_percent(percent: f64) -> Self {
        Self(percent / 100.0)
    }

    /// Per cent by weight.
    pub const fn percent(self) -> f64 {
        100.0 * self.0
    }

    /// Whether it lies from nothing to all.
    pub fn is_possible(self) -> bool {
        (Self::NONE..=Self::ALL).contains(&self)
    }

    /// This part of a weight.
    pub fn of(self, whole: Mass) -> Mass {
        whole * self.0
    }
}

impl Mul for Fraction {
    type Output = Self;
    /// A part of a part.
    fn mul(self, other: Self) -> Self {
        Self(self.0 * other.0)
    }
}

impl Sum for Fraction {
    fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
        Self(parts.map(|part| part.0).sum())
    }
}

/// How salty meat is: grams of salt on 100 g of raw meat. Serialised as that number.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct SaltLevel(f64);

impl SaltLevel {
    /// No salt at all.
    pub const NONE: Self = Self(0.0);

    /// From grams of salt on 100 g of raw meat, which is also per cent by weight.
    pub const fn from_g_per_100g(grams: f64) -> Self {
        Self(grams)
    }

    /// This much salt on this much meat; nothing where there is no meat.
    pub fn of(salt: Mass, meat: Mass) -> Self {
        if meat > Mass::ZERO { Self(100.0 * salt.g() / meat.g()) } else { Self(0.0) }
    }

    /// Grams of salt on 100 g of raw meat.
    pub const fn g_per_100g(self) -> f64 {
        self.0
    }

    /// The salt on this much meat.
    pub fn salt_on(self, meat: Mass) -> Mass {
        meat * (self.0 / 100.0)
    }
}

impl Add for SaltLevel {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tablespoon_is_half_a_fluid_ounce() {
        // 1 US fluid ounce = 29.5735295625 ml (NIST Handbook 44, appendix C).
        assert!((Volume::from_teaspoons(3.0).ml() - 29.573_529_562_5 / 2.0).abs() < 1e-9);
    }

    #[test]
    fn level_and_salt_are_each_others_inverse() {
        let meat = Mass::from_g(312.0);
        let level = SaltLevel::from_g_per_100g(1.25);
        assert!((level.salt_on(meat).g() - 3.9).abs() < 1e-9);
        assert!((SaltLevel::of(level.salt_on(meat), meat).g_per_100g() - 1.25).abs() < 1e-12);
        assert_eq!(SaltLevel::of(meat, Mass::ZERO).g_per_100g(), 0.0);
    }
}
