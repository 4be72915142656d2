//! What is to be done with pieces that were served or packed.

use super::{Act, Duty, Why};
use crate::cook::{PieceState, Seen};
use crate::history::PieceHistory;

/// To throw away what no reading proves, or not any more. A limit that ran out asks so by itself, and a
/// reading that does not fit is asked about first.
pub(super) fn unproved(seen: &Seen, own: &PieceState, history: &PieceHistory) -> Option<Duty> {
    let forecast = seen.forecast.as_ref()?;
    let asked = seen.state.question(forecast).is_some_and(|asked| asked.piece == history.id);
    let lost = own.is_packed_unproved() && own.run_out.is_none() && !history.discarded && !asked;
    let of = |from| Duty::of(Act::Discard, vec![history.id], from, Why::Unproved);
    lost.then_some(history.packed_at).flatten().map(of)
}
