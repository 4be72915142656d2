//! What the person has said of today's portions and has not packed yet.

use cook_model::kitchen::form::Form;
use cook_model::kitchen::portions::{Amount, Lot};
use cook_model::kitchen::rub::Coat;
use cook_model::kitchen::solution::Solution;
use cook_model::kitchen::storage::{Packing, Place};
use cook_model::piece::PieceId;
use cook_model::quantity::{Length, Mass, Moment};
use serde::{Deserialize, Serialize};

/// Dinner as it is first offered.
const DINNER_SERVINGS: u16 = 4;
const DINNER_EACH: Mass = Mass::from_g(150.0);

/// What a use wants.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Wanted {
    /// Servings of a weight.
    Servings,
    /// Pieces, whatever they weigh.
    Pieces,
    /// Whatever is left.
    Rest,
}

/// Where a use goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Goes {
    /// On the table tonight.
    Tonight,
    /// Into the refrigerator.
    Fridge,
    /// Into the freezer.
    Freezer,
}

impl Goes {
    /// The place it is stored in, if it is.
    pub const fn place(self) -> Option<Place> {
        match self {
            Self::Tonight => None,
            Self::Fridge => Some(Place::Fridge),
            Self::Freezer => Some(Place::Freezer),
        }
    }
}

/// One use of the pieces.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LotDraft {
    /// Names it within the draft.
    pub key: u32,
    /// The person's own word for it.
    pub name: String,
    /// What its pieces are made into.
    pub form: Form,
    /// What it wants.
    pub wanted: Wanted,
    /// How many servings or pieces.
    pub count: u16,
    /// Weight of a serving.
    pub each: Mass,
    /// Where it goes.
    pub goes: Goes,
    /// How many bags; none means one to a serving or a piece.
    pub bags: Option<u16>,
    /// Thickness of a flat bag, or of a piece at its thickest, if measured.
    pub thickness: Option<Length>,
    /// What the meat lies in.
    pub packing: Packing,
}

impl LotDraft {
    /// A use with nothing said of it yet: whole pieces for the freezer, as many as are left.
    pub fn rest(key: u32, name: String) -> Self {
        Self {
            key,
            name,
            form: Form::Whole,
            wanted: Wanted::Rest,
            count: 3,
            each: DINNER_EACH,
            goes: Goes::Freezer,
            bags: None,
            thickness: None,
            packing: Packing::Plain,
        }
    }

    /// Tonight's dinner.
    pub fn dinner(key: u32, name: String) -> Self {
        Self {
            form: Form::Sliced,
            wanted: Wanted::Servings,
            count: DINNER_SERVINGS,
            goes: Goes::Tonight,
            ..Self::rest(key, name)
        }
    }

    /// What it takes of tonight's dinner, by weight.
    pub fn tonight(&self) -> Mass {
        match (self.goes, self.wanted) {
            (Goes::Tonight, Wanted::Servings) => self.each * f64::from(self.count),
            _ => Mass::ZERO,
        }
    }

    /// As the model takes it.
    pub fn lot(&self) -> Lot {
        let amount = match self.wanted {
            Wanted::Servings => Amount::Servings { count: self.count, each: self.each },
            Wanted::Pieces => Amount::Pieces { count: self.count },
            Wanted::Rest => Amount::Rest,
        };
        Lot { name: self.name.clone(), form: self.form, amount }
    }
}

/// Everything half typed in the kitchen.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Draft {
    /// Which cook it belongs to.
    pub cook: Option<u64>,
    /// The uses, dinner first.
    pub lots: Vec<LotDraft>,
    /// Where the person put a piece: the piece and the use's key.
    pub chosen: Vec<(PieceId, u32)>,
    /// Cooked pieces that are of no cook here, by weight.
    pub typed: Vec<Mass>,
    /// When the first of them came off the heat.
    pub typed_off: Option<Moment>,
    /// Weight of all pieces together on the scale, if weighed.
    pub weighed: Option<Mass>,
    /// When the bags were packed from it, if they were.
    pub packed: Option<Moment>,
    /// The rub that is on the pieces.
    pub rub: Option<String>,
    /// How thickly it goes on.
    pub coat: Coat,
    /// Salt on 100 g of raw meat at most, in grams; none means the usual limit.
    pub salt_limit: Option<f64>,
    /// What the chicken was sold with.
    pub solution: Solution,
}

impl Draft {
    /// A key no use has.
    pub fn fresh_key(&self) -> u32 {
        self.lots.iter().map(|lot| lot.key + 1).max().unwrap_or(1)
    }

    /// One use.
    pub fn lot(&self, key: u32) -> Option<&LotDraft> {
        self.lots.iter().find(|lot| lot.key == key)
    }

    /// Begins anew for another cook. The uses stay: most people eat alike from week to week.
    pub fn begin(&mut self, cook: Option<u64>) {
        self.cook = cook;
        self.chosen.clear();
        self.typed.clear();
        self.typed_off = None;
        self.weighed = None;
        self.packed = None;
        // The next package may say something else.
        self.solution = Solution::None;
    }
}
