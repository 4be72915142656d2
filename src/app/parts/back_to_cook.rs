use leptos::prelude::*;

use crate::navigate::{Screen, navigation};
use crate::words::wording;

/// The one tap back to the next thing to do.
#[component]
pub fn BackToCook() -> impl IntoView {
    let navigation = navigation();
    view! {
        <button
            class="back"
            aria-label=wording("back")
            on:click=move |_| navigation.replace(Screen::Live)
        >
            <svg viewBox="0 0 24 24" aria-hidden="true">
                <path d="M15 4L7 12L15 20" />
            </svg>
        </button>
    }
}
