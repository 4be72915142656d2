//! One look at a cook: its state, forecast and plan, all of one version of its log.
//!
//! It is made whole and replaced whole, so that no reader holds a state beside the forecast of another.
//! Forecast and plan are made for the moment of the log's last entry, not for the moment of looking:
//! so they are functions of the log alone, and nothing that is due goes away by itself while time goes
//! by. What changes with time (the core now, dinner's lateness) is read from them at a moment.

use super::{CookState, Log, duties, fold};
use crate::forecast::{Forecast, PieceForecast, forecast};
use crate::history::PieceHistory;
use crate::piece::PieceId;
use crate::plan::{Clock, Outlook, Plan, outlook, plan};
use crate::quantity::{Moment, Span};

/// One look at a cook.
#[derive(Clone, Debug, PartialEq)]
pub struct Seen {
    /// How many entries the log had.
    pub version: usize,
    /// The moment of its last entry, for which all else was made.
    pub at: Moment,
    /// What the log adds up to.
    pub state: CookState,
    /// What is likely to happen; none of a cook just opened.
    pub forecast: Option<Forecast>,
    /// The plan back from dinner, where it has a time, and as late as the cook is.
    pub plan: Option<Plan>,
}

impl Seen {
    /// What the log says by itself, before any forecast. No surprising reading counts for a proof yet.
    pub fn facts(log: &Log, now: Moment) -> Self {
        let happened = log.standing().last().map_or(now, |entry| entry.happened);
        let state = fold(log).doubt_all();
        let version = log.entries().len();
        Self { version, at: happened.min(now), state, forecast: None, plan: None }
    }

    /// The whole look. `now` matters only while the log is empty, or where a clock ran ahead.
    pub fn of(log: &Log, now: Moment) -> Self {
        let facts = Self::facts(log, now);
        let forecast = forecast(&facts.state.history, facts.at);
        let plan = facts.state.plan_request(facts.at).and_then(|request| plan(&request).ok());
        facts.with(forecast, plan)
    }

    /// The same look with a forecast of its own state at its own moment, and a plan.
    #[must_use]
    pub fn with(mut self, forecast: Forecast, plan: Option<Plan>) -> Self {
        for (piece, told) in self.state.history.pieces.iter_mut().zip(&forecast.pieces) {
            if told.piece == piece.id {
                piece.pull_at = told.pull_at;
            }
        }
        self.state = self.state.heed(&forecast);
        let plan = plan.map(|plan| plan.as_late_as(&self.state.history));
        Self { forecast: Some(forecast), plan, ..self }
    }

    /// The state as it stands at a moment: a limit that has run out since takes a proof away.
    pub fn state_at(&self, now: Moment) -> CookState {
        self.state.clone().at(self.forecast.as_ref(), now.max(self.at))
    }

    /// What is likely to happen to one piece, if that is known.
    pub fn piece_forecast(&self, piece: PieceId) -> Option<&PieceForecast> {
        self.forecast.as_ref()?.piece(piece)
    }

    /// Whether it is of this log.
    pub fn is_of(&self, log: &Log) -> bool {
        self.version == log.entries().len()
    }

    /// When the plan has a piece go on.
    pub fn planned_on(&self, piece: PieceId) -> Option<Moment> {
        let plan = self.plan.as_ref()?;
        plan.pieces.iter().find(|planned| planned.piece == piece).map(|planned| planned.on)
    }

    /// Where dinner stands at a moment, if it has a time, something is for tonight and a forecast was
    /// made. What the plan has for earlier and was not done delays it.
    pub fn outlook(&self, now: Moment) -> Option<Outlook> {
        let (state, forecast) = (&self.state, self.forecast.as_ref()?);
        let dinner = state.settings.dinner?;
        let habits = &state.settings.habits;
        outlook(&state.history, forecast, self.plan.as_ref(), habits, dinner, self.clock(now))
    }

    /// The clock at a moment: before the first piece is on the cook may be behind the plan.
    pub fn clock(&self, now: Moment) -> Clock {
        let begun = self.state.history.pieces.iter().any(|piece| !piece.spells.is_empty());
        let undone = duties::chores_before(self).into_iter().map(|(_, due)| now - due);
        let behind = undone.filter(|_| !begun).max();
        let delay = behind.map_or(Span::zero(), |behind| behind.max(Span::zero()));
        Clock { now, delay }
    }

    /// The history of one piece, if it is known.
    pub fn history(&self, piece: PieceId) -> Option<&PieceHistory> {
        self.state.history.piece(piece)
    }
}
