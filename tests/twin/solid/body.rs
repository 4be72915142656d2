//! A solid cut from a mesh: cells, the faces they share and the patches of outer surface.

use super::{Mesh, Shape, mesh};

/// Cells with less than this part inside are left out; their loss is far below the mesh error.
const LEAST_FRACTION: f64 = 1e-3;
/// A cell cut smaller than this borrows heat capacity from a neighbour, so that it does not dictate
/// the time step. Totals stay exact.
const SMALL_FRACTION: f64 = 0.3;

/// Cells at least this part as far from the surface as the deepest are called deep.
const DEEP: f64 = 0.7;

/// A face between two cells.
#[derive(Clone, Copy, Debug)]
pub struct Link {
    /// The cells on either side.
    pub cells: [u32; 2],
    /// Area over distance between the cells' centres, m.
    pub ratio: f64,
}

/// A flat piece of outer surface within one cell.
#[derive(Clone, Copy, Debug)]
pub struct Patch {
    /// The cell behind it.
    pub cell: u32,
    /// Area, m2.
    pub area: f64,
    /// Outward unit normal.
    pub normal: [f64; 3],
    /// Distance from the cell's centre out to the surface, m; below zero where the centre of a cut
    /// cell lies outside.
    pub gap: f64,
    /// The point of the surface nearest to the cell's centre, m.
    pub point: [f64; 3],
}

/// A solid made of cells.
#[derive(Clone, Debug)]
pub struct Body {
    /// The mesh it was cut from.
    pub mesh: Mesh,
    /// Cell number at each mesh place, if any of the place is inside.
    pub at: Vec<Option<u32>>,
    /// Centres of the cells, m.
    pub centres: Vec<[f64; 3]>,
    /// Volume that stores heat for each cell, m3.
    pub volumes: Vec<f64>,
    /// Inner faces.
    pub links: Vec<Link>,
    /// Outer surface. Planes where the mesh ends are planes of symmetry and have none.
    pub patches: Vec<Patch>,
    /// The cells far from all surface.
    pub deep: Vec<u32>,
}

impl Body {
    /// Cuts a shape from a mesh.
    pub fn new(shape: &impl Shape, mesh: Mesh) -> Self {
        let mut parts = Parts::measure(shape, &mesh);
        parts.drop_slivers(&mesh);
        let mut body = Self {
            at: vec![None; mesh.len()],
            centres: Vec::new(),
            volumes: Vec::new(),
            links: Vec::new(),
            patches: Vec::new(),
            deep: Vec::new(),
            mesh,
        };
        body.number_cells(&parts);
        body.link_cells(&parts);
        body.share_small_cells(&parts);
        body.cover(shape, &parts);
        body.sound_depths();
        body
    }

    /// Volume, m3.
    pub fn volume(&self) -> f64 {
        self.volumes.iter().sum()
    }

    /// Outer surface, m2.
    pub fn area(&self) -> f64 {
        self.patches.iter().map(|p| p.area).sum()
    }

    fn number_cells(&mut self, parts: &Parts) {
        let cell_volume: f64 = self.mesh.spacing.iter().product();
        for cell in places(self.mesh.count) {
            let index = self.mesh.index(cell);
            if parts.cells[index] > 0.0 {
                self.at[index] = Some(self.centres.len() as u32);
                self.centres.push(self.mesh.centre(cell));
                self.volumes.push(parts.cells[index] * cell_volume);
            }
        }
    }

    fn link_cells(&mut self, parts: &Parts) {
        for cell in places(self.mesh.count) {
            let Some(high) = self.at[self.mesh.index(cell)] else { continue };
            for axis in 0..3 {
                if cell[axis] == 0 {
                    continue;
                }
                let mut below = cell;
                below[axis] -= 1;
                let part = parts.faces[axis][parts.face_index(axis, cell)];
                if let Some(low) = self.at[self.mesh.index(below)].filter(|_| part > 0.0) {
                    let ratio = part * self.mesh.face_area(axis) / self.mesh.spacing[axis];
                    self.links.push(Link { cells: [low, high], ratio });
                }
            }
        }
    }

    /// Lends heat capacity to cells cut small from the neighbour they share most with.
    fn share_small_cells(&mut self, parts: &Parts) {
        let cell_volume: f64 = self.mesh.spacing.iter().product();
        let least = SMALL_FRACTION * cell_volume;
        let mut lender: Vec<(u32, f64)> = vec![(0, 0.0); self.centres.len()];
        let own: Vec<f64> = self
            .at
            .iter()
            .zip(&parts.cells)
            .filter(|(n, _)| n.is_some())
            .map(|(_, f)| *f)
            .collect();
        for link in &self.links {
            let [a, b] = link.cells.map(|c| c as usize);
            for (small, large) in [(a, b), (b, a)] {
                if own[large] > lender[small].1 {
                    lender[small] = (large as u32, own[large]);
                }
            }
        }
        for (small, &(large, _)) in lender.iter().enumerate() {
            let lack = least - self.volumes[small];
            let spare = 0.5 * (self.volumes[large as usize] - self.volumes[small]);
            let lent = lack.min(spare).max(0.0);
            self.volumes[small] += lent;
            self.volumes[large as usize] -= lent;
        }
    }

    /// Finds the outer surface: what the inner faces of a cell leave open is its outward area
    /// (divergence theorem), which a staircase of whole cells would overstate.
    fn cover(&mut self, shape: &impl Shape, parts: &Parts) {
        for cell in places(self.mesh.count) {
            let Some(number) = self.at[self.mesh.index(cell)] else { continue };
            let open: [f64; 3] = core::array::from_fn(|axis| {
                let mut above = cell;
                above[axis] += 1;
                let low = parts.faces[axis][parts.face_index(axis, cell)];
                let high = parts.faces[axis][parts.face_index(axis, above)];
                (low - high) * self.mesh.face_area(axis)
            });
            if shape.faceted() {
                for axis in 0..3 {
                    let mut one = [0.0; 3];
                    one[axis] = open[axis];
                    self.add_patch(shape, number, one);
                }
            } else {
                self.add_patch(shape, number, open);
            }
        }
    }

    /// Finds the cells in the middle of the thickest part.
    fn sound_depths(&mut self) {
        let depth = |centre: &[f64; 3]| {
            let to = |patch: &Patch| {
                centre.iter().zip(patch.point).map(|(a, b)| (a - b) * (a - b)).sum()
            };
            self.patches.iter().map(to).fold(f64::INFINITY, f64::min).sqrt()
        };
        let depths: Vec<f64> = self.centres.iter().map(depth).collect();
        let deepest = depths.iter().copied().fold(0.0, f64::max);
        let deep = |(_, depth): &(u32, f64)| *depth >= DEEP * deepest;
        self.deep = (0..).zip(depths).filter(deep).map(|(cell, _)| cell).collect();
    }

    fn add_patch(&mut self, shape: &impl Shape, cell: u32, open: [f64; 3]) {
        let area = open.iter().map(|a| a * a).sum::<f64>().sqrt();
        let whole = self.mesh.face_area(0).min(self.mesh.face_area(1)).min(self.mesh.face_area(2));
        if area <= 1e-6 * whole {
            return;
        }
        let normal = open.map(|a| a / area);
        let centre = self.centres[cell as usize];
        let reach = self.mesh.spacing.iter().zip(normal).map(|(s, n)| s * n.abs()).sum::<f64>();
        let gap = distance_out(shape, centre, normal, reach);
        let point = core::array::from_fn(|a| centre[a] + gap * normal[a]);
        self.patches.push(Patch { cell, area, normal, gap, point });
    }
}

/// Distance from a point along a direction to where the level is zero, by bisection within
/// `reach` both ways.
fn distance_out(shape: &impl Shape, from: [f64; 3], along: [f64; 3], reach: f64) -> f64 {
    let level = |s: f64| shape.level(core::array::from_fn(|a| from[a] + s * along[a]));
    let (mut low, mut high) = (-reach, reach);
    if level(low) <= 0.0 || level(high) > 0.0 {
        // A rim thinner than a cell: its surface is about where its centre is.
        return 0.0;
    }
    for _ in 0..24 {
        let middle = 0.5 * (low + high);
        if level(middle) > 0.0 { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

/// All index triples below `count`, last index fastest.
fn places(count: [usize; 3]) -> impl Iterator<Item = [usize; 3]> {
    (0..count[0])
        .flat_map(move |i| (0..count[1]).flat_map(move |j| (0..count[2]).map(move |k| [i, j, k])))
}

/// How much of each mesh cell and face is inside.
struct Parts {
    count: [usize; 3],
    cells: Vec<f64>,
    faces: [Vec<f64>; 3],
}

impl Parts {
    fn face_index(&self, axis: usize, cell: [usize; 3]) -> usize {
        let mut count = self.count;
        count[axis] += 1;
        (cell[0] * count[1] + cell[1]) * count[2] + cell[2]
    }

    fn measure(shape: &impl Shape, mesh: &Mesh) -> Self {
        let count = mesh.count;
        let corner_count = count.map(|n| n + 1);
        let corner_index = |c: [usize; 3]| (c[0] * corner_count[1] + c[1]) * corner_count[2] + c[2];
        let inside: Vec<bool> = places(corner_count)
            .map(|c| shape.level(core::array::from_fn(|a| mesh.edge(a, c[a]))) > 0.0)
            .collect();
        // Corners of the box from `low` to `high` (both included) that are inside: none, all, or some.
        let census = |low: [usize; 3], high: [usize; 3]| {
            let (mut any, mut all) = (false, true);
            for i in low[0]..=high[0] {
                for j in low[1]..=high[1] {
                    for k in low[2]..=high[2] {
                        let this = inside[corner_index([i, j, k])];
                        any |= this;
                        all &= this;
                    }
                }
            }
            (any, all)
        };
        // A bulge can enter a cell between its corners, so the corners around it are asked too.
        let near = |low: [usize; 3], high: [usize; 3]| {
            census(
                low.map(|v| v.saturating_sub(1)),
                core::array::from_fn(|a| (high[a] + 1).min(count[a])),
            )
            .0
        };
        let part = |low: [usize; 3], high: [usize; 3], measured: &dyn Fn() -> f64| {
            if census(low, high).1 {
                1.0
            } else if near(low, high) {
                measured()
            } else {
                0.0
            }
        };
        let cells = places(count)
            .map(|c| part(c, c.map(|v| v + 1), &|| mesh::cell_fraction(shape, mesh, c)))
            .collect();
        let faces = core::array::from_fn(|axis| {
            let mut face_count = count;
            face_count[axis] += 1;
            places(face_count)
                .map(|c| {
                    let high = core::array::from_fn(|a| if a == axis { c[a] } else { c[a] + 1 });
                    part(c, high, &|| mesh::face_fraction(shape, mesh, c, axis))
                })
                .collect()
        });
        Self { count, cells, faces }
    }

    /// Leaves out cells of which almost nothing is inside, and closes their faces.
    fn drop_slivers(&mut self, mesh: &Mesh) {
        for cell in places(self.count) {
            let index = mesh.index(cell);
            if self.cells[index] >= LEAST_FRACTION {
                continue;
            }
            self.cells[index] = 0.0;
            for axis in 0..3 {
                let mut above = cell;
                above[axis] += 1;
                for face in [cell, above] {
                    let face = self.face_index(axis, face);
                    self.faces[axis][face] = 0.0;
                }
            }
        }
    }
}
