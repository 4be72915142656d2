//! The limits of time: when each began, when it runs out, and what a forecast expects.

use serde::Serialize;

use crate::quantity::{Moment, Span, Temperature};

/// From here up bacteria do not grow; the danger zone is 40 to 140 F. Source: USDA FSIS.
pub const HOT: Temperature = Temperature::from_f(140.0);
/// The longest in all between the two over the life of a piece: four hours. Source: FDA Food Code
/// 2022, 3-501.19(B), time as the only control (from memory).
pub const LONGEST_WARM_UP: Span = Span::hours(4);
/// The call comes this long before a limit, so that there is time to do something about it.
const CALL_BEFORE: Span = Span::minutes(20);
/// Raw or off the heat, out of the refrigerator. Source: USDA consumer advice: 2 h, and 1 h above
/// 90 F.
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
    /// Raw and out of the refrigerator.
    RawOut,
    /// Between 41 and 140 F, over the whole life of the piece: raw, on a slow or dying pit, and once
    /// it fell below 140 F again.
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

    /// When to call for it: well before it runs out, and again as it does, whether or not the first
    /// call was answered.
    pub fn calls(&self) -> [Moment; 2] {
        [self.deadline - CALL_BEFORE, self.deadline]
    }

    /// Whether it is to be shown: until it is done in time. One that ran out stays.
    pub fn matters(&self, now: Moment) -> bool {
        self.done.is_none() || self.has_run_out(now)
    }

    /// Whether its end is not expected within the time.
    pub fn is_expected_to_run_out(&self) -> bool {
        self.done.is_none() && self.expected.is_none_or(|expected| expected > self.deadline)
    }
}

/// How long a plan may leave raw meat out of the refrigerator: until the call before its limit.
pub fn longest_out_by_plan(ambient: Temperature) -> Span {
    longest_out(ambient) - CALL_BEFORE
}

/// How long a piece may be out of the refrigerator, raw or off the heat.
pub const fn longest_out(ambient: Temperature) -> Span {
    if ambient.c() > HEAT.c() { LONGEST_OUT_IN_HEAT } else { LONGEST_OUT }
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

/// The first moment at which the core is as asked.
pub(super) fn first(
    core: &[(Moment, Temperature)],
    is_so: impl Fn(Temperature) -> bool,
) -> Option<Moment> {
    core.iter().find(|(_, core)| is_so(*core)).map(|(at, _)| *at)
}
