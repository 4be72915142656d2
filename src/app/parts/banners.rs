use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::device::update;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::watching::Watching;
use crate::words::wording;

/// Says that a new version waits, and takes it when the person says so.
#[component]
pub fn NewVersion() -> impl IntoView {
    let watching: Watching = expect_context();
    let waits = watching.new_version();
    view! {
        <If holds=move || waits.get()>
            <section class="banner" aria-label=wording("version-title")>
                <p>{wording("version-title")}</p>
                <button class="small" on:click=move |_| spawn_local(update::take())>
                    {wording("version-take")}
                </button>
                <button class="small" on:click=move |_| waits.set(false)>
                    {wording("version-later")}
                </button>
            </section>
        </If>
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
        <If holds=move || cook.is_demo()>
            <section class="banner demo" aria-label=wording("demo-title")>
                <p>{wording("demo-title")}</p>
                <button class="small" on:click=leave>
                    {wording("demo-leave")}
                </button>
            </section>
        </If>
    }
}
