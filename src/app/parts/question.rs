use cook_model::cook::What;
use cook_model::forecast::Surprise;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::{OpenCook, open_cook};
use crate::words::wording;
use crate::{say, show};

/// The reading to ask about, if there is one.
pub fn open_question(cook: OpenCook) -> Derived<Option<Surprise>> {
    Derived::new(move || cook.state().read().question(&cook.forecast().read()))
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
