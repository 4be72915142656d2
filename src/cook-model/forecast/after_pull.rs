//! The core after a pull at one temperature or another, on the side that is unfavourable for
//! proof.

use super::pit_air;
use super::prior::{MISFIT, RISE_SPREAD};
use super::traces::{Setting, Traces};
use crate::history::History;
use crate::piece::PieceId;
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference, minutes};

/// Standard deviations below the mean that leave 5 % below.
const ONE_IN_TWENTY: f64 = 1.645;
/// No pull is hotter.
const HOTTEST_PULL: Temperature = Temperature::from_f(185.0);
/// The rest is looked at in steps of this.
const STEP: Span = Span::minutes(1);
/// And this many of them.
const STEPS: i32 = 45;

/// What the core of one piece does after a pull.
pub struct AfterPull {
    traces: Traces,
    /// Standard deviation of the core at the pull, K: model and thermometer.
    at_pull: f64,
}

/// Makes ready to ask what the core of a piece would do after a pull; none if it was not set out.
pub fn after_pull(history: &History, piece: PieceId, now: Moment) -> Option<AfterPull> {
    let mut piece = history.piece(piece)?.clone();
    // The traces are followed to a little above this.
    piece.pull_at = HOTTEST_PULL;
    let zero = history.first_on().unwrap_or(now);
    let pit = pit_air::leg(history, zero, now);
    let traces =
        Traces::new(&piece, &Setting { zero, now, pit: &pit, ambient: history.pit.ambient });
    // A maker's tolerance is taken as two standard deviations.
    let at_pull = libm::hypot(MISFIT, history.tolerances.instant_read.c() / 2.0);
    Some(AfterPull { traces, at_pull })
}

impl AfterPull {
    /// The core minute by minute after a pull at a temperature, so that in 19 cases of 20 it is
    /// hotter. None if the core would not get there within the hours looked at.
    pub fn core(&self, pull: Temperature) -> Option<Vec<(Span, Temperature)>> {
        let rise = self.traces.slow_rise(pull)?;
        let step = |i: i32| {
            let after = STEP * i;
            let core = rise.rest.core(after);
            let spread = libm::hypot(self.at_pull, RISE_SPREAD * (core - pull).c());
            (after, core - TemperatureDifference::from_c(ONE_IN_TWENTY * spread))
        };
        let peak = minutes(rise.after / 60.0);
        let mut core: Vec<(Span, Temperature)> = (0..=STEPS).map(step).collect();
        let at_peak = rise.rest.core(peak);
        let spread = libm::hypot(self.at_pull, RISE_SPREAD * rise.by);
        let place = core.partition_point(|(after, _)| *after < peak);
        core.insert(place, (peak, at_peak - TemperatureDifference::from_c(ONE_IN_TWENTY * spread)));
        Some(core)
    }
}
