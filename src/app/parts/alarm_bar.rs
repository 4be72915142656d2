use cook_model::cook::alarms::Alarm;
use cook_model::quantity::{Moment, Span};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::device::alarms::Waiting;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::watching::{Watching, alarm_words};
use crate::words::wording;
use crate::{say, show};

/// The most urgent alarm that rang and was not answered, on one line above the thumb's buttons, with
/// its two answers, and how many more wait behind it.
#[component]
pub fn AlarmBar() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let watching: Watching = expect_context();
    let waiting = Derived::new(move || {
        // What the next step says anyway needs no second place on the same screen.
        let due = cook.duty().filter(|duty| duty.is_due(cook.now()));
        let told = due.filter(|_| navigation.screen() == Screen::Live);
        let untold = |(alarm, _): &Waiting| {
            let bells = told.as_ref().map(|duty| duty.bells.as_slice()).unwrap_or_default();
            !bells.iter().any(|bell| bell.id == alarm.id)
        };
        watching.waiting().into_iter().filter(untold).collect::<Vec<_>>()
    });
    let first = Derived::new(move || waiting.read().first().copied());
    let words = Derived::new(move || {
        let (alarm, _) = first.get()?;
        cook.duties().track();
        Some(alarm_words(cook, alarm.id))
    });
    let more = move || {
        let more = waiting.read().len().saturating_sub(1);
        (more > 0).then(|| say!("alarms-more", count = more))
    };
    let bar = move || {
        let waiting = first.get()?;
        let (alarm, _) = waiting;
        Some(view! {
            <section class="alarm" aria-label=wording("alarms")>
                <button class="open-alarm" on:click=move |_| {
                    watching.heard(waiting);
                    navigation.go(Screen::Live);
                }>
                    <strong>{move || words.get()}</strong>
                    <span>{move || late(alarm, cook.now())} " " {move || more()}</span>
                </button>
                <button class="small" on:click=move |_| watching.snooze(waiting)>
                    {wording("alarm-snooze")}
                </button>
                <button class="small" on:click=move |_| watching.heard(waiting)>
                    {wording("alarm-done")}
                </button>
            </section>
        })
    };
    view! {
        <p class="unseen" role="alert">
            {move || words.get()}
        </p>
        {move || bar()}
    }
}

/// How long ago it was due, once that is worth a word.
fn late(alarm: Alarm, now: Moment) -> Option<String> {
    let late = now - alarm.at;
    (late >= Span::minutes(1)).then(|| say!("alarm-late", span = show::span(late)))
}
