//! Meat that freezes and thaws: its heat content, and the conduction of heat through it.
//!
//! The heat model follows unfrozen meat only. Here a bag may come from the freezer: its ice melts
//! over a range of temperatures below the initial freezing point, taking up most of the heat there.

mod meat;
mod slab;

pub use meat::{FreezingMeat, Frozen, HeatByMass, Unfrozen};
pub use slab::{Bath, Layer};
