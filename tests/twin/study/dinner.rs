//! What a cook with the app does about a dinner that may be late.

use cook_model::cook::{Log, fold};
use cook_model::plan::{Move, levers, outlook};
use cook_model::quantity::{Moment, Temperature};

use super::model::Model;

/// The temperature to which the app offers first to raise the pit, if it does. Everything is on the pit
/// or was, so that no plan is asked.
pub(super) fn raise_to(log: &Log, now: Moment) -> Option<Temperature> {
    let state = fold(log);
    let habits = &state.settings.habits;
    let forecast = Model::forecast(log, now);
    let standing = outlook(&state.history, &forecast, None, habits, state.settings.dinner?)?;
    match levers(&state.history, &forecast, None, habits, &standing).into_iter().next()?.action {
        Move::RaisePit { to } => Some(to),
        _ => None,
    }
}
