//! What is told of the open cook, dated by its clock: the phone's, or the demo's.

use cook_model::cook::What;
use cook_model::quantity::Moment;

use super::OpenCook;

impl OpenCook {
    /// Tells the cook what happened just now. It is in the log, and on the screen, once it is stored.
    pub fn record(self, what: What) {
        self.record_all(vec![what]);
    }

    /// Tells the cook several things that happened just now, undone together.
    pub fn record_all(self, what: Vec<What>) {
        let now = self.ticking.read();
        self.record_at(what.into_iter().map(|what| (now, what)).collect());
    }

    /// Whether something told is not in the log yet.
    pub fn has_unwritten(self) -> bool {
        self.journal.has_untold()
    }

    /// Tells the cook several things now, each of which happened at its own moment, undone together.
    pub fn record_at(self, happened: Vec<(Moment, What)>) {
        self.journal.tell(self.ticking.read(), happened);
    }

    /// The moment at which something told just now would be dated.
    pub fn moment(self) -> Moment {
        self.ticking.read()
    }

    /// Takes back what was done last.
    pub fn undo(self) {
        self.journal.undo(self.ticking.read());
    }

    /// Gives back what was taken back last.
    pub fn redo(self) {
        self.journal.redo(self.ticking.read());
    }
}
