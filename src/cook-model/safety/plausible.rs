//! How fast a core can warm or cool at the most, whatever the pit does.
//!
//! While a piece warms, its core is no hotter than its average, and the average follows
//! `dT/dt = h A (T_air - T) / (m c)` at the most: the surface is no colder than the average. With
//! a generous heat-transfer coefficient this bounds the core without any forecast, so it can
//! only catch gross mistakes: another piece's reading, another unit, a spot already cooked.

use crate::history::{PieceHistory, PitHistory};
use crate::quantity::{Length, Span, Temperature, TemperatureDifference, to_seconds};

/// Density times specific heat, J/(m3 K): 1050 kg/m3 (from memory) and 3.39 kJ/(kg K)
/// (Morley, in James & James, Meat Refrigeration, table 13.2).
const HEAT_CAPACITY: f64 = 1050.0 * 3390.0;
/// W/(m2 K). Convection and radiation together are 15 to 35 in a smoker, by the heat model's
/// own range; this is beyond a fan-driven one.
const WARMING: f64 = 40.0;
/// W/(m2 K), in the air of a kitchen or a yard.
const COOLING: f64 = 20.0;
/// Surface over that of the two broad faces alone: the edges warm too.
const EDGES: f64 = 1.5;
/// The air at the grate over what the dial ever showed, at the most.
const DIAL_ERROR: TemperatureDifference = TemperatureDifference::from_f(50.0);
/// A thickness no boneless breast is under at its thickest, where none was measured.
const THINNEST: Length = Length::from_mm(20.0);

/// The hottest the core can be this long after it was at `from`.
pub(super) fn warmest_after(
    from: Temperature,
    waited: Span,
    piece: &PieceHistory,
    pit: &PitHistory,
) -> Temperature {
    let dial = pit.readings.iter().fold(pit.target, |top, read| top.max(read.temperature));
    let air = (dial + DIAL_ERROR).max(from);
    relax(from, air, waited, time_constant(piece, WARMING))
}

/// The coldest the core can be, resting in the open this long after it was at `from`.
pub(super) fn coolest_after(
    from: Temperature,
    waited: Span,
    piece: &PieceHistory,
    pit: &PitHistory,
) -> Temperature {
    relax(from, pit.ambient.min(from), waited, time_constant(piece, COOLING))
}

/// Seconds in which the average comes 63 % of the way to the air.
fn time_constant(piece: &PieceHistory, coefficient: f64) -> f64 {
    let thickness = piece.piece.thickest.unwrap_or(THINNEST).m();
    HEAT_CAPACITY * thickness / (2.0 * EDGES * coefficient)
}

fn relax(from: Temperature, air: Temperature, waited: Span, time_constant: f64) -> Temperature {
    let left = libm::exp(-to_seconds(waited).max(0.0) / time_constant);
    air + (from - air) * left
}
