//! The number pad: readings are typed with gloves on, on keys larger than the phone's own.

use cook_model::quantity::TemperatureUnit;
use leptos::prelude::*;

use super::in_sight::keep_in_sight;
use crate::words::wording;
use crate::{preferences, region, say, show};

/// The digits that a whole reading on the Fahrenheit scale has once a pit or a piece is hot.
const WHOLE_READING: usize = 3;

/// A large number pad for a temperature, over a line that shows what is typed. The line is a field
/// too, so that a keyboard and a screen reader can type into it.
#[component]
pub fn Keypad(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// The text as typed.
    text: RwSignal<String>,
    /// What was wrong with it.
    bad: RwSignal<Option<String>>,
    /// Called to store what was typed.
    #[prop(into)]
    on_store: Callback<()>,
) -> impl IntoView {
    let part = NodeRef::new();
    keep_in_sight(part, bad);
    let press = move |key: char| {
        bad.set(None);
        text.update(|text| text.push(key));
        let whole = text.with_untracked(|text| {
            text.len() == WHOLE_READING && text.chars().all(|c| c.is_ascii_digit())
        });
        // Three digits are all that such a reading has: no fourth tap is needed.
        if is_fahrenheit() && whole {
            on_store.run(());
        }
    };
    let digit = move |digit: char| {
        view! { <button type="button" on:click=move |_| press(digit)>{digit.to_string()}</button> }
    };
    let mark = region::decimal_mark;
    let bad_name = format!("{name}-bad");
    view! {
        <form
            class="pad"
            novalidate
            on:submit=move |event| {
                event.prevent_default();
                on_store.run(());
            }
        >
            <div class="typed" node_ref=part>
                <label for=name>
                    {move || {
                        let unit = show::temperature_unit();
                        if is_fahrenheit() {
                            say!("pad-typed-whole", unit = unit)
                        } else {
                            say!("pad-typed", unit = unit)
                        }
                    }}
                </label>
                <input
                    id=name
                    type="text"
                    inputmode="none"
                    autocomplete="off"
                    aria-describedby=bad_name.clone()
                    aria-invalid=move || bad.read().is_some().to_string()
                    prop:value=move || text.get()
                    on:input=move |event| {
                        text.set(event_target_value(&event));
                        bad.set(None);
                    }
                />
            </div>
            <p class="bad" id=bad_name role="alert">
                {move || bad.get()}
            </p>
            <div class="keys" role="group" aria-label=wording("pad-keys")>
                {['1', '2', '3', '4', '5', '6', '7', '8', '9'].map(digit).collect_view()}
                <button
                    type="button"
                    aria-label=wording("pad-decimal")
                    on:click=move |_| press(mark())
                >
                    {move || mark().to_string()}
                </button>
                {digit('0')}
                <button
                    type="button"
                    aria-label=wording("pad-delete")
                    on:click=move |_| {
                        bad.set(None);
                        text.update(|text| {
                            text.pop();
                        });
                    }
                >
                    <svg viewBox="0 0 32 24" aria-hidden="true">
                        <path d="M10 3H29V21H10L3 12ZM15 8L23 16M23 8L15 16" />
                    </svg>
                </button>
            </div>
            <button type="submit" class="main-action">
                {wording("pad-store")}
            </button>
        </form>
    }
}

/// Whether three digits are a whole reading.
fn is_fahrenheit() -> bool {
    preferences::units().temperature == TemperatureUnit::Fahrenheit
}
