use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::say;

/// Says so when the phone does not store what is typed.
#[component]
pub fn Trouble() -> impl IntoView {
    let trouble = open_cook().trouble();
    view! {
        <Show when=move || trouble.read().is_some()>
            <p class="caution" role="alert">
                {move || say!("trouble-storage")}
                " "
                {move || trouble.get().map(|problem| problem.to_string())}
            </p>
        </Show>
    }
}
