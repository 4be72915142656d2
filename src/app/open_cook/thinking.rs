//! The forecast and the plan, made anew while nobody taps.

use std::time::Duration;

use cook_model::cook::CookState;
use cook_model::forecast::{Forecast, ForecastInParts};
use cook_model::history::History;
use cook_model::plan::{Plan, PlanProblem, Request, plan, plan_by};
use cook_model::quantity::Moment;
use leptos::prelude::*;

use super::OpenCook;
use crate::derived::Derived;
use crate::device::{clock, visibility};

/// Steps of a forecast in one task: a few milliseconds on a plain phone for each.
const STEPS_A_TASK: usize = 3;

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
            in_parts(parts, move |forecast| {
                self.forecast.set(forecast);
                later(move || self.think_of_the_raw(state, now));
            });
        });
    }

    /// A plan starts from the forecast of all pieces as if they were raw, which stays the same while
    /// nothing but readings comes.
    fn think_of_the_raw(self, state: CookState, now: Moment) {
        let Some(request) = state.plan_request(now) else {
            return self.end_with(&state, None);
        };
        let raw = request.raw();
        let known =
            |kept: &Option<(History, Forecast)>| kept.as_ref().is_some_and(|(of, _)| *of == raw);
        if self.raw.with_value(known) {
            return self.think_of_the_plan(&state, &request);
        }
        in_parts(ForecastInParts::begin(raw.clone(), now), move |forecast| {
            self.raw.set_value(Some((raw, forecast)));
            later(move || self.think_of_the_plan(&state, &request));
        });
    }

    fn think_of_the_plan(self, state: &CookState, request: &Request) {
        self.end_with(state, self.plan_for(request).ok());
    }

    /// The plan for a request; quick where its pieces are those that the cook's own plan started from.
    ///
    /// # Errors
    /// As for [`plan`].
    pub fn plan_for(self, request: &Request) -> Result<Plan, PlanProblem> {
        let raw = request.raw();
        self.raw.with_value(|kept| match kept {
            Some((of, forecast)) if *of == raw => plan_by(request, forecast),
            _ => plan(request),
        })
    }

    fn end_with(self, state: &CookState, planned: Option<Plan>) {
        self.plan.set(planned);
        self.thinking.set(false);
        // An entry that came meanwhile waits for its own forecast.
        if *self.folded.read_untracked() != *state {
            self.think_anew();
        }
    }
}

/// Makes a forecast a few steps at a time, each time in another task, so that a tap that came
/// meanwhile is answered between them; while nobody sees the page all at once, for a browser makes its
/// tasks wait then.
fn in_parts(mut parts: ForecastInParts, then: impl FnOnce(Forecast) + 'static) {
    if visibility::is_visible() && (0..STEPS_A_TASK).all(|_| parts.go_on()) {
        later(move || in_parts(parts, then));
    } else {
        later(move || then(parts.finish()));
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
