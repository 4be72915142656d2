use cook_model::kitchen::log::KitchenWhat;
use cook_model::quantity::Moment;
use leptos::prelude::*;

use super::portions::Today;
use crate::derived::Derived;
use crate::device::clock;
use crate::kitchen::{OpenKitchen, PlannedBag, bags_of, open_kitchen, words};
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::words::wording;
use crate::{say, show};

/// The bags that the draft makes, in the order of its uses.
pub fn planned(kitchen: OpenKitchen, today: Today) -> Vec<PlannedBag> {
    let Ok(allotment) = today.allotment.get() else { return Vec::new() };
    let (draft, day) = (kitchen.draft().read(), today.day.read());
    let uses = draft.lots.iter().zip(&allotment.shares);
    uses.flat_map(|(lot, share)| bags_of(draft.cook, lot, share, &day)).collect()
}

/// Whether its meat had to be in the cold before now: it goes into no stock.
fn is_too_late(planned: &PlannedBag, now: Moment) -> bool {
    planned.bag.brings.cold_by.is_some_and(|by| now > by)
}

/// Whether the draft's bags are in the stock already.
pub fn is_packed(kitchen: OpenKitchen) -> bool {
    let Some(at) = kitchen.draft().read().packed else { return false };
    kitchen.state().read().bags.iter().any(|bag| bag.stays[0].from >= at)
}

/// The bags to pack, and the one tap that puts them into the stock.
#[component]
pub fn Pack(
    /// The day.
    today: Today,
) -> impl IntoView {
    let (kitchen, cook, navigation) = (open_kitchen(), open_cook(), navigation());
    let bags = Derived::new(move || planned(kitchen, today));
    let pack = move |_| {
        kitchen.draft().update(|draft| draft.packed = Some(clock::now()));
        let now = clock::now();
        let packed = bags.get_untracked().into_iter().filter(|bag| !is_too_late(bag, now));
        let one = |planned: PlannedBag| {
            let PlannedBag { bag, place, .. } = planned;
            KitchenWhat::BagPacked { bag, place }
        };
        kitchen.record(packed.map(one).collect());
    };
    let rows = move || {
        let bags = bags.get();
        let rows = bags.iter().map(|planned| {
            let PlannedBag { bag, place, .. } = planned;
            let what = format!("{}, {}", words::form(bag.form), show::mass(bag.weight));
            let late = is_too_late(planned, cook.now());
            view! {
                <li>
                    <span class="what">{bag.name.clone()}</span>
                    <span class="last">{what} ", " {words::place(*place)}</span>
                    {late.then(|| view! { <span class="bad">{say!("pack-too-late")}</span> })}
                </li>
            }
        });
        rows.collect_view()
    };
    let in_time = move || {
        let now = cook.now();
        bags.read().iter().filter(|bag| !is_too_late(bag, now)).count()
    };
    view! {
        <If holds=move || !bags.read().is_empty()>
            <h2>{wording("pack-title")}</h2>
            <ul class="rows bag-list">{move || rows()}</ul>
            <p class="caution">{wording("caution-two-hours")}</p>
            <button class="second-action" on:click=move |_| navigation.go(Screen::Chill)>
                {wording("kitchen-to-chill")}
            </button>
            <If holds=move || cook.is_demo()>
                <p class="hint">{wording("pack-demo")}</p>
            </If>
            <If
                holds=move || is_packed(kitchen)
                otherwise=move || {
                    view! {
                        <If holds=move || 0 < in_time()>
                            <button class="main-action" on:click=pack>
                                {move || say!("pack-all", count = in_time())}
                            </button>
                        </If>
                    }
                }
            >
                <p class="window">{wording("pack-done")}</p>
                <button class="main-action" on:click=move |_| navigation.go(Screen::Labels)>
                    {wording("kitchen-to-labels")}
                </button>
                <button class="plain" on:click=pack>
                    {wording("pack-again")}
                </button>
            </If>
        </If>
    }
}
