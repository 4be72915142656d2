//! Before the cook and after the rest: rub and brine; cooked weight, portions and what is in them;
//! bags, their labels, and the stock of them in the refrigerator and freezer.
//!
//! Everything here is advice from published figures and the cook's own weighings. Nothing in this
//! room says that a piece is safe.

pub mod amounts;
mod area;
pub mod brine;
pub mod card;
pub mod card_limit;
pub mod caution;
pub mod chill;
pub mod cooked_weight;
pub mod form;
pub mod label_sheet;
pub mod log;
pub mod nutrition;
pub mod packing_order;
mod portion_search;
mod portion_seed;
pub mod portions;
pub mod qr;
pub mod reheat;
pub mod rub;
pub mod shape;
pub mod solution;
pub mod spice;
pub mod storage;
pub mod thaw;

pub use area::surface_area;
