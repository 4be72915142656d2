//! What a value can be. The screens say these limits when a typed value is outside them, and the
//! fold ignores entries beyond them, whoever wrote them.

use core::ops::RangeInclusive;

use super::Problem;
use crate::heat::COLDEST;
use crate::history::Tolerances;
use crate::piece::Piece;
use crate::plan::Habits;
use crate::quantity::{Length, Mass, Span, Temperature, TemperatureDifference};

/// A core reading: from just frozen to boiling water.
pub const CORE: RangeInclusive<Temperature> =
    Temperature::from_f(28.0)..=Temperature::from_f(215.0);
/// A pit reading: from a cold morning to a fire out of hand.
pub const PIT: RangeInclusive<Temperature> = Temperature::from_f(0.0)..=Temperature::from_f(700.0);
/// A pit temperature to aim for.
pub const PIT_TARGET: RangeInclusive<Temperature> =
    Temperature::from_f(180.0)..=Temperature::from_f(450.0);
/// A pull temperature. Below 140 F a piece would come off in the middle of the danger zone.
pub const PULL_TARGET: RangeInclusive<Temperature> =
    Temperature::from_f(140.0)..=Temperature::from_f(185.0);
/// The air where the pieces rest.
pub const AMBIENT: RangeInclusive<Temperature> =
    Temperature::from_f(-40.0)..=Temperature::from_f(130.0);
/// A piece as it goes on: not frozen, not cooked already.
pub const START: RangeInclusive<Temperature> = COLDEST..=Temperature::from_f(90.0);
/// A boneless breast.
pub const WEIGHT: RangeInclusive<Mass> = Mass::from_g(50.0)..=Mass::from_g(1000.0);
/// The thickest part of a boneless breast.
pub const THICKEST: RangeInclusive<Length> = Length::from_mm(8.0)..=Length::from_mm(90.0);
/// A food thermometer's tolerance: from better than any sold to more than twice what a food business
/// may use (FDA Food Code 2022, 4-203.11, from memory: 2 F).
pub const TOLERANCE: RangeInclusive<TemperatureDifference> =
    TemperatureDifference::from_f(0.1)..=TemperatureDifference::from_f(5.0);
/// A pit thermometer's: a dial in a lid can be far off (common practice, no source).
pub const PIT_TOLERANCE: RangeInclusive<TemperatureDifference> =
    TemperatureDifference::from_f(0.1)..=TemperatureDifference::from_f(30.0);
/// The chance, in percent, that a piece may be past its pull temperature at a check.
pub const CHECK_RISK: RangeInclusive<u8> = 1..=50;

/// The offset of a thermometer. One further out needs a new battery or a new thermometer, not a
/// correction.
pub const OFFSET: RangeInclusive<TemperatureDifference> =
    TemperatureDifference::from_f(-5.0)..=TemperatureDifference::from_f(5.0);

/// What a check can find, however wrong the thermometer is: one beyond [`OFFSET`] bars it from
/// proving until it is replaced.
pub const FOUND_OFFSET: RangeInclusive<TemperatureDifference> =
    TemperatureDifference::from_f(-300.0)..=TemperatureDifference::from_f(300.0);

/// The value, if it lies within the limits.
///
/// # Errors
/// [`Problem::ImpossibleValue`] if it does not, or is not a number.
pub fn check<T: PartialOrd>(value: T, limits: &RangeInclusive<T>) -> Result<T, Problem> {
    if limits.contains(&value) { Ok(value) } else { Err(Problem::ImpossibleValue) }
}

/// Checks each fact of a piece.
///
/// # Errors
/// [`Problem::ImpossibleValue`] if one is outside its limits.
pub fn check_piece(piece: &Piece) -> Result<(), Problem> {
    check(piece.weight, &WEIGHT)?;
    check(piece.start, &START)?;
    if let Some(thickest) = piece.thickest {
        check(thickest, &THICKEST)?;
    }
    Ok(())
}

/// Checks the tolerance of each thermometer.
///
/// # Errors
/// [`Problem::ImpossibleValue`] if one is outside its limits.
pub fn check_tolerances(tolerances: &Tolerances) -> Result<(), Problem> {
    check(tolerances.instant_read, &TOLERANCE)?;
    check(tolerances.leave_in, &TOLERANCE)?;
    check(tolerances.pit, &PIT_TOLERANCE)?;
    Ok(())
}

/// How much hotter or cooler than the rack's mean a place on it can be.
pub const PLACE: RangeInclusive<TemperatureDifference> =
    TemperatureDifference::from_f(-60.0)..=TemperatureDifference::from_f(60.0);
/// The most places a rack can have.
pub const PLACES: usize = 40;
/// How long raw meat can be meant to lie out before it goes on. Source: USDA consumer advice, 2 h.
pub const OUT_OF_FRIDGE: RangeInclusive<Span> = Span::zero()..=Span::hours(2);
/// How long any other habit can take.
pub const HABIT: RangeInclusive<Span> = Span::zero()..=Span::hours(8);

/// Checks the places of a rack.
///
/// # Errors
/// [`Problem::ImpossibleValue`] if there are too many, or one is outside its limits.
pub fn check_rack(places: &[TemperatureDifference]) -> Result<&[TemperatureDifference], Problem> {
    check(places.len(), &(0..=PLACES))?;
    places.iter().try_for_each(|place| check(*place, &PLACE).map(|_| ()))?;
    Ok(places)
}

/// Checks each of the cook's habits.
///
/// # Errors
/// [`Problem::ImpossibleValue`] if one is outside its limits.
pub fn check_habits(habits: &Habits) -> Result<Habits, Problem> {
    let Habits { fire, out_of_fridge, seasoning, rest, carving } = *habits;
    check(out_of_fridge, &OUT_OF_FRIDGE)?;
    [fire.preheat, fire.feed_every, seasoning, rest, carving]
        .into_iter()
        .try_for_each(|span| check(span, &HABIT).map(|_| ()))?;
    Ok(*habits)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_breast_that_was_never_frozen_is_not_refused_as_frozen() {
        // USDA, 9 CFR 381.129 (from memory): poultry is "fresh" that was never below 26 F; at 0 F it is
        // frozen.
        for fresh in [26.0, 28.0, 30.0, 32.0, 40.0] {
            assert!(check(Temperature::from_f(fresh), &START).is_ok(), "{fresh}");
        }
        for frozen in [0.0, 20.0, 25.0, f64::NAN] {
            assert!(check(Temperature::from_f(frozen), &START).is_err(), "{frozen}");
        }
    }
}
