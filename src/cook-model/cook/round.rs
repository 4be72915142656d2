//! A round: one opening of the lid, its pieces read one after another.

use serde::Serialize;

use super::What;
use crate::history::{EntryId, Instrument, LidOpening};
use crate::piece::PieceId;
use crate::quantity::{Moment, Span};

/// A round nobody taps in for so long is over: the lid is down and the cook has gone.
pub const ROUND_LASTS: Span = Span::minutes(5);
/// Once all its pieces are answered, what is still done at the lid follows within this.
const STAYS_UP: Span = Span::minutes(1);
/// From the last tap to the lid being down, where nobody said when it was.
const TO_CLOSE: Span = Span::seconds(10);

/// One opening of the lid, as the log tells it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Round {
    /// The entry that began it.
    pub began: EntryId,
    /// When that was.
    pub at: Moment,
    /// The pieces to read, in order.
    pub pieces: Vec<PieceId>,
    /// Those of them that were read, skipped or pulled.
    pub answered: Vec<PieceId>,
    /// When the lid went up: with the first core read, for the pit is read before.
    pub lid_up: Option<Moment>,
    /// When something was last tapped in it.
    pub last_tap: Moment,
    /// When it was said that the lid is down.
    pub ended: Option<Moment>,
}

impl Round {
    /// A round that has just begun, of pieces that are on the pit.
    pub(super) fn begin(entry: EntryId, at: Moment, pieces: Vec<PieceId>) -> Self {
        let answered = Vec::new();
        Self { began: entry, at, pieces, answered, lid_up: None, last_tap: at, ended: None }
    }

    /// The next piece to read; none once all were.
    pub fn next(&self) -> Option<PieceId> {
        self.pieces.iter().copied().find(|piece| !self.answered.contains(piece))
    }

    /// When it is over by itself if nothing more is tapped.
    pub fn lapses(&self) -> Moment {
        self.last_tap + ROUND_LASTS
    }

    /// Whether something done at a moment still belongs to it.
    pub(super) fn takes(&self, at: Moment) -> bool {
        let lasts = if self.next().is_some() { ROUND_LASTS } else { STAYS_UP };
        self.ended.is_none() && self.at <= at && at <= self.last_tap + lasts
    }

    /// What is done while it lasts.
    pub(super) fn hear(&mut self, at: Moment, what: &What) {
        if !self.takes(at) {
            return;
        }
        match what {
            What::RoundEnded => self.ended = Some(at),
            What::CoreRead { piece, instrument: Instrument::InstantRead, .. }
            | What::PieceSkipped { piece }
            | What::Pulled { piece } => {
                self.lid_up.get_or_insert(at);
                self.answered.push(*piece);
            }
            What::Discarded { piece } => self.answered.push(*piece),
            What::CoreRead { .. }
            | What::PitRead { .. }
            | What::SecondPlaceTried { .. }
            | What::ReadingVouched { .. }
            | What::LeaveInSeated { .. }
            | What::PutOn { .. }
            | What::ChoreDone { .. } => {}
            _ => return,
        }
        self.last_tap = at;
    }

    /// For how long the lid was up, if it was.
    pub(super) fn opening(&self) -> Option<LidOpening> {
        let at = self.lid_up?;
        let down = self.ended.unwrap_or(self.last_tap + TO_CLOSE);
        Some(LidOpening { at, lasted: down - at })
    }
}
