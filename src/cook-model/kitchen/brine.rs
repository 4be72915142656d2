//! Salting ahead of the cook: how much salt, how much water, and for how long.
//!
//! The amounts are arithmetic by weight. The times are a guide: salt spreads through the flat
//! thickness of a piece by diffusion, and how fast differs from piece to piece by more than twice.

use thiserror::Error;

use super::amounts::SaltLevel;
use crate::quantity::{Length, Mass, Span, seconds};

/// Diffusivity of salt in meat, m2/s, slowest and quickest: 3 to 7e-10 (Hansen, van der Berg,
/// Ringgaard, Stodkilde-Jorgensen & Karlsson 2008, Meat Science 80:851-856; pork, cold).
const DIFFUSIVITY: [f64; 2] = [3e-10, 7e-10];

/// Fourier numbers, on the half-thickness, at which dry salt laid on both faces has brought half
/// of its even level to halfway between face and middle, and to the middle: roots of the series
/// for an instant source at the face of an insulated slab (Crank, The Mathematics of Diffusion,
/// 1975, section 2.2 by reflection).
const DRY: [f64; 2] = [0.0347, 0.1388];
/// The same for a slab whose faces are kept at the brine's level (Crank 1975, eq. 4.17).
const WET: [f64; 2] = [0.2396, 0.3787];

/// How long raw poultry keeps in the refrigerator at most: two days (FoodSafety.gov cold storage
/// chart: raw poultry pieces 1-2 days at 40 F).
const RAW_KEEPS: Span = Span::hours(48);

/// Levels that are meant as seasoning, g of salt on 100 g of meat.
const LEVELS: core::ops::RangeInclusive<SaltLevel> =
    SaltLevel::from_g_per_100g(0.1)..=SaltLevel::from_g_per_100g(3.0);

/// How the salt is given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Brine {
    /// Dry, rubbed on.
    Dry,
    /// Dissolved in this much water.
    Wet {
        /// The water.
        water: Mass,
    },
}

/// How much salt, and how long it needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Salting {
    /// Salt to weigh out.
    pub salt: Mass,
    /// Until the outer half of the thickness is at half the even level or above: quickest and
    /// slowest.
    pub outer_half: [Span; 2],
    /// Until the middle is at half the even level: quickest and slowest.
    pub middle: [Span; 2],
    /// Whether the slowest middle takes longer than raw poultry keeps in the refrigerator.
    pub outlasts_raw: bool,
}

/// Why no salting could be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum BrineProblem {
    /// The level is not one of seasoning.
    #[error("that is not a level for seasoning; 0.1 to 3 g of salt on 100 g of meat is accepted")]
    Level,
    /// No meat, no thickness or no water.
    #[error("weight, thickness and water must be more than nothing")]
    Nothing,
    /// The meat holds as much already.
    #[error("the meat already holds as much salt as is wanted; leave the brine out")]
    HeldAlready,
}

/// Works out the salt for a weight of meat whose thickest piece is `thickest`, and which holds so much salt
/// already, by the solution it was sold with.
///
/// In a wet brine the salt is reckoned on meat and water together, so that meat left in it long
/// enough ends at the level and no higher (equilibrium brining; common practice, no source).
///
/// # Errors
/// [`BrineProblem`] where the level is not one of seasoning, there is nothing to salt, or it is salty
/// enough.
pub fn salting(
    brine: Brine,
    meat: Mass,
    thickest: Length,
    level: SaltLevel,
    held: SaltLevel,
) -> Result<Salting, BrineProblem> {
    if !LEVELS.contains(&level) {
        return Err(BrineProblem::Level);
    }
    let (whole, fourier) = match brine {
        Brine::Dry => (meat, DRY),
        Brine::Wet { water } if water > Mass::ZERO => (meat + water, WET),
        Brine::Wet { .. } => return Err(BrineProblem::Nothing),
    };
    let some = meat > Mass::ZERO && thickest > Length::ZERO;
    if !some {
        return Err(BrineProblem::Nothing);
    }
    let salt = level.salt_on(whole) - held.salt_on(meat);
    // In a wet brine the water would draw out what is too much; who wants no more salt needs no brine.
    if salt <= Mass::ZERO || held >= level {
        return Err(BrineProblem::HeldAlready);
    }
    let half = thickest.m() / 2.0;
    let span = |number: f64| {
        let [slow, quick] = DIFFUSIVITY.map(|d| seconds(number * half * half / d));
        [quick, slow]
    };
    let [outer_half, middle] = fourier.map(span);
    Ok(Salting { salt, outer_half, middle, outlasts_raw: middle[1] > RAW_KEEPS })
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::PI;
    use proptest::prelude::*;

    const NONE: SaltLevel = SaltLevel::NONE;

    /// Level over the even level, dry: place from the middle on a half-thickness of one.
    fn dry(place: f64, fourier: f64) -> f64 {
        let term = |n: i32| {
            let n = f64::from(n);
            let sign = if n % 2.0 == 0.0 { 1.0 } else { -1.0 };
            sign * libm::cos(n * PI * place) * libm::exp(-n * n * PI * PI * fourier)
        };
        1.0 + 2.0 * (1..40).map(term).sum::<f64>()
    }

    /// Level over the brine's, wet.
    fn wet(place: f64, fourier: f64) -> f64 {
        let term = |n: i32| {
            let odd = f64::from(2 * n + 1);
            let sign = if n % 2 == 0 { 1.0 } else { -1.0 };
            let decay = libm::exp(-odd * odd * PI * PI * fourier / 4.0);
            4.0 * sign / (odd * PI) * libm::cos(odd * PI * place / 2.0) * decay
        };
        1.0 - (0..40).map(term).sum::<f64>()
    }

    #[test]
    fn the_fourier_numbers_solve_the_series() {
        for (place, which) in [(0.5, 0), (0.0, 1)] {
            assert!((dry(place, DRY[which]) - 0.5).abs() < 0.002, "dry at {place}");
            assert!((wet(place, WET[which]) - 0.5).abs() < 0.002, "wet at {place}");
        }
    }

    #[test]
    fn an_overnight_dry_brine_seasons_the_outer_half() {
        // Common practice, no source: salted the evening before.
        let level = SaltLevel::from_g_per_100g(1.0);
        let four = Mass::from_g(1000.0);
        let got = salting(Brine::Dry, four, Length::from_mm(35.0), level, NONE).unwrap();
        assert!((got.salt.g() - 10.0).abs() < 1e-9);
        assert!(got.outer_half[1] < Span::hours(14), "{:?}", got.outer_half);
        assert!(!got.outlasts_raw);
    }

    #[test]
    fn a_wet_brine_salts_the_water_too() {
        let level = SaltLevel::from_g_per_100g(1.5);
        let water = Mass::from_g(2000.0);
        let got =
            salting(Brine::Wet { water }, Mass::from_g(1000.0), Length::from_mm(30.0), level, NONE);
        assert!((got.unwrap().salt.g() - 45.0).abs() < 1e-9);
    }

    #[test]
    fn salt_that_the_meat_holds_already_is_left_out() {
        // Worked by hand: 1 % of 1 kg is 10 g, of which 7.5 g are in; with 2 kg of water 1.5 % of 3 kg is 45 g.
        let (meat, thick) = (Mass::from_g(1000.0), Length::from_mm(30.0));
        let level = SaltLevel::from_g_per_100g;
        let dry = salting(Brine::Dry, meat, thick, level(1.0), level(0.75)).unwrap();
        assert!((dry.salt.g() - 2.5).abs() < 1e-9);
        let water = Mass::from_g(2000.0);
        let wet = salting(Brine::Wet { water }, meat, thick, level(1.5), level(0.75)).unwrap();
        assert!((wet.salt.g() - 37.5).abs() < 1e-9);
        for brine in [Brine::Dry, Brine::Wet { water }] {
            let enough = salting(brine, meat, thick, level(0.7), level(0.75));
            assert_eq!(enough, Err(BrineProblem::HeldAlready));
        }
    }

    #[test]
    fn refuses_what_is_no_seasoning() {
        let meat = Mass::from_g(1000.0);
        let thick = Length::from_mm(30.0);
        let bad = |level| salting(Brine::Dry, meat, thick, SaltLevel::from_g_per_100g(level), NONE);
        assert_eq!(bad(0.0), Err(BrineProblem::Level));
        assert_eq!(bad(f64::NAN), Err(BrineProblem::Level));
        let level = SaltLevel::from_g_per_100g(1.0);
        let dry = salting(Brine::Dry, Mass::ZERO, thick, level, NONE);
        assert_eq!(dry, Err(BrineProblem::Nothing));
        let no_water = salting(Brine::Wet { water: Mass::ZERO }, meat, thick, level, NONE);
        assert_eq!(no_water, Err(BrineProblem::Nothing));
    }

    proptest! {
        #[test]
        fn twice_as_thick_takes_four_times_as_long(mm in 10.0..40.0_f64) {
            let level = SaltLevel::from_g_per_100g(1.0);
            let meat = Mass::from_g(500.0);
            let thin = salting(Brine::Dry, meat, Length::from_mm(mm), level, NONE).unwrap();
            let thick = salting(Brine::Dry, meat, Length::from_mm(2.0 * mm), level, NONE).unwrap();
            let ratio = thick.middle[1].num_milliseconds() as f64
                / thin.middle[1].num_milliseconds() as f64;
            prop_assert!((ratio - 4.0).abs() < 1e-3);
        }
    }
}
