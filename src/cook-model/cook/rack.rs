//! Where each piece lies, so that the cook knows which is which: by its place, in pull order from the
//! front.

use super::CookState;
use crate::history::PieceHistory;
use crate::piece::PieceId;
use crate::quantity::Length;
use crate::sorting::sort_by;

/// So many pieces lie side by side.
pub const ACROSS: usize = 4;

impl CookState {
    /// The pieces in the order in which they lie, from the front left on, row by row: those that went on
    /// earlier first, and of those that went on together the thinnest, which comes off first, at the
    /// front. It is told by what was known when they went on, so that no place moves while they cook.
    pub fn rack_order(&self) -> Vec<PieceId> {
        let mut lying: Vec<&PieceHistory> =
            self.history.pieces.iter().filter(|piece| piece.packed.is_none()).collect();
        let wave = |piece: &PieceHistory| piece.on().map_or((1, None), |on| (0, Some(on)));
        let thickness = |piece: &PieceHistory| -> Length { piece.piece.thickness() };
        sort_by(&mut lying, |a, b| {
            let by_size = thickness(a).mm().total_cmp(&thickness(b).mm());
            wave(a).cmp(&wave(b)).then(by_size).then(a.id.cmp(&b.id))
        });
        lying.into_iter().map(|piece| piece.id).collect()
    }
}
