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
    let is_past = move |by: Span| {
        let dinner = cook.facts().read().settings.dinner;
        dinner.is_none_or(|dinner| dinner + by <= cook.now())
    };
    let move_by = move |by: Span| {
        if let Some(dinner) = cook.facts_as_tapped().settings.dinner {
            cook.record(What::DinnerSet { at: Some(dinner + by) });
        }
    };
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
                disabled=move || is_past(by)
                on:click=move |_| {
                    move_by(by);
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
