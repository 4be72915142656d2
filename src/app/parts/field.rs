//! A field to type a number into.

use leptos::prelude::*;

use super::in_sight::keep_in_sight;
use crate::words::Words;

/// A number to type, with what was wrong with it beside it. What was typed stays.
#[component]
pub fn Field(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What to type.
    #[prop(into)]
    label: Words,
    /// The text as typed.
    text: RwSignal<String>,
    /// What was wrong with it.
    bad: RwSignal<Option<String>>,
    /// A word of help.
    #[prop(optional, into)]
    hint: Words,
    /// Called when the person is done with the field.
    #[prop(optional, into)]
    on_done: Option<Callback<()>>,
) -> impl IntoView {
    let part = NodeRef::new();
    keep_in_sight(part, bad);
    let hint_name = format!("{name}-hint");
    let bad_name = format!("{name}-bad");
    let described_by = format!("{hint_name} {bad_name}");
    view! {
        <div class="field" node_ref=part>
            <label for=name>{label}</label>
            <input
                id=name
                type="text"
                inputmode="decimal"
                autocomplete="off"
                enterkeyhint="done"
                aria-describedby=described_by
                aria-invalid=move || bad.read().is_some().to_string()
                prop:value=move || text.get()
                on:input=move |event| {
                    text.set(event_target_value(&event));
                    bad.set(None);
                }
                on:change=move |_| {
                    if let Some(done) = on_done {
                        done.run(());
                    }
                }
            />
            <p class="bad" id=bad_name role="alert">
                {move || bad.get()}
            </p>
            <p class="hint" id=hint_name>
                {hint}
            </p>
        </div>
    }
}
