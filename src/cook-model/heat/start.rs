//! The state a piece starts in.

use thiserror::Error;

use crate::quantity::Temperature;

/// The warmest raw meat may start at, C: warmer is a mistyped value or not raw.
const WARMEST: Temperature = Temperature::from_c(35.0);

/// The state a piece starts in: one temperature throughout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Start(Temperature);

/// Why a start temperature was refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Error)]
#[non_exhaustive]
pub enum StartProblem {
    /// Below 0 C, or not a number.
    #[error(
        "the piece is frozen: thaw it in the refrigerator first. A start temperature from 32 F \
         (0 C) to 95 F (35 C) is accepted"
    )]
    Frozen,
    /// Above 35 C.
    #[error(
        "that is too warm for a raw piece. A start temperature from 32 F (0 C) to 95 F (35 C) is \
         accepted"
    )]
    TooWarm,
}

impl Start {
    /// The same temperature throughout, as after a night in the refrigerator.
    ///
    /// # Errors
    /// Below 0 C the piece is frozen, and above 35 C it is no raw piece.
    pub fn even(temperature: Temperature) -> Result<Self, StartProblem> {
        if temperature > WARMEST {
            Err(StartProblem::TooWarm)
        } else if temperature >= Temperature::from_c(0.0) {
            Ok(Self(temperature))
        } else {
            Err(StartProblem::Frozen)
        }
    }

    /// A cooked piece, at whatever temperature it is: for chilling and reheating.
    pub const fn cooked(temperature: Temperature) -> Self {
        Self(temperature)
    }

    /// The temperature throughout.
    pub const fn temperature(self) -> Temperature {
        self.0
    }
}
