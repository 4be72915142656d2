//! What a bag's label says: to write by hand, or to print.

use chrono::FixedOffset;

use super::form::Form;
use super::log::BagState;
use super::storage::Keeps;
use crate::quantity::{Mass, MassUnit, Moment, TemperatureUnit, to_minutes};
use crate::quantity::{Span, Temperature};

/// How to reheat, for the last line of a label.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReheatNote {
    /// The water bath.
    pub bath: Temperature,
    /// How long.
    pub minutes: Span,
}

/// What the label is written with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LabelStyle {
    /// For the weight.
    pub mass: MassUnit,
    /// For the bath.
    pub temperature: TemperatureUnit,
    /// The person's own clock, for the dates.
    pub clock: FixedOffset,
}

/// The lines of a label, in order; short enough to write by hand.
///
/// The dates carry no year: a bag is gone long before it could be read wrongly. A bag in the
/// refrigerator says "eat by", a matter of safety; one in the freezer "best by", of quality.
pub fn label_lines(
    state: &BagState,
    reheat: Option<ReheatNote>,
    style: &LabelStyle,
) -> Vec<String> {
    let bag = &state.bag;
    let mut lines = vec![format!("Chicken breast, {}", bag.form.word())];
    let weight = mass(bag.weight, style.mass);
    lines.push(match (bag.name.is_empty(), state.id.count) {
        (true, number) => format!("{weight}, bag {number}"),
        (false, number) => format!("{}, {weight}, bag {number}", bag.name),
    });
    let cooked = day(bag.cooked, style.clock);
    lines.push(match state.keeps() {
        Some(Keeps::Fridge { eat_by, .. }) => {
            format!("Cooked {cooked}, eat by {}", day(eat_by, style.clock))
        }
        Some(Keeps::Freezer { best_by, .. }) => {
            format!("Cooked {cooked}, best by {}", day(best_by, style.clock))
        }
        None => format!("Cooked {cooked}"),
    });
    if let Some(note) = reheat {
        let bath = match style.temperature {
            TemperatureUnit::Fahrenheit => format!("{:.0} F", note.bath.f()),
            TemperatureUnit::Celsius => format!("{:.0} C", note.bath.c()),
        };
        let minutes = five_up(to_minutes(note.minutes));
        lines.push(format!("Bath {bath}, {minutes:.0} min{}", opening(bag.form)));
    }
    lines
}

/// Minutes rounded up to the next five: a bag is not hurt by five minutes more.
fn five_up(minutes: f64) -> f64 {
    (minutes / 5.0).ceil() * 5.0
}

/// Flat bags heat evenly only while they lie flat.
const fn opening(form: Form) -> &'static str {
    if form.lies_flat() { ", lying flat" } else { "" }
}

fn mass(mass: Mass, unit: MassUnit) -> String {
    match unit {
        MassUnit::Gram => format!("{:.0} g", mass.g()),
        MassUnit::Ounce if mass.ounces() >= 16.0 => {
            let whole = mass.ounces().round();
            let pounds = (whole / 16.0).floor();
            format!("{pounds:.0} lb {:.0} oz", whole - 16.0 * pounds)
        }
        MassUnit::Ounce => format!("{:.0} oz", mass.ounces()),
    }
}

fn day(moment: Moment, clock: FixedOffset) -> String {
    moment.with_timezone(&clock).format("%a %-d %b").to_string()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::history::{DeviceId, EntryId};
    use crate::kitchen::log::Bag;
    use crate::kitchen::storage::{Packing, Place, Stay};
    use crate::quantity::minutes;
    use chrono::{TimeZone, Utc};

    fn state(place: Place) -> BagState {
        // Half past one at night in UTC is the evening before on the person's own clock.
        let cooked = Utc.with_ymd_and_hms(2026, 11, 26, 1, 30, 0).unwrap();
        BagState {
            id: EntryId { count: 7, device: DeviceId(1) },
            bag: Bag {
                name: "Rice bowls".to_owned(),
                form: Form::Chunked,
                weight: Mass::from_ounces(20.0),
                thickness: None,
                packing: Packing::Plain,
                cooked,
            },
            stays: vec![Stay { place, from: cooked }],
            ended: None,
        }
    }

    fn style(mass: MassUnit, temperature: TemperatureUnit) -> LabelStyle {
        LabelStyle { mass, temperature, clock: FixedOffset::west_opt(6 * 3600).unwrap() }
    }

    #[test]
    fn a_label_for_the_refrigerator() {
        let note = ReheatNote { bath: Temperature::from_f(145.0), minutes: minutes(31.2) };
        let style = style(MassUnit::Ounce, TemperatureUnit::Fahrenheit);
        let lines = label_lines(&state(Place::Fridge), Some(note), &style);
        assert_eq!(
            lines,
            [
                "Chicken breast, chunked",
                "Rice bowls, 1 lb 4 oz, bag 7",
                "Cooked Wed 25 Nov, eat by Sun 29 Nov",
                "Bath 145 F, 35 min, lying flat",
            ]
        );
    }

    #[test]
    fn a_label_for_the_freezer() {
        let style = style(MassUnit::Gram, TemperatureUnit::Celsius);
        let lines = label_lines(&state(Place::Freezer), None, &style);
        assert_eq!(lines[1], "Rice bowls, 567 g, bag 7");
        assert_eq!(lines[2], "Cooked Wed 25 Nov, best by Thu 25 Mar");
        assert_eq!(lines.len(), 3);
    }
}
