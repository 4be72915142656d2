//! How long a piece that its rest did not prove needs back on the pit.

use super::CookState;
use crate::forecast::{Band, forecast};
use crate::history::Spell;
use crate::piece::PieceId;
use crate::quantity::{Moment, Span};

impl CookState {
    /// How long a piece that came off and was not proved needs back on the pit, if it goes on now,
    /// until its core is at the temperature that proves at once; by the forecast. None while it is
    /// on or where it would not get there.
    pub fn time_back_on(&self, piece: PieceId, now: Moment) -> Option<Band<Span>> {
        let mut history = self.history.clone();
        let again = history.pieces.iter_mut().find(|other| other.id == piece)?;
        again.off()?;
        again.spells.push(Spell { on: now, off: None, covered: None });
        again.pull_at = self.settings.proof_rule.instant();
        let window = forecast(&history, now).piece(piece)?.pull?;
        let from_now = |at: Moment| (at - now).max(Span::zero());
        Some(Band {
            low: from_now(window.low),
            middle: from_now(window.middle),
            high: from_now(window.high),
        })
    }
}
