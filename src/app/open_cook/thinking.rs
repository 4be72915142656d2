//! A new look at the cook after each entry: its forecast and plan, made while nobody taps.

use std::time::Duration;

use cook_model::cook::Seen;
use cook_model::forecast::{Forecast, ForecastInParts};
use cook_model::history::History;
use cook_model::plan::{Plan, PlanProblem, Request, plan, plan_by};
use cook_model::quantity::Moment;
use leptos::prelude::*;

use super::OpenCook;
use crate::device::visibility;

/// Steps of a forecast in one task: a few milliseconds on a plain phone for each.
const STEPS_A_TASK: usize = 3;

impl OpenCook {
    /// Takes a new look when an entry came or another cook was opened; after the screen has shown what
    /// was tapped, for it takes longer than a tap may. Time alone changes nothing: a look is of its log.
    pub(super) fn look_after_each_entry(self) {
        Effect::new(move || {
            self.log().track();
            if !self.thinking.get_untracked() {
                self.think_anew();
            }
        });
    }

    fn think_anew(self) {
        self.thinking.set(true);
        later(move || {
            let facts = Seen::facts(&self.log().read_untracked(), self.ticking.read());
            let parts = ForecastInParts::begin(facts.state.history.clone(), facts.at);
            in_parts(parts, move |forecast| {
                later(move || self.think_of_the_raw(facts, forecast));
            });
        });
    }

    /// A plan starts from the forecast of all pieces as if they were raw, which stays the same while
    /// nothing but readings comes.
    fn think_of_the_raw(self, facts: Seen, forecast: Forecast) {
        let Some(request) = facts.state.plan_request(facts.at) else {
            return self.end_with(facts, forecast, None);
        };
        let raw = request.raw();
        let known =
            |kept: &Option<(History, Forecast)>| kept.as_ref().is_some_and(|(of, _)| *of == raw);
        if self.raw.with_value(known) {
            let planned = self.plan_for(&request).ok();
            return self.end_with(facts, forecast, planned);
        }
        let at: Moment = facts.at;
        in_parts(ForecastInParts::begin(raw.clone(), at), move |of_raw| {
            self.raw.set_value(Some((raw, of_raw)));
            later(move || {
                let planned = self.plan_for(&request).ok();
                self.end_with(facts, forecast, planned);
            });
        });
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

    /// Shows the look, unless entries came meanwhile or another cook was opened: then it takes another.
    fn end_with(self, facts: Seen, forecast: Forecast, planned: Option<Plan>) {
        let still = facts.state == Seen::facts(&self.log().read_untracked(), facts.at).state;
        if !still {
            return self.think_anew();
        }
        self.thinking.set(false);
        self.seen.set(facts.with(forecast, planned));
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
