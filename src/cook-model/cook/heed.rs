//! What a forecast may do to the proofs: take one away, never give one.

use super::state::stage;
use super::{CookState, EntryId, Stage};
use crate::forecast::{Forecast, Surprise};
use crate::history::Instrument;
use crate::safety::prove;

impl CookState {
    /// The same state with a forecast's surprises heeded: a reading that does not fit what is
    /// otherwise known proves nothing until the cook has vouched for it.
    #[must_use]
    pub fn heed(self, surprises: &[Surprise]) -> Self {
        self.doubting(surprises.iter().map(|surprise| surprise.entry).collect())
    }

    /// The same state before any forecast: no reading proves anything until one finds that it fits, or
    /// the cook has vouched for it.
    #[must_use]
    pub fn doubt_all(self) -> Self {
        let readings = self.history.pieces.iter().flat_map(|piece| &piece.readings);
        let all = readings.map(|reading| reading.entry).collect();
        self.doubting(all)
    }

    fn doubting(mut self, mut doubted: Vec<EntryId>) -> Self {
        doubted.sort_unstable();
        doubted.dedup();
        self.doubted = doubted;
        for (standing, piece) in self.pieces.iter_mut().zip(&self.history.pieces) {
            standing.proof = prove(&self.history, piece, self.settings.proof_rule, &self.doubted);
            standing.stage = stage(piece, standing.proof.is_some());
        }
        self
    }

    /// The latest reading that does not fit what is otherwise known, to be asked about until the cook
    /// has said that it is right or typed it again. Nothing is asked of what a leave-in showed that is
    /// likely misplaced: that is the answer, and to re-seat it the advice. Nor of a piece that is proved:
    /// how it is kept since, no forecast knows.
    pub fn question(&self, forecast: &Forecast) -> Option<Surprise> {
        let open = |surprise: &&Surprise| {
            let reading = self.reading(surprise.entry);
            let standing = self.piece(surprise.piece).map(|(standing, _)| standing.stage);
            let seating = forecast.piece(surprise.piece).and_then(|piece| piece.seating);
            let misplaced = seating.is_some_and(|seating| seating.is_suspect());
            reading.is_some_and(|reading| {
                let told = misplaced && reading.instrument == Instrument::LeaveIn;
                !reading.vouched && !told && standing < Some(Stage::Proved)
            })
        };
        forecast.surprises.iter().rfind(open).copied()
    }

    /// The readings of which the cook should be asked whether they are right.
    pub fn doubted(&self) -> &[EntryId] {
        &self.doubted
    }
}
