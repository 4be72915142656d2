use cook_model::quantity::{Moment, Span};
use leptos::prelude::*;

use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::watching::{Watching, alarm_words};
use crate::{say, show};

/// The alarms that rang and were not answered, the most urgent first.
#[component]
pub fn AlarmBar() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let watching: Watching = expect_context();
    // The number pad needs the whole screen, and who types is at the pit already.
    let typing = move || matches!(navigation.screen(), Screen::Piece(_) | Screen::Pit);
    let rows = move || {
        let one = |waiting: crate::device::alarms::Waiting| {
            let (alarm, _) = waiting;
            let piece = alarm.id.piece;
            view! {
                <li class="alarm">
                    <button class="open-alarm" on:click=move |_| {
                        watching.heard(waiting);
                        navigation.go(piece.map_or(Screen::Live, Screen::Piece));
                    }>
                        {alarm_words(cook, alarm.id.kind, piece)}
                        <span class="late">{move || late(alarm.at, cook.now())}</span>
                    </button>
                    <button class="small" on:click=move |_| watching.snooze(waiting)>
                        {say!("alarm-snooze")}
                    </button>
                    <button class="small" on:click=move |_| watching.heard(waiting)>
                        {say!("alarm-done")}
                    </button>
                </li>
            }
        };
        // What the next step says anyway needs no second place on the same screen.
        let told = if navigation.screen() == Screen::Live {
            cook.step().filter(|step| step.due <= cook.now()).map(|step| step.pieces)
        } else {
            None
        };
        let told = told.unwrap_or_default();
        let waiting = watching.waiting().into_iter();
        waiting
            .filter(|(alarm, _)| alarm.id.piece.is_none_or(|piece| !told.contains(&piece)))
            .map(one)
            .collect_view()
    };
    view! {
        <ul class="alarms" class:typing=typing aria-live="assertive" aria-label=move || say!("alarms")>
            {rows}
        </ul>
    }
}

/// How long ago it was due, once that is worth a word.
fn late(at: Moment, now: Moment) -> Option<String> {
    (now - at >= Span::minutes(1)).then(|| say!("alarm-late", span = show::span(now - at)))
}
