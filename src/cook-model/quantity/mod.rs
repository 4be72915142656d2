//! Quantities with their units in the type, and the person's units at the edge.
//!
//! Inside, everything is metric: degrees Celsius, metres, kilograms, seconds. A person reads and
//! types degrees Fahrenheit or Celsius, inches or millimetres, pounds and ounces or grams; the
//! functions here turn one into the other and say plainly what was wrong with a typed value.

mod length;
mod mass;
mod temperature;
mod time;
mod typed;
mod units;
mod weight;

pub use length::Length;
pub use mass::Mass;
pub use temperature::{Temperature, TemperatureDifference};
pub use time::{Moment, Span, as_minutes, minutes, seconds, to_minutes, to_seconds};
pub use typed::{NumberProblem, number};
pub use units::{LengthUnit, MassUnit, TemperatureUnit, Units};
pub use weight::{WeightUnit, weight};
