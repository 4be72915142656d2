use leptos::prelude::*;

use crate::navigate::{Screen, navigation};
use crate::parts::{BackToCook, Heading, PitPad};
use crate::words::wording;

/// The pit thermometer is typed.
#[component]
pub fn PitReading() -> impl IntoView {
    let navigation = navigation();
    view! {
        <section class="screen reading">
            <div class="side entry">
                <header class="top">
                    <BackToCook />
                    <div>
                        <Heading text=wording("pad-title-pit") />
                    </div>
                </header>
                <PitPad on_stored=move |_| navigation.replace(Screen::Live) />
            </div>
        </section>
    }
}
