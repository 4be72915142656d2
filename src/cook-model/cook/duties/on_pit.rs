//! What is to be done with pieces on the pit: pull what reads done, and open the lid to read the others.

use super::{Act, Duty, Why};
use crate::cook::{CookState, Seen, Stage};
use crate::forecast::{PieceForecast, past};
use crate::history::{CoreReading, PieceHistory};
use crate::piece::PieceId;
use crate::quantity::{Moment, Temperature};

/// A piece this hot is dry, and a cook is told so (common practice, no source).
pub const HOT: Temperature = Temperature::from_f(175.0);

impl CookState {
    /// The reading by which a piece on the pit is to come off, of those that are not in doubt.
    pub fn called_off<'a>(&self, history: &'a PieceHistory) -> Option<&'a CoreReading> {
        history.called_off(|reading| self.is_in_doubt(reading))
    }

    /// Whether a forecast finds that a reading does not fit, and the cook has not said that it is right.
    pub fn is_in_doubt(&self, reading: &CoreReading) -> bool {
        self.doubted().contains(&reading.entry) && !reading.vouched
    }
}

/// What is to be done with one piece.
pub(super) fn duties(seen: &Seen, history: &PieceHistory) -> Vec<Duty> {
    let pull = seen.state.called_off(history).map(|reading| {
        let why = Why::Reading { reading: reading.entry, shown: reading.temperature };
        Duty::of(Act::Pull, vec![history.id], reading.at, why)
    });
    pull.into_iter().chain(reseat(seen, history)).collect()
}

/// A leave-in that missed is re-seated with the lid up: in the round in which its piece is poked.
fn reseat(seen: &Seen, history: &PieceHistory) -> Option<Duty> {
    let seating =
        seen.piece_forecast(history.id)?.seating.filter(|seating| seating.is_suspect())?;
    let round = seen.state.round(seen.at)?;
    let poked = history.last_poke().filter(|poked| poked.at >= round.at && seating.poked)?;
    seen.state.called_off(history).is_none().then(|| {
        let why = Why::Reading { reading: poked.entry, shown: poked.temperature };
        Duty::of(Act::Reseat, vec![history.id], poked.at, why)
    })
}

/// The next opening of the lid, as the forecast has it.
pub(super) fn check(seen: &Seen) -> Option<Duty> {
    let forecast = seen.forecast.as_ref()?;
    let waits = |piece: &PieceId| {
        let known = seen.state.piece(*piece);
        known.is_some_and(|(standing, history)| {
            standing.stage == Stage::On && seen.state.called_off(history).is_none()
        })
    };
    let next = forecast.checks.first()?;
    let pieces: Vec<PieceId> = next.pieces.iter().copied().filter(waits).collect();
    if pieces.is_empty() {
        return None;
    }
    let first = |when: fn(&PieceForecast) -> Option<Moment>| {
        pieces.iter().filter_map(|piece| forecast.piece(*piece).and_then(when)).min()
    };
    let why = Why::Forecast {
        past: first(|piece| piece.reaches(past(piece.pull_at))),
        hot: first(|piece| piece.reaches(HOT)),
    };
    Some(Duty::of(Act::Check, pieces, next.at, why))
}
