//! What is to be done before a piece is on: to tell what is cooked, the chores of the plan, to put on.

use super::{Act, Duty, Why};
use crate::cook::{Chore, Seen, Stage};
use crate::quantity::Moment;

/// The chores of the plan that were not done, each with its time, until the first piece is on.
pub fn chores_before(seen: &Seen) -> Vec<(Chore, Moment)> {
    let begun = seen.state.history.first_on().is_some();
    let Some(plan) = seen.plan.as_ref().filter(|_| !begun) else { return Vec::new() };
    let planned = [
        (Chore::OutOfFridge, plan.out_of_fridge),
        (Chore::Season, plan.season),
        (Chore::LightFire, plan.light),
    ];
    planned.into_iter().filter(|(chore, _)| seen.state.done(*chore).is_none()).collect()
}

pub(super) fn duties(seen: &Seen) -> Vec<Duty> {
    let of = |act, pieces, from| Duty::of(act, pieces, from, Why::Usual);
    if seen.state.pieces.is_empty() {
        return vec![of(Act::AddPieces, Vec::new(), seen.at)];
    }
    let chores = chores_before(seen).into_iter();
    let chores = chores.map(|(chore, due)| of(Act::Chore { chore }, Vec::new(), due));
    // Without a plan raw pieces go on as soon as the cook likes.
    let put_on = seen
        .state
        .at_stage(Stage::Raw)
        .into_iter()
        .map(|piece| of(Act::PutOn, vec![piece], seen.planned_on(piece).unwrap_or(seen.at)));
    chores.chain(put_on).collect()
}
