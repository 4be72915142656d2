//! The coordinate from the middle of the piece out to its edge, seen from above.
//!
//! Heat reaches the middle through the thickness first, and later from the edges too. That part
//! runs along a second coordinate `y` in the plane, through areas that grow as `y^(m-1)`: `m` is 1
//! in a long strip, 2 in a disc, between them in a breast. What is followed along it is the mean
//! temperature over the thickness.

use super::column::graded;
use super::shape::Reduced;

/// How much finer the grid is at the edge than at the middle.
const GRADING: f64 = 0.4;
/// Parts in which each cell's integrals are summed (midpoint rule in the angle).
const PARTS: usize = 16;

/// How the thickness runs from the middle to the edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Outline {
    /// The same up to an upright edge.
    Plate,
    /// As an ellipse.
    Ellipse,
}

/// Nodes from the middle to the edge, in half-thicknesses, and the control volumes around them.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Footprint {
    /// Place of each node, 0 at the middle.
    pub y: Vec<f64>,
    /// Half-thickness at each node, as a part of the middle's.
    pub height: Vec<f64>,
    /// One over the volume of each node's cell.
    pub per_volume: Vec<f64>,
    /// Surface above each node's cell.
    pub surface: Vec<f64>,
    /// Area over distance between each node and the next.
    pub conductance: Vec<f64>,
    /// Surface of the upright edge.
    pub edge: f64,
    /// How unevenly heat from the edge spreads over the thickness: 0 evenly, above it to the middle.
    pub bend: f64,
}

impl Footprint {
    /// The footprint of a reduced solid.
    pub(super) fn new(cells: usize, form: &Reduced, outline: Outline) -> Self {
        let (reach, m) = (form.reach, form.exponent);
        let (y, edges) = graded(cells, reach, GRADING);
        let height = |y: f64| match outline {
            Outline::Plate => 1.0,
            Outline::Ellipse => libm::sqrt((1.0 - y * y / (reach * reach)).max(0.0)),
        };
        let across = |y: f64| libm::pow(y, m - 1.0);
        let mut footprint = Self {
            height: y.iter().map(|y| height(*y)).collect(),
            per_volume: Vec::new(),
            surface: Vec::new(),
            conductance: Vec::new(),
            edge: match outline {
                Outline::Plate => form.edge * across(reach),
                Outline::Ellipse => 0.0,
            },
            bend: form.bend,
            y,
        };
        for e in edges.windows(2) {
            let (volume, surface) = cell(e[0], e[1], reach, across, outline);
            footprint.per_volume.push(1.0 / volume);
            footprint.surface.push(surface);
        }
        for (i, y) in edges[1..=cells].iter().enumerate() {
            let width = footprint.y[i + 1] - footprint.y[i];
            footprint.conductance.push(across(*y) * height(*y) / width);
        }
        footprint
    }

    /// All the surface.
    pub(super) fn whole_surface(&self) -> f64 {
        self.surface.iter().sum::<f64>() + self.edge
    }
}

/// Volume below and surface above a cell.
fn cell(
    from: f64,
    to: f64,
    reach: f64,
    across: impl Fn(f64) -> f64,
    outline: Outline,
) -> (f64, f64) {
    // In the angle `a`, with y = reach sin a, an ellipse's volume and surface are smooth to the end.
    let angle = |y: f64| libm::asin((y / reach).min(1.0));
    let (first, last) = (angle(from), angle(to));
    let width = (last - first) / PARTS as f64;
    let (mut volume, mut surface) = (0.0, 0.0);
    for part in 0..PARTS {
        let a = first + (part as f64 + 0.5) * width;
        let (sin, cos) = (libm::sin(a), libm::cos(a));
        let ring = across(reach * sin) * width;
        let run = reach * cos;
        match outline {
            Outline::Plate => {
                volume += ring * run;
                surface += ring * run;
            }
            Outline::Ellipse => {
                volume += ring * run * cos;
                surface += ring * libm::sqrt(run * run + sin * sin);
            }
        }
    }
    (volume, surface)
}
