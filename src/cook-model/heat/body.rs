//! A body as the solver sees it: one radial coordinate over the half-thickness.

use std::sync::Arc;

use super::medium::Medium;
use crate::piece::{Dimensions, Piece};
use crate::quantity::Length;

/// Cells over the half-thickness: with the grading below, a pull time moves by under 0.1 % when
/// they are doubled.
const CELLS: usize = 20;
/// How much finer the grid is at the surface than at the middle: the cells' widths run linearly
/// from `1 + GRADING` to `1 - GRADING` of their mean.
const GRADING: f64 = 0.6;

/// A body of a given medium, reduced to one radial coordinate.
///
/// Heat flows along `r` from the surface at `r = L`, the half-thickness, to the middle at `r = 0`,
/// through areas that grow as `r^(n-1)`: `n` is 1 in a slab, 2 in a cylinder, 3 in a sphere and
/// between them in a piece whose ends and edges help a little. `edge` is how much more surface the
/// true body has, for its volume, than that coordinate gives it.
#[derive(Clone, Debug, PartialEq)]
pub struct Body {
    pub(super) medium: Medium,
    /// Half-thickness, m.
    pub(super) half: f64,
    pub(super) exponent: f64,
    pub(super) edge: f64,
    /// Time steps are this many times shorter than usual.
    pub(super) refinement: usize,
    pub(super) grid: Arc<Grid>,
}

/// The nodes and the control volumes between them, on a half-thickness of one.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Grid {
    /// Place of each node, 0 at the middle, 1 at the surface.
    pub x: Vec<f64>,
    /// One over the volume of each node's cell.
    pub per_volume: Vec<f64>,
    /// Area over distance between each node and the next.
    pub conductance: Vec<f64>,
}

impl Grid {
    fn new(cells: usize, exponent: f64) -> Self {
        let x: Vec<f64> = (0..=cells)
            .map(|i| {
                let s = i as f64 / cells as f64;
                s + GRADING * s * (1.0 - s)
            })
            .collect();
        let faces: Vec<f64> = (0..cells).map(|i| 0.5 * (x[i] + x[i + 1])).collect();
        let inside = |i: usize| if i == 0 { 0.0 } else { libm::pow(faces[i - 1], exponent) };
        let outside = |i: usize| if i == cells { 1.0 } else { libm::pow(faces[i], exponent) };
        Self {
            per_volume: (0..=cells).map(|i| exponent / (outside(i) - inside(i))).collect(),
            conductance: (0..cells)
                .map(|i| libm::pow(faces[i], exponent - 1.0) / (x[i + 1] - x[i]))
                .collect(),
            x,
        }
    }
}

impl Body {
    fn new(medium: Medium, half: Length, exponent: f64, edge: f64) -> Self {
        let grid = Arc::new(Grid::new(CELLS, exponent));
        Self { medium, half: half.m(), exponent, edge, refinement: 1, grid }
    }

    /// A raw breast.
    pub fn of_piece(piece: &Piece) -> Self {
        Self::ellipsoid(&piece.dimensions(), Medium::raw_breast())
    }

    /// A slab so wide that its edges do not matter, heated from both sides.
    pub fn slab(thickness: Length, medium: Medium) -> Self {
        Self::new(medium, thickness * 0.5, 1.0, 1.0)
    }

    /// A cylinder so long that its ends do not matter.
    pub fn cylinder(diameter: Length, medium: Medium) -> Self {
        Self::new(medium, diameter * 0.5, 2.0, 1.0)
    }

    /// A sphere.
    pub fn sphere(diameter: Length, medium: Medium) -> Self {
        Self::new(medium, diameter * 0.5, 3.0, 1.0)
    }

    /// An ellipsoid.
    pub fn ellipsoid(dimensions: &Dimensions, medium: Medium) -> Self {
        let (exponent, edge) = super::shape::ellipsoid(dimensions);
        Self::new(medium, dimensions.thickness * 0.5, exponent, edge)
    }

    /// A brick.
    pub fn brick(dimensions: &Dimensions, medium: Medium) -> Self {
        let (exponent, edge) = super::shape::brick(dimensions);
        Self::new(medium, dimensions.thickness * 0.5, exponent, edge)
    }

    /// The same body computed on cells and time steps so many times smaller: for showing that the
    /// usual ones are small enough.
    pub fn refined(&self, times: usize) -> Self {
        let times = times.max(1);
        let grid = Arc::new(Grid::new(CELLS * times, self.exponent));
        Self { refinement: times, grid, ..self.clone() }
    }

    /// The distance from the middle to the surface, through the thickness.
    pub fn half_thickness(&self) -> Length {
        Length::from_m(self.half)
    }

    /// How much more surface the true body has, for its volume, than its one coordinate gives it.
    pub fn edge(&self) -> f64 {
        self.edge
    }

    /// The geometry exponent: 1 slab, 2 cylinder, 3 sphere.
    pub fn exponent(&self) -> f64 {
        self.exponent
    }
}
