//! Quantities as a person reads them: in their units, with their decimal mark, by their phone's
//! own clock.

use std::cell::RefCell;

use cook_model::cook::CookState;
use cook_model::history::CoreReading;
use cook_model::piece::{Piece, PieceId};
use cook_model::quantity::{
    Length, LengthUnit, Mass, MassUnit, Moment, Span, Temperature, TemperatureDifference,
    TemperatureUnit, to_minutes,
};
use cook_model::sorting::sort_by_key;
use js_sys::Intl::DateTimeFormat;
use wasm_bindgen::{JsCast, JsValue};

use crate::words::Language;
use crate::{preferences, region, say};

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

/// The time of day, in the phone's own form and time zone.
pub fn clock(moment: Moment) -> String {
    written(&clock_form(&date(moment)), moment)
}

fn written(form: &DateTimeFormat, moment: Moment) -> String {
    let written = form.format().call1(&JsValue::UNDEFINED, &date(moment));
    // It takes any date that a browser's date can hold, and a moment is one.
    written.ok().and_then(|written| written.as_string()).unwrap_or_default()
}

thread_local! {
    /// The form of the clock, in which language, and by how many minutes it was off from UTC where it
    /// was made: to make one takes a browser longer than to use it a hundred times.
    static CLOCK_FORM: RefCell<Option<(Language, f64, DateTimeFormat)>> =
        const { RefCell::new(None) };
}

/// Hour and minute in the phone's own form. A form keeps the time zone that it was made in, so that
/// one is made anew when the phone's has changed.
fn clock_form(date: &js_sys::Date) -> DateTimeFormat {
    let (language, offset) = (preferences::language(), date.get_timezone_offset());
    CLOCK_FORM.with_borrow_mut(|kept| match kept {
        Some((of, at, form)) if (*of, *at) == (language, offset) => form.clone(),
        _ => kept.insert((language, offset, form_of(&[]))).2.clone(),
    })
}

/// The one form in which moments are written: the app's language, and the phone's hours of the day, 12
/// or 24. Without the latter a language brings its own: "es" has 24 hours where a phone set to Spanish
/// of Mexico may have 12. `parts` are shown besides hour and minute.
fn form_of(parts: &[(&str, &str)]) -> DateTimeFormat {
    let hours = [("hour", "numeric"), ("minute", "2-digit")];
    let options = js_sys::Object::new();
    for (part, form) in hours.iter().chain(parts) {
        set(&options, part, &(*form).into());
    }
    let phone = DateTimeFormat::new(&js_sys::Array::new(), &options).resolved_options();
    let of_phone = |name: &str| js_sys::Reflect::get(&phone, &name.into()).unwrap_or_default();
    set(&options, "hourCycle", &of_phone("hourCycle"));
    DateTimeFormat::new(&js_sys::Array::of1(&region::locale().into()), &options)
}

/// The time of day as it stands in a sentence: Spanish gives it its article, "la 1:15", "las 5:30".
pub fn the_time(moment: Moment) -> String {
    let time = clock(moment);
    let hour = time.split(|c: char| !c.is_ascii_digit()).find_map(|part| part.parse::<u32>().ok());
    say!("the-time", hour = hour.unwrap_or_default(), time = time)
}

/// The time of day as short as it can be: "5:30", "17:30".
pub fn clock_short(moment: Moment) -> String {
    let parts = clock(moment);
    // Only digits and what stands between them: "5:30" of "5:30 PM".
    parts.trim_matches(|c: char| !c.is_ascii_digit()).to_owned()
}

/// Two times of one day, in the phone's own form: "5:08 – 5:34 PM".
pub fn clock_range(from: Moment, to: Moment) -> String {
    let (from_date, to_date) = (date(from), date(to));
    let form = clock_form(&from_date);
    // Old browsers lack it, and then the two stand side by side.
    let range = js_sys::Reflect::get(&form, &"formatRange".into())
        .and_then(|method| method.dyn_into::<js_sys::Function>())
        .and_then(|method| method.call2(&form, &from_date, &to_date));
    let written = range.ok().and_then(|range| range.as_string());
    written.unwrap_or_else(|| format!("{} – {}", clock(from), clock(to)))
}

/// The time of day as the browser's own time field holds it: "18:30".
pub fn clock_in_field(moment: Moment) -> String {
    let date = date(moment);
    format!("{:02}:{:02}", date.get_hours(), date.get_minutes())
}

/// The day and the time of day, in the phone's own form.
pub fn day_and_clock(moment: Moment) -> String {
    written(&form_of(&[("weekday", "short"), ("day", "numeric"), ("month", "short")]), moment)
}

/// The day as a file's name holds it: "2026-06-12".
pub fn day_in_file(moment: Moment) -> String {
    let date = date(moment);
    format!("{}-{:02}-{:02}", date.get_full_year(), date.get_month() + 1, date.get_date())
}

/// A browser's date of a moment.
pub fn date(moment: Moment) -> js_sys::Date {
    js_sys::Date::new(&JsValue::from_f64(moment.timestamp_millis() as f64))
}

fn set(options: &js_sys::Object, name: &str, value: &JsValue) {
    // Setting a field of a plain object cannot fail.
    let _ = js_sys::Reflect::set(options, &name.into(), value);
}

/// A span to the minute: "12 min", "1 h 05 min"; its sign is left out.
pub fn span(span: Span) -> String {
    let minutes = (span.num_seconds().abs() + 30) / 60;
    if minutes < 60 {
        say!("minutes", count = minutes)
    } else {
        say!("hours-minutes", hours = minutes / 60, minutes = format!("{:02}", minutes % 60))
    }
}

/// A span that is only roughly known: days, or hours, or minutes.
pub fn rough(span: Span) -> String {
    const DAYS_FROM: f64 = 48.0;
    const HOURS_FROM: f64 = 3.0;
    let hours = to_minutes(span) / 60.0;
    if hours >= DAYS_FROM {
        say!("days", count = number(hours / 24.0, 0))
    } else if hours >= HOURS_FROM {
        say!("hours", count = number(hours, 0))
    } else {
        self::span(span)
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

/// A span as a running clock: "4:05", "1:12:30"; its sign is left out.
pub fn countdown(span: Span) -> String {
    let seconds = span.num_seconds().abs();
    let (hours, minutes, seconds) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
    if hours > 0 {
        format!("{hours}:{minutes:02}:{seconds:02}")
    } else {
        format!("{minutes}:{seconds:02}")
    }
}

/// How long ago something was.
pub fn age(at: Moment, now: Moment) -> String {
    let gone = now - at;
    if gone < Span::seconds(60) { say!("just-now") } else { say!("ago", span = span(gone)) }
}

/// Where the name of a piece stands: Spanish gives it an article within a sentence, "la pieza 3".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stands {
    Alone,
    InSentence,
}

/// What a piece is called: its own name, or "Piece 3".
pub fn piece(state: &CookState, id: PieceId) -> String {
    one(state, id, Stands::Alone)
}

/// A piece as it stands within a sentence.
pub fn the_piece(state: &CookState, id: PieceId) -> String {
    one(state, id, Stands::InSentence)
}

/// Several pieces: "Pieces 1, 2 and 4", "Pieces 1 to 6 and 9", or by their own names.
pub fn pieces(state: &CookState, ids: &[PieceId]) -> String {
    several(state, ids, Stands::Alone)
}

/// Several pieces as they stand within a sentence.
pub fn the_pieces(state: &CookState, ids: &[PieceId]) -> String {
    several(state, ids, Stands::InSentence)
}

fn one(state: &CookState, id: PieceId, stands: Stands) -> String {
    match state.piece(id) {
        Some((standing, _)) if !standing.name.is_empty() => standing.name.clone(),
        _ if stands == Stands::Alone => say!("piece", number = id.0),
        _ => say!("the-piece", number = id.0),
    }
}

/// More pieces than this are told by spans of numbers, not each in its turn.
const TOLD_IN_TURN: usize = 5;

fn several(state: &CookState, ids: &[PieceId], stands: Stands) -> String {
    let named = |id: &PieceId| state.piece(*id).is_some_and(|(piece, _)| !piece.name.is_empty());
    let numbers = match ids {
        [] => return String::new(),
        [only] => return one(state, *only, stands),
        ids if ids.iter().any(named) => {
            return list(&ids.iter().map(|id| one(state, *id, stands)).collect::<Vec<_>>());
        }
        ids if ids.len() > TOLD_IN_TURN => list(&spans(ids)),
        ids => list(&ids.iter().map(|id| id.0.to_string()).collect::<Vec<_>>()),
    };
    match stands {
        Stands::Alone => say!("pieces", numbers = numbers),
        Stands::InSentence => say!("the-pieces", numbers = numbers),
    }
}

/// The numbers of pieces in order, those that follow each other as a span: "1 to 6", "9".
fn spans(ids: &[PieceId]) -> Vec<String> {
    let mut numbers = ids.iter().map(|id| id.0).collect::<Vec<_>>();
    sort_by_key(&mut numbers, |number| *number);
    let span = |run: &[u32]| match run {
        [first, _, .., last] => vec![say!("span-of", first = *first, last = *last)],
        short => short.iter().map(u32::to_string).collect(),
    };
    numbers.chunk_by(|one, next| one + 1 == *next).flat_map(span).collect()
}

/// "a, b and c".
fn list(words: &[String]) -> String {
    match words.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, before)) => say!("list-and", first = before.join(", "), last = last.as_str()),
    }
}

/// The facts of a raw piece: "8.1 oz, 1.6 in thick".
pub fn facts(piece: &Piece) -> String {
    let size = match piece.thickest {
        Some(thickest) => {
            say!("set-out-facts", weight = mass(piece.weight), thickest = length(thickest))
        }
        None => say!("set-out-facts-weight", weight = mass(piece.weight)),
    };
    if piece.icy { say!("set-out-facts-icy", facts = size) } else { size }
}
