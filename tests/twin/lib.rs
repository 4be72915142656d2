//! Synthetic cooks from a second simulator, to try the forecasts against.
//!
//! It shares no code with cook-model's heat model or forecast, and its physics differs on purpose: a
//! forecast that is only ever tried on its own equations proves nothing.

pub mod breast;
pub mod cache;
pub mod chart;
pub mod cook;
pub mod cooks;
pub mod cores;
pub mod diary;
pub mod meat;
pub mod piece;
pub mod pit;
pub mod record;
pub mod solid;
pub mod study;
pub mod surface;
pub mod thermometer;
