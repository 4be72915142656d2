//! A new look at the cook after each entry: its forecast and plan are asked for, while a tap is answered.

use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;

use cook_model::cook::Seen;
use cook_model::cook::thinking::{Answer, Question};
use cook_model::quantity::Moment;
use leptos::prelude::*;

use super::OpenCook;
use crate::asking::Asker;

/// A look that takes no longer than this comes before anybody wonders where the next step is.
const SLOW: Duration = Duration::from_millis(300);
/// A page that was not painted for so long is not seen; several times what a slow phone needs.
const NOT_PAINTED: Duration = Duration::from_millis(300);

impl OpenCook {
    /// Takes a new look when an entry came or another cook was opened; after the screen has shown what
    /// was tapped, for it takes longer than a tap may. Time alone changes nothing: a look is of its log.
    pub(super) fn look_after_each_entry(self) {
        Effect::new(move || {
            self.log().track();
            // What is under way is of another log.
            self.asking.forget(Asker::LOOK);
            self.thinking.set(true);
            once_painted(move || self.look());
            let version = self.log().read_untracked().entries().len();
            set_timeout(move || self.say_if_slow(version), SLOW);
        });
    }

    /// Says that the look at the log of this version takes long, if it does.
    fn say_if_slow(self, version: usize) {
        let is_of = self.log().read_untracked().entries().len() == version;
        if is_of && self.thinking.get_untracked() {
            self.slow.set(true);
        }
    }

    fn look(self) {
        let now = self.ticking.read();
        let log = self.log().read_untracked();
        let then = move |answer| self.end_with(now, answer);
        self.asking.ask(Asker::LOOK, (&log, now), Question::Look, then);
    }

    /// Shows the look, of the log as it is: for another the question would have been taken back.
    fn end_with(self, now: Moment, answer: Answer) {
        let Answer::Look { forecast, plan } = answer else { return };
        let facts = Seen::facts(&self.log().read_untracked(), now);
        self.thinking.set(false);
        self.slow.set(false);
        self.seen.set(facts.with(forecast, plan));
    }
}

/// Runs this once the browser has shown what was drawn; a page that nobody sees draws nothing.
fn once_painted(task: impl FnOnce() + 'static) {
    let task = Cell::new(Some(task));
    let task = Rc::new(move || task.take().into_iter().for_each(|task| task()));
    let unseen = Rc::clone(&task);
    request_animation_frame(move || set_timeout(move || task(), Duration::ZERO));
    set_timeout(move || unseen(), NOT_PAINTED);
}
