//! What safety asks to be watched at a moment: clocks and prompts.

use super::CookState;
use crate::forecast::Forecast;
use crate::piece::PieceId;
use crate::quantity::{Moment, Temperature};
use crate::safety::{Clock, Lethality, Prompt, SALMONELLA_IN_CHICKEN, life, prompts};
use crate::sorting::sort_by_key;

impl CookState {
    /// The clocks that run, each with its piece, the one that runs out first at the front; one that
    /// ran out stays. What they expect is the forecast's unfavourable side.
    pub fn clocks(&self, forecast: &Forecast) -> Vec<(PieceId, Clock)> {
        let mut clocks: Vec<(PieceId, Clock)> = self
            .history
            .pieces
            .iter()
            .flat_map(|piece| {
                let coming = low_side(forecast, piece.id);
                let life = life(&self.history, piece, &self.doubted, &coming, forecast.at);
                life.clocks.into_iter().map(|clock| (piece.id, clock))
            })
            .collect();
        sort_by_key(&mut clocks, |(piece, clock)| (clock.deadline, *piece));
        clocks
    }

    /// The hygiene prompts that belong to this moment; none where the cook turned them off.
    pub fn prompts(&self) -> Vec<Prompt> {
        if self.settings.prompts_shown {
            prompts(&self.history, &self.dismissed)
        } else {
            Vec::new()
        }
    }
}

/// How many decimal reductions of *Salmonella* the core of a piece is likely to have had by now,
/// on the unfavourable side of the forecast. Information, to be labelled as forecast: it proves
/// nothing.
pub fn forecast_lethality(forecast: &Forecast, piece: PieceId, now: Moment) -> Lethality {
    let mut core = low_side(forecast, piece);
    core.retain(|(at, _)| *at <= now);
    SALMONELLA_IN_CHICKEN.lethality(&core)
}

/// The core over time, one chance in ten that it is colder.
pub(super) fn low_side(forecast: &Forecast, piece: PieceId) -> Vec<(Moment, Temperature)> {
    let curve = forecast.piece(piece).map(|piece| piece.curve.as_slice()).unwrap_or_default();
    curve.iter().map(|(at, core)| (*at, core.low)).collect()
}
