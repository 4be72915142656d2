use cook_model::kitchen::log::KitchenWhat;
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
    uses.flat_map(|(lot, share)| bags_of(lot, share, &day)).collect()
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
        let packed = bags.get_untracked().into_iter();
        let one = |planned: PlannedBag| {
            let PlannedBag { bag, place, .. } = planned;
            KitchenWhat::BagPacked { bag, place }
        };
        kitchen.record(packed.map(one).collect());
    };
    let rows = move || {
        let bags = bags.get();
        let rows = bags.iter().map(|PlannedBag { bag, place, .. }| {
            let what = format!("{}, {}", words::form(bag.form), show::mass(bag.weight));
            view! {
                <li>
                    <span class="what">{bag.name.clone()}</span>
                    <span class="last">{what} ", " {words::place(*place)}</span>
                </li>
            }
        });
        rows.collect_view()
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
                        <button class="main-action" on:click=pack>
                            {move || say!("pack-all", count = bags.read().len())}
                        </button>
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
