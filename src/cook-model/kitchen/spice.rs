//! What goes into a rub, and what a spoon of it weighs.

use serde::{Deserialize, Serialize};

use super::amounts::{Fraction, Volume};
use crate::quantity::Mass;

/// What an ingredient is, which gives its weight by the spoon and its salt.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(remote = "Self", rename_all = "snake_case")]
#[non_exhaustive]
pub enum Spice {
    /// Fine salt.
    TableSalt,
    /// Coarse salt of dense grains.
    CoarseSalt,
    /// Salt of light, hollow flakes.
    FlakeSalt,
    /// White sugar.
    Sugar,
    /// Brown sugar, packed.
    BrownSugar,
    /// Paprika, sweet or smoked.
    Paprika,
    /// Ground black pepper.
    BlackPepper,
    /// Garlic powder.
    GarlicPowder,
    /// Onion powder.
    OnionPowder,
    /// Chilli powder.
    ChilliPowder,
    /// Ground cumin.
    Cumin,
    /// Ground cayenne.
    Cayenne,
    /// Mustard powder.
    MustardPowder,
    /// Any other ground spice without salt.
    Other,
    /// A blend that was bought or made before.
    Blend {
        /// How much of it is salt.
        salt: Fraction,
    },
}

crate::tagged::stored_with_kind!(Spice);

impl Spice {
    /// Weight of a level teaspoon, g.
    ///
    /// Salts 6, 4.8 and 2.8 g, pepper and paprika 2.3 g, ground spices in general 2.0-2.5 g (kitchen
    /// conversion charts, several that agree); sugars and the other powders from memory of the
    /// household weights in USDA SR28.
    const fn grams_a_teaspoon(self) -> f64 {
        match self {
            Self::TableSalt => 6.0,
            Self::CoarseSalt => 4.8,
            Self::FlakeSalt => 2.8,
            Self::Sugar => 4.2,
            Self::BrownSugar => 4.6,
            Self::Paprika | Self::BlackPepper => 2.3,
            Self::GarlicPowder => 3.1,
            Self::OnionPowder => 2.4,
            Self::ChilliPowder => 2.7,
            Self::Cumin => 2.1,
            Self::Cayenne => 1.8,
            Self::MustardPowder => 2.0,
            Self::Other => 2.3,
            Self::Blend { .. } => 3.0,
        }
    }

    /// What this volume of it weighs.
    pub fn weight(self, volume: Volume) -> Mass {
        Mass::from_g(volume.teaspoons() * self.grams_a_teaspoon())
    }

    /// How much this weight of it is by the spoon.
    pub fn volume(self, weight: Mass) -> Volume {
        Volume::from_teaspoons(weight.g() / self.grams_a_teaspoon())
    }

    /// How much of it is salt.
    pub const fn salt(self) -> Fraction {
        match self {
            Self::TableSalt | Self::CoarseSalt | Self::FlakeSalt => Fraction::ALL,
            Self::Blend { salt } => salt,
            _ => Fraction::NONE,
        }
    }
}
