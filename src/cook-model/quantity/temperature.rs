use core::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

use serde::{Deserialize, Serialize};

use super::TemperatureUnit;

/// Celsius degrees between the ice point and absolute zero (exact by definition of the scale).
const ICE_POINT_K: f64 = 273.15;
/// Celsius degrees in one Fahrenheit degree (exact).
const C_PER_F: f64 = 5.0 / 9.0;
/// The ice point on the Fahrenheit scale (exact).
const ICE_POINT_F: f64 = 32.0;

/// A temperature: how hot something is. Stored, and serialised, in degrees Celsius.
///
/// Two temperatures subtract to a [`TemperatureDifference`]; they cannot be added:
///
/// ```compile_fail
/// use cook_model::quantity::Temperature;
/// let nonsense = Temperature::from_c(20.0) + Temperature::from_c(30.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Temperature(f64);

impl Temperature {
    /// A temperature from degrees Celsius.
    pub const fn from_c(celsius: f64) -> Self {
        Self(celsius)
    }

    /// A temperature from degrees Fahrenheit.
    ///
    /// ```
    /// use cook_model::quantity::Temperature;
    /// assert_eq!(Temperature::from_f(212.0).c(), 100.0);
    /// ```
    pub const fn from_f(fahrenheit: f64) -> Self {
        Self((fahrenheit - ICE_POINT_F) * C_PER_F)
    }

    /// A temperature from the number on the person's own scale.
    pub const fn from_unit(value: f64, unit: TemperatureUnit) -> Self {
        match unit {
            TemperatureUnit::Fahrenheit => Self::from_f(value),
            TemperatureUnit::Celsius => Self::from_c(value),
        }
    }

    /// Degrees Celsius.
    pub const fn c(self) -> f64 {
        self.0
    }

    /// Degrees Fahrenheit.
    pub const fn f(self) -> f64 {
        self.0 / C_PER_F + ICE_POINT_F
    }

    /// Kelvin, for radiation.
    pub const fn k(self) -> f64 {
        self.0 + ICE_POINT_K
    }

    /// The number on the person's own scale.
    pub const fn in_unit(self, unit: TemperatureUnit) -> f64 {
        match unit {
            TemperatureUnit::Fahrenheit => self.f(),
            TemperatureUnit::Celsius => self.c(),
        }
    }

    /// The lower of two temperatures; the other one where one is not a number.
    pub fn min(self, other: Self) -> Self {
        Self(self.0.min(other.0))
    }

    /// The higher of two temperatures; the other one where one is not a number.
    pub fn max(self, other: Self) -> Self {
        Self(self.0.max(other.0))
    }
}

/// A difference of two temperatures. Stored, and serialised, in Celsius degrees (kelvin).
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct TemperatureDifference(f64);

impl TemperatureDifference {
    /// No difference.
    pub const ZERO: Self = Self(0.0);

    /// A difference from Celsius degrees.
    pub const fn from_c(celsius_degrees: f64) -> Self {
        Self(celsius_degrees)
    }

    /// A difference from Fahrenheit degrees.
    pub const fn from_f(fahrenheit_degrees: f64) -> Self {
        Self(fahrenheit_degrees * C_PER_F)
    }

    /// A difference from degrees of the person's own scale.
    pub const fn from_unit(value: f64, unit: TemperatureUnit) -> Self {
        match unit {
            TemperatureUnit::Fahrenheit => Self::from_f(value),
            TemperatureUnit::Celsius => Self::from_c(value),
        }
    }

    /// Celsius degrees (kelvin).
    pub const fn c(self) -> f64 {
        self.0
    }

    /// Fahrenheit degrees.
    pub const fn f(self) -> f64 {
        self.0 / C_PER_F
    }

    /// Degrees of the person's own scale.
    pub const fn in_unit(self, unit: TemperatureUnit) -> f64 {
        match unit {
            TemperatureUnit::Fahrenheit => self.f(),
            TemperatureUnit::Celsius => self.c(),
        }
    }

    /// The size of the difference, without its sign.
    pub const fn abs(self) -> Self {
        Self(self.0.abs())
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference(self.0 - other.0)
    }
}

impl Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, rise: TemperatureDifference) -> Self {
        Self(self.0 + rise.0)
    }
}

impl AddAssign<TemperatureDifference> for Temperature {
    fn add_assign(&mut self, rise: TemperatureDifference) {
        self.0 += rise.0;
    }
}

impl Sub<TemperatureDifference> for Temperature {
    type Output = Self;
    fn sub(self, fall: TemperatureDifference) -> Self {
        Self(self.0 - fall.0)
    }
}

impl Add for TemperatureDifference {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for TemperatureDifference {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Neg for TemperatureDifference {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Mul<f64> for TemperatureDifference {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

impl Div<f64> for TemperatureDifference {
    type Output = Self;
    fn div(self, divisor: f64) -> Self {
        Self(self.0 / divisor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Rounding in one conversion there and back, degrees.
    const ROUND_TRIP: f64 = 1e-9;

    #[test]
    fn fixed_points_of_the_scales() {
        // The scales' own definitions: ice point, boiling point, and where they cross.
        for (f, c) in [(32.0, 0.0), (212.0, 100.0), (-40.0, -40.0)] {
            assert!((Temperature::from_f(f).c() - c).abs() < ROUND_TRIP);
            assert!((Temperature::from_c(c).f() - f).abs() < ROUND_TRIP);
        }
    }

    proptest! {
        #[test]
        fn fahrenheit_round_trips(f in -100.0..1000.0_f64) {
            prop_assert!((Temperature::from_f(f).f() - f).abs() < ROUND_TRIP);
            prop_assert!((TemperatureDifference::from_f(f).f() - f).abs() < ROUND_TRIP);
        }

        #[test]
        fn difference_undoes_addition(a in -50.0..300.0_f64, d in -100.0..100.0_f64) {
            let start = Temperature::from_c(a);
            let rise = TemperatureDifference::from_c(d);
            prop_assert!(((start + rise - start).c() - d).abs() < ROUND_TRIP);
        }
    }
}
