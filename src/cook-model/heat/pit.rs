//! Surfaces a breast meets in a cook, as physics: air speed, humidity, radiation; and what else a kind of
//! pit is like.

use serde::{Deserialize, Serialize};

use super::surface::{Evaporation, Surface};
use super::units::{AreaMass, HeatTransferCoefficient, VapourPressure};
use crate::quantity::Span;

/// How a pit heats. Files hold these names, so a kind keeps its name for ever.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PitKind {
    /// An offset, or any pit with wood or charcoal to one side, natural draught: slow air.
    #[default]
    Indirect,
    /// A kettle with charcoal to one side: the same air under a lower lid.
    Kettle,
    /// A ceramic pit over a deflector: thick hot walls, hardly any draught, so that moisture stays.
    Ceramic,
    /// Pellets with a fan: brisk air.
    Pellet,
    /// Gas on one side: slow air, moist with what burning gas gives off.
    Gas,
    /// An electric cabinet: a small element, still air, nothing burns but a few chips.
    Electric,
    /// Charcoal under a pan of water: slow, moist air.
    Water,
    /// Charcoal below in an upright drum: slow air rising past the meat.
    Drum,
}

/// Emissivity of meat (textbook value, from memory; 0.74-0.78 is quoted too).
const MEAT_EMISSIVITY: f64 = 0.9;
/// Water lost per area after which a breast's surface evaporates half as fast. Fitted, with the
/// other defaults, to the worlds of `tests/worlds` (`worlds table 10 600`), and held to common practice: see
/// the checks of trade facts.
const HALVES_AFTER: AreaMass = AreaMass::from_kg_per_m2(0.048);

impl PitKind {
    /// All kinds, in the order they are offered: wood and charcoal first.
    pub const ALL: [Self; 8] = [
        Self::Indirect,
        Self::Kettle,
        Self::Ceramic,
        Self::Drum,
        Self::Water,
        Self::Pellet,
        Self::Gas,
        Self::Electric,
    ];

    /// Whether its owner puts wood or charcoal on. Pellets, gas and electricity come by themselves
    /// (common practice, no source).
    pub const fn is_fed(self) -> bool {
        !matches!(self, Self::Pellet | Self::Gas | Self::Electric)
    }

    /// Air coefficient, W/m2K, and vapour pressure, kPa.
    ///
    /// The coefficients are those of a flat plate 0.1 m long at 0.2-0.3 m/s with natural
    /// convection, at 0.1 m/s where there is hardly any draught, and near 1 m/s under a fan; the vapour
    /// pressures are those of air of a dew point of some 39 C, which burning and the meat itself give off;
    /// more where there is least air or gas burns, and a third of a litre an hour from a water pan besides.
    /// That of wood or charcoal was chosen by the worlds of `tests/worlds` (`worlds table 10 600`) and the
    /// others set beside it; all are this project's own estimates.
    const fn air(self) -> (f64, f64) {
        match self {
            Self::Indirect | Self::Kettle => (11.5, 7.0),
            Self::Ceramic => (10.0, 9.0),
            Self::Pellet => (15.0, 7.0),
            Self::Gas => (11.5, 9.0),
            Self::Electric => (10.0, 7.0),
            Self::Water => (11.5, 12.0),
            Self::Drum => (12.5, 7.0),
        }
    }

    /// The time constant with which what the meat feels comes back once the lid is down.
    ///
    /// Common practice, no source: an offset is back within five to ten minutes by its dial; walls of clay
    /// hold their heat, a burner is turned up, fresh air fans a drum's coals; a pan of water takes heat too, and
    /// a cabinet's element of some 800 W takes a quarter of an hour or more. The figure of an offset was chosen
    /// by the worlds of `tests/worlds` (`worlds table 10 600`), the others are this project's own estimates
    /// beside it.
    pub const fn lid_recovery(self) -> Span {
        match self {
            Self::Indirect | Self::Kettle => Span::minutes(5),
            Self::Ceramic | Self::Drum | Self::Pellet => Span::minutes(4),
            Self::Gas => Span::minutes(3),
            Self::Electric => Span::minutes(9),
            Self::Water => Span::minutes(6),
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
        Self::convective(HeatTransferCoefficient::from_w_per_m2k(8.0))
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
