//! The tolerances at which each method's trace is just within 0.1 F of the converged solution.

use cook_model::quantity::TemperatureDifference;

use super::Method;

/// Each method with the largest tolerance that serves.
pub const TIMED: [(Method, TemperatureDifference); 3] = [
    (Method::Radau5, TemperatureDifference::from_c(20.0)),
    (Method::Kvaerno, TemperatureDifference::from_c(0.8)),
    (Method::DormandPrince, TemperatureDifference::from_c(0.145)),
];

/// What backward differentiation is timed at although its trace is not within 0.1 F even then: its
/// steps are, but this crate's values between them are wrong by more.
pub const TIMED_BUT_WRONG: (Method, TemperatureDifference) =
    (Method::Bdf, TemperatureDifference::from_c(1e-6));
