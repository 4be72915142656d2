//! What to say beside chilling, storing and reheating. The local food code rules over all of it.

use crate::quantity::Temperature;

/// A caution. The screens say it in the person's language; the meaning is here.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum Caution {
    /// Leftovers: USDA advises 165 F. The FDA Food Code's "any temperature" is for food cooked and cooled
    /// properly and served at once to the consumer who ordered it, which a home kitchen is not.
    LeftoversTo165,
    /// Serve at once, or hold at 140 F or above, which USDA tells consumers (a food business: 135 F); and
    /// do not cool it a second time.
    ServeOrHoldHot,
    /// With what it brings it is between 41 and 135 F for more than four hours: thaw it first, or use a
    /// thinner bag.
    SlowToWarm,
    /// Vacuum-sealed: without air *Clostridium botulinum* can grow above 38 F, without a smell.
    /// Keep it at or below 38 F or frozen. The Food Code of 2022 lets a business under a plan keep such bags
    /// at 41 F for seven days, or at 34 F for thirty; 38 F is the older, stricter figure. To open the bag before it
    /// thaws is asked of fish alone (3-501.13). All from memory.
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

    /// Where it comes from: names and numbers alone, which stand in any language. Those of the Food Code
    /// are from memory.
    pub const fn source(self) -> &'static str {
        match self {
            Self::LeftoversTo165 => {
                "USDA FSIS, Leftovers and Food Safety; FDA Food Code 2022, 3-403.10, 3-403.11"
            }
            Self::ServeOrHoldHot => {
                "USDA FSIS, Leftovers and Food Safety; FDA Food Code 2022, 3-501.16"
            }
            Self::SlowToWarm => "FDA Food Code 2022, 3-501.19",
            Self::Vacuum => "FDA Food Code 2022, 3-502.12",
            Self::TwoHours | Self::TooLateIntoCold => "USDA FSIS, Danger Zone (40 °F - 140 °F)",
            Self::FirstStepSlow
            | Self::SecondStepSlow
            | Self::CoolingOver
            | Self::MiddleNotSeen => "FDA Food Code 2022, 3-501.14",
            Self::SlowToReheat => "FDA Food Code 2022, 3-403.11",
            Self::SlowToThaw => "USDA FSIS, The Big Thaw; FDA Food Code 2022, 3-501.13",
            Self::PastEatBy | Self::DaysUnknown => "FoodSafety.gov, Cold Food Storage Chart",
        }
    }
}
