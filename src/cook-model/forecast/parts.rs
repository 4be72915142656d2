//! A forecast made in parts, so that a screen can answer taps between them.

use super::normal::Normal;
use super::order::{self, Runner};
use super::outcome::Forecast;
use super::traces::{Setting, Traces};
use super::view::View;
use super::{checks, learn, pit_air};
use crate::heat::Leg;
use crate::history::History;
use crate::quantity::{Moment, to_seconds};
use crate::sorting::sort_by_key;

/// A forecast under way; [`forecast`](super::forecast) makes it at one go.
pub struct ForecastInParts {
    history: History,
    now: Moment,
    /// Spans count from here.
    zero: Moment,
    pit: Leg,
    /// Of the pieces followed so far, in the order of the history.
    traces: Vec<Traces>,
}

impl ForecastInParts {
    /// Begins a forecast as seen at `now`.
    pub fn begin(history: History, now: Moment) -> Self {
        let zero = history.first_on().unwrap_or(now);
        let pit = pit_air::leg(&history, zero, now);
        let traces = Vec::with_capacity(history.pieces.len());
        Self { history, now, zero, pit, traces }
    }

    /// Follows the heat in one more piece; false once every piece has been.
    pub fn go_on(&mut self) -> bool {
        let next = self.history.pieces.get(self.traces.len());
        let followed = next.map(|piece| Traces::new(piece, &self.setting()));
        let had = followed.is_some();
        self.traces.extend(followed);
        had
    }

    /// The forecast; follows what has not been followed yet.
    pub fn finish(mut self) -> Forecast {
        while self.go_on() {}
        let (history, now, zero) = (&self.history, self.now, self.zero);
        let setting = self.setting();
        let normal = Normal::new();
        let learned = learn(history, &self.traces, zero);
        let risk = f64::from(history.check_risk_percent) / 100.0;
        let (mut pieces, mut runners, mut surprises) = (Vec::new(), Vec::new(), Vec::new());
        for (place, piece) in history.pieces.iter().enumerate() {
            let view = View {
                history: piece,
                traces: &self.traces[place],
                evidence: &learned.evidence[place],
                weights: &learned.weights[place],
                setting: &setting,
                normal: &normal,
                risk,
            };
            let told = view.told();
            surprises.extend(view.surprises());
            if let Some(run) = told.run {
                runners.push(Runner { piece, place, run });
            }
            pieces.push(told.forecast);
        }
        sort_by_key(&mut surprises, |surprise| surprise.entry);
        let on = runners.iter().filter(|runner| runner.piece.is_on());
        let on: Vec<_> = on.map(|runner| (runner.piece.id, &runner.run)).collect();
        let risk_z = checks::standard_deviations(&normal, risk);
        let checks = checks::plan(&on, risk_z, to_seconds(now - zero), zero);
        let (order, order_certainty) = order::pull_order(runners, &learned.joint, &normal);
        Forecast { at: now, pieces, order, order_certainty, checks, surprises }
    }

    fn setting(&self) -> Setting<'_> {
        let Self { zero, now, pit, .. } = self;
        Setting { zero: *zero, now: *now, pit, ambient: self.history.pit.ambient }
    }
}
