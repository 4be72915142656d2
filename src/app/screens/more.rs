//! The way to everything that is not needed at the pit, grouped by what it belongs to.

use cook_model::cook::export::{export, import};
use cook_model::cook::{Entry, Log};
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::home;
use crate::chosen_file::chosen_file;
use crate::describe;
use crate::device::files::JSON;
use crate::device::storage::CookId;
use crate::device::{clock, files};
use crate::navigate::{Screen, navigation};
use crate::open_cook::{OpenCook, open_cook};
use crate::parts::{Heading, If, NewCook};
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
    let said = RwSignal::new(None::<String>);
    let save = move |_| {
        let name = format!("pull-order-{}.json", clock::now().format("%Y-%m-%d-%H%M"));
        let text = export(&cook.log().read_untracked());
        spawn_local(async move {
            said.set(describe::handed(files::hand_over(&name, JSON, &text).await, &name));
        });
    };
    let open = move |_| {
        spawn_local(async move {
            match chosen_file(import, wording("file-no-cook")).await {
                Ok(None) => {}
                Ok(Some(log)) => {
                    store_all(cook, log);
                    navigation.go(home(&cook.state().get_untracked()));
                }
                Err(why) => said.set(Some(why)),
            }
        });
    };
    view! {
        <ul class="rows">
            <If holds=move || cook.is_open()>
                <li>
                    <button class="row" on:click=save>
                        {wording("file-save")}
                    </button>
                </li>
            </If>
            <li>
                <button class="row" on:click=open>
                    {wording("file-open")}
                </button>
            </li>
        </ul>
        <p role="status">{move || said.get()}</p>
    }
}

/// Opens a cook that came as a file, as a new one beside those stored here.
fn store_all(cook: OpenCook, log: Log) {
    let id = CookId::fresh();
    let text = |entry: &Entry| Some((entry.id, serde_json::to_string(entry).ok()?));
    cook.pending().add(id, log.entries().iter().filter_map(text).collect(), || {});
    cook.open(id, log);
}
