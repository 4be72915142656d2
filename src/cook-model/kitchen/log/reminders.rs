use super::{BagId, Kitchen};
use crate::kitchen::storage::Keeps;
use crate::quantity::{Moment, Span};
use crate::sorting::sort_by_key;

/// How long before a freezer's best-by date it is worth a word.
const FREEZER_NOTICE: Span = Span::days(14);

/// What a reminder says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ReminderKind {
    /// In the refrigerator and best used now: its last full day begins.
    UseNow,
    /// Past its days, or past a limit before them: throw it away.
    ThrowAway,
    /// In the freezer and soon past its best.
    UseSoonFromFreezer,
}

/// One reminder about one bag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reminder {
    /// When to remind.
    pub at: Moment,
    /// What of.
    pub kind: ReminderKind,
    /// About which bag.
    pub bag: BagId,
}

/// All reminders for the bags still there, in order of time. Those of the past are in it: a
/// calendar wants only what is to come, a list wants what was missed too.
pub fn reminders(kitchen: &Kitchen) -> Vec<Reminder> {
    let mut reminders = Vec::new();
    for state in &kitchen.bags {
        let bag = state.id;
        match state.keeps() {
            Some(Keeps::Fridge { use_by, eat_by }) => {
                reminders.push(Reminder { at: use_by, kind: ReminderKind::UseNow, bag });
                reminders.push(Reminder { at: eat_by, kind: ReminderKind::ThrowAway, bag });
            }
            Some(Keeps::Freezer { best_by, .. }) => {
                let at = best_by - FREEZER_NOTICE;
                reminders.push(Reminder { at, kind: ReminderKind::UseSoonFromFreezer, bag });
            }
            Some(Keeps::ThrowAway { since, .. }) => {
                reminders.push(Reminder { at: since, kind: ReminderKind::ThrowAway, bag });
            }
            None => {}
        }
    }
    sort_by_key(&mut reminders, |reminder| (reminder.at, reminder.bag, reminder.kind));
    reminders
}
