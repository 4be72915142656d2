//! What the core does after a pull at one temperature or another, and so at which one to pull.

use super::outcome::Probability;
use super::prior::{POKE_SCATTER, RISE_SPREAD};
use super::traces::Rise;
use super::view::View;
use crate::history::PieceHistory;
use crate::quantity::{Span, Temperature, TemperatureDifference, minutes};
use crate::safety::{ProofRule, lowest_pull, pull_target};

/// Standard deviations below the mean that leave 5 % below.
const ONE_IN_TWENTY: f64 = 1.645;
/// The rest is looked at in steps of this.
const STEP: Span = Span::minutes(1);
/// And this many of them.
const STEPS: i32 = 45;

/// At what temperature a piece is to be pulled, and what comes of it.
pub(super) struct Pull {
    /// The temperature.
    pub at: Temperature,
    /// The lowest after which readings at rest prove it in 19 cases of 20; what proves at once where
    /// none is.
    pub proving: Temperature,
    /// The chance that a pull at that temperature leaves it short of what proves at once.
    pub goes_back: Probability,
}

impl View<'_> {
    /// At what temperature to pull the piece; none once it is off, for then it is too late to choose.
    pub(super) fn where_to_pull(
        &self,
        rule: ProofRule,
        tolerance: TemperatureDifference,
    ) -> Option<Pull> {
        let PieceHistory { pull_choice, .. } = *self.history;
        if self.history.off().is_some() {
            return None;
        }
        let lowest = lowest_pull(rule, tolerance, |pull| self.core_after(pull));
        let put_back = self.history.was_put_back();
        let at = pull_target(rule, put_back, pull_choice, lowest);
        let proving = pull_target(rule, put_back, None, lowest);
        Some(Pull { at, proving, goes_back: self.goes_back(rule, at) })
    }

    /// What a thermometer that read the pull would show minute by minute after it, so that in 19 cases
    /// of 20 it shows more. None if the core would not get there within the hours looked at.
    fn core_after(&self, pull: Temperature) -> Option<Vec<(Span, Temperature)>> {
        let rise = self.rise(pull)?;
        let low = |after: Span| {
            let core = rise.rest.core(after);
            let spread = rise_spread((core - pull).c());
            (after, core - TemperatureDifference::from_c(ONE_IN_TWENTY * spread))
        };
        let peak = minutes(rise.after / 60.0);
        let mut core: Vec<(Span, Temperature)> = (0..=STEPS).map(|i| low(STEP * i)).collect();
        let place = core.partition_point(|(after, _)| *after < peak);
        core.insert(place, low(peak));
        // What was read at the pull was read: it proves by itself if it is enough.
        if let Some(at_pull) = core.first_mut() {
            at_pull.1 = pull;
        }
        Some(core)
    }

    /// The rise after a pull, for the expected speed and offset.
    pub(super) fn rise(&self, pull: Temperature) -> Option<Rise> {
        self.traces.rise(pull, self.typical().1)
    }

    /// The chance that the peak after a pull is read below what proves at once.
    fn goes_back(&self, rule: ProofRule, pull: Temperature) -> Probability {
        let short = (rule.instant() - pull).c();
        if short <= 0.0 {
            return Probability::new(0.0);
        }
        let chance = self
            .rise(pull)
            .map_or(1.0, |rise| self.normal.below((short - rise.by) / rise_spread(rise.by)));
        Probability::new(chance)
    }
}

/// How far a reading after the pull may be off what the reading at the pull and the model's rise lead
/// to expect, as a standard deviation, K. The thermometer's constant error is in both readings.
fn rise_spread(by: f64) -> f64 {
    libm::sqrt(2.0 * POKE_SCATTER * POKE_SCATTER + RISE_SPREAD * RISE_SPREAD * by * by)
}
