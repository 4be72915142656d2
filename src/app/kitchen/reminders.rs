//! Reminders of what is to be eaten, for the phone's own calendar.

use cook_model::calendar::{self, calendar};
use cook_model::kitchen::log::{Kitchen, Reminder, ReminderKind, reminders};
use cook_model::quantity::{Moment, Span};

use super::words;
use crate::{say, show};

/// The text of a calendar file with every reminder still to come; none where there is none.
pub fn reminder_file(kitchen: &Kitchen, now: Moment) -> Option<String> {
    let to_come: Vec<calendar::Reminder> = reminders(kitchen)
        .iter()
        .filter(|reminder| reminder.at > now)
        .filter_map(|reminder| in_words(reminder, kitchen))
        .collect();
    (!to_come.is_empty()).then(|| calendar(&to_come, now))
}

fn in_words(reminder: &Reminder, kitchen: &Kitchen) -> Option<calendar::Reminder> {
    let state = kitchen.bag(reminder.bag)?;
    let bag = words::bag(state);
    let (kind, summary) = match reminder.kind {
        ReminderKind::UseNow => ("use", say!("remind-use", bag = bag)),
        ReminderKind::ThrowAway => ("throw", say!("remind-throw", bag = bag)),
        ReminderKind::UseSoonFromFreezer => ("freezer", say!("remind-freezer", bag = bag)),
    };
    Some(calendar::Reminder {
        uid: format!("bag-{}-{}-{kind}", reminder.bag.count, reminder.bag.device.0),
        sequence: 0,
        at: reminder.at,
        lasts: Span::zero(),
        summary,
        details: format!("{}, {}", words::form(state.bag.form), show::mass(state.bag.weight)),
    })
}
