//! Forecasts held against what came of the cooks: who is judged, in which state, and the tables.

pub mod conducted;
pub mod judged;
pub mod kept;
pub mod table;
