//! The buttons beside one piece: only what the duties ask for can be told there.

use cook_model::cook::duties::{Duty, offers};
use cook_model::piece::PieceId;
use leptos::prelude::*;

use super::perform;
use crate::derived::Derived;
use crate::navigate::navigation;
use crate::open_cook::open_cook;
use crate::{describe, say, show};

/// What is to be done with one piece, each with a button: the duties' own list, and nothing else.
#[component]
pub fn Offers(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let due = Derived::new(move || offers(&cook.duties().read(), piece, cook.now()));
    let buttons = move || {
        let name = show::piece(&cook.state().read(), piece);
        let button = |duty: Duty| {
            let words = describe::offer(&duty)?;
            let label = say!("offer-of", what = words.clone(), piece = name.clone());
            Some(view! {
                <button
                    class="act"
                    aria-label=label
                    on:click=move |_| perform(&duty, cook, navigation)
                >
                    {words}
                </button>
            })
        };
        due.get().into_iter().filter_map(button).collect_view()
    };
    view! { {move || buttons()} }
}
