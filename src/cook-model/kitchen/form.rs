//! What cooked meat has been made into.

use serde::{Deserialize, Serialize};

/// How a piece was cut up after its rest, if it was.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// Left whole.
    #[default]
    Whole,
    /// Sliced across the grain.
    Sliced,
    /// Cut into chunks.
    Chunked,
    /// Shredded or pulled apart.
    Shredded,
}

impl Form {
    /// All forms, in the order they are offered.
    pub const ALL: [Self; 4] = [Self::Whole, Self::Sliced, Self::Chunked, Self::Shredded];

    /// Whether it lies as a flat layer in its bag, so that the bag's thickness is what heat must
    /// get through; a whole piece keeps its own shape.
    pub const fn lies_flat(self) -> bool {
        !matches!(self, Self::Whole)
    }
}
