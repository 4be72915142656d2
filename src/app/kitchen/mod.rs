//! The kitchen: what is before the cook and after the rest. Its log outlives every cook.

mod day;
mod dock;
mod draft;
mod label;
mod numbers;
mod open;
mod reminders;
pub mod words;

pub use day::{Day, PlannedBag, bags_of, day, plain, to_come};
pub use dock::KitchenDock;
pub use draft::{Draft, Goes, LotDraft, Wanted};
pub use label::{Label, label_of};
pub use numbers::{Count, Plain};
pub use open::{OpenKitchen, open_kitchen};
pub use reminders::reminder_file;
