use chrono::{DateTime, TimeDelta, Utc};

/// A moment: an absolute time, independent of time zone and daylight saving.
pub type Moment = DateTime<Utc>;

/// A span between two moments, signed.
pub type Span = TimeDelta;

/// Microseconds in a second; spans made from fractions are rounded to these.
const MICROS: f64 = 1e6;

/// A span of so many seconds, rounded to the microsecond. Not-a-number gives no time at all.
pub fn seconds(seconds: f64) -> Span {
    TimeDelta::microseconds((seconds * MICROS).round() as i64)
}

/// A span of so many minutes, rounded to the microsecond. Not-a-number gives no time at all.
pub fn minutes(minutes: f64) -> Span {
    seconds(minutes * 60.0)
}

/// A span in seconds, to the millisecond.
pub fn to_seconds(span: Span) -> f64 {
    span.num_milliseconds() as f64 / 1e3
}

/// A span in minutes, to the millisecond.
pub fn to_minutes(span: Span) -> f64 {
    to_seconds(span) / 60.0
}

/// The stored form of a span: whole or broken minutes.
pub mod as_minutes {
    use serde::{Deserialize, Deserializer, Serialize, Serializer};

    use super::{Span, minutes, to_minutes};

    /// Writes a span as minutes.
    ///
    /// # Errors
    /// Those of the serialiser.
    pub fn serialize<S: Serializer>(span: &Span, serializer: S) -> Result<S::Ok, S::Error> {
        to_minutes(*span).serialize(serializer)
    }

    /// Reads a span from minutes.
    ///
    /// # Errors
    /// Those of the deserialiser.
    pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Span, D::Error> {
        f64::deserialize(deserializer).map(minutes)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spans_convert_both_ways() {
        assert_eq!(minutes(1.5), seconds(90.0));
        assert_eq!(to_minutes(minutes(47.25)), 47.25);
        assert_eq!(to_seconds(seconds(-3.0)), -3.0);
    }
}
