//! What outlives a cook: the bags in the refrigerator and the freezer, what pieces weighed before
//! and after, the rubs.
//!
//! A log of its own, kept as a cook's is: entries are only ever added, undoing is one more entry, and
//! two phones' logs can be merged.

mod entries;
mod entry;
mod fold;
mod reminders;

pub use entries::{KitchenLog, SetAside};
pub use entry::{Bag, BagId, KitchenEntry, KitchenWhat, VERSION};
pub use fold::{BagState, Ended, Ending, Ignored, Kitchen, Problem, fold};
pub use reminders::{Reminder, ReminderKind, reminders};
