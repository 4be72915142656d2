//! What is in the refrigerator and the freezer: bags outlive the cook they came from.
//!
//! Their own log, kept as a cook's is: entries are only ever added, undoing is one more entry, and
//! two phones' logs can be merged.

mod entry;
mod fold;
mod log;
mod reminders;

pub use entry::{Bag, BagId, StockEntry, StockWhat, VERSION};
pub use fold::{BagState, Ended, Ending, Ignored, Problem, Stock, fold};
pub use log::{SetAside, StockLog};
pub use reminders::{Reminder, ReminderKind, reminders};
