use cook_model::piece::PieceId;
use leptos::prelude::*;

use super::Choice;
use crate::open_cook::open_cook;
use crate::show;
use crate::words::{Words, wording};

/// Which piece something was about, of all that were set out.
#[component]
pub fn WhichPiece(
    /// Names it on the page; unique there.
    name: &'static str,
    /// The piece chosen; none yet is none of them.
    piece: RwSignal<PieceId>,
) -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let option = |id: PieceId| (id, Words::from(move || show::piece(&state.read(), id)));
    let options: Vec<(PieceId, Words)> =
        state.read_untracked().history.pieces.iter().map(|one| option(one.id)).collect();
    view! {
        <Choice
            name=name
            label=wording("which-piece")
            options=options
            chosen=piece
            on_choose=move |chosen| piece.set(chosen)
        />
    }
}
