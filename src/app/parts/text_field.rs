use leptos::prelude::*;

use crate::words::Words;

/// A few words to type, kept as soon as they are typed.
#[component]
pub fn TextField(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What to type.
    #[prop(into)]
    label: Words,
    /// The text that holds.
    #[prop(into)]
    text: Words,
    /// Called with each change.
    #[prop(into)]
    on_type: Callback<String>,
) -> impl IntoView {
    view! {
        <div class="field">
            <label for=name>{label}</label>
            <input
                id=name
                type="text"
                autocomplete="off"
                enterkeyhint="done"
                maxlength="40"
                prop:value=move || text.get()
                on:input=move |event| on_type.run(event_target_value(&event))
            />
        </div>
    }
}
