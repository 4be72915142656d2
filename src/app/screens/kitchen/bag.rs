use cook_model::kitchen::card::Card;
use cook_model::kitchen::log::{BagId, KitchenWhat};
use cook_model::kitchen::storage::Place;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::kitchen::{label_of, open_kitchen, words};
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{Heading, If};
use crate::words::{Words, wording};
use crate::{say, show};

/// One bag: its label with its code, and what can be done with it.
#[component]
pub fn Bag(
    /// Which bag.
    bag: BagId,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let cook = open_cook();
    let state = Derived::new(move || kitchen.state().read().bag(bag).cloned());
    let title = Words::from(move || match state.get() {
        Some(state) => words::bag(&state),
        None => say!("bag-number", number = bag.count),
    });
    let facts = move || {
        let state = state.get()?;
        let (form, weight) = (words::form(state.bag.form), show::mass(state.bag.weight));
        let lies_in = words::packing(state.bag.packing);
        let place = state.place().map(words::place).unwrap_or_default();
        Some(say!(
            "bag-facts",
            form = form,
            weight = weight,
            packing = lies_in,
            place = place,
            cooked = words::day(state.bag.cooked)
        ))
    };
    let cautions = move || {
        let state = state.get()?;
        let told = state.cautions(cook.now()).into_iter().map(words::caution);
        let from_here = state.bag.brings.cook == cook.id().map(|id| id.0);
        let pieces = &state.bag.brings.pieces;
        let fell = from_here && !cook.state().read().are_proved(pieces);
        let fell = fell.then(|| say!("bag-unproved"));
        Some(told.chain(fell).map(|text| view! { <p class="caution">{text}</p> }).collect_view())
    };
    view! {
        <section class="screen bag">
            <Heading text=title />
            <If
                holds=move || state.read().is_some()
                otherwise=|| view! { <p class="lead">{wording("bag-unknown")}</p> }
            >
                <p>{move || facts()}</p>
                <p class="window">
                    {move || state.get().map(|state| show::capital(words::keeps(&state)))}
                </p>
                {move || cautions()}
                <If
                    holds=move || state.get().is_some_and(|state| state.ended.is_none())
                    otherwise=|| view! { <p class="lead">{wording("bag-gone")}</p> }
                >
                    <Acts bag=bag />
                    <LabelToWrite bag=bag />
                    <button
                        class="plain"
                        on:click=move |_| kitchen.record(vec![KitchenWhat::Undone { entry: bag }])
                    >
                        {wording("bag-not-packed")}
                    </button>
                </If>
            </If>
        </section>
    }
}

/// What can be done with a bag that is still there.
#[component]
fn Acts(
    /// Which bag.
    bag: BagId,
) -> impl IntoView {
    let (kitchen, cook) = (open_kitchen(), open_cook());
    let navigation = navigation();
    let card = Derived::new(move || Card::of(kitchen.state().read().bag(bag)?));
    // What is past a limit is thrown away, and nothing else.
    let keeps = Derived::new(move || {
        let now = cook.now();
        kitchen.state().read().bag(bag).is_some_and(|state| !state.is_past(now))
    });
    let other = move || match card.get().map(|card| card.place) {
        Some(Place::Fridge) => Place::Freezer,
        _ => Place::Fridge,
    };
    let reheat = move |_| {
        if let Some(card) = card.get_untracked() {
            navigation.go(Screen::Reheat(Ok(card)));
        }
    };
    view! {
        <If holds=move || keeps.get()>
            <button class="main-action" on:click=reheat>
                {wording("bag-reheat")}
            </button>
        </If>
        <div class="row-acts bag-acts">
            <If holds=move || keeps.get()>
                <button on:click=move |_| kitchen.record(vec![KitchenWhat::BagUsed { bag }])>
                    {wording("bag-used")}
                </button>
                <button on:click=move |_| {
                    kitchen.record(vec![KitchenWhat::BagMoved { bag, to: untrack(other) }]);
                }>
                    {move || match other() {
                        Place::Fridge => say!("bag-to-fridge"),
                        Place::Freezer => say!("bag-to-freezer"),
                    }}
                </button>
            </If>
            <button on:click=move |_| kitchen.record(vec![KitchenWhat::BagThrownAway { bag }])>
                {wording("bag-throw-away")}
            </button>
        </div>
    }
}

/// The label, to write by hand, and its code.
#[component]
fn LabelToWrite(
    /// Which bag.
    bag: BagId,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let navigation = navigation();
    let label = Derived::new(move || label_of(kitchen, kitchen.state().read().bag(bag)?));
    let lines = move || {
        let lines = label.get()?.lines;
        Some(lines.into_iter().map(|line| view! { <p>{line}</p> }).collect_view())
    };
    let code = move || {
        let label = label.get()?;
        let code = label.code?;
        let side = code.size;
        Some(view! {
            <a class="code" href=label.address aria-label=say!("label-code")>
                <svg viewBox=format!("0 0 {side} {side}") aria-hidden="true">
                    <rect class="ground" width=side height=side />
                    <path class="modules" d=code.path />
                </svg>
            </a>
        })
    };
    view! {
        <h2>{wording("label-title")}</h2>
        <div class="card label">{move || lines()} {move || code()}</div>
        <p class="hint">{wording("label-hint")}</p>
        <button class="second-action" on:click=move |_| navigation.go(Screen::Labels)>
            {wording("kitchen-to-labels")}
        </button>
    }
}
