//! Plans back from dinner, kept against cooks that follow them.

use cook_model::cook::{What, fold};
use cook_model::plan::plan;
use cook_model::quantity::{Temperature, to_seconds};

use crate::cook::Setup;
use crate::diary::{Diary, moment};

use super::advice;

/// Dinner is this long after the plan is made, s: far enough for any cook.
const AHEAD: f64 = 8.0 * 3600.0;
/// Pulled on readings of 165 F, C, a piece is proved as it comes off.
const PROVING: f64 = 133.0 / 1.8 + 1e-9;

/// What came of one plan.
#[derive(Clone, Copy, Debug)]
pub struct Kept {
    /// The chance of dinner being ready in time that the plan told.
    pub told: f64,
    /// Whether every piece was proved, rested and carved by dinner.
    pub in_time: bool,
    /// How long before dinner it was, s; negative where it was late.
    pub early: f64,
    /// How often the pit was raised on the way.
    pub raised: usize,
}

/// Plans a cook back from dinner, puts its pieces on when the plan says, follows the advice, raises the
/// pit where the app offers that for dinner's sake, and sees whether dinner is ready in time. None where
/// the plan could not be made.
pub fn keep(setup: &Setup) -> Option<Kept> {
    let setup = Setup { pull_at: PROVING, ..setup.clone() };
    let mut diary = Diary::new(&setup);
    let dinner = moment(AHEAD);
    diary.write(-1.0, What::DinnerSet { at: Some(dinner) });
    let target = Temperature::from_c(PROVING);
    diary.write(-1.0, What::PullTargetSet { piece: None, target });
    let state = fold(diary.log());
    let plan = plan(&state.plan_request(moment(0.0))?).ok()?;
    let habits = state.settings.habits;
    let allowed = to_seconds(dinner - plan.first_on - habits.rest - habits.carving);
    let outcome = advice::follow_for(&setup, Some(to_seconds(dinner - plan.first_on)));
    let rest = to_seconds(habits.rest);
    let early = allowed - outcome.last_off.max(outcome.last_proved - rest);
    let all_proved = outcome.left == 0 && outcome.proved == outcome.pieces;
    Some(Kept {
        told: plan.in_time.value(),
        in_time: all_proved && early >= 0.0,
        early,
        raised: outcome.raised,
    })
}
