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
    /// With what it brings it is between 41 and 130 F for more than four hours: thaw it first, or use a
    /// thinner bag.
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
    /// It came too late into the cold: throw it away.
    TooLateIntoCold,
    /// It cooled too slowly already: throw it away.
    CoolingOver,
    /// It is under 70 F after more than two hours, and nothing here shows that it was in time.
    MiddleNotSeen,
    /// Reheating takes more than two hours.
    SlowToReheat,
    /// It takes more than three hours to thaw in water that is warmer than a refrigerator.
    SlowToThaw,
    /// The label does not say for how many days it was in the refrigerator.
    DaysUnknown,
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
            Self::TwoHours | Self::TooLateIntoCold => "USDA consumer advice (two-hour rule)",
            Self::FirstStepSlow
            | Self::SecondStepSlow
            | Self::CoolingOver
            | Self::MiddleNotSeen => "FDA Food Code 2022, 3-501.14 (cooling)",
            Self::SlowToReheat => {
                "FDA Food Code 2022, 3-403.11 (reheating for hot holding within 2 hours)"
            }
            Self::SlowToThaw => {
                "USDA consumer advice on thawing (two to three hours in cold water at the most); FDA \
                 Food Code 2022, 3-501.13 (from memory)"
            }
            Self::PastEatBy | Self::DaysUnknown => "FoodSafety.gov cold food storage chart",
        }
    }
}
