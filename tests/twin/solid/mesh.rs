//! The regular mesh a solid is cut from, and how much of each cell and face lies inside.

use super::Shape;

/// A box of equal cells.
#[derive(Clone, Copy, Debug)]
pub struct Mesh {
    /// The corner with the lowest coordinates, m.
    pub origin: [f64; 3],
    /// Edge of a cell along each axis, m.
    pub spacing: [f64; 3],
    /// Cells along each axis.
    pub count: [usize; 3],
}

impl Mesh {
    /// Edge coordinate `index` of an axis, m.
    pub fn edge(&self, axis: usize, index: usize) -> f64 {
        self.origin[axis] + self.spacing[axis] * index as f64
    }

    /// Centre of a cell, m.
    pub fn centre(&self, cell: [usize; 3]) -> [f64; 3] {
        core::array::from_fn(|a| self.edge(a, cell[a]) + 0.5 * self.spacing[a])
    }

    /// Number of cells.
    pub fn len(&self) -> usize {
        self.count.iter().product()
    }

    /// True for a mesh without cells.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// Place of a cell in a flat list.
    pub fn index(&self, cell: [usize; 3]) -> usize {
        (cell[0] * self.count[1] + cell[1]) * self.count[2] + cell[2]
    }

    /// Area of a whole face across an axis, m2.
    pub fn face_area(&self, axis: usize) -> f64 {
        self.spacing[(axis + 1) % 3] * self.spacing[(axis + 2) % 3]
    }
}

/// Lines through a cell (each way) on which fractions are measured.
const LINES: usize = 4;

/// Part of the line from `start` along `axis` that lies inside: the crossings are found by linear
/// interpolation between `LINES + 1` samples.
fn line_fraction(shape: &impl Shape, start: [f64; 3], axis: usize, length: f64) -> f64 {
    let step = length / LINES as f64;
    let mut point = start;
    let mut low = shape.level(point);
    let mut inside = 0.0;
    for s in 1..=LINES {
        point[axis] = start[axis] + step * s as f64;
        let high = shape.level(point);
        inside += if low > 0.0 && high > 0.0 {
            1.0
        } else if low <= 0.0 && high <= 0.0 {
            0.0
        } else {
            low.max(high) / (low - high).abs()
        };
        low = high;
    }
    inside / LINES as f64
}

/// Part of the face across `axis` at the low side of `cell` that lies inside, 0 to 1.
pub fn face_fraction(shape: &impl Shape, mesh: &Mesh, cell: [usize; 3], axis: usize) -> f64 {
    // Lines run along one axis of the face and are spread over the other.
    let along = if axis == 2 { 0 } else { 2 };
    let across = 3 - axis - along;
    (0..LINES)
        .map(|i| {
            let mut start: [f64; 3] = core::array::from_fn(|a| mesh.edge(a, cell[a]));
            start[across] += mesh.spacing[across] * (i as f64 + 0.5) / LINES as f64;
            line_fraction(shape, start, along, mesh.spacing[along])
        })
        .sum::<f64>()
        / LINES as f64
}

/// Part of a cell that lies inside, 0 to 1.
pub fn cell_fraction(shape: &impl Shape, mesh: &Mesh, cell: [usize; 3]) -> f64 {
    let mut sum = 0.0;
    for i in 0..LINES {
        for j in 0..LINES {
            let mut start: [f64; 3] = core::array::from_fn(|a| mesh.edge(a, cell[a]));
            start[0] += mesh.spacing[0] * (i as f64 + 0.5) / LINES as f64;
            start[1] += mesh.spacing[1] * (j as f64 + 0.5) / LINES as f64;
            sum += line_fraction(shape, start, 2, mesh.spacing[2]);
        }
    }
    sum / (LINES * LINES) as f64
}
