use cook_model::kitchen::form::Form;
use cook_model::kitchen::nutrition::nutrition;
use cook_model::kitchen::portions::Share;
use cook_model::kitchen::rub::USUAL_LIMIT;
use cook_model::kitchen::storage::Packing;
use cook_model::piece::Piece;
use cook_model::quantity::{Length, Mass};
use leptos::prelude::*;

use super::pieces::PieceButton;
use super::portions::Today;
use crate::derived::Derived;
use crate::kitchen::{Count, Goes, LotDraft, OpenKitchen, Wanted, open_kitchen, words};
use crate::parts::{Choice, Each, If, OptionalField, SettingField, TextField};
use crate::show::capital;
use crate::words::{Words, wording};
use crate::{say, show};

const COUNTS: core::ops::RangeInclusive<Count> = Count(1)..=Count(40);
const SERVING: core::ops::RangeInclusive<Mass> = Mass::from_g(10.0)..=Mass::from_g(1000.0);
const THICKNESS: core::ops::RangeInclusive<Length> = Length::from_mm(5.0)..=Length::from_mm(100.0);
const USUAL_THICKNESS: Length = Length::from_mm(25.0);

/// One use: what it wants, which pieces it gets, and what is in a portion.
#[component]
pub fn LotCard(
    /// Which use.
    key: u32,
    /// The day.
    today: Today,
    /// The use whose wishes are being changed.
    editing: RwSignal<Option<u32>>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let lot = Derived::new(move || kitchen.draft().read().lot(key).cloned());
    let share = Derived::new(move || {
        let place = kitchen.draft().read().lots.iter().position(|lot| lot.key == key)?;
        today.allotment.read().as_ref().ok()?.shares.get(place).cloned()
    });
    let pieces = Derived::new(move || share.get().map(|share| share.pieces).unwrap_or_default());
    let name = move || lot.get().map(|lot| lot.name).unwrap_or_default();
    let open = move || editing.get() == Some(key);
    let toggle = move |_| editing.set((!untrack(open)).then_some(key));
    view! {
        <section class="card lot">
            <div class="top">
                <h2>{move || name()}</h2>
                <button
                    class="small"
                    aria-expanded=move || open().to_string()
                    aria-label=move || {
                        if open() {
                            say!("portions-done-which", name = name())
                        } else {
                            say!("portions-change-which", name = name())
                        }
                    }
                    on:click=toggle
                >
                    {move || if open() { say!("portions-done") } else { say!("change") }}
                </button>
            </div>
            <p class="window">{move || lot.get().map(|lot| wish(&lot))}</p>
            <p>{move || Some(outcome(&lot.get()?, &share.get()?))}</p>
            <p class="last">{move || content(kitchen, &lot.get()?, &share.get()?, today)}</p>
            <If holds=open>
                <Editor key=key lot=lot />
            </If>
            <div class="piece-buttons">
                <Each each=move || pieces.get() key=|id| *id let:id>
                    <PieceButton piece=id from=Some(key) today=today />
                </Each>
            </div>
        </section>
    }
}

/// What a use wants, in words.
fn wish(lot: &LotDraft) -> String {
    let goes = match lot.goes {
        Goes::Tonight => say!("goes-tonight"),
        Goes::Fridge => say!("place-fridge"),
        Goes::Freezer => say!("place-freezer"),
    };
    let amount = match lot.wanted {
        Wanted::Servings => {
            say!("portions-servings-of", count = lot.count, each = show::mass(lot.each))
        }
        Wanted::Pieces => say!("portions-pieces-of", count = lot.count),
        Wanted::Rest => say!("portions-rest-of"),
    };
    say!("portions-wish", goes = goes, amount = amount, form = words::form(lot.form))
}

/// What it gets.
fn outcome(lot: &LotDraft, share: &Share) -> String {
    let weight = show::mass(share.weight);
    if share.pieces.is_empty() {
        return say!("portions-nothing");
    }
    if share.short > Mass::ZERO {
        return say!("portions-short", weight = weight, short = show::mass(share.short));
    }
    if share.pieces_short > 0 {
        return say!("portions-pieces-short", weight = weight, count = share.pieces_short);
    }
    match share.serving {
        Some(serving) => {
            say!("portions-serving", weight = weight, count = lot.count, each = show::mass(serving))
        }
        None => say!("portions-gets", weight = weight, count = share.pieces.len()),
    }
}

/// What is in one portion: a serving, or a piece.
fn content(kitchen: OpenKitchen, lot: &LotDraft, share: &Share, today: Today) -> Option<String> {
    let day = today.day.read();
    let facts: Vec<Piece> =
        share.pieces.iter().filter_map(|id| day.piece(*id)).map(|piece| piece.facts).collect();
    let portions = match lot.wanted {
        Wanted::Servings => usize::from(lot.count),
        Wanted::Pieces | Wanted::Rest => facts.len(),
    };
    if facts.is_empty() || portions == 0 {
        return None;
    }
    let raw: Mass = facts.iter().map(|piece| piece.weight).sum();
    let draft = kitchen.draft().read();
    let state = kitchen.state().read();
    let recipe = state.rubs.iter().find(|rub| Some(&rub.name) == draft.rub.as_ref());
    let held = draft.solution.salt();
    let mix = recipe.and_then(|rub| rub.mix(&facts, draft.coat, USUAL_LIMIT, held).ok());
    let salt = mix.map_or(Mass::ZERO, |mix| mix.salt) + held.salt_on(raw);
    let each = 1.0 / portions as f64;
    let held = nutrition(raw * each, salt * each);
    Some(say!(
        "portions-content",
        energy = show::number(held.energy.kcal(), 0),
        protein = show::number(held.protein.g(), 0),
        fat = show::number(held.fat.g(), 0),
        salt = show::number(held.salt.g(), 1)
    ))
}

fn change(kitchen: OpenKitchen, key: u32, how: impl FnOnce(&mut LotDraft)) {
    kitchen.draft().update(|draft| {
        if let Some(lot) = draft.lots.iter_mut().find(|lot| lot.key == key) {
            how(lot);
        }
    });
}

/// Everything a use can wish.
#[component]
fn Editor(
    /// Which use.
    key: u32,
    /// As it is.
    lot: Derived<Option<LotDraft>>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let begun = lot.get_untracked().unwrap_or_else(|| LotDraft::rest(key, String::new()));
    let held = Derived::new(move || lot.get().unwrap_or_else(|| begun.clone()));
    let remove = move |_| {
        kitchen.draft().update(|draft| {
            draft.lots.retain(|lot| lot.key != key);
            draft.chosen.retain(|(_, chosen)| *chosen != key);
        });
    };
    let wanted = vec![
        (Wanted::Servings, wording("wanted-servings")),
        (Wanted::Pieces, wording("wanted-pieces")),
        (Wanted::Rest, wording("wanted-rest")),
    ];
    let goes = vec![
        (Goes::Tonight, wording("goes-tonight")),
        (Goes::Fridge, wording("place-fridge")),
        (Goes::Freezer, wording("place-freezer")),
    ];
    let forms = Form::ALL.map(|form| (form, Words::from(move || capital(words::form(form)))));
    view! {
        <TextField
            name="lot-name"
            label=wording("portions-name")
            text=move || held.get().name
            on_type=move |name| change(kitchen, key, |lot| lot.name = name)
        />
        <Choice
            name="lot-wanted"
            label=wording("portions-wanted")
            options=wanted
            chosen=move || held.get().wanted
            on_choose=move |wanted| change(kitchen, key, |lot| lot.wanted = wanted)
        />
        <div class="pair">
            <If holds=move || held.get().wanted != Wanted::Rest>
                <SettingField
                    name="lot-count"
                    label=wording("portions-how-many")
                    value=move || Count(held.get().count)
                    limits=COUNTS
                    on_set=move |count: Count| change(kitchen, key, |lot| lot.count = count.0)
                />
            </If>
            <If holds=move || held.get().wanted == Wanted::Servings>
                <SettingField
                    name="lot-each"
                    label=|| say!("portions-each", unit = show::mass_unit())
                    value=move || held.get().each
                    limits=SERVING
                    on_set=move |each| change(kitchen, key, |lot| lot.each = each)
                />
            </If>
        </div>
        <Choice
            name="lot-form"
            label=wording("portions-form")
            options=forms.to_vec()
            chosen=move || held.get().form
            on_choose=move |form| change(kitchen, key, |lot| lot.form = form)
        />
        <Choice
            name="lot-goes"
            label=wording("portions-goes")
            options=goes
            chosen=move || held.get().goes
            on_choose=move |goes| change(kitchen, key, |lot| lot.goes = goes)
        />
        <If holds=move || held.get().goes != Goes::Tonight>
            <BagWishes key=key held=held />
        </If>
        <button class="plain" on:click=remove>
            {wording("portions-remove")}
        </button>
    }
}

/// How a use is bagged.
#[component]
fn BagWishes(
    /// Which use.
    key: u32,
    /// As it is.
    held: Derived<LotDraft>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let packings = [Packing::Plain, Packing::Covered, Packing::Vacuum]
        .map(|packing| (packing, Words::from(move || words::packing(packing))));
    let set_bags = move |bags: Option<Count>| {
        change(kitchen, key, |lot| lot.bags = bags.map(|bags| bags.0));
    };
    view! {
        <div class="pair">
            <OptionalField
                name="lot-bags"
                label=wording("portions-bags")
                value=move || held.get().bags.map(Count)
                limits=COUNTS
                example=Count(3)
                on_set=set_bags
            />
            <OptionalField
                name="lot-thickness"
                label=|| say!("portions-thickness", unit = show::length_unit())
                value=move || held.get().thickness
                limits=THICKNESS
                example=USUAL_THICKNESS
                on_set=move |thickness| change(kitchen, key, |lot| lot.thickness = thickness)
            />
        </div>
        <Choice
            name="lot-packing"
            label=wording("portions-packing")
            options=packings.to_vec()
            chosen=move || held.get().packing
            on_choose=move |packing| change(kitchen, key, |lot| lot.packing = packing)
        />
        <If holds=move || held.get().packing == Packing::Vacuum>
            <p class="caution">{wording("caution-vacuum")}</p>
        </If>
    }
}
