use cook_model::cook::Log;
use leptos::prelude::*;

use crate::device::storage::CookId;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::Heading;
use crate::say;

/// The way to everything that is not needed at the pit.
#[component]
pub fn More() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let row = move |words: Signal<String>, to: Screen| {
        view! {
            <li>
                <button class="row" on:click=move |_| navigation.go(to)>
                    {move || words.get()}
                </button>
            </li>
        }
    };
    let begin = move |_| {
        cook.open(CookId::fresh(), Log::default());
        navigation.go(Screen::SetOut);
    };
    view! {
        <section class="screen more">
            <Heading text=Signal::derive(|| say!("more-title")) />
            <ul class="rows">
                {row(Signal::derive(|| say!("more-set-out")), Screen::SetOut)}
                {row(Signal::derive(|| say!("more-alarms")), Screen::AlarmsHere)}
                {row(Signal::derive(|| say!("more-cautions")), Screen::Cautions)}
                {row(Signal::derive(|| say!("more-settings")), Screen::Settings)}
                {row(Signal::derive(|| say!("more-end")), Screen::Start)}
                <li>
                    <button class="row" on:click=begin>
                        {move || say!("more-new")}
                    </button>
                </li>
            </ul>
        </section>
    }
}
