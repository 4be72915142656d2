//! A piece among those set out: what it is, and a tap to change that.

use cook_model::cook::{Stage, What};
use cook_model::piece::{Piece, PieceId};
use leptos::prelude::*;

use super::form::{Typing, read_thickest, read_weight};
use super::kind::PieceKind;
use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::parts::{Field, If, PieceShape, TextField, relative_size};
use crate::typed::Typed;
use crate::words::wording;
use crate::{say, show};

/// One piece that is set out.
#[component]
pub fn SetOutRow(
    /// Which piece.
    piece: PieceId,
    /// The one that is being changed.
    changing: RwSignal<Option<PieceId>>,
) -> impl IntoView {
    let cook = open_cook();
    let facts = Derived::new(move || {
        let facts = cook.facts().read();
        facts.piece(piece).map(|(standing, history)| (standing.stage, history.piece))
    });
    let name = move || show::piece(&cook.facts().read(), piece);
    let in_sentence = move || show::the_piece(&cook.facts().read(), piece);
    let stage = Derived::new(move || facts.get().map_or(Stage::Raw, |facts| facts.0));
    // What is off the pit is what it was.
    let may_change = move || matches!(stage.get(), Stage::Raw | Stage::On);
    view! {
        <li class="set-out-row">
            <button
                class="open"
                disabled=move || !may_change()
                aria-expanded=move || (changing.get() == Some(piece)).to_string()
                on:click=move |_| {
                    changing.update(|open| *open = (*open != Some(piece)).then_some(piece));
                }
            >
                <PieceShape size=move || relative_size(piece) level=|| 0.0 stage=stage />
                <span class="facts">
                    <span class="name">{move || name()}</span>
                    <span>{move || facts.get().map(|facts| show::facts(&facts.1))}</span>
                </span>
                <span class="unseen">{wording("set-out-change")}</span>
            </button>
            <If holds=move || stage.get() == Stage::Raw>
                <button
                    class="small"
                    aria-label=move || say!("set-out-remove", piece = in_sentence())
                    on:click=move |_| cook.record(What::PieceTakenAway { piece })
                >
                    <svg viewBox="0 0 24 24" aria-hidden="true">
                        <path d="M5 5L19 19M19 5L5 19" />
                    </svg>
                </button>
            </If>
            <If holds=move || changing.get() == Some(piece) && may_change()>
                <Changing piece=piece on_end=move |()| changing.set(None) />
            </If>
        </li>
    }
}

/// What a piece is, to be changed.
#[component]
fn Changing(
    /// Which piece.
    piece: PieceId,
    /// Called when it is done.
    #[prop(into)]
    on_end: Callback<()>,
) -> impl IntoView {
    let cook = open_cook();
    let (name, facts) = {
        let facts = cook.facts_as_tapped();
        let Some((standing, history)) = facts.piece(piece) else { return ().into_any() };
        (RwSignal::new(standing.name.clone()), history.piece)
    };
    let weight = Typing::holding(&facts.weight.in_field());
    let thickest = Typing::holding(&facts.thickest.map(Typed::in_field).unwrap_or_default());
    let shape = RwSignal::new(facts.shape);
    let icy = RwSignal::new(facts.icy);
    let keep = move || {
        let (read_weight, read_thickest) = (weight.read(read_weight), thickest.read(read_thickest));
        let (Some(read_weight), Some(read_thickest)) = (read_weight, read_thickest) else { return };
        let facts = Piece {
            // What was not touched stays as it was, to the gram.
            weight: unless_same(read_weight, facts.weight),
            thickest: match (read_thickest, facts.thickest) {
                (Some(read), Some(known)) => Some(unless_same(read, known)),
                (read, _) => read,
            },
            shape: shape.get_untracked(),
            icy: icy.get_untracked(),
            ..facts
        };
        let name = name.get_untracked().trim().to_owned();
        cook.record(What::PieceSetOut { piece, facts, name });
        on_end.run(());
    };
    view! {
        <form
            class="changing"
            novalidate
            on:submit=move |event| {
                event.prevent_default();
                keep();
            }
        >
            <TextField
                name="piece-name"
                label=wording("set-out-name")
                text=move || name.get()
                on_type=move |typed| name.set(typed)
            />
            <div class="pair">
                <Field
                    name="piece-weight"
                    label=|| say!("set-out-weight-one", unit = show::mass_unit())
                    text=weight.text
                    bad=weight.bad
                />
                <Field
                    name="piece-thickest"
                    label=|| say!("set-out-thickest", unit = show::length_unit())
                    text=thickest.text
                    bad=thickest.bad
                />
            </div>
            <PieceKind names=["piece-shape", "piece-middle"] shape=shape icy=icy />
            <button type="submit" class="second-action">
                {wording("set-out-keep")}
            </button>
        </form>
    }
    .into_any()
}

/// The known quantity if the field shows the same for both.
fn unless_same<Q: Typed>(read: Q, known: Q) -> Q {
    if read.in_field() == known.in_field() { known } else { read }
}
