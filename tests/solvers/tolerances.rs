//! The tolerances at which each method is just within 0.1 F of the converged solution.

use cook_model::quantity::TemperatureDifference;

use super::Method;

/// Each method with the largest tolerance that serves.
pub const TIMED: [(Method, TemperatureDifference); 4] = [
    (Method::Bdf, TemperatureDifference::from_c(0.09)),
    (Method::Radau5, TemperatureDifference::from_c(5.0)),
    (Method::Kvaerno, TemperatureDifference::from_c(1.05)),
    (Method::DormandPrince, TemperatureDifference::from_c(0.145)),
];
