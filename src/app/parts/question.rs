//! Asks about a reading that does not fit, and takes the answer with one tap.

use cook_model::cook::What;
use cook_model::cook::mend::{Mending, mend};
use cook_model::forecast::Surprise;
use cook_model::piece::PieceId;
use leptos::prelude::*;

use super::{If, WhichPiece};
use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::words::wording;
use crate::{say, show, tap_words};

/// Asks about a reading that does not fit: it is kept, or typed again, with one tap.
#[component]
pub fn Question() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let surprise = Derived::new(move || {
        let seen = cook.seen().read();
        seen.state.question(seen.forecast.as_ref()?)
    });
    let typed = move || surprise.get().map(|surprise| show::reading(surprise.read));
    let asked = move || {
        let surprise = surprise.get()?;
        Some(say!(
            "ask-reading",
            piece = show::piece(&cook.state().read(), surprise.piece),
            typed = show::reading(surprise.read),
            expected = show::temperature(surprise.expected.middle)
        ))
    };
    let bad = RwSignal::new(None::<String>);
    let keep = move |_| {
        if let Some(Surprise { entry, .. }) = surprise.get_untracked() {
            cook.record(What::ReadingVouched { reading: entry });
        }
    };
    let again = move |_| {
        if let Some(Surprise { entry, piece, .. }) = surprise.get_untracked() {
            cook.record(What::Undone { entry });
            // In a round the pad comes back to the piece by itself.
            if navigation.screen_now() != Screen::Round {
                navigation.go(Screen::Piece(piece));
            }
        }
    };
    let has_others = move || cook.state().read().pieces.len() > 1;
    let others = RwSignal::new(false);
    let other = RwSignal::new(None);
    // A tap on a piece says it all: the reading moves there.
    let move_to = move |piece: PieceId| {
        let Some(Surprise { entry, .. }) = surprise.get_untracked() else { return };
        let change = Mending { piece: Some(piece), ..Mending::default() };
        match mend(&cook.log().read_untracked(), entry, &change, cook.moment()) {
            Ok(mended) => {
                cook.record_at(mended.happened);
                // The next question is about another reading.
                others.set(false);
                other.set(None);
                bad.set(None);
            }
            Err(why) => bad.set(Some(say!("mend-refused", why = tap_words::problem(why)))),
        }
    };
    view! {
        <section class="question" aria-labelledby="question">
            <h2 id="question">{move || asked()}</h2>
            <div class="pair three">
                <button on:click=keep>
                    {move || typed().map(|typed| say!("ask-keep", typed = typed))}
                </button>
                <button on:click=again>{wording("ask-mend")}</button>
                <If holds=move || has_others()>
                    <button
                        aria-expanded=move || others.get().to_string()
                        on:click=move |_| others.update(|open| *open = !*open)
                    >
                        {wording("ask-other")}
                    </button>
                </If>
            </div>
            <If holds=move || others.get()>
                <WhichPiece name="ask-piece" piece=other on_choose=move_to />
                <p class="bad" role="alert">
                    {move || bad.get()}
                </p>
            </If>
        </section>
    }
}
