//! What rang and waits for an answer, in one line above the thumb's buttons.

use cook_model::cook::alarms::Alarm;
use cook_model::cook::duties::of_alarm;
use cook_model::quantity::{Moment, Span};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::device::alarms::Waiting;
use crate::getter::Getter;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::watching::{Watching, alarm_words};
use crate::words::wording;
use crate::{say, show};

/// The alarms that rang, were not answered, and are not what the card beside them says.
pub fn unanswered() -> Derived<Vec<Waiting>> {
    let cook = open_cook();
    let navigation = navigation();
    let watching: Watching = expect_context();
    Derived::new(move || {
        // What the card says anyway needs no second place on the same screen.
        let told = [cook.duty(), cook.duty_after()].into_iter().flatten();
        let told = told.filter(|_| navigation.screen() == Screen::Live);
        let told: Vec<_> = told.filter(|duty| duty.is_due(cook.now())).collect();
        let untold = |(alarm, _): &Waiting| of_alarm(&told, alarm.id).is_none();
        watching.waiting().into_iter().filter(untold).collect::<Vec<_>>()
    })
}

/// The most urgent alarm that rang and was not answered, on one line above the thumb's buttons, with
/// its two answers, and how many more wait behind it.
#[component]
pub fn AlarmBar(
    /// The alarms.
    waiting: Derived<Vec<Waiting>>,
    /// Whether its words stand above one row of buttons, and are none.
    #[prop(into)]
    one_row: Getter<bool>,
    /// Whether another button needs the place of the one that calls again later.
    #[prop(into)]
    crowded: Getter<bool>,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let watching: Watching = expect_context();
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
        let what = move || {
            view! {
                <strong>{move || words.get()}</strong>
                " "
                <span>{move || late(alarm, cook.now())} " " {move || more()}</span>
            }
        };
        let go = move |_| {
            watching.heard(waiting);
            navigation.go(Screen::Live);
        };
        let words = if one_row.get() {
            view! { <p class="calls">{what()}</p> }.into_any()
        } else {
            view! { <button class="open-alarm" on:click=go>{what()}</button> }.into_any()
        };
        let crowded = crowded.clone();
        Some(view! {
            <section class="alarm" aria-label=wording("alarms")>
                {words}
                <If holds=move || !crowded.get()>
                    <button class="small snooze" on:click=move |_| watching.snooze(waiting)>
                        {wording("alarm-snooze")}
                    </button>
                </If>
                <button class="small heard" on:click=move |_| watching.heard(waiting)>
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
