//! What is offered beside one piece: of the one list, what can be done with that piece now.

use super::{Act, Doing, Duty};
use crate::piece::PieceId;
use crate::quantity::Moment;

/// The duties that can be done with one piece at a moment, each as it concerns that piece.
pub fn offers(duties: &[Duty], piece: PieceId, now: Moment) -> Vec<Duty> {
    // A raw piece can go on before its time.
    let offered = |duty: &&Duty| duty.is_due(now) || duty.act == Act::PutOn;
    let own = |duty: &&Duty| offered(duty) && duty.pieces.contains(&piece);
    duties.iter().filter(own).map(|duty| of_one(duty, piece)).collect()
}

/// The duty as it concerns one of its pieces alone. What is read is read in the duty's own order.
fn of_one(duty: &Duty, piece: PieceId) -> Duty {
    let typed = duty.doing().first().is_some_and(|doing| matches!(doing, Doing::TypeCore { .. }));
    if typed || duty.act == Act::Check {
        return duty.clone();
    }
    Duty { pieces: vec![piece], ..duty.clone() }
}
