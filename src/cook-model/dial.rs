//! What the pit thermometer tells of the fire, the lid having been up a while ago.
//!
//! While the air comes back the dial shows less than the fire holds. What the lid can have made of a good
//! fire tells nothing; what is colder than that tells that the fire is down, and how far at least.

use crate::heat::PitKind;
use crate::history::{LidOpening, PitHistory, PitReading};
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference, to_seconds};

/// A pit this far from its target is worth a word: fires wander by less (common practice, no source).
pub(crate) const WANDERS: TemperatureDifference = TemperatureDifference::from_f(15.0);
/// With the lid up the air keeps at least this share of what it is above the air outside: a pit of 250 F
/// shows some 130 F (common practice, no source).
const KEEPS: f64 = 0.3;

/// Once it is down a good fire makes good what is missing with this time constant or sooner: an offset is
/// back in five to ten minutes (common practice, no source).
fn comes_back(kind: PitKind) -> Span {
    kind.lid_recovery() * 4 / 5
}

/// After this nothing is missing any more: ten minutes for an offset (common practice, no source).
fn is_back(kind: PitKind) -> Span {
    kind.lid_recovery() * 2
}

/// After this the dial is worth reading again: five minutes for an offset (common practice, no source).
fn worth_reading(kind: PitKind) -> Span {
    kind.lid_recovery()
}

/// What a pit reading tells of the fire.
#[derive(Clone, Copy, Debug)]
pub(crate) struct OfTheFire {
    /// What was read.
    pub reading: PitReading,
    /// How hot the fire was at the most: hotter than that where the lid had been up shortly before.
    pub at_most: Temperature,
}

/// What the readings tell of the fire, without those that the lid explains. In their order.
pub(crate) fn of_the_fire(pit: &PitHistory, openings: &[LidOpening]) -> Vec<OfTheFire> {
    let told = |reading: &PitReading| {
        let at_most = at_most(reading, pit, openings);
        let is_down = pit.aim(reading.at) - at_most > WANDERS;
        let counts = is_down || missing(reading, pit.kind, openings).is_none();
        counts.then_some(OfTheFire { reading: *reading, at_most })
    };
    pit.readings.iter().filter_map(told).collect()
}

/// From when on the dial is worth reading, the lid having been up; none if it never was.
pub(crate) fn worth_reading_from(pit: &PitHistory) -> Option<Moment> {
    pit.lid.iter().map(|lid| lid.at + lid.lasted + worth_reading(pit.kind)).max()
}

/// How hot the fire was at the most when a pit reading was taken: as hot as that, unless the lid had been
/// up shortly before.
pub(crate) fn at_most(
    reading: &PitReading,
    pit: &PitHistory,
    openings: &[LidOpening],
) -> Temperature {
    let outside = pit.ambient;
    missing(reading, pit.kind, openings).map_or(reading.temperature, |missing| {
        let above = reading.temperature.max(outside) - outside;
        outside + above * (1.0 - missing).recip()
    })
}

/// The share of the air's excess over the air outside that may be missing for a lid that was up; none
/// where that is long ago.
fn missing(reading: &PitReading, kind: PitKind, openings: &[LidOpening]) -> Option<f64> {
    let shut = |lid: &LidOpening| reading.at - (lid.at + lid.lasted);
    let disturbs = |lid: &&LidOpening| lid.at < reading.at && shut(lid) < is_back(kind);
    let share = |lid: &LidOpening| {
        let since = to_seconds(shut(lid)).max(0.0);
        (1.0 - KEEPS) * libm::exp(-since / to_seconds(comes_back(kind)))
    };
    openings.iter().filter(disturbs).map(share).reduce(f64::max)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::minutes;

    /// What is told of a reading so long after the lid was shut, it having been up for a minute: F.
    fn told(fahrenheit: f64, after: f64) -> Option<f64> {
        let at = |minute| Moment::UNIX_EPOCH + minutes(minute);
        let lid = vec![LidOpening { at: at(60.0), lasted: Span::minutes(1) }];
        let temperature = Temperature::from_f(fahrenheit);
        let pit = PitHistory {
            kind: PitKind::default(),
            target: Temperature::from_f(250.0),
            aims: Vec::new(),
            readings: vec![PitReading { at: at(61.0 + after), temperature }],
            lid: lid.clone(),
            ambient: Temperature::from_f(70.0),
        };
        of_the_fire(&pit, &lid).first().map(|told| told.at_most.f())
    }

    // Common practice, no source: a pit whose lid was up is back within five to ten minutes; 170 F five
    // minutes later, and 130 F at any time, is a fire that is out.
    #[test]
    fn the_lid_explains_a_low_dial_for_some_minutes_and_no_dead_fire() {
        for (fahrenheit, after) in [(160.0, 0.5), (190.0, 2.0), (225.0, 5.0)] {
            assert_eq!(told(fahrenheit, after), None, "{fahrenheit} F after {after} min");
        }
        for (fahrenheit, after) in [(170.0, 5.0), (130.0, 4.5), (130.0, 1.5), (205.0, 9.0)] {
            assert!(told(fahrenheit, after).is_some_and(|f| f < 235.0), "{fahrenheit} F");
        }
        assert_eq!(told(230.0, 12.0).map(f64::round), Some(230.0));
    }
}
