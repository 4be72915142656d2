//! Checking a thermometer against the two temperatures that water gives.

use core::ops::RangeInclusive;

use thiserror::Error;

use crate::quantity::{Length, Temperature, TemperatureDifference};

/// The most a food thermometer may be off. Source: FDA Food Code 2022, 4-203.11 (from memory).
pub const ALLOWED: TemperatureDifference = TemperatureDifference::from_f(2.0);
/// The most that a correction may make good: one further out needs a new battery or a new
/// thermometer.
const CORRECTABLE: TemperatureDifference = TemperatureDifference::from_f(5.0);
/// Where people cook, from the shore of the Dead Sea up.
const ALTITUDES: RangeInclusive<Length> = Length::from_m(-450.0)..=Length::from_m(5500.0);

/// Water of a known temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bath {
    /// Mostly crushed ice, with water between, stirred: 32 F anywhere.
    IceWater,
    /// Water at a full boil.
    BoilingWater {
        /// Height above the sea.
        altitude: Length,
    },
}

/// Why a check gives no offset.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum CheckProblem {
    /// The thermometer is too far out.
    #[error(
        "the thermometer is off by more than 5 F (2.8 C): check again with the tip in the middle of \
         the water, then change its battery or the thermometer"
    )]
    TooFarOff,
    /// Nobody cooks there.
    #[error("an altitude from -1,476 ft (-450 m) to 18,045 ft (5,500 m) is accepted")]
    ImpossibleAltitude,
}

impl Bath {
    /// What a true thermometer shows in it.
    ///
    /// # Errors
    /// [`CheckProblem::ImpossibleAltitude`] outside -450 to 5500 m.
    pub fn temperature(self) -> Result<Temperature, CheckProblem> {
        match self {
            Self::IceWater => Ok(Temperature::from_c(0.0)),
            Self::BoilingWater { altitude } if ALTITUDES.contains(&altitude) => {
                Ok(boiling_point(altitude))
            }
            Self::BoilingWater { .. } => Err(CheckProblem::ImpossibleAltitude),
        }
    }

    /// What to add to what the thermometer shows, from what it showed in this water.
    ///
    /// # Errors
    /// [`CheckProblem`] says what was wrong and what is accepted.
    pub fn offset(self, shown: Temperature) -> Result<TemperatureDifference, CheckProblem> {
        let offset = self.temperature()? - shown;
        if offset.abs() <= CORRECTABLE { Ok(offset) } else { Err(CheckProblem::TooFarOff) }
    }
}

/// One offset from a check in each water: the lower, so that the correction never makes meat
/// hotter than either check allows.
pub fn lower_offset(a: TemperatureDifference, b: TemperatureDifference) -> TemperatureDifference {
    if b <= a { b } else { a }
}

/// The boiling point of water at an altitude in the standard atmosphere.
///
/// Pressure by ISO 2533 (1975); vapour pressure of water from 344 to 373 K by the Antoine equation
/// `log10(p/bar) = A - B / (T/K + C)`, with the coefficients of the NIST Chemistry WebBook after
/// Bridgeman & Aldrich (1964), from memory. A day of high or low weather moves it by 1 F.
pub fn boiling_point(altitude: Length) -> Temperature {
    const SEA_LEVEL_BAR: f64 = 1.013_25;
    const LAPSE_PER_M: f64 = 0.0065 / 288.15;
    const EXPONENT: f64 = 5.255_88;
    const ANTOINE: [f64; 3] = [5.083_54, 1_663.125, -45.622];
    const ICE_POINT_K: f64 = 273.15;
    let bar = SEA_LEVEL_BAR * libm::pow(1.0 - LAPSE_PER_M * altitude.m(), EXPONENT);
    let [a, b, c] = ANTOINE;
    Temperature::from_c(b / (a - libm::log10(bar)) - c - ICE_POINT_K)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_offset_brings_the_shown_to_the_true() {
        let sea = Bath::BoilingWater { altitude: Length::from_m(0.0) };
        for (bath, shown, offset) in [
            (Bath::IceWater, 33.5, -1.5),
            (Bath::IceWater, 30.0, 2.0),
            (sea, 210.0, 2.0),
            (sea, 214.5, -2.5),
        ] {
            let found = bath.offset(Temperature::from_f(shown)).unwrap();
            assert!((found.f() - offset).abs() < 0.02, "{bath:?} {shown}: {}", found.f());
        }
        assert_eq!(Bath::IceWater.offset(Temperature::from_f(38.0)), Err(CheckProblem::TooFarOff));
        let far = Bath::BoilingWater { altitude: Length::from_m(9000.0) };
        assert_eq!(far.temperature(), Err(CheckProblem::ImpossibleAltitude));
    }

    #[test]
    fn the_lower_of_two_offsets_holds() {
        let (high, low) = (TemperatureDifference::from_f(1.0), TemperatureDifference::from_f(-1.0));
        assert_eq!(lower_offset(high, low), low);
        assert_eq!(lower_offset(low, high), low);
    }
}
