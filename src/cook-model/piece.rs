//! One breast as the cook knows it.

use serde::{Deserialize, Serialize};

use crate::quantity::{Length, Mass, Temperature};

/// Density of raw breast, kg/m3 (Choi & Okos component equations at 5 C).
const RAW_DENSITY: f64 = 1060.0;
/// Width over length of a trimmed breast: shop fillets run 3-4 by 5-7 inches.
const WIDTH_OVER_LENGTH: f64 = 0.58;

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
    /// Core temperature when it goes on; of a piece with an icy middle, that of what is thawed.
    #[serde(rename = "start_c")]
    pub start: Temperature,
    /// Whether its middle is still icy.
    #[serde(default, skip_serializing_if = "core::ops::Not::not")]
    pub icy: bool,
}

/// Thickness, width and length of a piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dimensions {
    /// Height of the thickest part.
    pub thickness: Length,
    /// Width, across the grain.
    pub width: Length,
    /// Length.
    pub length: Length,
}

/// How the pieces of one shape grow with weight.
struct SizeLaw {
    /// Thickness of a piece of 1 g, mm; it grows with the cube root of the weight.
    thickness_mm: f64,
    /// Standard deviation of the logarithm of the thickness at a given weight.
    spread: f64,
    /// Volume over the product of the three dimensions.
    fullness: f64,
}

impl Shape {
    /// The size law: pieces of one shape are taken as alike, so that lengths grow with the cube
    /// root of the weight.
    ///
    /// Anchors: portioned fillets of 212 g are 26 mm thick, severely woody ones of 235 g 29 mm
    /// (Poultry Science 100(8), 2021, PMC8264151, table 1); shop fillets are 25-38 mm (1-1.5 in)
    /// thick; fillets of 280-450 g from large birds 35-50 mm (from memory). The natural law gives
    /// 32 mm at 212 g and 40 mm at 400 g, between them; the spread is the authors' estimate.
    const fn size_law(self) -> SizeLaw {
        match self {
            // Fullness of an ellipsoid, pi / 6.
            Self::Natural => SizeLaw { thickness_mm: 5.4, spread: 0.15, fullness: 0.524 },
            // Pounded to 16-24 mm; an oval plate with rounded edges.
            Self::Even => SizeLaw { thickness_mm: 3.3, spread: 0.15, fullness: 0.72 },
            Self::Thick => SizeLaw { thickness_mm: 6.4, spread: 0.12, fullness: 0.56 },
        }
    }
}

impl Piece {
    /// The height of the thickest part: as measured, or else by the size law from the weight.
    pub fn thickness(&self) -> Length {
        let law = self.shape.size_law();
        self.thickest
            .unwrap_or_else(|| Length::from_mm(law.thickness_mm * libm::cbrt(self.weight.g())))
    }

    /// Standard deviation of the logarithm of the thickness: 0.1 means about one part in ten.
    ///
    /// A measured thickness is good to some 1.5 mm, the meat being soft and the place a guess.
    pub fn thickness_spread(&self) -> f64 {
        const MEASURED_MM: f64 = 1.5;
        match self.thickest {
            Some(measured) => MEASURED_MM / measured.mm(),
            None => self.shape.size_law().spread,
        }
    }

    /// All three dimensions: the thickness rules, and the weight sets the other two.
    pub fn dimensions(&self) -> Dimensions {
        let thickness = self.thickness();
        let fullness = self.shape.size_law().fullness;
        let footprint = self.weight.kg() / (RAW_DENSITY * fullness * thickness.m());
        let length = Length::from_m(libm::sqrt(footprint / WIDTH_OVER_LENGTH));
        Dimensions { thickness, width: length * WIDTH_OVER_LENGTH, length }
    }
}
