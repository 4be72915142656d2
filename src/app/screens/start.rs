//! The first screen: begin a cook, or go on with one.

use cook_model::kitchen::log::BagState;
use cook_model::quantity::Moment;
use cook_model::safety::INSTANT_KILL;
use leptos::prelude::*;

use crate::app::home;
use crate::demo;
use crate::kitchen::open_kitchen;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{Heading, If, NewCook, Still};
use crate::screens::earlier::Earlier;
use crate::words::wording;
use crate::{say, show};

/// Begin a cook, or go on with one.
#[component]
pub fn Start() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let stored = LocalResource::new(move || async move {
        cook.pending().read(async |store| store.cooks().await).await.unwrap_or_default()
    });
    let demo = move |_| {
        demo::start(cook);
        navigation.go(Screen::Live);
    };
    let go_on = move |_| navigation.go(home(&cook.state().get_untracked()));
    view! {
        <section class="screen start">
            <Heading text=wording("start-title") />
            <Still />
            <p>{wording("start-lead")}</p>
            <If holds=move || !cook.state().read().pieces.is_empty()>
                <button class="main-action" on:click=go_on>
                    {wording("start-continue")}
                </button>
            </If>
            <NewCook class="main-action" words=wording("start-new") />
            <button class="second-action" on:click=demo>
                {wording("start-demo")}
            </button>
            <KitchenEntry />
            <p class="caution">
                {move || say!("start-caution", rule = show::temperature(INSTANT_KILL))}
            </p>
            {move || {
                let cooks = stored.get()?;
                (!cooks.is_empty()).then(|| view! { <Earlier cooks=cooks /> })
            }}
        </section>
    }
}

/// The way to the kitchen, with what there is to eat now or to throw away.
#[component]
fn KitchenEntry() -> impl IntoView {
    let kitchen = open_kitchen();
    let cook = open_cook();
    let navigation = navigation();
    let count = move |what: fn(&BagState, Moment) -> bool| {
        let now = cook.now();
        kitchen.state().read().bags.iter().filter(|bag| what(bag, now)).count()
    };
    let due = move || Some(count(BagState::is_due)).filter(|count| *count > 0);
    let past = move || Some(count(BagState::is_past)).filter(|count| *count > 0);
    view! {
        <button class="second-action" on:click=move |_| navigation.go(Screen::Kitchen)>
            {wording("kitchen-entry")}
        </button>
        <If holds=move || due().is_some()>
            <p class="note">{move || due().map(|count| say!("kitchen-due", count = count))}</p>
        </If>
        <If holds=move || past().is_some()>
            <p class="bad">{move || past().map(|count| say!("kitchen-past", count = count))}</p>
        </If>
    }
}
