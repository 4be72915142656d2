use serde::{Deserialize, Serialize};

use crate::history::EntryId;
use crate::kitchen::cooked_weight::Weighing;
use crate::kitchen::form::Form;
use crate::kitchen::rub::Recipe;
use crate::kitchen::shape::Portion;
use crate::kitchen::storage::{Packing, Place};
use crate::log;
use crate::piece::PieceId;
use crate::quantity::{Length, Mass, Moment, Span, as_minutes};

/// Names a bag: the entry that packed it.
pub type BagId = EntryId;

/// One bag as it was packed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Bag {
    /// The cook's own word for what it is for; may be empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// What the meat was made into.
    pub form: Form,
    /// Cooked weight in the bag.
    #[serde(rename = "weight_g")]
    pub weight: Mass,
    /// Thickness of the flat bag, or of the piece at its thickest, if it was measured.
    #[serde(rename = "thickness_mm", default, skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Length>,
    /// What the meat lies in.
    #[serde(default)]
    pub packing: Packing,
    /// When it came off the pit.
    pub cooked: Moment,
    /// What it brings with it from before it was packed.
    #[serde(default, skip_serializing_if = "Brings::is_nothing")]
    pub brings: Brings,
}

/// What a bag brings with it: packing sets no clock back.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Brings {
    /// When all of its meat was last known to be at 135 F or above; none: as it came off the pit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hot: Option<Moment>,
    /// By when it had to be in the cold; none: two hours after it came off (USDA consumer advice).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cold_by: Option<Moment>,
    /// When it got there, where that was before it was bagged.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cold_at: Option<Moment>,
    /// How long it was between 41 and 140 F before then, the longest of its pieces.
    #[serde(rename = "warm_min", with = "as_minutes")]
    pub warm: Span,
    /// The cook it comes from, by its number on the phone that packed it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cook: Option<u64>,
    /// The pieces of that cook it comes from.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub pieces: Vec<PieceId>,
}

impl Brings {
    fn is_nothing(&self) -> bool {
        *self == Self::default()
    }
}

impl Bag {
    /// What heat has to get through.
    pub const fn portion(&self) -> Portion {
        Portion {
            form: self.form,
            weight: self.weight,
            thickness: self.thickness,
            packing: self.packing,
        }
    }
}

/// One thing that happened in the kitchen.
pub type KitchenEntry = log::Entry<KitchenWhat>;

/// All entries about the kitchen.
pub type KitchenLog = log::Log<KitchenWhat>;

/// What can happen in the kitchen.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(remote = "Self", rename_all = "snake_case")]
#[non_exhaustive]
pub enum KitchenWhat {
    /// A bag was packed and put away. Its id is this entry's.
    BagPacked {
        /// The bag.
        bag: Bag,
        /// Where it went.
        place: Place,
    },
    /// A bag was moved.
    BagMoved {
        /// Which bag.
        bag: BagId,
        /// Where it went.
        to: Place,
    },
    /// A bag was eaten.
    BagUsed {
        /// Which bag.
        bag: BagId,
    },
    /// A bag was thrown away.
    BagThrownAway {
        /// Which bag.
        bag: BagId,
    },
    /// The pieces of a cook were weighed, raw and cooked.
    Weighed {
        /// The weighing.
        weighing: Weighing,
    },
    /// A rub was written down, or written down anew under its name.
    RubKept {
        /// The rub.
        recipe: Recipe,
    },
    /// A rub is no longer wanted.
    RubDropped {
        /// Its name.
        name: String,
    },
    /// An earlier entry was undone. Undoing an undoing brings the entry back.
    Undone {
        /// Which entry.
        entry: EntryId,
    },
}

impl KitchenWhat {
    /// The bag packed before that it is about, if it is about one.
    pub fn bag(&self) -> Option<BagId> {
        match self {
            Self::BagMoved { bag, .. } | Self::BagUsed { bag } | Self::BagThrownAway { bag } => {
                Some(*bag)
            }
            _ => None,
        }
    }
}

impl log::Event for KitchenWhat {
    const VERSION: u16 = 1;

    fn undoes(&self) -> Option<EntryId> {
        match self {
            Self::Undone { entry } => Some(*entry),
            _ => None,
        }
    }

    fn moments(&self) -> Vec<Moment> {
        match self {
            Self::BagPacked { bag, .. } => {
                let Brings { hot, cold_by, cold_at, .. } = bag.brings;
                [Some(bag.cooked), hot, cold_by, cold_at].into_iter().flatten().collect()
            }
            _ => Vec::new(),
        }
    }

    fn undoing(entry: EntryId) -> Self {
        Self::Undone { entry }
    }
}

crate::tagged::stored_with_kind!(KitchenWhat);
