//! What to do next, and when.

use serde::Serialize;

use super::draft::SECOND_PLACE_WITHIN;
use super::repoke::after_poke;
use super::{Chore, CookState, PieceState, Stage};
use crate::forecast::{Forecast, ONE_OPENING, PieceForecast};
use crate::history::{CoreReading, EntryId, Instrument, PieceHistory};
use crate::piece::PieceId;
use crate::plan::Plan;
use crate::quantity::{Moment, Span, minutes};
use crate::safety::{ProofRule, Shortfall, hold_progress, shortfall};
use crate::sorting::{sort_by, sort_by_key};

/// A pit not read for this long is worth a look (common practice, no source).
const PIT_READING_STALE: Span = Span::minutes(30);
/// After the forecast peak, and a little longer, no reading will be higher.
const AFTER_PEAK: Span = Span::minutes(3);

/// Something to do. The order of the kinds is the order of urgency among steps already due.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(tag = "do", rename_all = "snake_case")]
pub enum Action {
    /// Take off the pieces whose readings have reached their pull temperature.
    Pull,
    /// Read the core of these pieces, in this order, in one opening of the lid.
    Check,
    /// Lay loose foil over what has come off.
    Cover,
    /// The reading named satisfies the rule in one place: try a second one.
    TrySecondPlace {
        /// The reading.
        reading: EntryId,
    },
    /// Read a resting piece near its peak, in two places, to prove it.
    Prove,
    /// The peak has passed and no reading proves the piece: it must go back on the pit.
    PutBack,
    /// The leave-in is probably not in the coldest spot: re-seat it.
    Reseat,
    /// Read the pit thermometer.
    ReadPit,
    /// A chore around the cook.
    Chore {
        /// Which.
        chore: Chore,
    },
    /// Put the pieces on.
    PutOn,
    /// Set out the pieces.
    SetOut,
    /// Serve them, or portion and bag them.
    Pack,
}

/// One thing to do, to which pieces, and when.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// What to do.
    pub action: Action,
    /// To which pieces; none where it is about the pit or the whole cook.
    pub pieces: Vec<PieceId>,
    /// When; a moment already past means now.
    pub due: Moment,
}

/// The one next thing to do. None once every piece is packed.
pub fn next_step(
    state: &CookState,
    forecast: &Forecast,
    plan: Option<&Plan>,
    now: Moment,
) -> Option<Step> {
    steps(state, forecast, plan, now).into_iter().next()
}

/// Everything there is to do: first what is due, most urgent first, then what comes later.
/// Without a plan, raw pieces go on as soon as the cook likes.
pub fn steps(
    state: &CookState,
    forecast: &Forecast,
    plan: Option<&Plan>,
    now: Moment,
) -> Vec<Step> {
    let each = || {
        state.each_piece().filter_map(|(standing, history)| {
            let forecast = forecast.piece(history.id)?;
            Some(View { standing, history, forecast, plan, now })
        })
    };
    let mut steps: Vec<Step> = gather(each().filter_map(|view| view.step(state)));
    steps.extend(pit_step(state, now));
    steps.extend(chores(state, plan));
    if state.pieces.is_empty() {
        steps.push(Step { action: Action::SetOut, pieces: Vec::new(), due: now });
    }
    sort_by(&mut steps, |a, b| {
        let later = |step: &Step| (step.due > now).then_some(step.due);
        (later(a), &a.action, a.due).cmp(&(later(b), &b.action, b.due))
    });
    steps
}

/// The chores to come: before the first piece is on those of the plan, afterwards the fire.
pub(super) fn chores(state: &CookState, plan: Option<&Plan>) -> Vec<Step> {
    let step = |chore, due| Step { action: Action::Chore { chore }, pieces: Vec::new(), due };
    let done = |chore| state.chores.iter().rfind(|(_, c)| *c == chore).map(|(at, _)| *at);
    let begun = state.history.pieces.iter().any(|piece| !piece.spells.is_empty());
    let mut steps = Vec::new();
    if let Some(plan) = plan.filter(|_| !begun) {
        let planned = [
            (Chore::OutOfFridge, plan.out_of_fridge),
            (Chore::Season, plan.season),
            (Chore::LightFire, plan.light),
        ];
        steps.extend(
            planned.into_iter().filter(|(c, _)| done(*c).is_none()).map(|(c, due)| step(c, due)),
        );
    }
    let every = state.settings.habits.fire.feed_every;
    let fed = done(Chore::FeedFire).max(done(Chore::LightFire));
    if let Some(fed) = fed.filter(|_| every > Span::zero() && needs_fire(state)) {
        steps.push(step(Chore::FeedFire, fed + every));
    }
    steps
}

/// Whether anything is still to be cooked.
fn needs_fire(state: &CookState) -> bool {
    state.pieces.iter().any(|piece| matches!(piece.stage, Stage::Raw | Stage::On))
}

/// A look at the pit, when something is on it and it was not read for a while.
fn pit_step(state: &CookState, now: Moment) -> Option<Step> {
    let first_on =
        state.history.pieces.iter().filter(|p| p.is_on()).filter_map(PieceHistory::on).min()?;
    let last =
        state.history.pit.readings.last().map_or(first_on, |reading| reading.at.max(first_on));
    let due = last + PIT_READING_STALE;
    (due <= now).then_some(Step { action: Action::ReadPit, pieces: Vec::new(), due })
}

/// Joins the same thing to do with several pieces into one step where that saves a trip: checks
/// by one opening of the lid, everything else that is due now.
fn gather(singles: impl Iterator<Item = Step>) -> Vec<Step> {
    let mut singles: Vec<Step> = singles.collect();
    sort_by_key(&mut singles, |step| step.due);
    let mut joined: Vec<Step> = Vec::new();
    for step in singles {
        let together = joined
            .iter_mut()
            .find(|earlier| earlier.action == step.action && step.due - earlier.due <= ONE_OPENING);
        match together {
            Some(earlier) => earlier.pieces.extend(step.pieces),
            None => joined.push(step),
        }
    }
    joined
}

/// The reading by which a piece on the pit is to come off: an instant-read at its pull temperature
/// since one below it, which told that those before it were not of the coldest spot.
pub(super) fn at_pull(history: &PieceHistory) -> Option<&CoreReading> {
    let hot = |reading: &&CoreReading| reading.temperature >= history.pull_at;
    history
        .this_spell()
        .rev()
        .filter(|reading| reading.instrument == Instrument::InstantRead)
        .take_while(hot)
        .last()
}

/// When the leave-in first showed the pull temperature since the piece was poked. It sits where it
/// sits: the piece comes off by an instant-read of several places (common practice, no source).
pub(super) fn leave_in_at_pull(history: &PieceHistory, forecast: &PieceForecast) -> Option<Moment> {
    let since_poke = history
        .this_spell()
        .rev()
        .take_while(|reading| reading.instrument == Instrument::LeaveIn)
        .filter(|reading| reading.temperature >= history.pull_at);
    since_poke.last().filter(|_| !is_misplaced(forecast)).map(|reading| reading.at)
}

fn is_misplaced(forecast: &PieceForecast) -> bool {
    forecast.seating.is_some_and(|seating| seating.is_suspect())
}

/// One piece as seen at one moment.
struct View<'a> {
    standing: &'a PieceState,
    history: &'a PieceHistory,
    forecast: &'a PieceForecast,
    plan: Option<&'a Plan>,
    now: Moment,
}

impl View<'_> {
    /// The next thing to do with this piece.
    fn step(&self, state: &CookState) -> Option<Step> {
        let (action, due) = match self.standing.stage {
            Stage::Raw => (Action::PutOn, self.planned_on()),
            Stage::On => self.on_the_pit()?,
            Stage::Resting => self.resting(state)?,
            // What is proved can wait under its foil; what is not cannot.
            Stage::Proved if state.pieces.iter().all(|piece| piece.stage >= Stage::Proved) => {
                (Action::Pack, self.now)
            }
            Stage::Proved => return None,
            Stage::Packed => return None,
        };
        Some(Step { action, pieces: vec![self.history.id], due })
    }

    /// When the plan has it go on; now where there is no plan.
    fn planned_on(&self) -> Moment {
        let planned = |plan: &Plan| {
            plan.pieces.iter().find(|piece| piece.piece == self.history.id).map(|piece| piece.on)
        };
        self.plan.and_then(planned).unwrap_or(self.now)
    }

    fn on_the_pit(&self) -> Option<(Action, Moment)> {
        if let Some(reading) = at_pull(self.history) {
            return Some((Action::Pull, reading.at));
        }
        if is_misplaced(self.forecast) {
            return Some((Action::Reseat, self.now));
        }
        let foreseen = self.forecast.check_by.or(self.forecast.pull.map(|pull| pull.low));
        let shown = leave_in_at_pull(self.history, self.forecast);
        let opening = foreseen.into_iter().chain(shown).min()?;
        Some((Action::Check, after_poke(self.history, opening)))
    }

    fn resting(&self, state: &CookState) -> Option<(Action, Moment)> {
        let rule = state.settings.proof_rule;
        let spell = self.history.spells.last()?;
        let off = spell.off?;
        if spell.covered.is_none() {
            return Some((Action::Cover, off));
        }
        // Only a fresh reading that lacks nothing else; any other must be taken anew.
        let lacks_a_place = |reading: &&CoreReading| {
            self.now - reading.at <= SECOND_PLACE_WITHIN
                && shortfall(&state.history, self.history, rule, state.doubted(), reading)
                    == Some(Shortfall::OnePlace)
        };
        if let Some(reading) = self.history.this_spell().rfind(lacks_a_place) {
            return Some((Action::TrySecondPlace { reading: reading.entry }, reading.at));
        }
        if let ProofRule::Held { fat } = rule
            && let Some(hold) = hold_progress(&state.history, self.history, fat, state.doubted())
        {
            return Some((Action::Prove, hold.complete_at.min(hold.read_by)));
        }
        let peak = self.forecast.peak?.at;
        let read_after_peak = self.history.this_spell().any(|reading| reading.at >= peak);
        if read_after_peak && self.now >= peak + AFTER_PEAK {
            return Some((Action::PutBack, peak + AFTER_PEAK));
        }
        let just_read = self.history.this_spell().rfind(|reading| reading.at >= off);
        let due = just_read.map_or(peak, |reading| peak.max(reading.at + minutes(1.0)));
        Some((Action::Prove, due))
    }
}
