//! Answers that take the heat model longer than a tap may.

use std::time::Duration;

use cook_model::cook::CookState;
use cook_model::quantity::Moment;
use leptos::prelude::*;

use crate::open_cook::open_cook;

/// An answer worked out after the screen has shown the last tap, and anew with each forecast, for
/// as long as the caller's part of the screen lives and wants it.
pub fn thought_out<T>(
    wanted: impl Fn() -> bool + Send + Sync + 'static,
    work: impl Fn(&CookState, Moment) -> Option<T> + Copy + Send + Sync + 'static,
) -> ReadSignal<Option<T>>
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    let cook = open_cook();
    let answer = RwSignal::new(None);
    let think = move || {
        let state = cook.state().read_untracked();
        let at = cook.seen().read_untracked().at;
        let found = work(&state, at);
        // The part of the screen may be gone by now.
        if answer.try_with_untracked(|held| *held != found).unwrap_or(false) {
            answer.try_set(found);
        }
    };
    Effect::new(move || {
        cook.seen().track();
        if wanted() {
            set_timeout(think, Duration::ZERO);
        } else {
            answer.set(None);
        }
    });
    answer.read_only()
}
