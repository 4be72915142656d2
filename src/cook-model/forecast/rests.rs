//! What the core does after a pull at one temperature or another, and so at which one to pull.

use super::outcome::Probability;
use super::prior::{POKE_SCATTER, RISE_SPREAD};
use super::view::View;
use crate::heat::Trace;
use crate::history::PieceHistory;
use crate::quantity::{Span, Temperature, TemperatureDifference, minutes, to_seconds};
use crate::safety::{ProofRule, lowest_pull, pull_target};

/// Standard deviations below the mean that leave 5 % below.
const ONE_IN_TWENTY: f64 = 1.645;
/// And 20 %: the chance of going back that is taken for a pull that was told and met, rather than open the
/// lid again for a degree (our choice).
const ONE_IN_FIVE: f64 = 0.842;
/// The rest is looked at in steps of this.
const STEP: Span = Span::minutes(1);
/// And this many of them.
const STEPS: i32 = 45;

/// A piece is taken to be heated this many times as fast as its trace at the least and at the most: beyond
/// that the trace is another piece's.
const FASTER: (f64, f64) = (0.5, 2.0);
/// How many times the share by which it is heated faster the rise is larger: what it loses meanwhile it
/// loses all the same, so that the rise grows by more than what carries it (chosen by `worlds table 10 600`:
/// peaks are off by 1.7 F with 1, 1.6 with 1.5 and 2).
const CARRIES: f64 = 1.5;

/// How much a core rises at rest where its trace rises so much, having been heated so many times as fast as
/// that when it was pulled: what carries it over is the heat on its way in. By a trace that stood still then
/// nothing is known of that.
pub(super) fn carried(rise: f64, faster: f64) -> f64 {
    if rise <= 0.0 || !faster.is_finite() {
        return rise;
    }
    let (least, most) = FASTER;
    rise * (1.0 + CARRIES * (faster - 1.0)).clamp(least, most)
}

/// What happens after a pull.
pub(super) struct Rise {
    /// K.
    pub by: f64,
    /// s.
    pub after: f64,
    /// As its trace rests, from the pull on, and how many times as fast as that it was heated.
    rest: Trace,
    faster: f64,
}

impl Rise {
    fn of(rest: Trace, faster: f64) -> Self {
        let (after, peak) = rest.core_peak(Span::zero());
        let by = carried((peak - rest.core(Span::zero())).c(), faster);
        Self { by, after: to_seconds(after), rest, faster }
    }

    /// How much higher than at the pull the core is so long after it.
    pub(super) fn risen(&self, after: Span) -> TemperatureDifference {
        let rise = self.rest.core(after) - self.rest.core(Span::zero());
        TemperatureDifference::from_c(carried(rise.c(), self.faster))
    }
}

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
        let lowest_of = |short| lowest_pull(rule, tolerance, |pull| self.core_after(pull, short));
        let lowest = lowest_of(ONE_IN_TWENTY).map(|lowest| {
            // A reading tells of the rise too, and may so raise the pull that it has just met. A piece read
            // at what was told comes off by it, unless it then had to go back too often.
            let met = self.met().filter(|met| *met < lowest);
            met.filter(|met| lowest_of(ONE_IN_FIVE).is_some_and(|nearly| nearly <= *met))
                .unwrap_or(lowest)
        });
        let put_back = self.history.was_put_back();
        let at = pull_target(rule, put_back, pull_choice, lowest);
        let proving = pull_target(rule, put_back, None, lowest);
        Some(Pull { at, proving, goes_back: self.goes_back(rule, at) })
    }

    /// What it was read at last in this spell, in the whole degrees of a pull.
    fn met(&self) -> Option<Temperature> {
        let last = self.history.last_poke()?;
        Some(Temperature::from_f(last.temperature.f().floor()))
    }

    /// What a thermometer that read the pull would show minute by minute after it, less so many standard
    /// deviations. None if the core would not get there within the hours looked at.
    fn core_after(&self, pull: Temperature, less: f64) -> Option<Vec<(Span, Temperature)>> {
        let rise = self.rise(pull)?;
        let low = |after: Span| {
            let risen = rise.risen(after);
            let spread = rise_spread(risen.c());
            (after, pull + risen - TemperatureDifference::from_c(less * spread))
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

    /// The rise after a pull, for the expected speed and offset, and for the pace that the readings tell of.
    pub(super) fn rise(&self, pull: Temperature) -> Option<Rise> {
        let (speed, offset) = self.typical();
        let rest = self.traces.rest_after(pull, offset)?;
        let paces = self.traces.about(pull, speed).map(|at| self.evidence.late.paces(at))?;
        let faster = self.cells().map(|(cell, weight)| weight * paces[cell]).sum();
        Some(Rise::of(rest, faster))
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
