//! What a forecast may do to the proofs: take one away, never give one.

use super::state::stage;
use super::{CookState, EntryId};
use crate::forecast::Surprise;
use crate::safety::prove;

impl CookState {
    /// The same state with the forecast's surprises heeded: a reading that does not fit what is
    /// otherwise known proves nothing until the cook has vouched for it.
    #[must_use]
    pub fn heed(mut self, surprises: &[Surprise]) -> Self {
        self.doubted.extend(surprises.iter().map(|surprise| surprise.entry));
        self.doubted.sort_unstable();
        self.doubted.dedup();
        for (standing, piece) in self.pieces.iter_mut().zip(&self.history.pieces) {
            standing.proof = prove(&self.history, piece, self.settings.proof_rule, &self.doubted);
            standing.stage = stage(piece, standing.proof.is_some());
        }
        self
    }

    /// The readings of which the cook should be asked whether they are right.
    pub fn doubted(&self) -> &[EntryId] {
        &self.doubted
    }
}
