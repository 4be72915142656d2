//! Everything a log adds up to.

use super::offset::Offsets;
use super::problem::Ignored;
use super::round::Round;
use super::{Chore, EntryId, Settings, Stage};
use crate::history::{CoreReading, History, PieceHistory};
use crate::piece::PieceId;
use crate::quantity::Moment;
use crate::safety::{Prompt, Proof, RunOut};

/// One piece: where it stands, and what has happened to it.
#[derive(Clone, Debug, PartialEq)]
pub struct PieceState {
    /// The cook's own name for it; empty where its number is enough.
    pub name: String,
    /// Where it stands.
    pub stage: Stage,
    /// The readings that prove it, if they do and no limit has run out.
    pub proof: Option<Proof>,
    /// The limit that ran out, if one did: whatever its stage, the piece is not food any more.
    pub run_out: Option<RunOut>,
}

impl PieceState {
    /// Whether it was served or packed and nothing proves it: it never was, its proof fell since, or
    /// a limit had run out.
    pub fn is_packed_unproved(&self) -> bool {
        self.stage == Stage::Packed && self.proof.is_none()
    }
}

/// Everything a log adds up to.
#[derive(Clone, Debug, PartialEq)]
pub struct CookState {
    /// What the cook decided for the whole cook.
    pub settings: Settings,
    /// What happened, as plain facts.
    pub history: History,
    /// Where each piece stands, in the order of `history.pieces`.
    pub pieces: Vec<PieceState>,
    /// The chores done, in order of time.
    pub chores: Vec<(Moment, Chore)>,
    /// When the first chore was done or the first piece went on.
    pub began: Option<Moment>,
    /// The rounds, in order of time.
    pub rounds: Vec<Round>,
    /// The entries that changed nothing, and why.
    pub ignored: Vec<Ignored>,
    /// Readings that a forecast finds not to fit; see [`CookState::heed`].
    pub(super) doubted: Vec<EntryId>,
    /// Hygiene prompts dismissed; see [`CookState::prompts`].
    pub(super) dismissed: Vec<Prompt>,
    /// What the checks of the thermometers found; see [`CookState::offset`].
    pub(super) offsets: Offsets,
}

impl CookState {
    /// A piece's standing and its history.
    pub fn piece(&self, id: PieceId) -> Option<(&PieceState, &PieceHistory)> {
        let place = self.history.pieces.iter().position(|piece| piece.id == id)?;
        Some((self.pieces.get(place)?, self.history.pieces.get(place)?))
    }

    /// Whether every piece was served or packed; not so while no piece is known.
    pub fn is_all_packed(&self) -> bool {
        !self.pieces.is_empty() && self.pieces.iter().all(|piece| piece.stage == Stage::Packed)
    }

    /// The round under way at a moment, if one is.
    pub fn round(&self, at: Moment) -> Option<&Round> {
        self.rounds.last().filter(|round| round.takes(at))
    }

    /// A core reading, by its entry.
    pub fn reading(&self, entry: EntryId) -> Option<&CoreReading> {
        let mut readings = self.history.pieces.iter().flat_map(|piece| &piece.readings);
        readings.find(|reading| reading.entry == entry)
    }

    /// When a chore was last done.
    pub fn done(&self, chore: Chore) -> Option<Moment> {
        self.chores.iter().rfind(|(_, done)| *done == chore).map(|(at, _)| *at)
    }

    /// Whether readings prove every one of these pieces, and no limit has run out. A bag is fit only as
    /// long as this holds of what is in it.
    pub fn are_proved(&self, pieces: &[PieceId]) -> bool {
        let proved = |id: &PieceId| self.piece(*id).is_some_and(|(own, _)| own.proof.is_some());
        pieces.iter().all(proved)
    }

    /// The pieces at one stage, by number.
    pub fn at_stage(&self, stage: Stage) -> Vec<PieceId> {
        let at_stage = self.each_piece().filter(|(standing, _)| standing.stage == stage);
        at_stage.map(|(_, history)| history.id).collect()
    }

    /// Every piece's standing with its history, by number.
    pub fn each_piece(&self) -> impl Iterator<Item = (&PieceState, &PieceHistory)> {
        self.pieces.iter().zip(&self.history.pieces)
    }
}

/// Where a piece stands.
pub(super) fn stage(piece: &PieceHistory, proved: bool) -> Stage {
    match piece.spells.last() {
        _ if piece.packed.is_some() => Stage::Packed,
        None => Stage::Raw,
        Some(spell) if spell.off.is_none() => Stage::On,
        Some(_) if proved => Stage::Proved,
        Some(_) => Stage::Resting,
    }
}
