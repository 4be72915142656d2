//! The forecast against the truth: error and coverage by what was read, and probe placement.

pub mod conduct;
pub mod forecaster;
pub mod model;
pub mod rules;
pub mod seating;
pub mod table;

use crate::cook::Setup;
use crate::record::Record;

/// The value that a share of a sorted list lies under.
pub fn quantile(sorted: &[f64], share: f64) -> f64 {
    if sorted.is_empty() {
        return f64::NAN;
    }
    sorted[((sorted.len() - 1) as f64 * share).round() as usize]
}

/// The constant of the fixed-minutes rule that suits these cooks best, minutes per kg: the median
/// over all pieces.
pub fn best_minutes_per_kg(cooks: &[(Setup, Record)]) -> f64 {
    let mut rates: Vec<f64> = cooks
        .iter()
        .flat_map(|(setup, record)| setup.told.iter().zip(&record.pull))
        .map(|(told, pull)| pull / 60.0 / told.weight)
        .filter(|rate| rate.is_finite())
        .collect();
    rates.sort_by(f64::total_cmp);
    quantile(&rates, 0.5)
}
