//! The kitchen's part of the dock.

use leptos::prelude::*;

use super::open_kitchen;
use crate::getter::Getter;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{Tab, last_done};
use crate::words::wording;

/// The kitchen's part of what is always in reach of the thumb: its last undo, and its own parts.
#[component]
pub fn KitchenDock(
    /// Whether what calls needs the room of the words for what was done last.
    #[prop(into)]
    crowded: Getter<bool>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let cook = open_cook();
    let navigation = navigation();
    let back = move |_| {
        let open = untrack(|| cook.is_open() && !cook.state().read().pieces.is_empty());
        navigation.go(if open { Screen::Live } else { Screen::Start });
    };
    view! {
        {last_done(kitchen.journal(), move || kitchen.undo(), move || kitchen.redo(), move || crowded.get())}
        <nav class="tabs" aria-label=wording("kitchen-tabs")>
            <Tab to=Screen::Kitchen words=wording("kitchen-tab-bags") />
            <Tab to=Screen::Portions words=wording("kitchen-tab-portions") />
            <Tab to=Screen::Rub words=wording("kitchen-tab-rub") />
            <button on:click=back>{wording("tab-cook")}</button>
        </nav>
    }
}
