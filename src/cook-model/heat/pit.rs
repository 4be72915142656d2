//! Surfaces a breast meets in a cook, as physics: air speed, humidity, radiation.

use serde::{Deserialize, Serialize};

use super::surface::{Evaporation, Surface};
use super::units::{AreaMass, HeatTransferCoefficient, VapourPressure};

/// How a pit heats.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PitKind {
    /// Wood or charcoal to one side, natural draught: slow air.
    #[default]
    Indirect,
    /// Pellets with a fan: brisk air.
    Pellet,
    /// Gas on one side: slow air, moist with what burning gas gives off.
    Gas,
    /// Charcoal below in an upright drum: slow air rising past the meat.
    Drum,
}

/// Emissivity of meat (textbook value, from memory; 0.74-0.78 is quoted too).
const MEAT_EMISSIVITY: f64 = 0.9;
/// Water lost per area after which a breast's surface evaporates half as fast. Fitted, with the
/// other defaults, to common practice: see the crate's check of trade facts.
const HALVES_AFTER: AreaMass = AreaMass::from_kg_per_m2(0.025);

impl PitKind {
    /// Air coefficient, W/m2K, and vapour pressure, kPa.
    ///
    /// The coefficients are those of a flat plate 0.1 m long at 0.3-0.5 m/s with natural
    /// convection, and 1 m/s under a fan; the vapour pressures follow from a mass balance of what
    /// the fuel's burning gives off, thinned with air. Both are this project's own estimates.
    const fn air(self) -> (f64, f64) {
        match self {
            Self::Indirect => (13.5, 4.0),
            Self::Pellet => (18.0, 4.0),
            Self::Gas => (13.5, 5.0),
            Self::Drum => (15.0, 4.0),
        }
    }
}

impl Surface {
    /// In a pit at work.
    pub const fn pit(kind: PitKind) -> Self {
        let (h, vapour) = kind.air();
        Self {
            convection: HeatTransferCoefficient::from_w_per_m2k(h),
            emissivity: MEAT_EMISSIVITY,
            evaporation: Some(Evaporation {
                vapour: VapourPressure::from_kpa(vapour),
                halves_after: HALVES_AFTER,
            }),
        }
    }

    /// Resting under loose foil on a board: a layer of air, shiny foil, still air, each resisting
    /// in series over the covered part, more at the gaps; too humid below to evaporate.
    pub const fn under_foil() -> Self {
        Self::convective(HeatTransferCoefficient::from_w_per_m2k(7.0))
    }

    /// Resting uncovered on a board: still air, radiation, what drying surface is left.
    pub const fn uncovered() -> Self {
        Self {
            convection: HeatTransferCoefficient::from_w_per_m2k(4.5),
            emissivity: MEAT_EMISSIVITY,
            evaporation: Some(Evaporation {
                vapour: VapourPressure::from_kpa(1.2),
                halves_after: HALVES_AFTER,
            }),
        }
    }

    /// In a stirred water bath.
    pub const fn water_bath() -> Self {
        Self::convective(HeatTransferCoefficient::from_w_per_m2k(95.0))
    }
}
