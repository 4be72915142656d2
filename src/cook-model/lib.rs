//! The cook as a log of entries, and everything that follows from it.
//!
//! Nothing here reads a clock, touches a browser or does I/O: every answer is a function of the
//! entries and of the moment asked about.
#![warn(missing_docs)]

pub mod piece;
pub mod quantity;
