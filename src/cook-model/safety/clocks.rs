//! The clocks that matter: when each began, when it runs out, and what a forecast expects.
//!
//! Only readings start or stop a clock, each at its unfavourable end; a forecast given along is
//! for saying what to expect, and is to be labelled as one.

use serde::Serialize;

use super::witness::is_from_the_future;
use crate::history::{CoreReading, PieceHistory};
use crate::quantity::{Moment, Span, Temperature};

/// From here up bacteria do not grow; the danger zone is 40 to 140 F. Source: USDA FSIS.
pub const HOT: Temperature = Temperature::from_f(140.0);
/// The longest in all between the two on the way up: four hours (common practice, no source; the
/// FDA Food Code 2022, 3-501.19, from memory, has the same figure for time as a control).
pub const LONGEST_WARM_UP: Span = Span::hours(4);
/// From the heat to the refrigerator. Source: USDA consumer advice: 2 h, and 1 h above 90 F.
const LONGEST_OUT: Span = Span::hours(2);
const LONGEST_OUT_IN_HEAT: Span = Span::hours(1);
const HEAT: Temperature = Temperature::from_f(90.0);
/// Cooling in two steps: from 135 F to 70 F within 2 h, and to 41 F within 6 h in all.
/// Source: FDA Food Code 2022, 3-501.14; the same in COMAR 10.15.03.11.
pub const COOL_FROM: Temperature = Temperature::from_f(135.0);
/// The first step of it: to what, and within how long.
pub const COOL_FIRST: (Temperature, Span) = (Temperature::from_f(70.0), Span::hours(2));
/// Both steps together: to what, and within how long.
pub const COOL_SECOND: (Temperature, Span) = (Temperature::from_f(41.0), Span::hours(6));

/// What a clock counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ClockKind {
    /// Between 40 and 140 F on the way up: a stalled or dying pit.
    WarmUp,
    /// Off the heat and not known to be above 140 F: it must be in the refrigerator by the end.
    ToFridge,
    /// The first step of cooling: to 70 F.
    CoolTo70,
    /// The second step of cooling: to 41 F.
    CoolTo41,
}

/// A clock that matters.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Clock {
    /// What it counts.
    pub kind: ClockKind,
    /// From when it counts.
    pub since: Moment,
    /// When it runs out.
    pub deadline: Moment,
    /// When a reading showed that its end was reached, if one did.
    pub done: Option<Moment>,
    /// When its end is expected to be reached, by the forecast given. None where that is beyond
    /// the forecast.
    pub expected: Option<Moment>,
}

impl Clock {
    /// What is left; negative once it has run out. Stands still once it is done.
    pub fn left(&self, now: Moment) -> Span {
        self.deadline - self.done.unwrap_or(now)
    }

    /// Whether it ran out before its end was known to be reached.
    pub fn has_run_out(&self, now: Moment) -> bool {
        self.left(now) < Span::zero()
    }

    /// Whether its end is not expected within the time.
    pub fn is_expected_to_run_out(&self) -> bool {
        self.done.is_none() && self.expected.is_none_or(|expected| expected > self.deadline)
    }
}

/// How long a piece may be out of the refrigerator once it is off the heat.
pub fn longest_out(ambient: Temperature) -> Span {
    if ambient > HEAT { LONGEST_OUT_IN_HEAT } else { LONGEST_OUT }
}

/// The time a piece spends between 40 and 140 F from when it first went on, over all its spells,
/// until a reading shows 140 F. It counts from going on, though the core may be colder then.
///
/// `forecast` is the core to come on the unfavourable side. None before the piece went on.
pub fn warm_up(piece: &PieceHistory, forecast: &[(Moment, Temperature)]) -> Option<Clock> {
    let mut since = Some(piece.on()?);
    let (mut spent, mut last) = (Span::zero(), piece.on()?);
    for reading in &piece.readings {
        match since {
            Some(from) if shows_hot(reading) => {
                spent += reading.at - from;
                since = None;
            }
            // It fell at some moment since the last reading: at its beginning, for all we know.
            None if reading.for_proof < HOT => since = Some(last),
            _ => {}
        }
        last = reading.at;
    }
    let from = since.unwrap_or(last);
    Some(Clock {
        kind: ClockKind::WarmUp,
        since: from - spent,
        deadline: from - spent + LONGEST_WARM_UP,
        done: since.is_none().then_some(last),
        expected: first(forecast, |core| core >= HOT),
    })
}

/// The time a piece may still be out once it is off the heat: from the pull, or from the last
/// reading at or above 140 F after it. None while it is on, or once it is packed.
///
/// `forecast` is the core to come on the unfavourable side; the clock's end is the refrigerator,
/// so what is expected here is the moment at which it falls below 140 F.
pub fn to_fridge(
    piece: &PieceHistory,
    ambient: Temperature,
    forecast: &[(Moment, Temperature)],
) -> Option<Clock> {
    if piece.packed.is_some() {
        return None;
    }
    let off = piece.off()?;
    let hot = piece.readings.iter().filter(|reading| shows_hot(reading));
    let since = hot.map(|reading| reading.at).next_back().map_or(off, |at| at.max(off));
    let after = forecast.iter().position(|(at, _)| *at >= off).unwrap_or(forecast.len());
    Some(Clock {
        kind: ClockKind::ToFridge,
        since,
        deadline: since + longest_out(ambient),
        done: None,
        expected: first(&forecast[after..], |core| core < HOT),
    })
}

/// The two steps of cooling cooked meat that was last known to be at 135 F or above at `hot`.
///
/// `readings` are core temperatures read while it cools, in order of time; `forecast` is the core
/// to come on the unfavourable side.
pub fn cooling(
    hot: Moment,
    readings: &[(Moment, Temperature)],
    forecast: &[(Moment, Temperature)],
) -> [Clock; 2] {
    let still_hot = readings.iter().filter(|(_, core)| *core >= COOL_FROM);
    let since = still_hot.map(|(at, _)| *at).next_back().map_or(hot, |at| at.max(hot));
    let step = |kind, (to, within): (Temperature, Span)| {
        let read: Vec<_> = readings.iter().copied().filter(|(at, _)| *at >= since).collect();
        Clock {
            kind,
            since,
            deadline: since + within,
            done: first(&read, |core| core <= to),
            expected: first(forecast, |core| core <= to),
        }
    };
    [step(ClockKind::CoolTo70, COOL_FIRST), step(ClockKind::CoolTo41, COOL_SECOND)]
}

/// Whether a reading may stop a clock: one from the future tells nothing of the time before it.
fn shows_hot(reading: &CoreReading) -> bool {
    reading.for_proof >= HOT && !is_from_the_future(reading)
}

/// The first moment at which the core is as asked.
fn first(core: &[(Moment, Temperature)], is_so: impl Fn(Temperature) -> bool) -> Option<Moment> {
    core.iter().find(|(_, core)| is_so(*core)).map(|(at, _)| *at)
}
