//! The form that adds pieces.

use cook_model::cook::What;
use cook_model::piece::{Piece, PieceId};
use cook_model::quantity::Temperature;
use leptos::prelude::*;

use super::form::{Form, Typing, Weighed};
use super::kind::PieceKind;
use crate::open_cook::{OpenCook, open_cook};
use crate::parts::{Choice, Field, If, keep_in_sight};
use crate::typed::{PackWeight, Typed};
use crate::words::wording;
use crate::{say, show};

/// The form for one more piece, or several.
#[component]
pub fn AddPieces(
    /// The temperature at which they go on.
    start: RwSignal<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let form = Form::new();
    let add = move || {
        let Some(sizes) = form.sizes() else { return };
        let facts = |(weight, thickest)| Piece {
            weight,
            thickest,
            shape: form.shape.get_untracked(),
            start: start.get_untracked(),
            icy: form.icy.get_untracked(),
        };
        cook.record_all(set_out(cook, sizes.into_iter().map(facts)));
        form.clear();
    };
    let weight_label = move || match form.weighed.get() {
        Weighed::Each => say!("set-out-weight", unit = show::mass_unit()),
        Weighed::Pack => {
            say!("set-out-pack", count = form.pieces(), unit = PackWeight::unit())
        }
    };
    view! {
        <form
            class="card add"
            novalidate
            on:submit=move |event| {
                event.prevent_default();
                add();
            }
        >
            <h2>{wording("set-out-add-title")}</h2>
            <HowMany form=form />
            <Choice
                name="weighed"
                label=wording("set-out-weighed")
                options=vec![
                    (Weighed::Each, wording("set-out-each")),
                    (Weighed::Pack, wording("set-out-whole-pack")),
                ]
                chosen=form.weighed
                on_choose=move |chosen| form.weighed.set(chosen)
                quiet=true
            />
            <div class="pair">
                <Field
                    name="weight"
                    label=weight_label
                    text=form.weight.text
                    bad=form.weight.bad
                />
                <Field
                    name="thickest"
                    label=|| say!("set-out-thickest", unit = show::length_unit())
                    text=form.thickest.text
                    bad=form.thickest.bad
                />
            </div>
            <p class="hint">{wording("set-out-thickest-hint")}</p>
            <If holds=move || form.is_of_several()>
                <div class="pair">
                    <Field
                        name="smaller"
                        label=wording("set-out-smaller")
                        text=form.smaller.text
                        bad=form.smaller.bad
                    />
                    <Field
                        name="larger"
                        label=wording("set-out-larger")
                        text=form.larger.text
                        bad=form.larger.bad
                    />
                </div>
                <p class="hint">{wording("set-out-sizes-hint")}</p>
            </If>
            <PieceKind names=["shape", "middle"] shape=form.shape icy=form.icy />
            <button type="submit" class="second-action add-action">
                {move || say!("set-out-add", count = form.pieces())}
            </button>
        </form>
    }
}

/// How many: typed, or by ones.
#[component]
fn HowMany(form: Form) -> impl IntoView {
    let Typing { text, bad } = form.count;
    let part = NodeRef::new();
    keep_in_sight(part, bad);
    view! {
        <div class="field" node_ref=part>
            <label for="count">{wording("set-out-count")}</label>
            <div class="stepper">
                <button
                    type="button"
                    aria-label=wording("set-out-count-less")
                    on:click=move |_| form.step(-1)
                >
                    "−"
                </button>
                <input
                    id="count"
                    type="text"
                    inputmode="numeric"
                    autocomplete="off"
                    enterkeyhint="next"
                    aria-describedby="count-bad"
                    aria-invalid=move || bad.read().is_some().to_string()
                    prop:value=move || text.get()
                    on:focus=move |event| {
                        // What is typed takes the place of what stands there.
                        event_target::<web_sys::HtmlInputElement>(&event).select();
                    }
                    on:input=move |event| {
                        text.set(event_target_value(&event));
                        bad.set(None);
                    }
                />
                <button
                    type="button"
                    aria-label=wording("set-out-count-more")
                    on:click=move |_| form.step(1)
                >
                    "+"
                </button>
            </div>
            <p class="bad" id="count-bad" role="alert">
                {move || bad.get()}
            </p>
        </div>
    }
}

/// Entries that set these pieces out, numbered after those there ever were.
fn set_out(cook: OpenCook, all: impl Iterator<Item = Piece>) -> Vec<What> {
    // What is still being stored counts too.
    let log = cook.journal().with_told();
    let last = log
        .entries()
        .iter()
        .filter_map(|entry| match entry.what {
            What::PieceSetOut { piece, .. } => Some(piece.0),
            _ => None,
        })
        .max()
        .unwrap_or(0);
    (last + 1..)
        .zip(all)
        .map(|(next, facts)| What::PieceSetOut { piece: PieceId(next), facts, name: String::new() })
        .collect()
}
