use cook_model::cook::{Stage, What};
use leptos::prelude::*;

use super::perform;
use crate::kitchen::KitchenDock;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::{describe, say};

/// What is always in reach of the thumb: the undoing of the last tap, the one button for the next
/// thing to do, and the way to the other parts of the app.
#[component]
pub fn Dock() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let at_the_cook = move || matches!(navigation.screen(), Screen::Live);
    let typing = move || matches!(navigation.screen(), Screen::Piece(_) | Screen::Pit);
    let at_the_kitchen = move || navigation.screen().is_kitchen();
    view! {
        <footer class="dock" class:typing=typing>
            <Show when=at_the_kitchen fallback=|| view! { <LastDone /> }>
                <KitchenDock />
            </Show>
            <Show when=move || at_the_cook() && cook.step().is_some()>
                <NextButton />
            </Show>
            <Show when=move || navigation.screen() == Screen::SetOut>
                <AllOnButton />
            </Show>
            <Show when=move || cook.is_open() && !typing() && !at_the_kitchen()>
                <Tabs />
            </Show>
        </footer>
    }
}

/// What was stored last, in words, with its undo. A screen reader hears it without being asked.
#[component]
fn LastDone() -> impl IntoView {
    let cook = open_cook();
    let done = cook.done();
    view! {
        <div class="last-done" class:empty=move || done.read().is_none()>
            <p role="status">{move || done.get().map(|done| done.words)}</p>
            <Show when=move || done.read().is_some()>
                <button class="small" on:click=move |_| cook.undo_last()>
                    {move || say!("undo")}
                </button>
            </Show>
        </div>
    }
}

/// The one button for the next thing to do.
#[component]
fn NextButton() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let words = move || {
        let state = cook.state().read();
        cook.step().map(|step| describe::step(&state, &step).button)
    };
    let due = move || cook.step().is_some_and(|step| step.due <= cook.now());
    view! {
        <button
            class="main-action"
            class:due=due
            on:click=move |_| {
                if let Some(step) = untrack(|| cook.step()) {
                    perform(&step, cook, navigation);
                }
            }
        >
            {words}
        </button>
    }
}

/// Puts all raw pieces on, where there are any.
#[component]
fn AllOnButton() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let raw = Memo::new(move |_| cook.state().read().at_stage(Stage::Raw));
    let all_on = move |_| {
        let put_on = raw.get_untracked().into_iter().map(|piece| What::PutOn { piece });
        cook.record_all(put_on.collect());
        navigation.go(Screen::Live);
    };
    view! {
        <Show when=move || !raw.read().is_empty()>
            <button class="main-action" on:click=all_on>
                {move || say!("set-out-put-on", count = raw.read().len())}
            </button>
        </Show>
    }
}

/// The parts of the app.
#[component]
fn Tabs() -> impl IntoView {
    let navigation = navigation();
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
    view! {
        <nav class="tabs" aria-label=move || say!("tabs")>
            {tab(Screen::Live, Signal::derive(|| say!("tab-cook")))}
            {tab(Screen::Rest, Signal::derive(|| say!("tab-rest")))}
            {tab(Screen::Log, Signal::derive(|| say!("tab-log")))}
            {tab(Screen::More, Signal::derive(|| say!("tab-more")))}
        </nav>
    }
}
