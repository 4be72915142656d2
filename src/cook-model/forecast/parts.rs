//! A forecast made in parts, so that a screen can answer taps between them.

use super::normal::Normal;
use super::order::{self, Runner};
use super::outcome::{Forecast, Surprise};
use super::traces::{Setting, Traces};
use super::view::{Told, View};
use super::{Learned, checks, learn, pit_air};
use crate::heat::Leg;
use crate::history::{History, PieceHistory};
use crate::quantity::{Moment, to_seconds};
use crate::sorting::sort_by_key;

/// A forecast under way; [`forecast`](super::forecast) makes it at one go.
pub struct ForecastInParts {
    history: History,
    now: Moment,
    /// Spans count from here.
    zero: Moment,
    pit: Leg,
    normal: Normal,
    /// Of the pieces followed so far, in the order of the history.
    traces: Vec<Traces>,
    /// What all readings say, once every piece has been followed.
    learned: Option<Learned>,
    /// What is told of the pieces so far, and the readings to ask about, in the same order.
    told: Vec<(Told, Vec<Surprise>)>,
}

impl ForecastInParts {
    /// Begins a forecast as seen at `now`.
    pub fn begin(history: History, now: Moment) -> Self {
        let zero = history.first_on().unwrap_or(now);
        let pit = pit_air::leg(&history, zero, now);
        let (traces, told) = (Vec::new(), Vec::new());
        Self { history, now, zero, pit, normal: Normal::new(), traces, learned: None, told }
    }

    /// Goes on by one step: follows the heat in a piece, learns from all readings, or tells of a
    /// piece. False once there is nothing left to do but to [`finish`](Self::finish).
    pub fn go_on(&mut self) -> bool {
        if let Some(piece) = self.history.pieces.get(self.traces.len()) {
            let followed = Traces::new(piece, &self.setting());
            self.traces.push(followed);
            return true;
        }
        let Some(learned) = &self.learned else {
            self.learned = Some(learn(&self.history, &self.traces, self.zero, &self.normal));
            return true;
        };
        let told = self.tell(learned);
        let had = told.is_some();
        self.told.extend(told);
        had
    }

    /// What is told of the next piece.
    fn tell(&self, learned: &Learned) -> Option<(Told, Vec<Surprise>)> {
        let place = self.told.len();
        let history = self.history.pieces.get(place)?;
        let setting = self.setting();
        let view = View {
            history,
            traces: &self.traces[place],
            evidence: &learned.evidence[place],
            weights: &learned.weights[place],
            setting: &setting,
            normal: &self.normal,
            risk: self.risk(),
            pull: None,
        };
        let pull =
            view.where_to_pull(self.history.proof_rule, self.history.tolerances.instant_read);
        let at = pull.as_ref().map_or(history.pull_at, |pull| pull.at);
        let history = PieceHistory { pull_at: at, ..history.clone() };
        let view = View { history: &history, pull: pull.as_ref(), ..view };
        Some((view.told(), view.surprises(place, learned.judged.as_ref())))
    }

    /// The forecast; does what has not been done yet.
    pub fn finish(mut self) -> Forecast {
        while self.go_on() {}
        let risk = self.risk();
        let Self { history, now, zero, normal, traces, learned, told, .. } = self;
        let learned = learned.unwrap_or_else(|| learn(&history, &traces, zero, &normal));
        let (mut pieces, mut runners, mut surprises) = (Vec::new(), Vec::new(), Vec::new());
        for (place, (piece, (told, surprising))) in history.pieces.iter().zip(told).enumerate() {
            surprises.extend(surprising);
            if let Some(run) = told.run {
                runners.push(Runner { piece, place, run });
            }
            pieces.push(told.forecast);
        }
        sort_by_key(&mut surprises, |surprise| surprise.entry);
        // What was read at its pull temperature comes off: no lid is opened to read it again.
        let on = runners.iter().filter(|runner| runner.piece.is_on() && !runner.run.called_off);
        let on: Vec<_> = on.map(|runner| (runner.piece.id, &runner.run)).collect();
        let risk_z = checks::standard_deviations(&normal, risk);
        let checks = checks::plan(&on, risk_z, to_seconds(now - zero), zero);
        let (order, order_certainty) = order::pull_order(runners, &learned.joint, &normal);
        Forecast { at: now, pieces, order, order_certainty, checks, surprises }
    }

    /// The chance of being past the pull temperature that the cook accepts at a check.
    fn risk(&self) -> f64 {
        f64::from(self.history.check_risk_percent) / 100.0
    }

    fn setting(&self) -> Setting<'_> {
        let Self { zero, now, pit, .. } = self;
        Setting { zero: *zero, now: *now, pit, ambient: self.history.pit.ambient }
    }
}
