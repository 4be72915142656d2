use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::device::update;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::say;
use crate::watching::Watching;

/// Says that a new version waits, and takes it when the person says so.
#[component]
pub fn NewVersion() -> impl IntoView {
    let watching: Watching = expect_context();
    let waits = watching.new_version();
    view! {
        <Show when=move || waits.get()>
            <section class="banner" aria-label=move || say!("version-title")>
                <p>{move || say!("version-title")}</p>
                <button class="small" on:click=move |_| spawn_local(update::take())>
                    {move || say!("version-take")}
                </button>
                <button class="small" on:click=move |_| waits.set(false)>
                    {move || say!("version-later")}
                </button>
            </section>
        </Show>
    }
}

/// Says that this is the demo, and leaves it.
#[component]
pub fn DemoBanner() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let leave = move |_| {
        cook.close_demo();
        navigation.replace(Screen::Start);
    };
    view! {
        <Show when=move || cook.is_demo()>
            <section class="banner demo" aria-label=move || say!("demo-title")>
                <p>{move || say!("demo-title")}</p>
                <button class="small" on:click=leave>
                    {move || say!("demo-leave")}
                </button>
            </section>
        </Show>
    }
}
