//! Synthetic cooks from a second simulator, to try the forecasts against.
//!
//! It shares no code with cook-model's heat model or forecast, and its physics differs on purpose: a
//! forecast that is only ever tried on its own equations proves nothing.

pub mod solid;
