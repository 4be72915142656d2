//! When something happened that is told afterwards.

use cook_model::quantity::{Moment, Span};
use leptos::prelude::*;

use super::in_sight::keep_in_sight;
use crate::open_cook::open_cook;
use crate::typed::time_before;
use crate::words::wording;
use crate::{say, show};

/// How long ago something is told with one tap, in minutes.
const AGO: [i64; 4] = [1, 5, 10, 20];

/// When something happened that is told afterwards: some minutes ago with one tap, or at a time.
#[component]
pub fn When(
    /// Names it on the page; unique there.
    name: &'static str,
    /// When it happened; what stands there is what holds at first.
    at: RwSignal<Moment>,
    /// What is wrong with what was typed.
    bad: RwSignal<Option<String>>,
) -> impl IntoView {
    let cook = open_cook();
    let part = NodeRef::new();
    keep_in_sight(part, bad);
    let ago = move |minutes: i64| {
        let span = Span::minutes(minutes);
        view! {
            <button
                type="button"
                class="small"
                on:click=move |_| {
                    bad.set(None);
                    at.set(cook.moment() - span);
                }
            >
                {move || say!("ago", span = show::span(span))}
            </button>
        }
    };
    let typed = move |text: String| match time_before(&text, cook.moment()) {
        // A time that shows the same says nothing new: the seconds stay.
        Ok(moment) if show::clock_in_field(moment) == show::clock_in_field(at.get_untracked()) => {}
        Ok(moment) => at.set(moment),
        Err(message) => bad.set(Some(message)),
    };
    let bad_name = format!("{name}-bad");
    view! {
        <div class="field" node_ref=part>
            <label for=name>{wording("when")}</label>
            <input
                id=name
                type="time"
                aria-describedby=bad_name.clone()
                aria-invalid=move || bad.read().is_some().to_string()
                prop:value=move || show::clock_in_field(at.get())
                on:input=move |_| bad.set(None)
                on:change=move |event| typed(event_target_value(&event))
            />
            <p class="bad" id=bad_name role="alert">
                {move || bad.get()}
            </p>
        </div>
        <div class="stepwise" role="group" aria-label=wording("when")>
            {AGO.map(ago).collect_view()}
        </div>
    }
}
