//! Duties: the one list of what is to be done. Whatever tells a person to do something reads it: the
//! card, the rows, the alarms, the calendar, the simulated cooks.
//!
//! The list is a function of one look at the cook ([`Seen`]), and so of its log: a duty has its own
//! beginning and, where it ends by itself, its own end, and `now` only divides what is due from what
//! comes. So nothing that is due goes away without an entry or the end it told.

mod act;
mod bell;
mod fire;
mod gather;
mod limit;
mod offers;
mod on_pit;
mod packed;
mod raw;
mod resting;
mod under_way;
mod untold;

use serde::Serialize;

pub use act::{Act, Doing};
pub use offers::offers;
pub use on_pit::HOT;
pub use raw::chores_before;
pub use untold::untold;

use super::alarms::{Alarm, AlarmId};
use super::{Seen, Stage};
use crate::history::EntryId;
use crate::piece::PieceId;
use crate::plan::OffTarget;
use crate::quantity::{Moment, Temperature};
use crate::safety::Clock;
use crate::sorting::sort_by;

/// One thing to do.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Duty {
    /// What.
    pub act: Act,
    /// With which pieces, in the order in which they are to be done; none where it is about the pit or
    /// the whole cook.
    pub pieces: Vec<PieceId>,
    /// From when on it is due.
    pub from: Moment,
    /// When it ends by itself; none where only an entry ends it.
    pub until: Option<Moment>,
    /// Why.
    pub why: Why,
    /// When it calls, if it does; more than once where waiting makes it worse.
    pub bells: Vec<Alarm>,
}

/// Why something is to be done, with the figures to say so.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "because", rename_all = "snake_case")]
pub enum Why {
    /// The plan or common practice has it so.
    Usual,
    /// By the forecast; each moment none where it lies further off than is followed.
    Forecast {
        /// When the first of the pieces is likely past its pull, left on.
        past: Option<Moment>,
        /// When it is likely past 175 F, left on.
        hot: Option<Moment>,
    },
    /// A reading says so.
    Reading {
        /// The reading.
        reading: EntryId,
        /// What it showed.
        #[serde(rename = "shown_c")]
        shown: Temperature,
    },
    /// Its core is likely at its hottest then.
    Peak {
        /// How hot that is likely to be.
        #[serde(rename = "temperature_c")]
        temperature: Temperature,
    },
    /// The pit is off its setting.
    Pit(OffTarget),
    /// A safety limit.
    Limit(Clock),
    /// It was served or packed, and no reading proves it.
    Unproved,
}

impl Duty {
    /// Whether it is due at a moment.
    pub fn is_due(&self, now: Moment) -> bool {
        self.from <= now && !self.is_over(now)
    }

    /// Whether it has ended by itself.
    pub fn is_over(&self, now: Moment) -> bool {
        self.until.is_some_and(|until| until <= now)
    }

    /// Whether it is over as soon as it is due.
    fn is_empty(&self) -> bool {
        self.is_over(self.from)
    }

    fn of(act: Act, pieces: Vec<PieceId>, from: Moment, why: Why) -> Self {
        Self { act, pieces, from, until: None, why, bells: Vec::new() }
    }
}

/// Every duty that a look at a cook leads to.
pub fn duties(seen: &Seen) -> Vec<Duty> {
    let mut all: Vec<Duty> = under_way::question(seen).into_iter().collect();
    for (standing, history) in seen.state.each_piece() {
        match standing.stage {
            Stage::On => all.extend(on_pit::duties(seen, history)),
            Stage::Resting => all.extend(resting::unproved(seen, history)),
            Stage::Proved => all.extend(resting::proved(seen, history)),
            Stage::Packed => all.extend(packed::unproved(seen, standing, history)),
            Stage::Raw => {}
        }
    }
    all.extend(raw::duties(seen));
    all.extend(on_pit::check(seen));
    all.extend(fire::duties(seen));
    fire::spare_pointless_checks(&mut all);
    let mut all = gather::gather(seen, all);
    let limits = gather::gather(seen, limit::duties(seen));
    limit::end_what_runs_out(&limits, &mut all);
    all.extend(limits);
    under_way::give_way(seen, &mut all);
    bell::set(seen, &mut all);
    all
}

/// The duty that an alarm calls for.
pub fn of_alarm(duties: &[Duty], alarm: AlarmId) -> Option<&Duty> {
    duties.iter().find(|duty| duty.bells.iter().any(|bell| bell.id == alarm))
}

/// Those of the duties that are due or come, the most urgent that is due at the front, then what comes
/// first. The first one is what the card says.
pub fn in_order(duties: &[Duty], now: Moment) -> Vec<&Duty> {
    let mut left: Vec<&Duty> = duties.iter().filter(|duty| !duty.is_over(now)).collect();
    sort_by(&mut left, |a, b| {
        let later = |duty: &Duty| (duty.from > now).then_some(duty.from);
        (later(a), &a.act, a.from, &a.pieces).cmp(&(later(b), &b.act, b.from, &b.pieces))
    });
    left
}
