//! A bag as heat sees it: a piece with its own shape, or a flat layer.

use super::form::Form;
use super::storage::Packing;
use super::thaw::{FreezingMeat, Layer};
use crate::heat::{Body, Composition, Medium};
use crate::piece::{Piece, Shape};
use crate::quantity::{Length, Mass, Temperature};

/// Roasted chicken breast, skinless: USDA National Nutrient Database SR28, "Chicken, broilers or
/// fryers, breast, meat only, cooked, roasted": water 65.26, protein 31.02, fat 3.57 %; the ash,
/// 1.06 %, from memory.
pub const COOKED_BREAST: Composition =
    Composition { water: 65.26, protein: 31.02, fat: 3.57, carbohydrate: 0.0, ash: 1.06 };

/// Raw weight over cooked. A piece shrinks along and across its fibres and keeps its thickness (common
/// practice, no source), so that a cooked piece is as thick as the raw one it came from.
const RAW_OVER_COOKED: f64 = 1.3;

/// Thickness taken for a flat bag that was not measured: a full one, about an inch.
pub const USUAL_BAG: Length = Length::from_mm(25.0);

/// What heat has to get through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Portion {
    /// What the meat was made into. A whole piece lies alone in its bag, or beside others with
    /// water between.
    pub form: Form,
    /// Cooked weight; of a whole piece it sets the size.
    pub weight: Mass,
    /// Thickness of the flat bag, or of the piece at its thickest, if it was measured.
    pub thickness: Option<Length>,
    /// What the meat lies in.
    pub packing: Packing,
}

impl Portion {
    /// The thickness heat has to get through: as measured, or else as a piece of that weight has
    /// it, or a full bag.
    pub fn thickness(&self) -> Length {
        match (self.thickness, self.form) {
            (Some(measured), _) => measured,
            (None, Form::Whole) => raw(self.weight * RAW_OVER_COOKED, None).thickness(),
            (None, _) => USUAL_BAG,
        }
    }

    /// Whether it weighs and measures what a bag can.
    pub(super) fn is_possible(&self) -> bool {
        (10.0..=5000.0).contains(&self.weight.g()) && (5.0..=100.0).contains(&self.thickness().mm())
    }

    /// The same, so many times as thick, at the same weight.
    #[must_use]
    pub(super) fn thicker(&self, times: f64) -> Self {
        Self { thickness: Some(self.thickness() * times), ..*self }
    }

    /// Its body in the heat model. Pieces in a flat bag are taken as one solid layer: the juice
    /// fills what is between them once the air is pressed out.
    pub(super) fn body(&self) -> Body {
        let medium = Medium::of(&COOKED_BREAST);
        if self.form.lies_flat() {
            Body::slab(self.thickness(), medium)
        } else {
            Body::ellipsoid(&raw(self.weight, Some(self.thickness())).dimensions(), medium)
        }
    }

    /// Its body where some of it is frozen.
    pub(super) fn layer(&self) -> Layer {
        Layer::shaped(&self.body(), FreezingMeat::of(&COOKED_BREAST))
    }
}

/// A raw piece, for its sizes: as heavy and thick as it is told to be.
fn raw(weight: Mass, thickest: Option<Length>) -> Piece {
    Piece { weight, thickest, shape: Shape::Natural, start: Temperature::from_f(38.0), icy: false }
}
