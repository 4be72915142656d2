//! Mending what was told wrongly, and telling what was forgotten.

use cook_model::cook::mend::{Mended, Mending as Change, mend, tell_late};
use cook_model::cook::{Entry, Problem, Stage, What};
use cook_model::quantity::Temperature;
use leptos::prelude::*;

use super::{Choice, Field, If, When, WhichPiece};
use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::typed::{Typed, quantity};
use crate::words::wording;
use crate::{say, show, tap_words};

/// Corrects an entry: its temperature, its time, its piece, as far as it has them.
#[component]
pub fn Mending(
    /// The entry.
    entry: Entry,
    /// Called when it is done, or left as it was.
    #[prop(into)]
    on_end: Callback<()>,
) -> impl IntoView {
    let cook = open_cook();
    let id = entry.id;
    let temperature = entry.what.temperature();
    let held = temperature.as_ref().map(|(held, _)| held.in_field()).unwrap_or_default();
    let text = RwSignal::new(held.clone());
    let (bad_text, bad_time) = (RwSignal::new(None), RwSignal::new(None));
    let at = RwSignal::new(entry.happened);
    let piece = RwSignal::new(entry.what.piece());
    let other_piece = entry.what.can_change_piece();
    let has_temperature = temperature.is_some();
    // What was not touched is not to be rounded to what the field shows.
    let typed = move || -> Result<Option<Temperature>, String> {
        match &temperature {
            Some((usual, limits)) if text.get() != held => {
                quantity(&text.get(), limits, *usual).map(Some)
            }
            _ => Ok(None),
        }
    };
    let change = Derived::new(move || {
        let piece = piece.get().filter(|_| other_piece);
        Ok::<_, String>(Change { temperature: typed()?, at: Some(at.get()), piece })
    });
    let mended = move || -> Result<Mended, Refused> {
        let change = change.get().map_err(Refused::Typed)?;
        mend(&cook.log().read(), id, &change, cook.moment()).map_err(Refused::Senseless)
    };
    view! {
        <Form on_end=on_end mended=Derived::new(mended) bad_text=bad_text bad_time=bad_time>
            <If holds=move || has_temperature>
                <Field
                    name="mend-value"
                    label=|| say!("mend-value", unit = show::temperature_unit())
                    text=text
                    bad=bad_text
                />
            </If>
            <If holds=move || other_piece>
                <WhichPiece name="mend-piece" piece=piece />
            </If>
            <When name="mend-time" at=at bad=bad_time />
        </Form>
    }
}

/// What can be forgotten.
#[derive(Clone, Copy, PartialEq)]
enum Forgotten {
    PutOn,
    Pulled,
}

/// Tells of a piece put on or pulled that was forgotten.
#[component]
pub fn TellLate(
    /// Called when it is told, or not.
    #[prop(into)]
    on_end: Callback<()>,
) -> impl IntoView {
    let cook = open_cook();
    let kind = RwSignal::new(Forgotten::PutOn);
    let (bad_text, bad_time) = (RwSignal::new(None), RwSignal::new(None));
    let at = RwSignal::new(cook.moment());
    let state = cook.state().read_untracked();
    // The first raw one is the likeliest.
    let raw = state.at_stage(Stage::Raw).first().copied();
    let first = raw.or_else(|| state.history.pieces.first().map(|piece| piece.id));
    let piece = RwSignal::new(first);
    let what = move |piece| match kind.get() {
        Forgotten::PutOn => What::PutOn { piece },
        Forgotten::Pulled => What::Pulled { piece },
    };
    let told = move || {
        let piece = piece.get().ok_or(Refused::Senseless(Problem::UnknownPiece))?;
        tell_late(&cook.log().read(), at.get(), what(piece), cook.moment())
            .map_err(Refused::Senseless)
    };
    view! {
        <Form on_end=on_end mended=Derived::new(told) bad_text=bad_text bad_time=bad_time>
            <Choice
                name="forgotten"
                label=wording("forgotten-what")
                options=vec![
                    (Forgotten::PutOn, wording("forgotten-put-on")),
                    (Forgotten::Pulled, wording("forgotten-pulled")),
                ]
                chosen=kind
                on_choose=move |chosen| kind.set(chosen)
            />
            <WhichPiece name="forgotten-piece" piece=piece />
            <When name="forgotten-time" at=at bad=bad_time />
        </Form>
    }
}

/// Why it cannot be so.
#[derive(Clone, PartialEq)]
enum Refused {
    Typed(String),
    Senseless(Problem),
}

/// The fields with what comes of them, and the two ways out.
#[component]
fn Form(
    mended: Derived<Result<Mended, Refused>>,
    bad_text: RwSignal<Option<String>>,
    bad_time: RwSignal<Option<String>>,
    on_end: Callback<()>,
    children: Children,
) -> impl IntoView {
    let cook = open_cook();
    let lost = move || {
        let lost = mended.get().map_or(0, |mended| mended.lost.len());
        (lost > 0).then(|| say!("mend-lost", count = lost))
    };
    let store = move || {
        if bad_time.read_untracked().is_some() {
            return;
        }
        match mended.get_untracked() {
            Ok(mended) => {
                cook.record_at(mended.happened);
                on_end.run(());
            }
            Err(Refused::Typed(message)) => bad_text.set(Some(message)),
            Err(Refused::Senseless(why)) => {
                bad_time.set(Some(say!("mend-refused", why = tap_words::problem(why))));
            }
        }
    };
    view! {
        <form
            class="card mending"
            novalidate
            on:submit=move |event| {
                event.prevent_default();
                store();
            }
        >
            {children()}
            <p class="note" role="status">
                {lost}
            </p>
            <div class="pair">
                <button type="button" on:click=move |_| on_end.run(())>
                    {wording("mend-leave")}
                </button>
                <button type="submit">{wording("mend-store")}</button>
            </div>
        </form>
    }
}
