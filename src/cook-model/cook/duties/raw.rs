//! What is to be done before a piece is on: to tell what is cooked, the chores of the plan, to take it
//! from the refrigerator with its wave, to put it on.

use super::{Act, Duty, Why};
use crate::cook::{Chore, Seen, Stage};
use crate::plan::PiecePlan;
use crate::quantity::Moment;

/// The chores of the plan that were not done, each with its time, until the first piece is on.
pub fn chores_before(seen: &Seen) -> Vec<(Chore, Moment)> {
    let begun = seen.state.history.first_on().is_some();
    let Some(plan) = seen.plan.as_ref().filter(|_| !begun) else { return Vec::new() };
    let planned = [(Chore::Season, plan.season), (Chore::LightFire, plan.light)];
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
    chores.chain(take_out(seen)).chain(put_on).collect()
}

/// To take from the refrigerator what was not out of it yet, a wave at a time: what is taken out with an
/// earlier one lies raw for too long.
fn take_out(seen: &Seen) -> Vec<Duty> {
    let Some(plan) = &seen.plan else { return Vec::new() };
    let is_in = |planned: &PiecePlan| {
        let known = seen.state.piece(planned.piece);
        known.is_some_and(|(own, history)| own.stage == Stage::Raw && history.was_never_out())
            && planned.out_of_fridge < planned.on
    };
    let trays = plan.trays(is_in).into_iter();
    trays.map(|(at, pieces)| Duty::of(Act::TakeOut, pieces, at, Why::Usual)).collect()
}
