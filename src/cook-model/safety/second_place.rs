//! What is asked of one who tried a second place after a reading that would prove the piece.

use serde::Serialize;

use super::rule::ProofRule;
use crate::quantity::{Temperature, TemperatureDifference};

/// A rule met by less than this is met by figures only: a spot next to it is often a few degrees
/// colder, and who looks for "no lower" sees it (our choice).
const NARROW: TemperatureDifference = TemperatureDifference::from_f(3.0);

/// How the second place is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SecondPlace {
    /// With one tap: it read no lower.
    NoLower,
    /// The lower of the two figures is typed.
    Figure,
}

impl SecondPlace {
    /// What is asked after one place read this, as far as it counts for a proof.
    pub fn after(reading: Temperature, rule: ProofRule) -> Self {
        if reading - rule.instant() < NARROW { Self::Figure } else { Self::NoLower }
    }
}
