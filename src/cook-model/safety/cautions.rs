//! What a person must be told besides what their readings show. The app words each.

use serde::Serialize;

/// One caution.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Caution {
    /// A forecast tells when to look; only readings show that a piece is safe.
    OnlyReadingsProve,
    /// Poultry is safe at once at 165 F in the thickest part.
    InstantKill,
    /// Each piece by itself, in at least two places; the lowest counts.
    EveryPiece,
    /// Hands, board, plate and thermometer clean between raw and cooked.
    CleanBetween,
    /// Local food codes come before anything here.
    LocalCodesFirst,
    /// For sale or catering, the practice that one's licence demands.
    LicensedPractice,
    /// The thermometer maker's instructions; check it in ice water and in boiling water.
    ThermometerMaker,
    /// Young children, pregnancy, older people, weak immune systems: higher care.
    HigherCare,
    /// What the app can know: what was typed, and a heat model with its own errors.
    WhatItKnows,
    /// What it cannot: the spot the probe was in, the place it was poked, the clock, the surface,
    /// what was done to the meat before and after.
    WhatItCannotKnow,
}

impl Caution {
    /// All, in the order in which they are to be read.
    pub const ALL: [Self; 10] = [
        Self::OnlyReadingsProve,
        Self::InstantKill,
        Self::EveryPiece,
        Self::CleanBetween,
        Self::LocalCodesFirst,
        Self::LicensedPractice,
        Self::ThermometerMaker,
        Self::HigherCare,
        Self::WhatItKnows,
        Self::WhatItCannotKnow,
    ];

    /// Where it comes from, where it has a source outside the app: names that stand in any language.
    pub const fn source(self) -> Option<&'static str> {
        match self {
            Self::InstantKill => {
                Some("FDA Food Code 2022, 3-401.11(A)(3); USDA FSIS, Safe Temperature Chart")
            }
            Self::CleanBetween | Self::HigherCare => Some("USDA FSIS, Keep Food Safe!"),
            _ => None,
        }
    }
}
