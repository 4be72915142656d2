//! What raw weight weighs when cooked: the published cooking loss, moved by the end temperature
//! and by the cook's own weighings.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::amounts::Fraction;
use crate::quantity::{Mass, Temperature};

/// Cooking loss of intact breast brought to 75 C, per cent, and its spread from piece to piece:
/// 20.75 +- 2.41 cooled in air, 19.15 +- 3.12 weighed at five minutes (Pang et al. 2020, Poultry
/// Science 99(11), PMC7647922, table 1).
const LOSS_AT_75C: f64 = 20.75;
const PIECE_SPREAD: f64 = 3.1;
const PUBLISHED_END: Temperature = Temperature::from_c(75.0);
/// Points of loss per degree of end temperature: 15 to 27 % over 71 to 79 C (Hong & Lee 2012, Food
/// Science and Biotechnology 21:1497-1499).
const POINTS_PER_C: f64 = 1.5;
/// What a long dry cook loses beyond a laboratory oven, points, and how unsure that is: no
/// published figure was found for smoked breasts; the authors' judgement.
const SMOKER: f64 = 2.0;
const SMOKER_SPREAD: f64 = 4.0;
/// How much one cook's mean loss differs from the same person's next, points: the authors'
/// judgement.
const COOK_SPREAD: f64 = 2.0;
/// Loss is kept within what meat can lose, per cent.
const LEAST: f64 = 5.0;
const MOST: f64 = 45.0;

/// The end temperatures the curve is used for.
const ENDS: core::ops::RangeInclusive<Temperature> =
    Temperature::from_f(130.0)..=Temperature::from_f(212.0);
/// The share of the raw weight that a weighing can leave: less, or more, is a mistyped weight.
const POSSIBLE: core::ops::RangeInclusive<f64> = 0.5..=1.0;

/// One cook's pieces weighed together, raw and cooked.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Weighing {
    /// How many pieces.
    pub pieces: u16,
    /// Their raw weight.
    #[serde(rename = "raw_g")]
    pub raw: Mass,
    /// Their weight after the rest.
    #[serde(rename = "cooked_g")]
    pub cooked: Mass,
    /// The highest core temperature they reached.
    #[serde(rename = "end_c")]
    pub end: Temperature,
}

/// What this person's cooks lose beyond the published curve: a belief, sharpened by weighings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OwnLoss {
    /// Points beyond the curve.
    mean: f64,
    /// Its variance, points squared.
    variance: f64,
}

impl Default for OwnLoss {
    /// Before anything was weighed.
    fn default() -> Self {
        Self { mean: SMOKER, variance: SMOKER_SPREAD * SMOKER_SPREAD }
    }
}

/// A cooked weight and its spread.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CookedWeight {
    /// The likeliest weight.
    pub mean: Mass,
    /// One standard deviation of it.
    pub spread: Mass,
}

/// Why a weighing or an end temperature was refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum WeightProblem {
    /// Cooked weighs more than raw, or under half of it.
    #[error("cooked meat weighs half to all of its raw weight; one of the two is mistyped")]
    NotPossible,
    /// No pieces.
    #[error("there are no pieces; one or more are accepted")]
    NoPieces,
    /// An end temperature meat is not cooked to.
    #[error("that is no end temperature; 130 F to 212 F (54 C to 100 C) is accepted")]
    End,
}

/// Loss by the published curve at an end temperature, per cent.
fn published_loss(end: Temperature) -> Result<f64, WeightProblem> {
    if !ENDS.contains(&end) {
        return Err(WeightProblem::End);
    }
    Ok((LOSS_AT_75C + POINTS_PER_C * (end - PUBLISHED_END).c()).clamp(LEAST, MOST))
}

/// How much of the raw weight is lost at an end temperature, by the published mean.
///
/// # Errors
/// [`WeightProblem::End`] where breast is not cooked to that temperature.
pub fn published_share_lost(end: Temperature) -> Result<Fraction, WeightProblem> {
    published_loss(end).map(Fraction::from_percent)
}

impl OwnLoss {
    /// The belief after one more cook was weighed: normal prior, normal likelihood.
    ///
    /// # Errors
    /// [`WeightProblem`] says what is wrong with the weighing; the belief stays as it was.
    pub fn after(self, weighing: &Weighing) -> Result<Self, WeightProblem> {
        if weighing.pieces == 0 {
            return Err(WeightProblem::NoPieces);
        }
        let left = weighing.cooked.g() / weighing.raw.g();
        if !POSSIBLE.contains(&left) {
            return Err(WeightProblem::NotPossible);
        }
        let seen = 100.0 * (1.0 - left) - published_loss(weighing.end)?;
        let noise =
            COOK_SPREAD * COOK_SPREAD + PIECE_SPREAD * PIECE_SPREAD / f64::from(weighing.pieces);
        let gain = self.variance / (self.variance + noise);
        Ok(Self {
            mean: self.mean + gain * (seen - self.mean),
            variance: self.variance * (1.0 - gain),
        })
    }

    /// What `pieces` pieces of this raw weight together will weigh, brought to `end`.
    ///
    /// # Errors
    /// [`WeightProblem`] where there are no pieces, or breast is not cooked to that temperature.
    pub fn predict(
        self,
        raw: Mass,
        pieces: u16,
        end: Temperature,
    ) -> Result<CookedWeight, WeightProblem> {
        if pieces == 0 {
            return Err(WeightProblem::NoPieces);
        }
        let loss = (published_loss(end)? + self.mean).clamp(LEAST, MOST);
        let variance = self.variance
            + COOK_SPREAD * COOK_SPREAD
            + PIECE_SPREAD * PIECE_SPREAD / f64::from(pieces);
        Ok(CookedWeight {
            mean: raw * (1.0 - loss / 100.0),
            spread: raw * (libm::sqrt(variance) / 100.0),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn weighing(loss: f64) -> Weighing {
        let raw = Mass::from_g(1000.0);
        let cooked = raw * (1.0 - loss / 100.0);
        Weighing { pieces: 4, raw, cooked, end: Temperature::from_c(74.0) }
    }

    #[test]
    fn weighings_move_the_estimate_and_narrow_it() {
        let end = Temperature::from_c(74.0);
        let raw = Mass::from_g(1000.0);
        let mut own = OwnLoss::default();
        let before = own.predict(raw, 4, end).unwrap();
        for _ in 0..6 {
            own = own.after(&weighing(28.0)).unwrap();
        }
        let after = own.predict(raw, 4, end).unwrap();
        assert!((after.mean.g() - 720.0).abs() < 10.0, "{after:?}");
        assert!(after.spread < before.spread);
    }

    #[test]
    fn mistyped_weighings_are_refused() {
        let own = OwnLoss::default();
        let refused = |w: Weighing| own.after(&w).unwrap_err();
        assert_eq!(refused(weighing(-5.0)), WeightProblem::NotPossible);
        assert_eq!(refused(weighing(60.0)), WeightProblem::NotPossible);
        assert_eq!(
            refused(Weighing { raw: Mass::ZERO, ..weighing(20.0) }),
            WeightProblem::NotPossible
        );
        assert_eq!(refused(Weighing { pieces: 0, ..weighing(20.0) }), WeightProblem::NoPieces);
        let cold = Weighing { end: Temperature::from_c(40.0), ..weighing(20.0) };
        assert_eq!(refused(cold), WeightProblem::End);
    }

    proptest! {
        #[test]
        fn hotter_weighs_less(a in 55.0..99.0_f64, rise in 0.1..20.0_f64) {
            let at = |c: f64| {
                let end = Temperature::from_c(c.min(99.9));
                OwnLoss::default().predict(Mass::from_g(900.0), 3, end).unwrap().mean
            };
            prop_assert!(at(a + rise) <= at(a));
        }

        #[test]
        fn belief_lies_between_prior_and_weighing(loss in 0.0..49.0_f64) {
            let seen = loss - published_loss(Temperature::from_c(74.0)).unwrap();
            let after = OwnLoss::default().after(&weighing(loss)).unwrap();
            let (low, high) = if seen < SMOKER { (seen, SMOKER) } else { (SMOKER, seen) };
            prop_assert!(after.mean >= low - 1e-9 && after.mean <= high + 1e-9);
        }
    }
}
