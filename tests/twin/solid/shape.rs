//! Solid shapes as level functions.

/// A solid described by a function that is positive inside and negative outside.
pub trait Shape {
    /// The level at a point in metres: above zero inside, zero on the surface, below zero outside.
    fn level(&self, point: [f64; 3]) -> f64;

    /// True if the surface is made of faces along the axes, whose areas add; false if it is smooth,
    /// so that one flat patch in each cell is its area.
    fn faceted(&self) -> bool {
        false
    }
}

/// An ellipsoid centred on the origin.
#[derive(Clone, Copy, Debug)]
pub struct Ellipsoid {
    /// Half of each axis, m.
    pub semi_axes: [f64; 3],
}

impl Shape for Ellipsoid {
    fn level(&self, point: [f64; 3]) -> f64 {
        1.0 - (0..3).map(|a| (point[a] / self.semi_axes[a]).powi(2)).sum::<f64>()
    }
}

/// A rectangular block centred on the origin.
#[derive(Clone, Copy, Debug)]
pub struct Brick {
    /// Half of each edge, m.
    pub half_edges: [f64; 3],
}

impl Shape for Brick {
    fn level(&self, point: [f64; 3]) -> f64 {
        (0..3).map(|a| self.half_edges[a] - point[a].abs()).fold(f64::INFINITY, f64::min)
    }

    fn faceted(&self) -> bool {
        true
    }
}
