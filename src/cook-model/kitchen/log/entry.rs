use serde::{Deserialize, Serialize};

use crate::history::EntryId;
use crate::kitchen::cooked_weight::Weighing;
use crate::kitchen::form::Form;
use crate::kitchen::rub::Recipe;
use crate::kitchen::shape::Portion;
use crate::kitchen::storage::{Packing, Place};
use crate::log;
use crate::quantity::{Length, Mass, Moment};

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

impl log::Event for KitchenWhat {
    const VERSION: u16 = 1;

    fn undoes(&self) -> Option<EntryId> {
        match self {
            Self::Undone { entry } => Some(*entry),
            _ => None,
        }
    }

    fn undoing(entry: EntryId) -> Self {
        Self::Undone { entry }
    }
}

crate::tagged::stored_with_kind!(KitchenWhat);
