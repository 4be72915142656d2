//! Answers that take the heat model longer than a tap may, for a part of the screen.

use std::time::Duration;

use cook_model::cook::thinking::{Answer, Question};
use leptos::prelude::*;

use crate::open_cook::open_cook;

/// The answer to a question, asked after the screen has shown the last tap, and anew with each look at
/// the cook, for as long as the caller's part of the screen lives and there is a question. Reactive.
pub fn thought_out(
    question: impl Fn() -> Option<Question> + Send + Sync + 'static,
) -> ReadSignal<Option<Answer>> {
    let cook = open_cook();
    let asking = cook.asking();
    let by = asking.new_asker();
    let answer = RwSignal::new(None);
    let hear = move |found: Answer| {
        if answer.try_with_untracked(|held| held.as_ref() != Some(&found)).unwrap_or(false) {
            answer.set(Some(found));
        }
    };
    let ask = move |question| {
        let log = cook.log().read_untracked();
        asking.ask(by, (&log, cook.now_untracked()), question, hear);
    };
    Effect::new(move || {
        let known = cook.seen().with(|seen| seen.forecast.is_some());
        asking.forget(by);
        match question().filter(|_| known) {
            Some(question) => set_timeout(move || ask(question), Duration::ZERO),
            None if answer.with_untracked(Option::is_some) => answer.set(None),
            None => {}
        }
    });
    on_cleanup(move || asking.forget(by));
    answer.read_only()
}
