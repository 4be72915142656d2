use cook_model::history::EntryId;
use cook_model::kitchen::cooked_weight::Weighing;
use cook_model::kitchen::log::{KitchenEntry, KitchenWhat};
use cook_model::piece::PieceId;
use cook_model::quantity::{Mass, Span, Temperature};
use leptos::prelude::*;

use super::portions::Today;
use crate::derived::Derived;
use crate::device::clock;
use crate::kitchen::{Count, LotDraft, open_kitchen, to_come, words};
use crate::open_cook::open_cook;
use crate::parts::{Field, If, OptionalField};
use crate::typed::quantity;
use crate::words::wording;
use crate::{say, show};

/// What all pieces of a day can weigh together.
const TOGETHER: core::ops::RangeInclusive<Mass> = Mass::from_g(50.0)..=Mass::from_kg(20.0);
/// What one cooked piece can weigh.
const ONE: core::ops::RangeInclusive<Mass> = Mass::from_g(30.0)..=Mass::from_g(1000.0);
const USUAL: Mass = Mass::from_g(180.0);
const COUNTS: core::ops::RangeInclusive<Count> = Count(1)..=Count(40);
/// Hours since it came off the heat: what keeps four days is not kept for longer.
const HOURS: core::ops::RangeInclusive<Count> = Count(0)..=Count(96);

/// What there is to share out: estimated, or weighed; and pieces of no cook here.
#[component]
pub fn Pieces(
    /// The day.
    today: Today,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let draft = kitchen.draft();
    let summary = move || {
        let day = today.day.read();
        let count = day.pieces.len();
        match (count, day.estimate) {
            (0, _) => say!("portions-none"),
            (_, Some(estimate)) if estimate.spread > Mass::ZERO => say!(
                "portions-estimate",
                count = count,
                weight = show::mass(day.weight()),
                spread = show::mass(estimate.spread)
            ),
            _ => say!("portions-weighed", count = count, weight = show::mass(day.weight())),
        }
    };
    let cook = open_cook();
    let unproved = move || {
        let unproved = today.day.get().unproved;
        (!unproved.is_empty()).then(|| {
            let pieces = show::pieces(&cook.state().read(), &unproved);
            view! {
                <p class="caution" role="alert">
                    {say!("pack-unproved", pieces = pieces)}
                </p>
            }
        })
    };
    let weighed = move |typed: Option<Mass>| {
        draft.update(|draft| draft.weighed = typed);
        let new = typed.and_then(|cooked| weighing(today, cooked));
        let before = weighed_before(today, kitchen.log().read_untracked().entries());
        let undone = before.map(|entry| KitchenWhat::Undone { entry });
        let kept = new.map(|weighing| KitchenWhat::Weighed { weighing });
        kitchen.record(undone.into_iter().chain(kept).collect());
    };
    view! {
        <p class="lead">{move || summary()}</p>
        {move || unproved()}
        <ToCome today=today />
        <If holds=move || !today.day.read().pieces.is_empty()>
            <OptionalField
                name="weighed"
                label=|| say!("portions-weigh", unit = show::mass_unit())
                value=move || draft.read().weighed
                limits=TOGETHER
                example=USUAL
                on_set=weighed
                hint=wording("portions-weigh-hint")
            />
        </If>
        <AddCooked />
    }
}

/// What is still raw, on or unproved, and how far all of it goes: tonight's servings, and the rest.
#[component]
fn ToCome(
    /// The day.
    today: Today,
) -> impl IntoView {
    let (cook, kitchen) = (open_cook(), open_kitchen());
    let coming = Derived::new(move || {
        let own = kitchen.state().read().own_loss;
        to_come(&cook.state().read(), own)
    });
    let told = move || {
        let (count, cooked) = coming.get()?;
        let (weight, spread) = (show::mass(cooked.mean), show::mass(cooked.spread));
        Some(say!("portions-to-come", count = count, weight = weight, spread = spread))
    };
    let tonight = move || {
        let (_, cooked) = coming.get()?;
        let all = cooked.mean + today.day.read().weight();
        let wanted: Mass = kitchen.draft().read().lots.iter().map(LotDraft::tonight).sum();
        if wanted == Mass::ZERO {
            return None;
        }
        let tonight = show::mass(wanted);
        Some(if wanted > all {
            say!("portions-tonight-short", tonight = tonight, short = show::mass(wanted - all))
        } else {
            say!("portions-tonight-left", tonight = tonight, left = show::mass(all - wanted))
        })
    };
    let weighings = move || {
        let count = kitchen.state().read().weighings;
        (count > 0).then(|| say!("portions-weighings", count = count))
    };
    view! {
        <If holds=move || coming.read().is_some()>
            <p>{move || told()} " " {move || tonight()}</p>
        </If>
        <p class="hint">{move || weighings()}</p>
    }
}

/// The weighing, where every piece on the scale was weighed raw too.
fn weighing(today: Today, cooked: Mass) -> Option<Weighing> {
    let day = today.day.get_untracked();
    if day.of_the_cook().count() != day.pieces.len() {
        return None;
    }
    Some(Weighing {
        pieces: u16::try_from(day.pieces.len()).ok()?,
        raw: day.pieces.iter().map(|piece| piece.facts.weight).sum(),
        cooked,
        end: day.pieces.iter().map(|piece| piece.end).reduce(Temperature::max)?,
    })
}

/// What was weighed of the same pieces before: one cook counts once.
fn weighed_before(today: Today, entries: &[KitchenEntry]) -> Option<EntryId> {
    let day = today.day.get_untracked();
    let raw: Mass = day.of_the_cook().map(|piece| piece.facts.weight).sum();
    let of_these = |what: &KitchenWhat| match what {
        KitchenWhat::Weighed { weighing } => weighing.raw == raw,
        _ => false,
    };
    entries.iter().rfind(|entry| of_these(&entry.what)).map(|entry| entry.id)
}

/// Cooked pieces that no cook here knows of, by weight.
#[component]
fn AddCooked() -> impl IntoView {
    let draft = open_kitchen().draft();
    let open = RwSignal::new(false);
    let (count, weight) = (RwSignal::new("1".to_owned()), RwSignal::new(String::new()));
    let (bad_count, bad_weight) = (RwSignal::new(None), RwSignal::new(None));
    let (hours, bad_hours) = (RwSignal::new(String::new()), RwSignal::new(None));
    let add = move |_| {
        let number = quantity(&count.get_untracked(), &COUNTS, Count(1));
        let each = quantity(&weight.get_untracked(), &ONE, USUAL);
        let since = quantity(&hours.get_untracked(), &HOURS, Count(20));
        match (number, each, since) {
            (Ok(number), Ok(each), Ok(since)) => draft.update(|draft| {
                let off = clock::now() - Span::hours(since.0.into());
                draft.typed_off = Some(draft.typed_off.map_or(off, |known| known.min(off)));
                draft.typed.extend((0..number.0).map(|_| each));
            }),
            (number, each, since) => {
                bad_count.set(number.err());
                bad_weight.set(each.err());
                bad_hours.set(since.err());
            }
        }
    };
    view! {
        <If
            holds=move || open.get()
            otherwise=move || {
                view! {
                    <button class="second-action" on:click=move |_| open.set(true)>
                        {wording("portions-type-pieces")}
                    </button>
                }
            }
        >
            <div class="card">
                <div class="pair">
                    <Field
                        name="cooked-count"
                        label=wording("portions-how-many")
                        text=count
                        bad=bad_count
                    />
                    <Field
                        name="cooked-weight"
                        label=|| say!("portions-cooked-each", unit = show::mass_unit())
                        text=weight
                        bad=bad_weight
                    />
                </div>
                <Field
                    name="cooked-hours"
                    label=wording("portions-cooked-hours")
                    text=hours
                    bad=bad_hours
                    hint=wording("portions-cooked-hours-hint")
                />
                <button on:click=add>{wording("portions-add-cooked")}</button>
                <If holds=move || !draft.read().typed.is_empty()>
                    <button
                        class="plain"
                        on:click=move |_| {
                            draft.update(|draft| {
                                draft.typed.clear();
                                draft.typed_off = None;
                            });
                        }
                    >
                        {wording("portions-clear-typed")}
                    </button>
                </If>
            </div>
        </If>
    }
}

/// One piece; a tap moves it to the next use, and the words say to which.
#[component]
pub fn PieceButton(
    /// Which piece.
    piece: PieceId,
    /// The use that has it; none where no use does.
    from: Option<u32>,
    /// The day.
    today: Today,
) -> impl IntoView {
    let draft = open_kitchen().draft();
    let next = move || {
        let draft = draft.read();
        let place = draft.lots.iter().position(|lot| Some(lot.key) == from);
        let next = place.map_or(0, |place| (place + 1) % draft.lots.len().max(1));
        draft.lots.get(next).map(|lot| (lot.key, lot.name.clone()))
    };
    let weight = move || {
        let weight = today.day.read().piece(piece).map(|known| known.cooked);
        weight.map(show::mass).unwrap_or_default()
    };
    let moves = move || {
        let to = next().map(|(_, name)| name).unwrap_or_default();
        say!("portions-move", to = to)
    };
    let tap = move |_| {
        let Some((key, _)) = untrack(next) else { return };
        draft.update(|draft| {
            draft.chosen.retain(|(chosen, _)| *chosen != piece);
            draft.chosen.push((piece, key));
        });
    };
    let fixed = move || draft.read().chosen.iter().any(|(chosen, _)| *chosen == piece);
    view! {
        <button class="piece-button" class:fixed=fixed on:click=tap>
            <span class="name">{move || words::piece(piece)}</span>
            " "
            <span class="weight">{move || weight()}</span>
            " "
            <If holds=fixed>
                <span class="note">{wording("portions-fixed")}</span>
                " "
            </If>
            <span class="unseen">{move || moves()}</span>
        </button>
    }
}
