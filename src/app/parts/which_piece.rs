//! The choice of a piece, of all that were set out.

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
    /// The piece chosen, if one is yet.
    piece: RwSignal<Option<PieceId>>,
    /// Called with another choice, once it stands.
    #[prop(optional, into)]
    on_choose: Option<Callback<PieceId>>,
) -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let option = |id: PieceId| (Some(id), Words::from(move || show::piece(&state.read(), id)));
    let options: Vec<(Option<PieceId>, Words)> =
        state.read_untracked().history.pieces.iter().map(|one| option(one.id)).collect();
    let choose = move |chosen: Option<PieceId>| {
        piece.set(chosen);
        if let (Some(chosen), Some(on_choose)) = (chosen, on_choose) {
            on_choose.run(chosen);
        }
    };
    view! {
        <Choice
            name=name
            label=wording("which-piece")
            options=options
            chosen=piece
            on_choose=choose
        />
    }
}
