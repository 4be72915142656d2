//! The present moment, told to the screens no more often than they can show it.

use std::time::Duration;

use cook_model::quantity::Moment;
use leptos::prelude::*;

use crate::device::{clock, visibility};

const SECOND: Duration = Duration::from_secs(1);

/// The present moment as a signal. It moves once a second while a running countdown is on the
/// screen, otherwise once a minute, and not at all while the page is hidden: whoever looks again
/// finds it right, for it is read from the clock and never counted up.
#[derive(Clone, Copy)]
pub struct Ticking {
    now: RwSignal<Moment>,
    running_countdowns: RwSignal<u32>,
}

impl Ticking {
    /// Starts to tick.
    pub fn start() -> Self {
        let ticking =
            Self { now: RwSignal::new(clock::now()), running_countdowns: RwSignal::new(0) };
        let visible = RwSignal::new(visibility::is_visible());
        visibility::on_return(move || {
            visible.set(true);
            ticking.look();
        });
        visibility::on_hidden(move || visible.set(false));
        Effect::new(move |timer: Option<Option<TimeoutHandle>>| {
            if let Some(timer) = timer.flatten() {
                timer.clear();
            }
            let now = ticking.now.get();
            let each_second = ticking.running_countdowns.get() > 0;
            if !visible.get() {
                return None;
            }
            set_timeout_with_handle(move || ticking.look(), until_next(now, each_second)).ok()
        });
        ticking
    }

    /// The present moment. Reactive.
    pub fn now(self) -> Moment {
        self.now.get()
    }

    /// Looks at the clock at once.
    pub fn look(self) {
        self.now.set(clock::now());
    }

    /// Ticks every second for as long as the caller's part of the screen lives and asks for it.
    pub fn each_second_while(self, wanted: impl Fn() -> bool + Send + Sync + 'static) {
        let counted = StoredValue::new(false);
        let count = move |on: bool| {
            if counted.try_get_value().is_some_and(|was| was != on) {
                counted.set_value(on);
                self.running_countdowns.update(|count| {
                    *count = if on { *count + 1 } else { count.saturating_sub(1) };
                });
            }
        };
        Effect::new(move || count(wanted()));
        on_cleanup(move || count(false));
    }
}

/// The time to the next whole second or minute, so that a shown clock turns when it should.
fn until_next(now: Moment, each_second: bool) -> Duration {
    let step = if each_second { SECOND } else { 60 * SECOND };
    let into = now.timestamp_millis().rem_euclid(step.as_millis() as i64);
    // A few milliseconds more, lest the timer comes just before the turn.
    step - Duration::from_millis(into as u64) + Duration::from_millis(5)
}
