//! The form of a curve where no person reads it: its moments as numbers, since a moment as a text takes
//! long to read again, and a cook's curves have thousands.

use serde::de::Error as _;
use serde::ser::Error as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::outcome::Band;
use crate::quantity::{Moment, Temperature};

type Point = (Moment, Band<Temperature>);

/// Writes a curve.
pub(super) fn serialize<S: Serializer>(curve: &[Point], serializer: S) -> Result<S::Ok, S::Error> {
    if serializer.is_human_readable() {
        return curve.serialize(serializer);
    }
    let number = |(at, band): &Point| Some((at.timestamp_nanos_opt()?, *band));
    let numbers: Option<Vec<(i64, Band<Temperature>)>> = curve.iter().map(number).collect();
    numbers.ok_or_else(|| S::Error::custom("a moment too far off"))?.serialize(serializer)
}

/// Reads a curve.
pub(super) fn deserialize<'de, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Vec<Point>, D::Error> {
    if deserializer.is_human_readable() {
        return Err(D::Error::custom("a forecast is made anew, never read from a text"));
    }
    let numbers: Vec<(i64, Band<Temperature>)> = Vec::deserialize(deserializer)?;
    let point = |(at, band)| (Moment::from_timestamp_nanos(at), band);
    Ok(numbers.into_iter().map(point).collect())
}
