//! The forecast of a whole cook: every piece is followed, all readings are learned from, and then each
//! piece is told of.

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

/// What is likely to happen to every piece, as seen at `now`.
///
/// Entries after `now` are taken as given, so ask with the moment of the last or later. A piece not
/// yet on is forecast as if it went on now.
pub fn forecast(history: &History, now: Moment) -> Forecast {
    let zero = history.first_on().unwrap_or(now);
    let whole = Whole {
        history,
        now,
        zero,
        pit: pit_air::leg(history, zero, now),
        normal: Normal::new(),
        risk: f64::from(history.check_risk_percent) / 100.0,
    };
    let traces: Vec<Traces> =
        history.pieces.iter().map(|piece| Traces::new(piece, &whole.setting())).collect();
    let learned = learn(history, &traces, zero, &whole.normal);
    let told = (0..traces.len()).map(|place| whole.tell(place, &traces[place], &learned)).collect();
    whole.sum_up(told, &learned)
}

/// What the forecasts of all pieces have in common.
struct Whole<'a> {
    history: &'a History,
    now: Moment,
    /// Spans count from here.
    zero: Moment,
    pit: Leg,
    normal: Normal,
    /// The chance of being past the pull temperature that the cook accepts at a check.
    risk: f64,
}

impl Whole<'_> {
    /// What is told of one piece, and the readings to ask about.
    fn tell(&self, place: usize, traces: &Traces, learned: &Learned) -> (Told, Vec<Surprise>) {
        let history = &self.history.pieces[place];
        let setting = self.setting();
        let view = View {
            history,
            traces,
            evidence: &learned.evidence[place],
            weights: &learned.weights[place],
            setting: &setting,
            normal: &self.normal,
            risk: self.risk,
            pull: None,
        };
        let pull =
            view.where_to_pull(self.history.proof_rule, self.history.tolerances.instant_read);
        let at = pull.as_ref().map_or(history.pull_at, |pull| pull.at);
        let history = PieceHistory { pull_at: at, ..history.clone() };
        let view = View { history: &history, pull: pull.as_ref(), ..view };
        (view.told(), view.surprises(place, learned.judged.as_ref()))
    }

    /// What is told of all, the pieces in the order of the history.
    fn sum_up(&self, told: Vec<(Told, Vec<Surprise>)>, learned: &Learned) -> Forecast {
        let (mut pieces, mut runners, mut surprises) = (Vec::new(), Vec::new(), Vec::new());
        let all = self.history.pieces.iter().zip(told);
        for (place, (piece, (told, surprising))) in all.enumerate() {
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
        let risk_z = checks::standard_deviations(&self.normal, self.risk);
        let checks = checks::plan(&on, risk_z, to_seconds(self.now - self.zero), self.zero);
        let (order, order_certainty) = order::pull_order(runners, &learned.joint, &self.normal);
        Forecast { at: self.now, pieces, order, order_certainty, checks, surprises }
    }

    fn setting(&self) -> Setting<'_> {
        let Self { zero, now, pit, .. } = self;
        Setting { zero: *zero, now: *now, pit, ambient: self.history.pit.ambient }
    }
}
