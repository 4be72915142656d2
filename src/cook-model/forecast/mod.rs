//! What is likely to happen to each piece, and how sure that is.

mod outcome;

pub use outcome::{Band, Forecast, Peak, PieceForecast, Probability, Seating};
