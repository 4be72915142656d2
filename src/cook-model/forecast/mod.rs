//! What is likely to happen to each piece, and how sure that is.

mod outcome;

pub use outcome::{
    Band, Check, Forecast, PAST_BY, Peak, PieceForecast, Probability, Seating, Surprise,
};
