//! One breast as the cook knows it.

use serde::{Deserialize, Serialize};

use crate::quantity::{Length, Mass, Temperature};

/// Names one piece within a cook: 1, 2, 3 as they were set out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct PieceId(pub u32);

/// How the piece was cut, which sets the proportions that weight and thickness leave open.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Shape {
    /// As trimmed: one thick end, tapering to a thin one.
    #[default]
    Natural,
    /// Butterflied or pounded to one even thickness.
    Even,
    /// Very thick for its weight, or woody to the touch.
    Thick,
}

/// What is known of one raw breast.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Piece {
    /// Raw weight.
    #[serde(rename = "weight_g")]
    pub weight: Mass,
    /// Height of the thickest part as it lies, if it was measured; it then rules over any
    /// estimate from the weight.
    #[serde(rename = "thickest_mm", default, skip_serializing_if = "Option::is_none")]
    pub thickest: Option<Length>,
    /// How it was cut.
    #[serde(default)]
    pub shape: Shape,
    /// Core temperature when it goes on.
    #[serde(rename = "start_c")]
    pub start: Temperature,
}
