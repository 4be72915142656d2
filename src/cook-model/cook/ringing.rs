//! Which alarms ring, so that each is heard once.
//!
//! What rang is kept on the phone and not in the cook's log: it is a fact about a phone, not about
//! the cook. A second phone that follows the cook must ring for itself, and nothing the cook did
//! should be undone by an alarm.
//!
//! The forecast moves an alarm's time whenever a reading comes. An alarm that has rung stays silent
//! unless its new time lies at least [`AGAIN_AFTER`] behind the one it rang for, and is still to
//! come: that is a new call, and the cook who went away on it must hear it.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::alarms::{Alarm, AlarmId};
use crate::quantity::{Moment, Span};
use crate::sorting::sort_by_key;

/// How much later than the time it rang for an alarm must be due to ring again.
pub const AGAIN_AFTER: Span = Span::minutes(10);

/// How long a snoozed alarm is silent.
pub const SNOOZE: Span = Span::minutes(5);

/// What a phone remembers of an alarm that rang.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Mark {
    /// The time it was due.
    pub due: Moment,
    /// When it rang.
    pub rang: Moment,
    /// When it is to ring again, if it was snoozed.
    pub snoozed: Option<Moment>,
    /// Whether the cook answered it.
    pub done: bool,
}

/// What a phone remembers of the alarms of one cook.
pub type Marks = BTreeMap<AlarmId, Mark>;

/// An alarm that rings now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ring {
    /// Which.
    pub alarm: Alarm,
    /// By how much it is late: nothing, unless the page was not allowed to run.
    pub late: Span,
}

/// When an alarm rings next, given what is remembered of it. None once it has rung.
pub fn rings_at(alarm: &Alarm, mark: Option<&Mark>) -> Option<Moment> {
    let Some(mark) = mark else { return Some(alarm.at) };
    if alarm.at >= mark.due + AGAIN_AFTER && alarm.at > mark.rang {
        return Some(alarm.at);
    }
    mark.snoozed
}

/// The alarm, if it rings now.
pub fn ring(alarm: &Alarm, mark: Option<&Mark>, now: Moment) -> Option<Ring> {
    let at = rings_at(alarm, mark)?;
    (at <= now && !alarm.is_over(now)).then(|| Ring { alarm: *alarm, late: now - at })
}

/// The alarms that ring now, most urgent first.
pub fn due(alarms: &[Alarm], marks: &Marks, now: Moment) -> Vec<Ring> {
    let mut rings: Vec<Ring> =
        alarms.iter().filter_map(|alarm| ring(alarm, marks.get(&alarm.id), now)).collect();
    sort_by_key(&mut rings, |ring| (ring.alarm.id.kind, ring.alarm.at));
    rings
}

/// The next moment after `now` at which an alarm rings, or is over.
pub fn next(alarms: &[Alarm], marks: &Marks, now: Moment) -> Option<Moment> {
    let rings = alarms.iter().filter_map(|alarm| rings_at(alarm, marks.get(&alarm.id)));
    let ends = alarms.iter().filter_map(|alarm| alarm.until);
    rings.chain(ends).filter(|at| *at > now).min()
}

/// The alarms that rang, still make sense, and were neither answered nor snoozed.
pub fn unanswered(alarms: &[Alarm], marks: &Marks, now: Moment) -> Vec<(Alarm, Mark)> {
    let alarms = alarms.iter().filter(|alarm| !alarm.is_over(now));
    let waiting = alarms.filter_map(|alarm| Some((*alarm, *marks.get(&alarm.id)?)));
    waiting.filter(|(_, mark)| !mark.done && mark.snoozed.is_none()).collect()
}

impl Mark {
    /// The memory of an alarm that rings now.
    pub fn rung(ring: &Ring, now: Moment) -> Self {
        Self { due: ring.alarm.at, rang: now, snoozed: None, done: false }
    }

    /// The same alarm, silent for [`SNOOZE`].
    pub fn snooze(self, now: Moment) -> Self {
        Self { snoozed: Some(now + SNOOZE), ..self }
    }

    /// The same alarm, answered.
    pub fn answer(self) -> Self {
        Self { snoozed: None, done: true, ..self }
    }
}
