//! The browser's services, one file each. Nothing else in the app calls them.

pub mod offline;
