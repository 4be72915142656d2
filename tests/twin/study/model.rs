//! The forecast under test, as a forecaster.

use cook_model::cook::{Log, fold};
use cook_model::forecast::{Forecast, forecast};
use cook_model::piece::PieceId;
use cook_model::quantity::Moment;

use crate::diary;

use super::forecaster::{Forecaster, Said};

/// The forecast under test.
#[derive(Clone, Copy, Debug)]
pub struct Model;

impl Model {
    /// The forecast in full.
    pub fn forecast(log: &Log, now: Moment) -> Forecast {
        forecast(&fold(log).history, now)
    }
}

impl Forecaster for Model {
    fn name(&self) -> &'static str {
        "the forecast"
    }

    fn has_window(&self) -> bool {
        true
    }

    fn say(&self, log: &Log, now: Moment) -> Vec<(PieceId, Said)> {
        let minute = |moment: Moment| diary::since_start(moment) / 60.0;
        Self::forecast(log, now)
            .pieces
            .iter()
            .map(|piece| {
                let said = Said {
                    pull: piece.pull.map(|w| [minute(w.low), minute(w.middle), minute(w.high)]),
                    peak: piece.peak.map(|peak| peak.temperature.middle.c()),
                    misplaced: piece.seating.map(|seating| seating.misplaced.value()),
                    reseat: piece.seating.is_some_and(|seating| seating.is_suspect()),
                };
                (piece.piece, said)
            })
            .collect()
    }
}
