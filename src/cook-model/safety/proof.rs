use serde::{Deserialize, Serialize};

use crate::history::{EntryId, PieceHistory};
use crate::quantity::{Moment, Temperature};

/// The lowest temperature that proves poultry at once: 165 F in the thickest part.
/// Source: FDA Food Code 2022, 3-401.11(A)(3); USDA consumer advice for all poultry.
pub const INSTANT_KILL: Temperature = Temperature::from_f(165.0);

/// In how many places of the thickest part a piece must be tried before the lowest proves it.
const PLACES_NEEDED: u8 = 2;

/// The rule by which readings prove a piece.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ProofRule {
    /// 165 F read in the thickest part, the lowest of at least two places.
    #[default]
    Instant,
    /// The same with a higher figure of the cook's own; a lower one counts as 165 F.
    Stricter {
        /// The cook's own figure.
        #[serde(rename = "at_least_c")]
        at_least: Temperature,
    },
}

impl ProofRule {
    /// The temperature that proves a piece at once under this rule.
    pub fn instant(self) -> Temperature {
        match self {
            Self::Instant => INSTANT_KILL,
            Self::Stricter { at_least } => at_least.max(INSTANT_KILL),
        }
    }
}

/// The reading that proved a piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Proof {
    /// The entry that holds it.
    pub entry: EntryId,
    /// When it was read.
    pub at: Moment,
    /// What was read.
    pub temperature: Temperature,
}

/// The proof of a piece under a rule, if its own readings since it last went on give one.
///
/// A piece that was put back must be proved again: what was read before says nothing of what
/// was done to it in between.
pub fn prove(piece: &PieceHistory, rule: ProofRule) -> Option<Proof> {
    let since = piece.spells.last()?.on;
    piece
        .readings
        .iter()
        .filter(|reading| reading.at >= since && reading.places >= PLACES_NEEDED)
        .find(|reading| reading.temperature >= rule.instant())
        .map(|reading| Proof {
            entry: reading.entry,
            at: reading.at,
            temperature: reading.temperature,
        })
}
