//! What takes the heat model longer than a tap may: the questions, and the one function that answers
//! them. A question can be put to another thread: it goes there, and its answer comes back, as bytes.

use serde::{Deserialize, Serialize};

use super::{Entry, Log, Seen};
use crate::forecast::{Band, Forecast, forecast};
use crate::history::History;
use crate::piece::PieceId;
use crate::plan::{Lever, Plan, PlanProblem, Request, Style, levers, plan_by};
use crate::quantity::{Moment, Span};

/// Something to ask about a cook.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Question {
    /// What makes a whole look of the facts: the forecast and the plan.
    Look,
    /// What could be done about dinner.
    Levers,
    /// What each way to load the pit would come to.
    Ways,
    /// Why there is no plan although dinner has a time.
    WhyNoPlan,
    /// How long a piece that is off and not proved needs back on the pit.
    TimeBackOn {
        /// Which piece.
        piece: PieceId,
    },
}

/// The answer to the question of the same name.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Answer {
    /// For [`Seen::with`].
    Look {
        /// What is likely to happen.
        forecast: Forecast,
        /// The plan back from dinner, where there is one.
        plan: Option<Plan>,
    },
    /// Those worth offering.
    Levers(Vec<Lever>),
    /// The plans of [`Style::OnTogether`] and [`Style::OffTogether`], where there are such.
    Ways([Option<Plan>; 2]),
    /// The reason; none where there is a plan, or nothing to plan for.
    WhyNoPlan(Option<PlanProblem>),
    /// As [`CookState::time_back_on`](super::CookState::time_back_on) has it.
    TimeBackOn(Option<Band<Span>>),
}

/// A question on its way: the log's entries in their stored form, one a line.
#[derive(Serialize, Deserialize)]
struct OnTheWay {
    entries: String,
    now: Moment,
    question: Question,
}

/// A question about a log at a moment, as bytes for [`Thinker::answer_to`].
pub fn on_the_way(log: &Log, now: Moment, question: Question) -> Vec<u8> {
    let texts = log.entries().iter().filter_map(Entry::stored);
    let entries = texts.collect::<Vec<_>>().join("\n");
    postcard::to_allocvec(&OnTheWay { entries, now, question }).unwrap_or_default()
}

/// The answer that came back as bytes; none if they are not one.
pub fn come_back(bytes: &[u8]) -> Option<Answer> {
    postcard::from_bytes(bytes).ok()
}

/// Answers questions, and keeps what the next may need again.
#[derive(Default)]
pub struct Thinker {
    /// The last look, and at which log.
    seen: Option<(Log, Seen)>,
    /// The pieces as a plan starts from them, as if raw, and their forecast: the same while nothing
    /// but readings comes.
    raw: Option<(History, Forecast)>,
}

impl Thinker {
    /// The answer to a question that came as bytes, as bytes; none if they are not a question.
    pub fn answer_to(&mut self, bytes: &[u8]) -> Option<Vec<u8>> {
        let OnTheWay { entries, now, question } = postcard::from_bytes(bytes).ok()?;
        let answer = self.answer(&Log::from_stored(entries.lines()), now, question);
        postcard::to_allocvec(&answer).ok()
    }

    /// The answer to a question about a log at a moment.
    pub fn answer(&mut self, log: &Log, now: Moment, question: Question) -> Answer {
        let seen = self.look(log, now);
        match question {
            Question::Look => Answer::Look {
                forecast: seen.forecast.unwrap_or_else(|| Forecast::nothing(seen.at)),
                plan: seen.plan,
            },
            Question::Levers => Answer::Levers(offered(&seen, now)),
            Question::Ways => Answer::Ways(self.ways(&seen, now)),
            Question::WhyNoPlan => {
                let request = seen.state.plan_request(now);
                Answer::WhyNoPlan(request.and_then(|request| self.plan_for(&request).err()))
            }
            Question::TimeBackOn { piece } => {
                Answer::TimeBackOn(seen.state.time_back_on(piece, seen.at))
            }
        }
    }

    /// The whole look at a log.
    fn look(&mut self, log: &Log, now: Moment) -> Seen {
        let facts = Seen::facts(log, now);
        if let Some((of, seen)) = &self.seen
            && of == log
            && seen.at == facts.at
        {
            return seen.clone();
        }
        let forecast = forecast(&facts.state.history, facts.at);
        let request = facts.state.plan_request(facts.at);
        let plan = request.and_then(|request| self.plan_for(&request).ok());
        let seen = facts.with(forecast, plan);
        self.seen = Some((log.clone(), seen.clone()));
        seen
    }

    /// The plan of each way to load the pit, as soon as the cook's own plan lights the fire.
    fn ways(&mut self, seen: &Seen, now: Moment) -> [Option<Plan>; 2] {
        let light = seen.plan.as_ref().map(|plan| plan.light);
        [Style::OnTogether, Style::OffTogether].map(|style| {
            let mut request = seen.state.plan_request(light?)?;
            request.style = style;
            request.now = request.now.min(now);
            self.plan_for(&request).ok()
        })
    }

    fn plan_for(&mut self, request: &Request) -> Result<Plan, PlanProblem> {
        let raw = request.raw();
        match &self.raw {
            Some((of, forecast)) if *of == raw => plan_by(request, forecast),
            _ => {
                let forecast = forecast(&raw, request.now);
                let plan = plan_by(request, &forecast);
                self.raw = Some((raw, forecast));
                plan
            }
        }
    }
}

/// The levers worth offering at a moment.
fn offered(seen: &Seen, now: Moment) -> Vec<Lever> {
    let (Some(forecast), Some(outlook)) = (&seen.forecast, seen.outlook(now)) else {
        return Vec::new();
    };
    let (history, habits) = (&seen.state.history, &seen.state.settings.habits);
    levers(history, forecast, seen.plan.as_ref(), habits, seen.clock(now), &outlook)
}
