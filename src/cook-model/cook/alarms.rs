//! The moments at which the cook must be called, from the state and the forecast.

use serde::{Deserialize, Serialize};

use super::advice::{at_pull, chores, leave_in_at_pull};
use super::repoke::after_poke;
use super::{Action, Chore, CookState, Stage};
use crate::forecast::{Forecast, ONE_OPENING, PieceForecast};
use crate::history::PieceHistory;
use crate::piece::PieceId;
use crate::plan::Plan;
use crate::quantity::{Moment, Span};
use crate::safety::{Clock, ClockKind};
use crate::sorting::sort_by_key;

/// A piece whose reading has reached its pull temperature should be off within this.
const TO_PULL: Span = Span::minutes(3);
/// A resting piece that a reading did not prove is worth another no sooner than this.
const BETWEEN_PROOFS: Span = Span::minutes(5);
/// A window that opens this close to a check needs no alarm of its own.
const SAME_TRIP: Span = Span::minutes(3);
/// The call comes this long before a safety limit, so that there is time to do something about it.
const BEFORE_LIMIT: Span = Span::minutes(20);

/// What the cook is called for. The order is the order of urgency.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[non_exhaustive]
pub enum AlarmKind {
    /// A piece is likely past its pull temperature, and still on.
    LikelyPastTarget,
    /// Cooked food has stood almost as long as it may before it is chilled.
    ChillLimit,
    /// A piece has been between 40 and 140 F almost as long as it may: the pit is too cool.
    WarmUpLimit,
    /// A piece is to be read with the instant-read thermometer.
    CheckDue,
    /// A piece is about to reach its pull temperature.
    PullWindowOpening,
    /// A resting piece is at its hottest: a reading now can prove it.
    ProofReadingDue,
    /// The fire is to be fed, or something to be done before the cook.
    ChoreDue(Chore),
    /// By the plan a piece goes on.
    PutOnDue,
    /// A proved piece has rested.
    RestOver,
}

/// Names an alarm. The name stays the same while the forecast moves the alarm's time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct AlarmId {
    /// What for.
    pub kind: AlarmKind,
    /// Which piece; none for a chore.
    pub piece: Option<PieceId>,
    /// Which time: how often what bears on it was done before (the piece read, put on the pit, or
    /// the chore done).
    pub occasion: u32,
}

/// One call at one moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Alarm {
    /// Its name.
    pub id: AlarmId,
    /// When it is due.
    pub at: Moment,
}

/// Every alarm to come or due, earliest first.
///
/// An alarm goes when what it calls for is done: read, pulled, proved, packed.
pub fn alarms(state: &CookState, forecast: &Forecast, plan: Option<&Plan>) -> Vec<Alarm> {
    let of_pieces = state.each_piece().flat_map(|(standing, history)| {
        let view = View { state, history, forecast, plan };
        match standing.stage {
            Stage::Raw => vec![view.put_on()],
            Stage::On => view.on_the_pit(),
            Stage::Resting => vec![view.proof_reading()],
            Stage::Proved => vec![view.rest_over()],
            Stage::Packed => Vec::new(),
        }
    });
    let mut alarms: Vec<Alarm> = of_pieces.flatten().collect();
    alarms.extend(of_clocks(state, forecast));
    alarms.extend(of_chores(state, plan));
    sort_by_key(&mut alarms, |alarm| (alarm.at, alarm.id));
    join_checks(&mut alarms);
    alarms
}

/// Those of the safety limits that run.
fn of_clocks(state: &CookState, forecast: &Forecast) -> Vec<Alarm> {
    let alarm = |(piece, clock): (PieceId, Clock)| {
        let kind = match clock.kind {
            ClockKind::ToFridge => AlarmKind::ChillLimit,
            ClockKind::WarmUp => AlarmKind::WarmUpLimit,
            _ => return None,
        };
        let spells = state.history.piece(piece)?.spells.len();
        let id = AlarmId { kind, piece: Some(piece), occasion: u32::try_from(spells).ok()? };
        Some(Alarm { id, at: clock.deadline - BEFORE_LIMIT })
    };
    state.clocks(forecast).into_iter().filter_map(alarm).collect()
}

fn of_chores(state: &CookState, plan: Option<&Plan>) -> Vec<Alarm> {
    let alarm = |chore: Chore, at| {
        let done = state.chores.iter().filter(|(_, known)| *known == chore).count();
        let occasion = u32::try_from(done).ok()?;
        Some(Alarm { id: AlarmId { kind: AlarmKind::ChoreDue(chore), piece: None, occasion }, at })
    };
    let steps = chores(state, plan).into_iter();
    steps
        .filter_map(|step| match step.action {
            Action::Chore { chore } => alarm(chore, step.due),
            _ => None,
        })
        .collect()
}

/// Checks that are worth one opening of the lid ring together, when the first of them is due.
/// `alarms` are in order of time.
fn join_checks(alarms: &mut [Alarm]) {
    let mut opening: Option<Moment> = None;
    for alarm in alarms.iter_mut().filter(|alarm| alarm.id.kind == AlarmKind::CheckDue) {
        match opening {
            Some(first) if alarm.at - first <= ONE_OPENING => alarm.at = first,
            _ => opening = Some(alarm.at),
        }
    }
    sort_by_key(alarms, |alarm| (alarm.at, alarm.id));
}

struct View<'a> {
    state: &'a CookState,
    history: &'a PieceHistory,
    forecast: &'a Forecast,
    plan: Option<&'a Plan>,
}

impl View<'_> {
    fn put_on(&self) -> Option<Alarm> {
        let piece = self.plan?.pieces.iter().find(|piece| piece.piece == self.history.id)?;
        self.once_a_spell(AlarmKind::PutOnDue, piece.on)
    }

    fn on_the_pit(&self) -> Vec<Option<Alarm>> {
        if let Some(reading) = at_pull(self.history) {
            return vec![self.once_a_spell(AlarmKind::LikelyPastTarget, reading.at + TO_PULL)];
        }
        let Some(pull) = self.piece_forecast().and_then(|forecast| forecast.pull) else {
            let look = self.piece_forecast().and_then(|forecast| forecast.check_by);
            let look = look.map(|look| after_poke(self.history, look));
            return look
                .map(|at| self.once_a_reading(AlarmKind::CheckDue, at))
                .into_iter()
                .collect();
        };
        let check = self.check_due(pull.low);
        let on_the_same_trip = (check - pull.low).abs() <= SAME_TRIP;
        let opening = self.once_a_spell(AlarmKind::PullWindowOpening, pull.low);
        vec![
            self.once_a_reading(AlarmKind::CheckDue, check),
            opening.filter(|_| !on_the_same_trip),
            self.once_a_spell(AlarmKind::LikelyPastTarget, pull.high),
        ]
    }

    /// When the piece is next to be read: by the latest moment for a check, when its window opens, or
    /// when the leave-in shows its pull temperature.
    fn check_due(&self, opening: Moment) -> Moment {
        let forecast = self.piece_forecast();
        let foreseen = forecast.and_then(|forecast| forecast.check_by).unwrap_or(opening);
        let shown = forecast.and_then(|forecast| leave_in_at_pull(self.history, forecast));
        after_poke(self.history, shown.map_or(foreseen, |shown| foreseen.min(shown)))
    }

    fn proof_reading(&self) -> Option<Alarm> {
        let off = self.history.off()?;
        let last = self.history.this_spell().last().map_or(off, |reading| reading.at.max(off));
        let peak = self.peak().unwrap_or(off);
        let due = peak.max(if last > off { last + BETWEEN_PROOFS } else { off });
        self.once_a_reading(AlarmKind::ProofReadingDue, due)
    }

    fn rest_over(&self) -> Option<Alarm> {
        let rested = self.history.off()? + self.state.settings.habits.rest;
        let rested = self.peak().map_or(rested, |peak| rested.max(peak));
        self.once_a_spell(AlarmKind::RestOver, rested)
    }

    fn once_a_spell(&self, kind: AlarmKind, at: Moment) -> Option<Alarm> {
        self.alarm(kind, self.history.spells.len(), at)
    }

    fn once_a_reading(&self, kind: AlarmKind, at: Moment) -> Option<Alarm> {
        self.alarm(kind, self.history.readings.len(), at)
    }

    fn alarm(&self, kind: AlarmKind, occasion: usize, at: Moment) -> Option<Alarm> {
        let occasion = u32::try_from(occasion).ok()?;
        Some(Alarm { id: AlarmId { kind, piece: Some(self.history.id), occasion }, at })
    }

    fn piece_forecast(&self) -> Option<&PieceForecast> {
        self.forecast.piece(self.history.id)
    }

    /// When the core is likely hottest after the pull.
    fn peak(&self) -> Option<Moment> {
        self.piece_forecast()?.peak.map(|peak| peak.at)
    }
}
