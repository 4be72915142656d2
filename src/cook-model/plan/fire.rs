//! Whether the pit keeps its temperature.

use serde::Serialize;

use crate::dial::{WANDERS, of_the_fire};
use crate::history::PitHistory;
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference};

/// Readings older than this say nothing of the fire now.
const OLD: Span = Span::minutes(40);

/// How the pit is off its target.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Drift {
    /// Below it, and not on its way back.
    Low,
    /// Above it, and not on its way back.
    High,
    /// Below it, but climbing.
    Recovering,
    /// Above it, but falling.
    Settling,
}

/// A pit off its target.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct OffTarget {
    /// How.
    pub drift: Drift,
    /// What was read last.
    pub read: Temperature,
    /// How far from the target; negative below it.
    pub by: TemperatureDifference,
}

/// Whether the last pit reading is away from the target, and which way it goes. None while it is
/// near the target, or was not read for a while.
pub fn off_target(pit: &PitHistory, now: Moment) -> Option<OffTarget> {
    let told = of_the_fire(pit, &pit.lid);
    let mut latest = told.iter().rev();
    let last = latest.next().filter(|told| now - told.reading.at <= OLD)?;
    let by = last.at_most - pit.target;
    if by.abs() < WANDERS {
        return None;
    }
    let before = latest.next().filter(|before| last.reading.at - before.reading.at <= OLD);
    let nearing = before.is_some_and(|before| (before.at_most - pit.target).abs() > by.abs());
    let drift = match (by < TemperatureDifference::ZERO, nearing) {
        (true, false) => Drift::Low,
        (true, true) => Drift::Recovering,
        (false, false) => Drift::High,
        (false, true) => Drift::Settling,
    };
    Some(OffTarget { drift, read: last.reading.temperature, by })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::heat::PitKind;
    use crate::history::PitReading;
    use crate::quantity::minutes;

    fn drift(readings: &[(f64, f64)], minute: f64) -> Option<Drift> {
        let at = |minute| Moment::UNIX_EPOCH + minutes(minute);
        let pit = PitHistory {
            kind: PitKind::default(),
            target: Temperature::from_f(250.0),
            aims: Vec::new(),
            readings: readings
                .iter()
                .map(|&(m, f)| PitReading { at: at(m), temperature: Temperature::from_f(f) })
                .collect(),
            lid: Vec::new(),
            ambient: Temperature::from_f(70.0),
        };
        off_target(&pit, at(minute)).map(|off| off.drift)
    }

    #[test]
    fn a_fire_wanders_before_it_is_worth_a_word() {
        assert_eq!(drift(&[], 0.0), None);
        assert_eq!(drift(&[(0.0, 250.0), (10.0, 262.0)], 11.0), None);
        assert_eq!(drift(&[(0.0, 250.0), (10.0, 210.0)], 11.0), Some(Drift::Low));
        assert_eq!(drift(&[(0.0, 210.0), (10.0, 230.0)], 11.0), Some(Drift::Recovering));
        assert_eq!(drift(&[(0.0, 265.0), (10.0, 290.0)], 11.0), Some(Drift::High));
        assert_eq!(drift(&[(0.0, 290.0), (10.0, 268.0)], 11.0), Some(Drift::Settling));
        assert_eq!(drift(&[(0.0, 210.0)], 60.0), None, "too old to say");
    }
}
