//! The forecast and the plan, made anew while nobody taps.

use std::time::Duration;

use cook_model::cook::CookState;
use cook_model::forecast::{Forecast, ForecastInParts};
use cook_model::plan::plan;
use cook_model::quantity::Moment;
use leptos::prelude::*;

use super::OpenCook;
use crate::derived::Derived;
use crate::device::{clock, visibility};

/// Pieces whose heat is followed in one task: a few milliseconds on a plain phone for each.
const PIECES_A_TASK: usize = 5;

impl OpenCook {
    /// Makes a new forecast when an entry came and when a minute has gone; after the screen has
    /// shown what was tapped, for it takes longer than a tap may.
    pub(super) fn keep_forecast_fresh(self) {
        let minute = Derived::new(move || self.now().timestamp().div_euclid(60));
        Effect::new(move || {
            minute.track();
            self.folded.track();
            if self.thinking.get_untracked() {
                return;
            }
            self.think_anew();
        });
    }

    fn think_anew(self) {
        self.thinking.set(true);
        later(move || {
            let now = self.ticking.read();
            let state = self.folded.get_untracked();
            let parts = ForecastInParts::begin(state.history.clone(), now);
            self.think_of_the_pieces(state, now, parts);
        });
    }

    /// A few pieces at a time, each time in another task, so that a tap that came meanwhile is answered
    /// between them; while nobody sees the page all at once, for a browser makes its tasks wait then.
    fn think_of_the_pieces(self, state: CookState, now: Moment, mut parts: ForecastInParts) {
        if visibility::is_visible() && (0..PIECES_A_TASK).all(|_| parts.go_on()) {
            later(move || self.think_of_the_pieces(state, now, parts));
            return;
        }
        later(move || {
            self.forecast.set(parts.finish());
            later(move || self.think_of_the_plan(&state, now));
        });
    }

    fn think_of_the_plan(self, state: &CookState, now: Moment) {
        let planned = state.plan_request(now).and_then(|request| plan(&request).ok());
        self.plan.set(planned);
        self.thinking.set(false);
        // An entry that came meanwhile waits for its own forecast.
        if *self.folded.read_untracked() != *state {
            self.think_anew();
        }
    }
}

fn later(task: impl FnOnce() + 'static) {
    set_timeout(task, Duration::ZERO);
}

/// The forecast of a cook of which nothing is known.
pub(super) fn nothing_forecast() -> Forecast {
    Forecast {
        at: clock::now(),
        pieces: Vec::new(),
        order: Vec::new(),
        order_certainty: Vec::new(),
        checks: Vec::new(),
        surprises: Vec::new(),
    }
}
