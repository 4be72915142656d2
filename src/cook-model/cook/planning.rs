use super::CookState;
use crate::plan::{Request, Wanted};
use crate::quantity::{Moment, TemperatureDifference};

impl CookState {
    /// What the plan back from dinner starts from: every piece set out, as if none were on yet.
    /// None while no time to eat is set.
    ///
    /// A plan is made for the moment at which the cook still can follow it, so that its times do
    /// not move once the first piece is on.
    pub fn plan_request(&self, now: Moment) -> Option<Request> {
        let pieces: Vec<Wanted> = self
            .history
            .pieces
            .iter()
            .map(|piece| Wanted { id: piece.id, piece: piece.piece, tonight: piece.tonight })
            .collect();
        let everything_fits = || vec![TemperatureDifference::ZERO; pieces.len()];
        let rack = &self.settings.rack;
        let places = if rack.is_empty() { everything_fits() } else { rack.clone() };
        Some(Request {
            places,
            pieces,
            pit_kind: self.settings.pit_kind,
            pit: self.settings.pit_target,
            ambient: self.settings.ambient,
            pull_choice: self.settings.pull_target,
            proof_rule: self.settings.proof_rule,
            dinner: self.settings.dinner?,
            style: self.settings.style,
            habits: self.settings.habits,
            now: self.began.map_or(now, |began| began.min(now)),
        })
    }
}
