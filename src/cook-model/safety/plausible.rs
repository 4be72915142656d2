//! How fast a core can warm or cool at the most, whatever the pit does.
//!
//! While a piece warms, its core is no hotter than its average, and the average follows
//! `dT/dt = h A (T_air - T) / (m c)` at the most: the surface is no colder than the average. With
//! a generous heat-transfer coefficient this bounds the core without any forecast, so it can
//! only catch gross mistakes: another piece's reading, another unit, a spot already cooked.

use crate::dial::at_most;
use crate::history::{CoreReading, PieceHistory, PitHistory, PitReading};
use crate::quantity::{
    Length, Moment, Span, Temperature, TemperatureDifference, seconds, to_seconds,
};

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
/// The air at the grate over what was aimed for, at the most, where nobody read it.
const AIM_ERROR: TemperatureDifference = TemperatureDifference::from_f(50.0);
/// The air at the piece over what the pit thermometer showed: the hotter end of a rack and a dial
/// that reads low (common practice, no source).
const DIAL_ERROR: TemperatureDifference = TemperatureDifference::from_f(20.0);
/// A pit that was not read for longer than this may have been as hot as was aimed for.
const PIT_UNREAD: Span = Span::minutes(45);
/// The warmest a room is in which meat is set out, where the air outside is colder, and how far
/// either may be off (common practice, no source).
const ROOM: Temperature = Temperature::from_f(75.0);
const ROOM_ERROR: TemperatureDifference = TemperatureDifference::from_f(5.0);
/// The warmest a refrigerator may be. Source: FDA Food Code 2022, 3-501.16 (cold holding).
const COLD: Temperature = Temperature::from_f(41.0);
/// Meat as warm as the air has been in it for longer than any limit.
const FOR_EVER: Span = Span::hours(24);
/// A thickness no boneless breast is under at its thickest, where none was measured.
const THINNEST: Length = Length::from_mm(20.0);

/// The hottest the core can be this long after it was at `from`, at the moment `since`.
pub(super) fn warmest_after(
    from: Temperature,
    since: Moment,
    waited: Span,
    piece: &PieceHistory,
    pit: &PitHistory,
) -> Temperature {
    let air = hottest_air(since, since + waited, pit).max(from);
    relax(from, air, waited, time_constant(piece, WARMING))
}

/// The hottest the air at a piece can have been between two moments: by what the pit thermometer
/// showed, the lid having been down or not long so, and where it was not read for long, by what was aimed for.
fn hottest_air(since: Moment, until: Moment, pit: &PitHistory) -> Temperature {
    let read = || pit.readings.iter().filter(|read| (since..=until).contains(&read.at));
    let times: Vec<Moment> =
        [since].into_iter().chain(read().map(|read| read.at)).chain([until]).collect();
    let unread = times.windows(2).any(|pair| pair[1] - pair[0] > PIT_UNREAD) || times.len() == 2;
    let aims = pit.aims.iter().map(|aim| aim.temperature).fold(pit.target, Temperature::max);
    let aimed = unread.then(|| aims + AIM_ERROR);
    let hottest = |read: &PitReading| at_most(read, pit, &pit.lid).min(aims.max(read.temperature));
    read().map(|read| hottest(read) + DIAL_ERROR).chain(aimed).fold(COLD, Temperature::max)
}

/// The coldest the core can be after so long on the pit since a reading: as it was, unless the pit was
/// read to be colder than it.
pub(super) fn coolest_on(
    reading: &CoreReading,
    until: Moment,
    waited: Span,
    piece: &PieceHistory,
    pit: &PitHistory,
) -> Temperature {
    // From the last before it, for that tells of the air at it.
    let last = pit.readings.partition_point(|read| read.at <= reading.at).saturating_sub(1);
    let between = pit.readings[last..].iter().take_while(|read| read.at <= until);
    let coldest = between.map(|read| read.temperature);
    let air = coldest.fold(reading.for_proof, Temperature::min);
    relax(reading.for_proof, air, waited, time_constant(piece, COOLING))
}

/// How long raw meat must have been out of the refrigerator, at the least, to be as warm as it is
/// said to be as it goes on. Never less than nothing; a day where no time would do.
pub(super) fn least_out(piece: &PieceHistory, pit: &PitHistory) -> Span {
    let start = piece.piece.start;
    if start <= COLD {
        return Span::zero();
    }
    let air = pit.ambient.max(ROOM) + ROOM_ERROR;
    if start >= air {
        return FOR_EVER;
    }
    let times = libm::log((air - COLD).c() / (air - start).c());
    seconds(times * time_constant(piece, COOLING)).min(FOR_EVER)
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
