//! The cook as a log of entries, and everything that follows from it.
//!
//! Nothing here reads a clock, touches a browser or does I/O: every answer is a function of the
//! entries and of the moment asked about.
//!
//! The rooms, each using only those after it: [`cook`] (the log, its fold), [`forecast`],
//! [`kitchen`], [`safety`], [`heat`], [`taps`], [`mod@file`], [`log`], [`history`], [`pack`], [`piece`], [`quantity`].
#![warn(missing_docs)]

pub mod calendar;
pub mod cook;
mod dial;
pub mod file;
pub mod forecast;
pub mod heat;
pub mod history;
pub mod kitchen;
pub mod log;
pub mod pack;
pub mod piece;
pub mod plan;
pub mod quantity;
pub mod safety;
pub mod sorting;
mod tagged;
pub mod taps;
