//! What a forecast may do to the proofs: take one away, never give one.

use super::state::stage;
use super::watch::low_side;
use super::{CookState, EntryId, Stage};
use crate::forecast::{Forecast, Surprise};
use crate::history::{CoreReading, Instrument};
use crate::piece::PieceId;
use crate::quantity::{Moment, Span};
use crate::safety::{Life, RunOut, Standing, could_prove, life, standing};

/// A reading too cool to prove anything matters for what is done in the same go, and no longer.
const OF_NOW: Span = Span::minutes(10);

impl CookState {
    /// The same state with a forecast of it heeded: a reading that does not fit what is otherwise known
    /// proves nothing until the cook has vouched for it; and what it says of the clocks.
    #[must_use]
    pub fn heed(mut self, forecast: &Forecast) -> Self {
        self.doubt(forecast.surprises.iter().map(|surprise| surprise.entry).collect());
        self.judge(Some(forecast));
        self
    }

    /// The same state before any forecast: no reading proves anything until one finds that it fits, or
    /// the cook has vouched for it.
    #[must_use]
    pub fn doubt_all(mut self) -> Self {
        let readings = self.history.pieces.iter().flat_map(|piece| &piece.readings);
        let all = readings.map(|reading| reading.entry).collect();
        self.doubt(all);
        self.judge(None);
        self
    }

    /// The same state as it stands at a later moment, by the same forecast: limits may have run out.
    #[must_use]
    pub fn at(mut self, forecast: Option<&Forecast>, now: Moment) -> Self {
        self.judge_at(forecast, Some(now));
        self
    }

    /// The limit of a piece that has run out by a moment, if one has: what must then be done, or not
    /// be done, stands in it. By readings alone, so that it never says less than they do.
    pub fn run_out(&self, piece: PieceId, now: Moment) -> Option<RunOut> {
        let (own, history) = self.piece(piece)?;
        let rule = self.settings.proof_rule;
        let by_readings = standing(&self.history, history, rule, &self.doubted, &[], Some(now));
        own.run_out.or(by_readings.run_out)
    }

    /// The life of a piece up to a moment, by readings alone: what it brings with it to its bag.
    pub fn life(&self, piece: PieceId, now: Moment) -> Option<Life> {
        let history = self.history.piece(piece)?;
        Some(life(&self.history, history, &self.doubted, &[], now))
    }

    fn doubt(&mut self, mut entries: Vec<EntryId>) {
        entries.sort_unstable();
        entries.dedup();
        self.doubted = entries;
    }

    /// Judges each piece anew, by what is doubted now and what is forecast of it.
    fn judge(&mut self, forecast: Option<&Forecast>) {
        self.judge_at(forecast, forecast.map(|forecast| forecast.at));
    }

    fn judge_at(&mut self, forecast: Option<&Forecast>, at: Option<Moment>) {
        let rule = self.settings.proof_rule;
        for (own, piece) in self.pieces.iter_mut().zip(&self.history.pieces) {
            let coming = forecast.map(|forecast| low_side(forecast, piece.id)).unwrap_or_default();
            let Standing { proof, run_out } =
                standing(&self.history, piece, rule, &self.doubted, &coming, at);
            own.proof = proof;
            own.run_out = run_out;
            own.stage = stage(piece, proof.is_some());
        }
    }

    /// The latest reading that does not fit what is otherwise known, to be asked about until the cook
    /// has said that it is right or typed it again. Nothing is asked of what a leave-in showed that is
    /// likely misplaced: that is the answer, and to re-seat it the advice; nor of a piece that is packed,
    /// unless for want of the answer nothing proves it; nor of what a later reading has settled.
    pub fn question(&self, forecast: &Forecast) -> Option<Surprise> {
        let open = |surprise: &&Surprise| {
            let reading = self.reading(surprise.entry);
            let seating = forecast.piece(surprise.piece).and_then(|piece| piece.seating);
            let misplaced = seating.is_some_and(|seating| seating.is_suspect());
            reading.is_some_and(|reading| {
                let told = misplaced && reading.instrument == Instrument::LeaveIn;
                let open = !reading.vouched && !told && self.is_open(surprise.piece);
                open && self.still_matters(surprise.piece, reading, forecast.at)
            })
        };
        forecast.surprises.iter().rfind(open).copied()
    }

    /// Whether it still matters what was read of a piece.
    fn is_open(&self, piece: PieceId) -> bool {
        self.piece(piece).is_some_and(|(own, history)| {
            own.stage != Stage::Packed || own.is_packed_unproved() && !history.discarded
        })
    }

    /// Whether what was read once still says what to do: it is the latest by its thermometer, and hot or of
    /// just now; or it could prove a piece that is off, or stop its clocks, and none as early does.
    fn still_matters(&self, piece: PieceId, reading: &CoreReading, now: Moment) -> bool {
        let Some((_, history)) = self.piece(piece) else { return false };
        let alike = |other: &&CoreReading| other.instrument == reading.instrument;
        let latest = history.readings.iter().rfind(alike).map(|last| last.entry);
        let (hot, is_new) = (could_prove(reading), now - reading.at <= OF_NOW);
        let as_early = |other: &CoreReading| {
            could_prove(other) && other.at <= reading.at && !self.is_in_doubt(other)
        };
        let stops = hot && !history.is_on() && !history.pokes().any(as_early);
        stops || latest == Some(reading.entry) && (hot || is_new)
    }

    /// The readings of which the cook should be asked whether they are right.
    pub fn doubted(&self) -> &[EntryId] {
        &self.doubted
    }
}
