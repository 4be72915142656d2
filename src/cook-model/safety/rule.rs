use serde::{Deserialize, Serialize};

use super::dwell::{FatColumn, LOWEST_HELD};
use crate::quantity::Temperature;

/// The lowest temperature that proves poultry at once: 165 F in the thickest part.
/// Source: FDA Food Code 2022, 3-401.11(A)(3); USDA consumer advice for all poultry.
pub const INSTANT_KILL: Temperature = Temperature::from_f(165.0);

/// The rule by which readings prove a piece.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(remote = "Self", rename_all = "snake_case")]
#[non_exhaustive]
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
    /// A lower temperature held long enough between readings; 165 F proves at once here too.
    /// To be offered only with its [`RuleCaution`].
    Held {
        /// The column of the table.
        #[serde(default)]
        fat: FatColumn,
    },
}

crate::tagged::stored_with_kind!(ProofRule);

/// What a person must be told before choosing a rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum RuleCaution {
    /// The agency counts dry-heat barbecue without humidity control as not validated for the
    /// surface: a dry surface lets *Salmonella* stand more heat than the table allows for.
    /// Source: FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A, 2021),
    /// Table 5, gap 3.
    SurfaceNotValidated,
}

impl ProofRule {
    /// The temperature that proves a piece at once under this rule.
    pub fn instant(self) -> Temperature {
        match self {
            Self::Instant | Self::Held { .. } => INSTANT_KILL,
            Self::Stricter { at_least } => at_least.max(INSTANT_KILL),
        }
    }

    /// The coldest reading on which a proof under this rule can rest.
    pub fn proves_from(self) -> Temperature {
        match self {
            Self::Held { .. } => LOWEST_HELD,
            Self::Instant | Self::Stricter { .. } => self.instant(),
        }
    }

    /// Where the rule's figures come from, for the person to look up.
    pub const fn source(self) -> &'static str {
        match self {
            Self::Instant => {
                "FDA Food Code 2022, 3-401.11(A)(3); USDA FSIS, Safe Temperature Chart"
            }
            // The cook's own figure is never below this rule's.
            Self::Stricter { .. } => "FDA Food Code 2022, 3-401.11(A)(3)",
            Self::Held { .. } => {
                "USDA FSIS, Time-Temperature Tables for Cooking Ready-to-Eat Poultry Products; Cooking \
                 Guideline for Meat and Poultry Products (Revised Appendix A, 2021)"
            }
        }
    }

    /// What a person must be told before choosing it.
    pub const fn caution(self) -> Option<RuleCaution> {
        match self {
            Self::Held { .. } => Some(RuleCaution::SurfaceNotValidated),
            Self::Instant | Self::Stricter { .. } => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_rule_proves_at_once_below_165_f() {
        for f in [f64::NEG_INFINITY, 0.0, 140.0, 164.9, f64::NAN] {
            let rule = ProofRule::Stricter { at_least: Temperature::from_f(f) };
            assert_eq!(rule.instant(), INSTANT_KILL);
        }
        let own = Temperature::from_f(170.0);
        assert_eq!(ProofRule::Stricter { at_least: own }.instant(), own);
        assert_eq!(ProofRule::Held { fat: FatColumn::Five }.instant(), INSTANT_KILL);
    }
}
