use cook_model::cook::What;
use cook_model::forecast::Surprise;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::words::wording;
use crate::{say, show};

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
    let keep = move |_| {
        if let Some(Surprise { entry, .. }) = surprise.get_untracked() {
            cook.record(What::ReadingVouched { reading: entry });
        }
    };
    let mend = move |_| {
        if let Some(Surprise { entry, piece, .. }) = surprise.get_untracked() {
            cook.record(What::Undone { entry });
            // In a round the pad comes back to the piece by itself.
            if navigation.screen_now() != Screen::Round {
                navigation.go(Screen::Piece(piece));
            }
        }
    };
    view! {
        <section class="question" aria-labelledby="question">
            <h2 id="question">{move || asked()}</h2>
            <div class="pair">
                <button on:click=keep>
                    {move || typed().map(|typed| say!("ask-keep", typed = typed))}
                </button>
                <button on:click=mend>{wording("ask-mend")}</button>
            </div>
        </section>
    }
}
