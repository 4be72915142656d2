//! A plan once a wave went on later than it has it.

use super::timetable::Plan;
use crate::history::History;
use crate::quantity::Span;

impl Plan {
    /// The same plan where what is not on yet leaves the refrigerator and goes on as much later as the
    /// wave that last began: it waits for the same rack and fire. Nothing moves to earlier.
    #[must_use]
    pub fn as_late_as(mut self, history: &History) -> Self {
        let began = |piece| history.piece(piece).and_then(|history| history.on());
        let waves = self.pieces.iter();
        let begun =
            waves.filter_map(|planned| Some((planned.wave, began(planned.piece)? - planned.on)));
        let late = begun.max().map_or(Span::zero(), |(_, late)| late.max(Span::zero()));
        for planned in self.pieces.iter_mut().filter(|planned| began(planned.piece).is_none()) {
            planned.out_of_fridge += late;
            planned.on += late;
            planned.pull = planned.pull.map(|at| at + late);
            planned.rested += late;
        }
        self
    }
}
