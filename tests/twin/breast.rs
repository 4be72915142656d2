//! The shape of a boneless breast: a thick rounded end, a thin tapering one, a flat underside.

use crate::solid::{Mesh, Shape};

/// Density of raw breast, kg/m3 (common figure for lean poultry, from memory).
pub const DENSITY: f64 = 1055.0;

/// Proportions that vary from breast to breast.
#[derive(Clone, Copy, Debug)]
pub struct Proportions {
    /// Greatest width over length.
    pub width_to_length: f64,
    /// How much of the thickness is gone at the thin end, 0 to 1.
    pub thickness_taper: f64,
    /// How much of the width is gone at the thin end, 0 to 1.
    pub width_taper: f64,
    /// Roundness of the outline: 2 is an ellipse, more is squarer.
    pub outline: f64,
}

/// A breast lying on its flat side, the thick end at x = 0, split by the plane y = 0.
#[derive(Clone, Copy, Debug)]
pub struct Breast {
    length: f64,
    half_width: f64,
    half_thickness: f64,
    proportions: Proportions,
    /// Along the length, 0 to 1, where it is thickest.
    thickest: f64,
}

/// Exponent of the cross-section sideways, above and below: larger is flatter.
const SIDE: f64 = 2.2;
const TOP: f64 = 2.0;
const BOTTOM: f64 = 3.5;
/// Slices used for the volume.
const SLICES: usize = 48;

impl Breast {
    /// A breast of a weight in kg and a greatest thickness in m; the length follows.
    pub fn new(weight: f64, thickness: f64, proportions: Proportions) -> Self {
        let mut unit =
            Self { length: 1.0, half_width: 1.0, half_thickness: 1.0, proportions, thickest: 0.0 };
        let fractions = (0..=SLICES).map(|i| i as f64 / SLICES as f64);
        unit.thickest = fractions.clone().fold(0.0, |best, x| {
            if unit.height(x, 0.0) > unit.height(best, 0.0) { x } else { best }
        });
        let height = unit.height(unit.thickest, 0.0);
        let width = fractions.map(|x| unit.breadth(x)).fold(0.0, f64::max);
        unit.half_thickness = thickness / height;
        // With the height set, volume goes as length squared at a fixed width to length.
        let width_per_length = proportions.width_to_length / width;
        unit.half_width = width_per_length;
        unit.length = (weight / DENSITY / unit.half_volume() / 2.0).sqrt();
        unit.half_width = width_per_length * unit.length;
        unit
    }

    /// The thickest spot at half its height, m: where a careful cook aims the probe.
    pub fn centre(&self) -> [f64; 3] {
        let x = self.thickest;
        let room = self.outline_room(x, 0.0);
        let (top, bottom) = (room.powf(1.0 / TOP), room.powf(1.0 / BOTTOM));
        [x * self.length, 0.0, 0.5 * (top - bottom) * self.taper_height(x)]
    }

    /// A mesh of one half: `across` cells through the thickness, twice their size in plan.
    pub fn mesh(&self, across: usize) -> Mesh {
        let height = 2.0 * self.half_thickness;
        let fine = height / across as f64;
        let count = |extent: f64| (extent / (2.0 * fine)).ceil().max(2.0) as usize;
        let [along, sideways] = [count(self.length), count(self.half_width)];
        Mesh {
            origin: [0.0, 0.0, -self.half_thickness],
            spacing: [self.length / along as f64, self.half_width / sideways as f64, fine],
            count: [along, sideways, across],
        }
    }

    /// Length, m.
    pub fn length(&self) -> f64 {
        self.length
    }

    fn taper_height(&self, x: f64) -> f64 {
        self.half_thickness * (1.0 - self.proportions.thickness_taper * x)
    }

    fn taper_width(&self, x: f64) -> f64 {
        self.half_width * (1.0 - self.proportions.width_taper * x)
    }

    /// What the outline leaves for the height: 1 in the middle, 0 at the rim.
    fn outline_room(&self, x: f64, y: f64) -> f64 {
        1.0 - (2.0 * x - 1.0).abs().powf(self.proportions.outline)
            - (y / self.taper_width(x)).abs().powf(SIDE)
    }

    /// Whole height at a fraction of the length and a distance from the middle plane.
    fn height(&self, x: f64, y: f64) -> f64 {
        let room = self.outline_room(x, y).max(0.0);
        (room.powf(1.0 / TOP) + room.powf(1.0 / BOTTOM)) * self.taper_height(x)
    }

    /// Whole width at a fraction of the length.
    fn breadth(&self, x: f64) -> f64 {
        2.0 * self.taper_width(x) * self.outline_room(x, 0.0).max(0.0).powf(1.0 / SIDE)
    }

    fn half_volume(&self) -> f64 {
        let step = 1.0 / SLICES as f64;
        let mut sum = 0.0;
        for i in 0..SLICES {
            let x = (i as f64 + 0.5) * step;
            let half = 0.5 * self.breadth(x);
            for j in 0..SLICES {
                sum += self.height(x, half * (j as f64 + 0.5) * step) * half * step;
            }
        }
        sum * step * self.length
    }
}

impl Shape for Breast {
    fn level(&self, point: [f64; 3]) -> f64 {
        let x = point[0] / self.length;
        let exponent = if point[2] > 0.0 { TOP } else { BOTTOM };
        self.outline_room(x, point[1]) - (point[2] / self.taper_height(x)).abs().powf(exponent)
    }
}
