//! The cook's own rub, in parts.

use cook_model::kitchen::amounts::Fraction;
use cook_model::kitchen::log::KitchenWhat;
use cook_model::kitchen::rub::{Ingredient, Measure, Recipe};
use cook_model::kitchen::spice::Spice;
use leptos::prelude::*;

use super::brine::Brines;
use super::rub_mix::Mixed;
use super::solution::SoldWith;
use crate::derived::Derived;
use crate::kitchen::{OpenKitchen, Plain, open_kitchen, words};
use crate::parts::{Choice, Each, Field, Heading, If, Pick, TextField};
use crate::typed::quantity;
use crate::words::{Words, wording};
use crate::{say, show};

/// Everything that can go into a rub, salts first.
const SPICES: [Spice; 15] = [
    Spice::TableSalt,
    Spice::CoarseSalt,
    Spice::FlakeSalt,
    Spice::Sugar,
    Spice::BrownSugar,
    Spice::Paprika,
    Spice::BlackPepper,
    Spice::GarlicPowder,
    Spice::OnionPowder,
    Spice::ChilliPowder,
    Spice::Cumin,
    Spice::Cayenne,
    Spice::MustardPowder,
    Spice::Other,
    Spice::Blend { salt: Fraction::NONE },
];
const PARTS: core::ops::RangeInclusive<Plain> = Plain(0.05)..=Plain(100.0);
const PER_CENT: core::ops::RangeInclusive<Plain> = Plain(0.0)..=Plain(100.0);

/// The cook's own rub in parts, how much to mix of it, and brines.
#[component]
pub fn Rub() -> impl IntoView {
    let kitchen = open_kitchen();
    let draft = kitchen.draft();
    if draft.read_untracked().rub.is_none() {
        let first = kitchen.state().read_untracked().rubs.first().map(|rub| rub.name.clone());
        let name = first.unwrap_or_else(|| say!("rub-own-name"));
        draft.update(|draft| draft.rub = Some(name));
    }
    let recipe = Derived::new(move || {
        let name = draft.read().rub.clone().unwrap_or_default();
        let state = kitchen.state().read();
        let kept = state.rubs.iter().find(|rub| rub.name == name).cloned();
        kept.unwrap_or_else(|| Recipe { name, ..Recipe::default() })
    });
    view! {
        <section class="screen rub">
            <Heading text=wording("rub-title") />
            <Rubs recipe=recipe />
            <Ingredients recipe=recipe />
            <AddIngredient recipe=recipe />
            <SoldWith />
            <Mixed recipe=recipe />
            <Brines />
            <NewRub />
        </section>
    }
}

/// The rubs kept, where there is a choice.
#[component]
fn Rubs(
    /// The one shown.
    recipe: Derived<Recipe>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let draft = kitchen.draft();
    let choose = move |name: String| draft.update(|draft| draft.rub = Some(name));
    let names = Derived::new(move || {
        kitchen.state().read().rubs.iter().map(|rub| rub.name.clone()).collect::<Vec<_>>()
    });
    let toggle = move |name: String| {
        let (shown, chosen) = (name.clone(), name.clone());
        view! {
            <button
                class="toggle"
                aria-pressed=move || (recipe.read().name == shown).to_string()
                on:click=move |_| choose(chosen.clone())
            >
                {name}
            </button>
        }
    };
    let measures = vec![
        (Measure::Volume, wording("rub-by-volume")),
        (Measure::Weight, wording("rub-by-weight")),
    ];
    view! {
        <If holds=move || names.read().iter().any(|name| *name != recipe.read().name)>
            <div class="row-acts rub-names">
                <Each each=move || names.get() key=Clone::clone let:name>
                    {toggle(name)}
                </Each>
            </div>
        </If>
        <h2>{move || recipe.get().name}</h2>
        <Choice
            name="rub-measure"
            label=wording("rub-measure")
            options=measures
            chosen=move || recipe.read().measure
            on_choose=move |measure| {
                keep(kitchen, Recipe { measure, ..recipe.get_untracked() });
            }
        />
    }
}

/// A rub besides those there are.
#[component]
fn NewRub() -> impl IntoView {
    let draft = open_kitchen().draft();
    let text = RwSignal::new(String::new());
    let begin = move |_| {
        let name = text.get_untracked().trim().to_owned();
        if !name.is_empty() {
            draft.update(|draft| draft.rub = Some(name));
            text.set(String::new());
        }
    };
    view! {
        <h2>{wording("rub-another")}</h2>
        <div class="pair">
            <TextField
                name="rub-new"
                label=wording("rub-new-name")
                text=text
                on_type=move |typed| text.set(typed)
            />
            <button on:click=begin>{wording("rub-new")}</button>
        </div>
    }
}

/// Keeps a rub; one with nothing in it is no longer wanted.
fn keep(kitchen: OpenKitchen, recipe: Recipe) {
    kitchen.record(vec![if recipe.ingredients.is_empty() {
        KitchenWhat::RubDropped { name: recipe.name }
    } else {
        KitchenWhat::RubKept { recipe }
    }]);
}

/// The lines of the recipe, each to be taken out.
#[component]
fn Ingredients(
    /// The recipe.
    recipe: Derived<Recipe>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let row = move |place: usize, line: &Ingredient| {
        let (name, parts) = (line.name.clone(), show::number(line.parts, 2));
        let which = name.clone();
        let take_out = move |_| {
            let mut left = recipe.get_untracked();
            left.ingredients.remove(place);
            keep(kitchen, left);
        };
        view! {
            <li class="set-out-row">
                <span class="facts">
                    <span class="name">{name}</span>
                    <span class="weight">{say!("rub-parts-of", parts = parts)}</span>
                </span>
                <button
                    class="small"
                    aria-label=say!("rub-take-out-which", name = which)
                    on:click=take_out
                >
                    {say!("rub-take-out")}
                </button>
            </li>
        }
    };
    let rows = move || {
        let recipe = recipe.get();
        let lines = recipe.ingredients.iter().enumerate();
        lines.map(|(place, line)| row(place, line)).collect_view()
    };
    let share = move || {
        let share = recipe.get().salt_share().ok()?;
        Some(say!("rub-salt-share", share = show::number(share.percent(), 0)))
    };
    view! {
        <If
            holds=move || !recipe.read().ingredients.is_empty()
            otherwise=|| view! { <p class="lead">{wording("rub-empty")}</p> }
        >
            <ul class="rows">{move || rows()}</ul>
            <p class="window">{move || share()}</p>
            <p class="hint">{wording("rub-heavy-fact")}</p>
        </If>
    }
}

/// One more line.
#[component]
fn AddIngredient(
    /// The recipe.
    recipe: Derived<Recipe>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let place = RwSignal::new(0_usize);
    let name = RwSignal::new(String::new());
    let (parts, salt) = (RwSignal::new("1".to_owned()), RwSignal::new(String::new()));
    let (bad_parts, bad_salt) = (RwSignal::new(None), RwSignal::new(None));
    let spice = move || SPICES.get(place.get()).copied().unwrap_or(Spice::Other);
    let is_blend = move || matches!(spice(), Spice::Blend { .. });
    let add = move |_| {
        let mut spice = untrack(spice);
        if untrack(is_blend) {
            match quantity(&salt.get_untracked(), &PER_CENT, Plain(20.0)) {
                Ok(share) => spice = Spice::Blend { salt: Fraction::from_percent(share.0) },
                Err(message) => return bad_salt.set(Some(message)),
            }
        }
        match quantity(&parts.get_untracked(), &PARTS, Plain(2.0)) {
            Ok(parts) => {
                let own = name.get_untracked().trim().to_owned();
                let name = if own.is_empty() { words::spice(spice) } else { own };
                let mut grown = recipe.get_untracked();
                grown.ingredients.push(Ingredient { name, spice, parts: parts.0 });
                keep(kitchen, grown);
            }
            Err(message) => return bad_parts.set(Some(message)),
        }
        name.set(String::new());
    };
    let option = |(number, spice)| (number, Words::from(move || words::spice(spice)));
    let options = SPICES.into_iter().enumerate().map(option).collect();
    view! {
        <div class="card">
            <div class="pair wordy">
                <Pick
                    name="rub-spice"
                    label=wording("rub-spice")
                    options=options
                    chosen=place
                    on_choose=move |number| place.set(number)
                />
                <Field
                    name="rub-parts"
                    label=wording("rub-parts")
                    text=parts
                    bad=bad_parts
                />
            </div>
            <If holds=move || matches!(spice(), Spice::Blend { .. } | Spice::Other)>
                <TextField
                    name="rub-ingredient"
                    label=wording("rub-ingredient")
                    text=name
                    on_type=move |typed| name.set(typed)
                />
            </If>
            <If holds=is_blend>
                <Field
                    name="rub-blend-salt"
                    label=wording("rub-blend-salt")
                    text=salt
                    bad=bad_salt
                    hint=|| salt_of_sodium()
                />
            </If>
            <button on:click=add>{wording("rub-add")}</button>
        </div>
    }
}

/// The sodium that a label may state, grams.
const SODIUM: f64 = 2.5;
/// The salt that holds it, grams. A gram of salt holds 0.393 g of sodium: by the atomic weights of sodium
/// and chlorine, 22.99 and 35.45 (IUPAC, from memory).
const ITS_SALT: f64 = 6.4;

fn salt_of_sodium() -> String {
    say!("rub-blend-hint", sodium = show::number(SODIUM, 1), salt = show::number(ITS_SALT, 1))
}
