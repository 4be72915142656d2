use cook_model::cook::What;
use cook_model::forecast::Surprise;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::{OpenCook, open_cook};
use crate::words::wording;
use crate::{say, show};

/// The latest reading that does not fit what is otherwise known, until the cook has said that it is
/// right or typed it again.
pub fn open_question(cook: OpenCook) -> Derived<Option<Surprise>> {
    Derived::new(move || {
        let (state, forecast) = (cook.state().read(), cook.forecast().read());
        let vouched = |surprise: &Surprise| {
            let piece = state.history.piece(surprise.piece);
            piece
                .into_iter()
                .flat_map(|piece| &piece.readings)
                .any(|reading| reading.entry == surprise.entry && reading.vouched)
        };
        forecast.surprises.iter().rfind(|surprise| !vouched(surprise)).copied()
    })
}

/// Asks about such a reading: it is kept, or typed again, with one tap.
#[component]
pub fn Question(
    /// What it is about.
    surprise: Surprise,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let reading = surprise.entry;
    let typed = move || show::reading(surprise.read);
    view! {
        <section class="question" aria-labelledby="question">
            <h2 id="question">
                {move || {
                    say!(
                        "ask-reading",
                        piece = show::piece(&cook.state().read(), surprise.piece),
                        typed = typed(),
                        expected = show::temperature(surprise.expected.middle)
                    )
                }}
            </h2>
            <div class="pair">
                <button on:click=move |_| cook.record(What::ReadingVouched { reading })>
                    {move || say!("ask-keep", typed = typed())}
                </button>
                <button on:click=move |_| {
                    cook.record(What::Undone { entry: reading });
                    navigation.go(Screen::Piece(surprise.piece));
                }>{wording("ask-mend")}</button>
            </div>
        </section>
    }
}
