//! How long a bag keeps, as its label carries it.

use chrono::DateTime;

use crate::quantity::{Moment, Span};

/// The last minute since 1970 that a label can name: the end of the year 2199.
const LAST_MINUTE: i64 = 120_971_520;
/// The longest time that a label can name.
const LONGEST: Span = Span::days(60);

/// How long a bag keeps, as its label has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Limit {
    /// An old label does not say.
    Unknown,
    /// In the refrigerator: to be eaten by then.
    EatBy(Moment),
    /// In the freezer: once thawed it keeps so long in the refrigerator.
    FridgeLeft(Span),
    /// It was to be thrown away since then already.
    ThrowAway(Moment),
}

pub(super) fn to_the_minute(moment: Moment) -> Option<Moment> {
    DateTime::from_timestamp(moment.timestamp().div_euclid(60) * 60, 0)
}

pub(super) fn as_whole_minutes(span: Span) -> i64 {
    let whole = span.clamp(Span::zero(), LONGEST).num_minutes();
    whole + i64::from(span > Span::minutes(whole) && span < LONGEST)
}

pub(super) fn limit_text(limit: Limit) -> String {
    let minute = |moment: Moment| moment.timestamp().div_euclid(60);
    match limit {
        Limit::Unknown => "u".to_owned(),
        Limit::EatBy(eat_by) => format!("e{}", minute(eat_by)),
        Limit::FridgeLeft(left) => format!("l{}", left.num_minutes()),
        Limit::ThrowAway(since) => format!("x{}", minute(since)),
    }
}

pub(super) fn read_limit(text: &str) -> Option<Limit> {
    let (kind, rest) = text.split_at_checked(1)?;
    match kind {
        "u" if rest.is_empty() => Some(Limit::Unknown),
        "e" => read_minute(rest).map(Limit::EatBy),
        "l" => read_span(rest).map(Limit::FridgeLeft),
        "x" => read_minute(rest).map(Limit::ThrowAway),
        _ => None,
    }
}

pub(super) fn read_minute(text: &str) -> Option<Moment> {
    let minutes = text.parse().ok().filter(|minutes| (0..=LAST_MINUTE).contains(minutes))?;
    DateTime::from_timestamp(minutes * 60, 0)
}

pub(super) fn read_span(text: &str) -> Option<Span> {
    let span = Span::minutes(text.parse::<u32>().ok()?.into());
    (span <= LONGEST).then_some(span)
}
