//! The browser's services, one file each. Nothing else in the app calls them.

pub mod alarm_test;
pub mod alarms;
mod badge;
pub mod clock;
pub mod drafts;
pub mod feature;
pub mod files;
pub mod finger;
pub mod identity;
pub mod media;
pub mod notify;
pub mod offline;
pub mod prefs;
pub mod print;
pub mod second_thread;
pub mod site_file;
pub mod small_store;
pub mod sound;
pub mod speech;
pub mod storage;
pub mod update;
mod vibrate;
pub mod visibility;
pub mod wake_lock;
mod windows;
