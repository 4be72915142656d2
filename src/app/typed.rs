//! Reads what a person typed into a quantity, or says beside the field what is accepted.

use core::ops::RangeInclusive;

use cook_model::quantity::{
    Length, LengthUnit, Mass, MassUnit, Moment, NumberProblem, Span, Temperature,
    TemperatureDifference, WeightUnit, number, weight,
};

use crate::{preferences, say, show};

/// A quantity with limits, as a person types it.
pub trait Typed: Copy + PartialOrd {
    /// From the number in the person's unit.
    fn from_typed(value: f64) -> Self;
    /// The number in the person's unit.
    fn in_unit(self) -> f64;
    /// How many decimals it is typed with, at the most.
    fn decimals() -> usize;
    /// The unit's name.
    fn unit() -> String;

    /// From the text of a field.
    ///
    /// # Errors
    /// What was typed instead.
    fn read(text: &str) -> Result<Self, NumberProblem> {
        number(text).map(Self::from_typed)
    }

    /// The bare number, as it would stand in a field.
    fn in_field(self) -> String {
        show::number(self.in_unit(), Self::decimals())
    }
}

/// A quantity of the model that the person reads and types in a unit of their choice.
macro_rules! typed_in_chosen_unit {
    ($quantity:ty, $choice:ident, $decimals:literal, $name:path) => {
        impl Typed for $quantity {
            fn from_typed(value: f64) -> Self {
                Self::from_unit(value, preferences::units().$choice)
            }
            fn in_unit(self) -> f64 {
                self.in_unit(preferences::units().$choice)
            }
            fn decimals() -> usize {
                $decimals
            }
            fn unit() -> String {
                $name()
            }
        }
    };
}

typed_in_chosen_unit!(Temperature, temperature, 1, show::temperature_unit);
typed_in_chosen_unit!(TemperatureDifference, temperature, 1, show::temperature_unit);
typed_in_chosen_unit!(Length, length, 2, show::length_unit);

impl Typed for Mass {
    fn from_typed(value: f64) -> Self {
        Self::from_unit(value, preferences::units().mass)
    }
    fn in_unit(self) -> f64 {
        self.in_unit(preferences::units().mass)
    }
    fn decimals() -> usize {
        1
    }
    fn unit() -> String {
        show::mass_unit()
    }
    fn read(text: &str) -> Result<Self, NumberProblem> {
        let bare = match preferences::units().mass {
            MassUnit::Ounce => WeightUnit::Ounce,
            MassUnit::Gram => WeightUnit::Gram,
        };
        weight(text, bare)
    }
}

impl Typed for Span {
    fn from_typed(value: f64) -> Self {
        cook_model::quantity::minutes(value)
    }
    fn in_unit(self) -> f64 {
        cook_model::quantity::to_minutes(self)
    }
    fn decimals() -> usize {
        0
    }
    fn unit() -> String {
        say!("unit-min")
    }
}

/// A chance in whole percent.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Percent(pub u8);

impl Typed for Percent {
    fn from_typed(value: f64) -> Self {
        Self(value.round().clamp(0.0, 255.0) as u8)
    }
    fn in_unit(self) -> f64 {
        f64::from(self.0)
    }
    fn decimals() -> usize {
        0
    }
    fn unit() -> String {
        say!("unit-percent")
    }
}

/// The weight of a whole pack, in pounds or grams, as shops print it.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct PackWeight(pub Mass);

impl PackWeight {
    fn chosen() -> WeightUnit {
        match preferences::units().mass {
            MassUnit::Ounce => WeightUnit::Pound,
            MassUnit::Gram => WeightUnit::Gram,
        }
    }
}

impl Typed for PackWeight {
    fn from_typed(value: f64) -> Self {
        Self(Self::chosen().mass(value))
    }
    fn in_unit(self) -> f64 {
        self.0.g() / Self::chosen().mass(1.0).g()
    }
    fn read(text: &str) -> Result<Self, NumberProblem> {
        weight(text, Self::chosen()).map(Self)
    }
    fn decimals() -> usize {
        2
    }
    fn unit() -> String {
        match preferences::units().mass {
            MassUnit::Ounce => say!("unit-lb"),
            MassUnit::Gram => show::mass_unit(),
        }
    }
}

/// Inches in a foot.
const INCHES: f64 = 12.0;

/// A height above the sea, in feet or metres.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Altitude(pub Length);

impl Typed for Altitude {
    fn from_typed(value: f64) -> Self {
        Self(match preferences::units().length {
            LengthUnit::Inch => Length::from_inches(value * INCHES),
            LengthUnit::Millimetre => Length::from_m(value),
        })
    }
    fn in_unit(self) -> f64 {
        match preferences::units().length {
            LengthUnit::Inch => self.0.inches() / INCHES,
            LengthUnit::Millimetre => self.0.m(),
        }
    }
    fn decimals() -> usize {
        0
    }
    fn unit() -> String {
        match preferences::units().length {
            LengthUnit::Inch => say!("unit-ft"),
            LengthUnit::Millimetre => say!("unit-m"),
        }
    }
}

/// The quantity typed. The limits are those of the model; `example` is a usual value.
///
/// # Errors
/// A plain message that says what is accepted.
pub fn quantity<Q: Typed>(text: &str, limits: &RangeInclusive<Q>, example: Q) -> Result<Q, String> {
    let typed = Q::read(text).map_err(|problem| match problem {
        NumberProblem::Blank => say!("bad-blank", example = example.in_field()),
        NumberProblem::AmbiguousComma => say!("bad-comma"),
        _ => say!("bad-number", example = example.in_field()),
    })?;
    within(typed, limits)?;
    Ok(typed)
}

/// Whether a quantity is within its limits.
///
/// # Errors
/// A plain message that says what is accepted.
pub fn within<Q: Typed>(value: Q, limits: &RangeInclusive<Q>) -> Result<(), String> {
    if limits.contains(&value) {
        return Ok(());
    }
    let (low, high) = (shown(*limits.start(), f64::ceil), shown(*limits.end(), f64::floor));
    Err(say!("bad-range", low = low, high = high))
}

/// As [`quantity`], but a blank field is no value rather than a mistake.
///
/// # Errors
/// A plain message that says what is accepted.
pub fn quantity_or_blank<Q: Typed>(
    text: &str,
    limits: &RangeInclusive<Q>,
    example: Q,
) -> Result<Option<Q>, String> {
    if text.trim().is_empty() { Ok(None) } else { quantity(text, limits, example).map(Some) }
}

/// A limit rounded to what a person would type, inwards, so that the number shown is accepted.
fn shown<Q: Typed>(limit: Q, inwards: fn(f64) -> f64) -> String {
    let fine = if limit.in_unit().abs() < 100.0 { Q::decimals().min(1) } else { 0 };
    let scale = if fine == 1 { 10.0 } else { 1.0 };
    // A limit that is round in this unit is not to be moved by an error in its last bit.
    let scaled = (limit.in_unit() * scale * 1e6).round() / 1e6;
    let (number, unit) = (show::number(inwards(scaled) / scale, fine), Q::unit());
    if unit.is_empty() { number } else { format!("{number}\u{a0}{unit}") }
}

/// The last moment at which the clock showed this time ("18:30"), up to now.
///
/// # Errors
/// A plain message if nothing was picked.
pub fn time_before(text: &str, now: Moment) -> Result<Moment, String> {
    let (hours, minutes) = hours_and_minutes(text).ok_or_else(|| say!("bad-time-blank"))?;
    let today = at_clock(now, 0, hours, minutes);
    if today <= now { Ok(today) } else { Ok(at_clock(now - Span::days(1), 0, hours, minutes)) }
}

/// The moment at which the clock shows this time ("18:30") today or tomorrow.
///
/// # Errors
/// A plain message if nothing was picked or the time has passed.
pub fn time_of_day(text: &str, tomorrow: bool, now: Moment) -> Result<Moment, String> {
    let (hours, minutes) = hours_and_minutes(text).ok_or_else(|| say!("bad-dinner-blank"))?;
    let moment = at_clock(now, u32::from(tomorrow), hours, minutes);
    if moment < now + Span::minutes(1) {
        return Err(say!("bad-dinner-past", time = show::the_time(moment)));
    }
    Ok(moment)
}

fn hours_and_minutes(text: &str) -> Option<(u32, u32)> {
    let (hours, rest) = text.split_once(':')?;
    Some((hours.parse().ok()?, rest.get(..2)?.parse().ok()?))
}

/// When the clock shows this on the day of a moment, or so many days later.
fn at_clock(day: Moment, later: u32, hours: u32, minutes: u32) -> Moment {
    let date = show::date(day);
    // The browser's calendar carries over the end of a month and a change of the clocks.
    date.set_date(date.get_date() + later);
    date.set_hours(hours);
    date.set_minutes(minutes);
    date.set_seconds(0);
    date.set_milliseconds(0);
    Moment::from_timestamp_millis(date.get_time() as i64).unwrap_or_default()
}
