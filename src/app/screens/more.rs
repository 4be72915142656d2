//! The way to everything that is not needed at the pit, grouped by what it belongs to.

use cook_model::cook::Log;
use cook_model::cook::export::{export, import};
use leptos::prelude::*;

use crate::app::home;
use crate::device::clock;
use crate::device::storage::CookId;
use crate::journal::pending::texts;
use crate::navigate::{Screen, navigation};
use crate::open_cook::{OpenCook, open_cook};
use crate::parts::{FileRows, Heading, If, NewCook};
use crate::words::{Words, wording};

/// The way to everything that is not needed at the pit.
#[component]
pub fn More() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let row = move |words: Words, to: Screen| {
        view! {
            <li>
                <button class="row" on:click=move |_| navigation.go(to)>
                    {move || words.get()}
                </button>
            </li>
        }
    };
    view! {
        <section class="screen more">
            <Heading text=wording("more-title") />
            <h2>{wording("more-this-cook")}</h2>
            <ul class="rows">
                {row(wording("more-set-out"), Screen::SetOut)}
                <If holds=move || cook.is_open()>
                    {row(wording("plan-title"), Screen::Plan)}
                    {row(wording("habits-title"), Screen::Habits)}
                    {row(wording("curves-title"), Screen::Curves)}
                    {row(wording("more-safety"), Screen::Safety)}
                </If>
                {row(wording("more-end"), Screen::Start)}
                <li>
                    <NewCook class="row" words=wording("more-new") />
                </li>
            </ul>
            <Files />
            <h2>{wording("more-kitchen")}</h2>
            <ul class="rows">
                {row(wording("kitchen-entry"), Screen::Kitchen)}
                {row(wording("more-cautions"), Screen::Cautions)}
            </ul>
            <h2>{wording("more-this-phone")}</h2>
            <ul class="rows">
                {row(wording("more-alarms"), Screen::AlarmsHere)}
                <If holds=move || cook.is_open()>
                    {row(wording("more-thermometer"), Screen::ThermometerCheck)}
                </If>
                {row(wording("more-settings"), Screen::Settings)}
            </ul>
            <p class="hint">{wording("more-data")}</p>
        </section>
    }
}

/// The cook as a file, out and in.
#[component]
fn Files() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let file = move |()| {
        let name = format!("pull-order-{}.json", clock::now().format("%Y-%m-%d-%H%M"));
        (name, export(&cook.log().read_untracked()))
    };
    let take_in = move |text: String| {
        import(&text).map(|log| {
            store_all(cook, log);
            navigation.go(home(&cook.state().get_untracked()));
            None
        })
    };
    view! {
        <FileRows
            some=move || cook.is_open()
            save=wording("file-save")
            open=wording("file-open")
            not_ours=wording("file-no-cook")
            file=Callback::new(file)
            take_in=Callback::new(take_in)
        />
    }
}

/// Opens a cook that came as a file, as a new one beside those stored here.
fn store_all(cook: OpenCook, log: Log) {
    let id = CookId::fresh();
    cook.pending().add(id, texts(log.entries()), || {});
    cook.open(id, log);
}
