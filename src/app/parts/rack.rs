use cook_model::cook::Stage;
use cook_model::cook::duties::Duty;
use cook_model::cook::rack::ACROSS;
use cook_model::piece::PieceId;
use leptos::prelude::*;

use super::{Each, stage_name};
use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::words::wording;
use crate::{say, show};

/// The rack from above, the front at the bottom edge nearest the cook: each piece's number at its place,
/// those in hand marked. A tap on a place opens its piece, unless it is there only to be looked at.
#[component]
pub fn Rack(
    /// The pieces in hand.
    in_hand: Derived<Vec<PieceId>>,
    /// Whether it is only looked at, and so may be small.
    #[prop(optional)]
    drawn: bool,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let order = Derived::new(move || cook.state().read().rack_order());
    let stage = move |piece| {
        cook.state().read().piece(piece).map_or(Stage::Raw, |(standing, _)| standing.stage)
    };
    view! {
        <ol
            class="lying"
            class:drawn=drawn
            aria-label=wording("lying")
            style:grid-template-columns=move || {
                let most = if drawn { 2 * ACROSS } else { ACROSS };
                let across = order.read().len().clamp(1, most);
                format!("repeat({across}, minmax(0, 1fr))")
            }
        >
            <Each each=move || order.get() key=|id| *id let:id>
                <li
                    class=move || stage_name(stage(id))
                    aria-current=move || in_hand.read().contains(&id).then_some("true")
                >
                    {if drawn {
                        view! { <span>{id.0}</span> }.into_any()
                    } else {
                        view! {
                            <button
                                aria-label=move || {
                                    say!("lying-place", piece = show::piece(&cook.state().read(), id))
                                }
                                on:click=move |_| navigation.go(Screen::Piece(id))
                            >
                                {id.0}
                            </button>
                        }
                            .into_any()
                    }}
                </li>
            </Each>
        </ol>
    }
}

/// The pieces of the duty on the card.
pub fn in_hand() -> Derived<Vec<PieceId>> {
    let cook = open_cook();
    Derived::new(move || cook.duty().map(|duty: Duty| duty.pieces).unwrap_or_default())
}
