use leptos::prelude::*;

use super::open_kitchen;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::say;

/// The kitchen's part of what is always in reach of the thumb: its last undo, and its own parts.
#[component]
pub fn KitchenDock() -> impl IntoView {
    let kitchen = open_kitchen();
    let cook = open_cook();
    let navigation = navigation();
    let done = kitchen.done();
    let tab = move |to: Screen, words: Signal<String>| {
        view! {
            <button
                aria-current=move || (navigation.screen() == to).then_some("page")
                on:click=move |_| navigation.go(to)
            >
                {move || words.get()}
            </button>
        }
    };
    let back = move |_| {
        let open = untrack(|| cook.is_open() && !cook.state().read().pieces.is_empty());
        navigation.go(if open { Screen::Live } else { Screen::Start });
    };
    view! {
        <div class="last-done" class:empty=move || done.read().is_none()>
            <p role="status">{move || done.get().map(|done| done.words)}</p>
            <Show when=move || done.read().is_some()>
                <button class="small" on:click=move |_| kitchen.undo_last()>
                    {move || say!("undo")}
                </button>
            </Show>
        </div>
        <nav class="tabs" aria-label=move || say!("kitchen-tabs")>
            {tab(Screen::Kitchen, Signal::derive(|| say!("kitchen-tab-bags")))}
            {tab(Screen::Portions, Signal::derive(|| say!("kitchen-tab-portions")))}
            {tab(Screen::Rub, Signal::derive(|| say!("kitchen-tab-rub")))}
            <button on:click=back>{move || say!("tab-cook")}</button>
        </nav>
    }
}
