//! What a forecast may do to the proofs: take one away, never give one.

use super::state::stage;
use super::{CookState, EntryId};
use crate::forecast::{Forecast, Surprise};
use crate::history::Instrument;
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

    /// The same state with a forecast heeded: its surprises, and that it has not seen what was typed
    /// after it was made. Such a reading proves nothing until a newer forecast finds that it fits.
    #[must_use]
    pub fn heed_forecast(mut self, forecast: &Forecast) -> Self {
        let readings = self.history.pieces.iter().flat_map(|piece| &piece.readings);
        let unseen = readings.filter(|reading| reading.typed > forecast.at);
        self.doubted.extend(unseen.map(|reading| reading.entry));
        self.heed(&forecast.surprises)
    }

    /// The latest reading that does not fit what is otherwise known, to be asked about until the cook
    /// has said that it is right or typed it again. Nothing is asked of what a leave-in showed that is
    /// likely misplaced: that is the answer, and to re-seat it the advice.
    pub fn question(&self, forecast: &Forecast) -> Option<Surprise> {
        let open = |surprise: &&Surprise| {
            let piece = self.history.piece(surprise.piece);
            let mut readings = piece.into_iter().flat_map(|piece| &piece.readings);
            let reading = readings.find(|reading| reading.entry == surprise.entry);
            let seating = forecast.piece(surprise.piece).and_then(|piece| piece.seating);
            let misplaced = seating.is_some_and(|seating| seating.is_suspect());
            reading.is_some_and(|reading| {
                let told = misplaced && reading.instrument == Instrument::LeaveIn;
                !reading.vouched && !told
            })
        };
        forecast.surprises.iter().rfind(open).copied()
    }

    /// The readings of which the cook should be asked whether they are right.
    pub fn doubted(&self) -> &[EntryId] {
        &self.doubted
    }
}
