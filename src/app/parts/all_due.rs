//! What is due with the pieces off the pit, for all of them at once: twenty pieces are covered with one tap,
//! not with twenty.

use cook_model::cook::duties::{Act, Duty};
use cook_model::cook::{CookState, Stage};
use cook_model::quantity::Moment;
use leptos::prelude::*;

use super::perform;
use crate::derived::Derived;
use crate::navigate::navigation;
use crate::open_cook::open_cook;
use crate::{describe, show};

/// Each thing that is due with pieces off the pit, in the card's own words, with one button for all of them.
#[component]
pub fn AllDue() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let due = Derived::new(move || {
        together(&cook.duties().read(), &cook.state().read(), cook.now())
            .into_iter()
            .map(|duty| {
                let words = describe::duty(&cook.seen().read(), &duty);
                (duty, words.what, show::capital(words.button))
            })
            .collect::<Vec<_>>()
    });
    let line = move |(duty, what, button): (Duty, String, String)| {
        view! {
            <li class="due-line">
                <p>{what}</p>
                <button on:click=move |_| perform(&duty, cook, navigation)>{button}</button>
            </li>
        }
    };
    view! {
        <ul class="all-due">
            {move || due.get().into_iter().map(line).collect_view()}
        </ul>
    }
}

/// The duties due with pieces off the pit, those that are the same act as one: pulled at different
/// times, pieces are covered together all the same.
fn together(duties: &[Duty], state: &CookState, now: Moment) -> Vec<Duty> {
    let is_off = |duty: &Duty| {
        let off = |piece| state.piece(piece).is_some_and(|(own, _)| own.stage > Stage::On);
        !duty.pieces.is_empty() && duty.pieces.iter().all(|piece| off(*piece))
    };
    let mut joined: Vec<Duty> = Vec::new();
    for duty in duties.iter().filter(|duty| duty.is_due(now) && is_off(duty)) {
        match joined.iter_mut().find(|other| other.act == duty.act && is_done_at_once(&duty.act)) {
            Some(other) => {
                let new = duty.pieces.iter().filter(|piece| !other.pieces.contains(piece));
                let new: Vec<_> = new.copied().collect();
                other.pieces.extend(new);
            }
            None => joined.push(duty.clone()),
        }
    }
    joined
}

/// Whether one tap says it of any number of pieces.
fn is_done_at_once(act: &Act) -> bool {
    matches!(act, Act::Cover | Act::Serve | Act::Pack | Act::Chill | Act::Discard)
}
