//! What is under way keeps its place: a surprising reading is settled, and a round is gone through,
//! before anything else is asked.

use super::{Act, Duty, Why, fire, on_pit};
use crate::cook::{Round, Seen};
use crate::history::PieceHistory;
use crate::piece::PieceId;
use crate::quantity::Span;

/// In a round the pit is read too if it is to be read within this, before the lid goes up.
const PIT_READ_WITHIN: Span = Span::minutes(5);

/// The reading to ask about, if there is one.
pub(super) fn question(seen: &Seen) -> Option<Duty> {
    let surprise = seen.state.question(seen.forecast.as_ref()?)?;
    let reading = seen.state.reading(surprise.entry)?;
    let why = Why::Reading { reading: reading.entry, shown: surprise.read };
    let act = Act::Answer { reading: reading.entry };
    Some(Duty::of(act, vec![surprise.piece], reading.at, why))
}

/// While a round is under way, what belongs to it is all that is due.
pub(super) fn give_way(seen: &Seen, all: &mut Vec<Duty>) {
    let Some(round) = seen.state.round(seen.at) else { return };
    let own = |duty: &Duty| {
        duty.from <= seen.at && matches!(duty.act, Act::Pull | Act::Reseat | Act::Answer { .. })
    };
    let next = next(seen, round);
    if next.is_none() && !all.iter().any(own) {
        return;
    }
    for duty in all.iter_mut().filter(|duty| !own(duty)) {
        duty.from = duty.from.max(round.lapses());
    }
    all.retain(|duty| !duty.is_empty());
    all.extend(next);
}

/// While the lid is up, what is to be read within this is read too.
const WHILE_UP: Span = Span::minutes(3);

/// The next piece to read in a round: one of its own, or one that came due on the way.
fn next_piece(seen: &Seen, round: &Round) -> Option<PieceId> {
    let is_left = |piece: &PieceId| {
        let on = seen.history(*piece).is_some_and(PieceHistory::is_on);
        on && !round.answered.contains(piece)
    };
    round.pieces.iter().copied().find(is_left).or_else(|| {
        let check = on_pit::check(seen).filter(|_| !fire::is_down(seen))?;
        let due = Some(check).filter(|check| check.from <= seen.at + WHILE_UP)?;
        due.pieces.into_iter().find(is_left)
    })
}

/// The next thing to read in a round.
fn next(seen: &Seen, round: &Round) -> Option<Duty> {
    let piece = next_piece(seen, round)?;
    let untouched = round.answered.is_empty();
    let (act, pieces) = if untouched && fire::is_to_be_read(seen, round.at + PIT_READ_WITHIN) {
        (Act::ReadPit, Vec::new())
    } else {
        (Act::Read, vec![piece])
    };
    let duty = Duty::of(act, pieces, round.last_tap, Why::Usual);
    Some(Duty { until: Some(round.lapses()), ..duty })
}
