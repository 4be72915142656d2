//! Dinner earlier or later, in one tap.

use cook_model::cook::What;
use cook_model::quantity::Span;
use leptos::prelude::*;

use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::say;
use crate::words::wording;

/// What people say of a dinner that moves, in minutes (common practice, no source).
const STEPS: [i64; 3] = [15, 30, 45];

/// So much earlier or later than it stands, another time, or the whole plan.
#[component]
pub fn MoveDinner(
    /// Called when it has been moved.
    #[prop(into)]
    on_end: Callback<()>,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let moved = move |by: Span| cook.state().read().settings.dinner.map(|dinner| dinner + by);
    let button = move |minutes: i64| {
        let by = Span::minutes(minutes);
        let words = move || {
            let span = minutes.unsigned_abs();
            if minutes < 0 {
                say!("dinner-earlier", minutes = span)
            } else {
                say!("dinner-later", minutes = span)
            }
        };
        view! {
            <button
                disabled=move || moved(by).is_none_or(|at| at <= cook.now())
                on:click=move |_| {
                    cook.record(What::DinnerSet { at: untrack(|| moved(by)) });
                    on_end.run(());
                }
            >
                {words}
            </button>
        }
    };
    view! {
        <div class="move-dinner" role="group" aria-label=wording("dinner-move")>
            {STEPS.map(|step| button(-step))} {STEPS.map(button)}
            <button class="wide" on:click=move |_| navigation.go(Screen::SetOut)>
                {wording("dinner-another")}
            </button>
            <button class="wide" on:click=move |_| navigation.go(Screen::Plan)>
                {wording("plan-title")}
            </button>
        </div>
    }
}
