//! What to say beside chilling, storing and reheating. The local food code rules over all of it.

use crate::quantity::Temperature;

/// A caution. The screens say it in the person's language; the meaning is here.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum Caution {
    /// Leftovers: USDA advises 165 F. The FDA Food Code lets food that was cooked and cooled
    /// properly be reheated to any temperature for serving at once, and asks 165 F for holding.
    LeftoversTo165,
    /// Food must not be held for long below 130 F: serve at once, or hold at 135 F or above.
    NoHoldBelow130,
    /// The core is under 130 F for more than four hours: thaw it first, or use a thinner bag.
    SlowToWarm,
    /// Vacuum-sealed: without air *Clostridium botulinum* can grow above 38 F, without a smell.
    /// Keep it at or below 38 F or frozen, and open the bag before it thaws.
    Vacuum,
    /// Get it into the cold within two hours of the pit, one hour above 90 F.
    TwoHours,
    /// It takes more than two hours from 135 F to 70 F: cut it, spread it thinner, or use ice.
    FirstStepSlow,
    /// It takes more than six hours from 135 F to 41 F in all.
    SecondStepSlow,
    /// Past its eat-by date: throw it away, whatever it smells like.
    PastEatBy,
}

impl Caution {
    /// What USDA advises for leftovers.
    pub const LEFTOVERS: Temperature = Temperature::from_f(165.0);

    /// Where it comes from.
    pub const fn source(self) -> &'static str {
        match self {
            Self::LeftoversTo165 => {
                "USDA consumer advice on leftovers; FDA Food Code 2022, 3-403.10 and 3-403.11"
            }
            Self::NoHoldBelow130 => "FDA Food Code 2022, 3-501.16 (hot holding)",
            Self::SlowToWarm => "FDA Food Code 2022, 3-501.19 (time as a control)",
            Self::Vacuum => {
                "FDA Food Code 2022, 3-502.12 and 3-501.13 (reduced oxygen packaging, thawing)"
            }
            Self::TwoHours => "USDA consumer advice (two-hour rule)",
            Self::FirstStepSlow | Self::SecondStepSlow => "FDA Food Code 2022, 3-501.14 (cooling)",
            Self::PastEatBy => "FoodSafety.gov cold food storage chart",
        }
    }
}
