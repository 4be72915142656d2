use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::parts::If;
use crate::words::wording;

/// Says so when the phone does not store what is typed.
#[component]
pub fn Trouble() -> impl IntoView {
    let trouble = open_cook().trouble();
    view! {
        <If holds=move || trouble.read().is_some()>
            <p class="caution" role="alert">
                {wording("trouble-storage")}
                " "
                {move || trouble.get().map(|problem| problem.to_string())}
            </p>
        </If>
    }
}
