//! What outlives a cook: the bags in the refrigerator and the freezer, what pieces weighed before
//! and after, the rubs.
//!
//! A log of its own, kept as a cook's is.

mod entry;
pub mod export;
mod fold;
mod reminders;

pub use entry::{Bag, BagId, Brings, KitchenEntry, KitchenLog, KitchenWhat};
pub use fold::{BagState, Ended, Ending, Ignored, Kitchen, Problem, fold};
pub use reminders::{Reminder, ReminderKind, reminders};
