//! The moments at which the cook must be called: those of the duties that ring.

use serde::{Deserialize, Serialize};

use super::duties::{Duty, duties};
use super::{Chore, Seen};
use crate::piece::PieceId;
use crate::quantity::Moment;
use crate::sorting::sort_by_key;

/// What the cook is called for. The order is the order of urgency.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[non_exhaustive]
pub enum AlarmKind {
    /// A piece is likely past its pull temperature, and still on.
    LikelyPastTarget,
    /// Cooked food has stood almost as long as it may before it is chilled, or longer.
    ChillLimit,
    /// A piece has been between 40 and 140 F almost as long as it may, or longer.
    WarmUpLimit,
    /// The pit was far from its setting: it is to be read again.
    FireDue,
    /// Pieces are to be read with the instant-read thermometer, in one opening of the lid.
    CheckDue,
    /// A piece that the rest did not prove goes back on.
    PutBackDue,
    /// Resting pieces are at their hottest: a reading now can prove them.
    ProofReadingDue,
    /// The fire is to be fed, or something to be done before the cook.
    ChoreDue(Chore),
    /// By the plan pieces go on.
    PutOnDue,
    /// What is kept hot is to be read again.
    KeepHotDue,
    /// Everything has rested: it can be served or packed.
    RestOver,
}

impl AlarmKind {
    /// Whether waiting does harm: food is lost, or people are.
    pub fn is_urgent(self) -> bool {
        self <= Self::WarmUpLimit
    }
}

/// Names an alarm. The name stays the same while its time moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct AlarmId {
    /// What for.
    pub kind: AlarmKind,
    /// Which piece, where it is about one alone.
    pub piece: Option<PieceId>,
    /// Which time: how often what answers it was done before.
    pub occasion: u32,
}

/// One call at one moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Alarm {
    /// Its name.
    pub id: AlarmId,
    /// When it is due.
    pub at: Moment,
    /// When what it calls for ends by itself, if it does: from then on it is no call any more.
    #[serde(skip)]
    pub until: Option<Moment>,
}

impl Alarm {
    /// Whether what it calls for has ended by itself.
    pub fn is_over(&self, now: Moment) -> bool {
        self.until.is_some_and(|until| until <= now)
    }
}

/// Every alarm to come or due, earliest first. An alarm goes with its duty.
pub fn alarms(seen: &Seen) -> Vec<Alarm> {
    alarms_of(&duties(seen))
}

/// The alarms of these duties, earliest first.
pub fn alarms_of(duties: &[Duty]) -> Vec<Alarm> {
    let mut alarms: Vec<Alarm> = duties.iter().flat_map(|duty| duty.bells.clone()).collect();
    sort_by_key(&mut alarms, |alarm| (alarm.at, alarm.id));
    alarms
}
