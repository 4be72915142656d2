//! What pieces are shaped like: a teardrop with a thin tail, an ellipsoid, a brick, a folded tail.

use twin::solid::{Mesh, Shape};

use crate::meat::DENSITY;

/// Steps of the sum by which a volume is found.
const STEPS: usize = 40;

/// Proportions of a body that lies along x, thick end first, split by the plane y = 0.
#[derive(Clone, Copy, Debug)]
pub struct Form {
    /// Greatest width over length.
    pub width: f64,
    /// Part of the thickness, and of the width, that is gone at the far end.
    pub taper: (f64, f64),
    /// Roundness along the length, across it and in height: 2 is an ellipse, more is squarer.
    pub round: [f64; 3],
    /// Whether it is a block with flat faces instead.
    pub brick: bool,
}

/// A body of a weight and a thickness.
#[derive(Clone, Copy, Debug)]
pub struct Solid {
    form: Form,
    length: f64,
    /// Half of the width before the taper, and half of the height before it, m.
    half_width: f64,
    half_height: f64,
}

impl Solid {
    /// A piece of a weight, kg, and greatest thickness, m.
    pub fn new(form: Form, weight: f64, thickness: f64) -> Self {
        let mut solid = Self { form, length: 1.0, half_width: 0.5, half_height: 0.5 };
        let places = || (0..=STEPS).map(|i| i as f64 / STEPS as f64);
        let tallest = places().map(|x| solid.height(x, 0.0)).fold(0.0, f64::max);
        let widest = places().map(|x| solid.breadth(x)).fold(0.0, f64::max);
        solid.half_height = 0.25 * thickness / tallest;
        solid.half_width = 0.25 * form.width / widest;
        // At a fixed height the volume goes as the length squared.
        let scale = (weight / DENSITY / solid.volume()).sqrt();
        Self { length: scale, half_width: solid.half_width * scale, ..solid }
    }

    /// A mesh of one half with so many cells through the thickness, twice as long in plan.
    pub fn mesh(&self, across: usize) -> Mesh {
        let fine = 2.0 * self.half_height / across as f64;
        let count = |extent: f64| (extent / (2.0 * fine)).ceil().max(2.0) as usize;
        let [along, sideways] = [count(self.length), count(self.half_width)];
        Mesh {
            origin: [0.0, 0.0, -self.half_height],
            spacing: [self.length / along as f64, self.half_width / sideways as f64, fine],
            count: [along, sideways, across],
        }
    }

    /// What the outline leaves for the height: 1 in the middle, 0 at the rim.
    fn room(&self, x: f64, y: f64) -> f64 {
        if self.form.brick {
            let inside = (0.0..=1.0).contains(&x) && y.abs() <= self.half_width;
            return if inside { 1.0 } else { 0.0 };
        }
        let half_width = self.half_width * (1.0 - self.form.taper.1 * x);
        1.0 - (2.0 * x - 1.0).abs().powf(self.form.round[0])
            - (y / half_width).abs().powf(self.form.round[1])
    }

    /// Half of the height there.
    fn height(&self, x: f64, y: f64) -> f64 {
        let here = self.half_height * (1.0 - self.form.taper.0 * x);
        here * self.room(x, y).max(0.0).powf(1.0 / self.form.round[2])
    }

    /// Half of the width there.
    fn breadth(&self, x: f64) -> f64 {
        if self.form.brick {
            return self.half_width;
        }
        let room = self.room(x, 0.0).max(0.0).powf(1.0 / self.form.round[1]);
        self.half_width * (1.0 - self.form.taper.1 * x) * room
    }

    fn volume(&self) -> f64 {
        let step = 1.0 / STEPS as f64;
        let middle = |i: usize| (i as f64 + 0.5) * step;
        let slice = |x: f64| {
            let half = self.breadth(x);
            (0..STEPS).map(|j| 4.0 * self.height(x, half * middle(j)) * half * step).sum::<f64>()
        };
        (0..STEPS).map(|i| slice(middle(i))).sum::<f64>() * step * self.length
    }
}

impl Shape for Solid {
    fn level(&self, point: [f64; 3]) -> f64 {
        let x = point[0] / self.length;
        if self.form.brick {
            let along = (0.5 - (x - 0.5).abs()) * self.length;
            let sideways = self.half_width - point[1].abs();
            return along.min(sideways).min(self.half_height - point[2].abs());
        }
        let here = self.half_height * (1.0 - self.form.taper.0 * x);
        self.room(x, point[1]) - (point[2] / here).abs().powf(self.form.round[2])
    }

    fn faceted(&self) -> bool {
        self.form.brick
    }
}
