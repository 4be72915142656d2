//! What the app shows of a log: made once for each version of it, as the app does.

use cook_model::cook::alarms::{Alarm, alarms};
use cook_model::cook::duties::{Duty, duties};
use cook_model::cook::{Log, Seen};
use cook_model::forecast::forecast;
use cook_model::plan::{Plan, Request, plan};
use cook_model::quantity::Moment;

/// One look.
#[derive(Debug)]
pub(super) struct Look {
    pub seen: Seen,
    pub duties: Vec<Duty>,
    pub alarms: Vec<Alarm>,
}

/// What makes looks, and keeps the last plan: most entries leave what it starts from as it was.
#[derive(Default)]
pub(super) struct Looker {
    planned: Option<(Request, Option<Plan>)>,
}

impl Looker {
    pub(super) fn look(&mut self, log: &Log, now: Moment) -> Look {
        let facts = Seen::facts(log, now);
        let forecast = forecast(&facts.state.history, facts.at);
        let request = facts.state.plan_request(facts.at);
        let plan = request.and_then(|request| self.plan(request));
        let seen = facts.with(forecast, plan);
        Look { duties: duties(&seen), alarms: alarms(&seen), seen }
    }

    fn plan(&mut self, request: Request) -> Option<Plan> {
        if let Some((_, kept)) = self.planned.as_ref().filter(|(asked, _)| *asked == request) {
            return kept.clone();
        }
        let made = plan(&request).ok();
        self.planned = Some((request, made.clone()));
        made
    }
}
