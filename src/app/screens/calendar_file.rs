use cook_model::calendar::{Reminder, calendar};
use cook_model::cook::Seen;
use cook_model::cook::duties::{Duty, duties};
use cook_model::quantity::{Moment, Span};
use leptos::prelude::*;

use crate::device::storage::CookId;
use crate::device::{clock, files};
use crate::open_cook::open_cook;
use crate::words::wording;
use crate::{describe, say, show};

/// The kind of file a calendar is.
const KIND: &str = "text/calendar";

/// The duties to come as a file for the phone's own calendar, which rings when the app cannot.
#[component]
pub fn CalendarFile() -> impl IntoView {
    let cook = open_cook();
    let said = RwSignal::new(None::<String>);
    let save = move |_| {
        let (seen, now) = (cook.seen().read_untracked(), clock::now());
        let id = untrack(|| cook.id());
        let reminders = reminders(&seen, id, now);
        let day = seen.state.settings.dinner.unwrap_or(now);
        let name = format!("pull-order-{}.ics", show::day_in_file(day));
        let saved = files::download(&name, KIND, &calendar(&reminders, now));
        said.set(Some(if saved { say!("file-saved", name = name) } else { say!("file-refused") }));
    };
    view! {
        <button class="row" on:click=save>
            {wording("plan-calendar")}
        </button>
        <p class="hint">{wording("plan-calendar-hint")}</p>
        <p role="status">{move || said.get()}</p>
    }
}

/// What calls from now on, when the planned pieces come to their pull, and dinner.
fn reminders(seen: &Seen, cook: Option<CookId>, now: Moment) -> Vec<Reminder> {
    let cook = cook.map(|cook| cook.0).unwrap_or_default();
    let reminder = |name: String, at, summary| Reminder {
        uid: format!("{cook}-{name}@pull-order"),
        // Saved again, a reminder takes the place of the one before (RFC 5545, 3.8.7.4).
        sequence: u32::try_from(seen.version).unwrap_or(u32::MAX),
        at,
        lasts: Span::zero(),
        summary,
        details: String::new(),
    };
    let of_duty = |duty: Duty| {
        let bell = *duty.bells.first()?;
        let name = file_safe(&format!("{:?}", bell.id));
        Some(reminder(name, bell.at, describe::duty(seen, &duty).what))
    };
    let called = duties(seen).into_iter().filter_map(of_duty);
    let raw = |piece| seen.history(piece).is_some_and(|history| history.spells.is_empty());
    let planned =
        seen.plan.iter().flat_map(|plan| &plan.pieces).filter(|planned| raw(planned.piece));
    let planned = planned.map(|planned| {
        let piece = show::the_piece(&seen.state, planned.piece);
        let window = show::clock_range(planned.pull.low, planned.pull.high);
        let summary = say!("plan-pull", piece = piece, window = window);
        reminder(format!("planned-{}", planned.piece.0), planned.pull.low, summary)
    });
    let dinner =
        seen.state.settings.dinner.map(|at| reminder("dinner".into(), at, say!("plan-eat")));
    called.chain(planned).chain(dinner).filter(|reminder| reminder.at > now).collect()
}

/// The letters and digits of a text, which is all that an identifier should hold.
fn file_safe(text: &str) -> String {
    text.chars().filter(char::is_ascii_alphanumeric).collect()
}
