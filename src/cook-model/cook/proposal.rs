//! At what temperature to pull, and what to do when a rest does not prove.

use serde::Serialize;

use super::CookState;
use crate::forecast::{Band, after_pull, forecast};
use crate::history::Spell;
use crate::piece::PieceId;
use crate::quantity::{Moment, Span, Temperature};
use crate::safety::lowest_pull;

/// A pull temperature proposed beside the cook's own.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct PullProposal {
    /// The lowest pull after which the rest can prove the piece, in 19 cases of 20.
    #[serde(rename = "lowest_c")]
    pub lowest: Temperature,
    /// The cook's own choice, or 160 F.
    #[serde(rename = "chosen_c")]
    pub chosen: Temperature,
}

impl PullProposal {
    /// Whether a pull at the cook's choice may well leave the piece unproved.
    pub fn chosen_is_too_low(&self) -> bool {
        self.chosen < self.lowest
    }
}

impl CookState {
    /// The pull temperature to propose for a piece on the pit. None until it was read since it
    /// went on: before that, the cook's choice stands alone.
    ///
    /// It runs the heat model a dozen times: ask when it is to be shown, not at every tick.
    pub fn propose_pull(&self, piece: PieceId, now: Moment) -> Option<PullProposal> {
        let history = self.history.piece(piece).filter(|piece| piece.is_on())?;
        let on = history.spells.last()?.on;
        history.readings.iter().find(|reading| reading.at >= on)?;
        let after = after_pull(&self.history, piece, now)?;
        let lowest =
            lowest_pull(self.settings.proof_rule, self.settings.tolerances.instant_read, |pull| {
                after.core(pull)
            })?;
        Some(PullProposal { lowest, chosen: history.pull_at })
    }

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
