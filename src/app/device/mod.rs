//! The browser's services, one file each. Nothing else in the app calls them.

pub mod clock;
pub mod identity;
pub mod offline;
pub mod prefs;
mod small_store;
pub mod storage;
pub mod visibility;
