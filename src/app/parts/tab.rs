use leptos::prelude::*;

use crate::navigate::{Screen, navigation};
use crate::words::Words;

/// The way to one part of the app, marked while that part shows.
#[component]
pub fn Tab(
    /// Where it leads.
    to: Screen,
    /// What the part is called.
    #[prop(into)]
    words: Words,
) -> impl IntoView {
    let navigation = navigation();
    view! {
        <button
            aria-current=move || (navigation.screen() == to).then_some("page")
            on:click=move |_| navigation.go(to)
        >
            {words}
        </button>
    }
}
