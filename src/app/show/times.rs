//! Moments and spans by the phone's own clock, as they stand alone and in a sentence.

use std::cell::RefCell;

use cook_model::quantity::{Moment, Span, to_minutes};
use js_sys::Intl::DateTimeFormat;
use wasm_bindgen::{JsCast, JsValue};

use super::number;
use crate::words::Language;
use crate::{preferences, region, say};

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
