//! When people eat.

use std::time::Duration;

use cook_model::cook::What;
use cook_model::quantity::Moment;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::device::clock;
use crate::open_cook::open_cook;
use crate::parts::{Choice, If, keep_in_sight};
use crate::show;
use crate::typed::time_of_day;
use crate::words::wording;

/// A phone's time wheel changes the field at every turn: the time counts when the wheel has stood still
/// so long, or when it is put away.
const SETTLED: Duration = Duration::from_secs(2);

/// When people eat: today or tomorrow, at a time of day.
#[component]
pub fn Dinner(
    /// The present moment, from which today is told from tomorrow.
    now: Moment,
) -> impl IntoView {
    let cook = open_cook();
    let dinner = Derived::new(move || cook.facts().read().settings.dinner);
    let text = RwSignal::new(String::new());
    let tomorrow = RwSignal::new(false);
    let bad = RwSignal::new(None);
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    Effect::new(move || {
        let dinner = dinner.get();
        // What was stored a moment ago must not take the place of what the wheel turns to now.
        if waiting.with_value(Option::is_some) {
            return;
        }
        if let Some(dinner) = dinner {
            text.set(show::clock_in_field(dinner));
            tomorrow.set(show::date(dinner).get_date() != show::date(now).get_date());
        } else {
            text.set(String::new());
        }
        bad.set(None);
    });
    let set =
        move || match time_of_day(&text.get_untracked(), tomorrow.get_untracked(), clock::now()) {
            Ok(at) if Some(at) == dinner.get_untracked() => bad.set(None),
            Ok(at) => {
                bad.set(None);
                cook.record(What::DinnerSet { at: Some(at) });
            }
            Err(message) => bad.set(Some(message)),
        };
    let stop_waiting = move || {
        let handle = waiting.try_update_value(Option::take).flatten();
        handle.inspect(TimeoutHandle::clear).is_some()
    };
    let set_at_once = move || {
        if stop_waiting() {
            set();
        }
    };
    let settle = move || {
        stop_waiting();
        waiting.set_value(set_timeout_with_handle(set_at_once, SETTLED).ok());
    };
    on_cleanup(set_at_once);
    let part = NodeRef::new();
    keep_in_sight(part, bad);
    let days = vec![(false, wording("today")), (true, wording("tomorrow"))];
    view! {
        <div class="pair wordy">
            <div class="field" node_ref=part>
                <label for="dinner">{wording("set-out-dinner")}</label>
                <input
                    id="dinner"
                    type="time"
                    aria-describedby="dinner-bad"
                    aria-invalid=move || bad.read().is_some().to_string()
                    prop:value=move || text.get()
                    on:input=move |event| {
                        text.set(event_target_value(&event));
                        bad.set(None);
                    }
                    on:change=move |_| settle()
                    on:blur=move |_| set_at_once()
                />
                <p class="bad" id="dinner-bad" role="alert">
                    {move || bad.get()}
                </p>
            </div>
            <Choice
                name="dinner-day"
                label=wording("set-out-dinner")
                options=days
                chosen=tomorrow
                on_choose=move |day| {
                    tomorrow.set(day);
                    if !text.get_untracked().is_empty() {
                        set();
                    }
                }
                quiet=true
            />
        </div>
        <If holds=move || dinner.get().is_some()>
            <button
                type="button"
                class="plain"
                on:click=move |_| cook.record(What::DinnerSet { at: None })
            >
                {wording("set-out-dinner-clear")}
            </button>
        </If>
    }
}
