//! Quantities as a person reads them: in their units, with their decimal mark. `times` shows moments and
//! spans by their phone's own clock, `pieces` what a piece is called.

mod pieces;
mod times;

use cook_model::history::CoreReading;
use cook_model::quantity::{
    Length, LengthUnit, Mass, MassUnit, Temperature, TemperatureDifference, TemperatureUnit,
};

use crate::{preferences, region, say};
pub use pieces::{facts, piece, pieces, the_piece, the_pieces};
pub use times::{
    age, clock, clock_in_field, clock_range, clock_short, countdown, date, day_and_clock,
    day_in_file, rough, span, the_time,
};

/// An avoirdupois pound.
const OUNCES_IN_A_POUND: f64 = 16.0;
/// A smaller offset does not show in a reading.
pub const LEAST_OFFSET: TemperatureDifference = TemperatureDifference::from_f(0.05);

/// A number with so many decimals, and none of them where they are nought.
pub fn number(value: f64, decimals: usize) -> String {
    let mut text = format!("{value:.decimals$}");
    if text.contains('.') {
        text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
    }
    if text == "-0" {
        text.remove(0);
    }
    text.replace('.', &region::decimal_mark().to_string())
}

/// A temperature to the whole degree, with its unit: "147 °F".
pub fn temperature(value: Temperature) -> String {
    format!("{}\u{a0}{}", degrees(value), temperature_unit())
}

/// A temperature as a thermometer shows it, to the tenth, with its unit.
pub fn reading(value: Temperature) -> String {
    let unit = preferences::units().temperature;
    format!("{}\u{a0}{}", number(value.in_unit(unit), 1), temperature_unit())
}

/// A core reading as the thermometer showed it, and what it counts as where an offset acts.
pub fn counted(of: &CoreReading) -> String {
    let shown = reading(of.shown);
    if (of.temperature - of.shown).abs() < LEAST_OFFSET {
        shown
    } else {
        say!("reading-counted", shown = shown, counted = reading(of.temperature))
    }
}

/// How far two temperatures are apart, to the tenth, with its unit; its sign is left out.
pub fn difference(value: TemperatureDifference) -> String {
    let unit = preferences::units().temperature;
    format!("{}\u{a0}{}", number(value.abs().in_unit(unit), 1), temperature_unit())
}

/// A temperature to the whole degree, without its unit.
pub fn degrees(value: Temperature) -> String {
    number(value.in_unit(preferences::units().temperature), 0)
}

/// The unit temperatures are shown in.
pub fn temperature_unit() -> String {
    match preferences::units().temperature {
        TemperatureUnit::Fahrenheit => say!("unit-f"),
        TemperatureUnit::Celsius => say!("unit-c"),
    }
}

/// A weight with its unit: ounces to the tenth, from a pound on pounds and ounces; grams whole.
pub fn mass(value: Mass) -> String {
    match preferences::units().mass {
        MassUnit::Ounce => pounds_and_ounces((value.ounces() * 10.0).round() / 10.0),
        MassUnit::Gram => format!("{}\u{a0}{}", number(value.g(), 0), say!("unit-g")),
    }
}

/// "8.1 oz", "1 lb", "1 lb 4.5 oz".
fn pounds_and_ounces(ounces: f64) -> String {
    let pounds = (ounces / OUNCES_IN_A_POUND).floor();
    let rest = ounces - pounds * OUNCES_IN_A_POUND;
    let ounces = format!("{}\u{a0}{}", number(rest, 1), say!("unit-oz"));
    if pounds < 1.0 {
        return ounces;
    }
    let pounds = format!("{}\u{a0}{}", number(pounds, 0), say!("unit-lb"));
    if rest < 0.05 { pounds } else { format!("{pounds} {ounces}") }
}

/// The unit weights are typed in.
pub fn mass_unit() -> String {
    match preferences::units().mass {
        MassUnit::Ounce => say!("unit-oz"),
        MassUnit::Gram => say!("unit-g"),
    }
}

/// A thickness with its unit: inches to the hundredth, millimetres whole.
pub fn length(value: Length) -> String {
    match preferences::units().length {
        LengthUnit::Inch => format!("{}\u{a0}{}", number(value.inches(), 2), say!("unit-in")),
        LengthUnit::Millimetre => format!("{}\u{a0}{}", number(value.mm(), 0), say!("unit-mm")),
    }
}

/// The unit thickness is shown in.
pub fn length_unit() -> String {
    match preferences::units().length {
        LengthUnit::Inch => say!("unit-in"),
        LengthUnit::Millimetre => say!("unit-mm"),
    }
}

/// Words that begin a line of their own.
pub fn capital(words: String) -> String {
    let mut letters = words.chars();
    let first = letters.next().map(|first| match first {
        // The letters of Spanish beyond ASCII stand 32 places behind their capitals (Unicode, Latin-1).
        'à'..='þ' if first != '÷' => char::from(first as u8 - 32),
        other => other.to_ascii_uppercase(),
    });
    first.map_or_else(String::new, String::from) + letters.as_str()
}
