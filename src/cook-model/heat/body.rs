//! A body as the solver sees it.

use std::sync::Arc;

use super::column::{Area, Column};
use super::footprint::{Footprint, Outline};
use super::medium::Medium;
use super::shape::{self, Reduced};
use crate::piece::{Dimensions, Piece, Shape};
use crate::quantity::Length;

/// Cells over the half-thickness and over the half-width of a body with both coordinates: a pull
/// time moves by under 0.1 % when they are doubled and the time steps halved.
const CELLS: (usize, usize) = (16, 10);
/// Cells of a body with one coordinate, which is held to the series for it: a sphere in a strong
/// bath is what needs them.
const CELLS_ALONE: usize = 28;

/// A body of a given medium, with the grid it is computed on.
///
/// Heat flows along `x`, from the surface through the half-thickness to the middle, and along `y`,
/// from the edge to the middle. A slab, a cylinder and a sphere have only the first.
#[derive(Clone, Debug, PartialEq)]
pub struct Body {
    pub(super) medium: Medium,
    /// Half-thickness, m.
    pub(super) half: f64,
    form: Form,
    /// Cells and time steps are this many times smaller than usual.
    pub(super) refinement: usize,
    pub(super) grid: Arc<Grid>,
}

/// What the grid is made from.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Form {
    area: Area,
    footprint: Option<(Reduced, Outline)>,
}

/// The nodes: through the thickness, and out to the edge.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Grid {
    pub column: Column,
    pub footprint: Option<Footprint>,
}

impl Grid {
    fn new(form: &Form, refinement: usize) -> Self {
        let (through, out) = match form.footprint {
            Some(_) => CELLS,
            None => (CELLS_ALONE, 0),
        };
        Self {
            column: Column::new(through * refinement, form.area),
            footprint: form
                .footprint
                .map(|(reduced, outline)| Footprint::new(out * refinement, &reduced, outline)),
        }
    }

    /// Nodes through the thickness.
    pub fn through(&self) -> usize {
        self.column.x.len()
    }

    /// All nodes: those through the thickness, then those out to the edge without the middle one,
    /// which is the mean of the former.
    pub fn nodes(&self) -> usize {
        self.through() + self.footprint.as_ref().map_or(0, |f| f.y.len() - 1)
    }

    /// Volume over surface, in half-thicknesses.
    pub fn volume_per_surface(&self) -> f64 {
        match &self.footprint {
            Some(f) => f.per_volume.iter().map(|per| 1.0 / per).sum::<f64>() / f.whole_surface(),
            None => self.column.per_volume.iter().map(|per| 1.0 / per).sum(),
        }
    }
}

impl Body {
    fn new(medium: Medium, thickness: Length, form: Form) -> Self {
        let grid = Arc::new(Grid::new(&form, 1));
        Self { medium, half: 0.5 * thickness.m(), form, refinement: 1, grid }
    }

    /// A body followed along one coordinate alone, of a given geometry exponent: 1 slab, 2 cylinder,
    /// 3 sphere, between them whatever an author takes a piece for.
    pub fn of_exponent(thickness: Length, exponent: f64, medium: Medium) -> Self {
        Self::new(medium, thickness, Form { area: Area::Power(exponent), footprint: None })
    }

    /// A raw breast: an even one as a plate, any other as an ellipsoid.
    pub fn of_piece(piece: &Piece) -> Self {
        let dimensions = piece.dimensions();
        match piece.shape {
            Shape::Even => Self::brick(&dimensions, Medium::raw_breast()),
            Shape::Natural | Shape::Thick => Self::ellipsoid(&dimensions, Medium::raw_breast()),
        }
    }

    /// A slab so wide that its edges do not matter, heated from both sides.
    pub fn slab(thickness: Length, medium: Medium) -> Self {
        Self::of_exponent(thickness, 1.0, medium)
    }

    /// A cylinder so long that its ends do not matter.
    pub fn cylinder(diameter: Length, medium: Medium) -> Self {
        Self::of_exponent(diameter, 2.0, medium)
    }

    /// A sphere.
    pub fn sphere(diameter: Length, medium: Medium) -> Self {
        Self::of_exponent(diameter, 3.0, medium)
    }

    /// An ellipsoid, by its three axes.
    pub fn ellipsoid(dimensions: &Dimensions, medium: Medium) -> Self {
        let reduced = shape::ellipsoid(dimensions);
        let area = Area::Curved(reduced.curvature);
        let form = Form { area, footprint: Some((reduced, Outline::Ellipse)) };
        Self::new(medium, dimensions.thickness, form)
    }

    /// A brick, by its three edges.
    pub fn brick(dimensions: &Dimensions, medium: Medium) -> Self {
        let footprint = Some((shape::brick(dimensions), Outline::Plate));
        Self::new(medium, dimensions.thickness, Form { area: Area::Power(1.0), footprint })
    }

    /// The same body computed on cells and time steps so many times smaller: for showing that the
    /// usual ones are small enough.
    pub fn refined(&self, times: usize) -> Self {
        let times = times.max(1);
        let grid = Arc::new(Grid::new(&self.form, times));
        Self { refinement: times, grid, ..self.clone() }
    }

    /// The geometry exponent of the body on one coordinate alone: 1 slab, 2 cylinder, 3 sphere,
    /// between them for other solids. Coarser than the two coordinates heat is followed along here;
    /// for processes without Biot number, such as melting.
    pub fn exponent(&self) -> f64 {
        self.single().0
    }

    /// How much more surface the body has, for its volume, than that one coordinate gives it.
    pub fn edge(&self) -> f64 {
        self.single().1
    }

    /// The Fourier number by which time steps are scaled: a sphere's middle answers thrice as fast as
    /// a slab's.
    pub(super) fn pace(&self) -> f64 {
        match self.form.area {
            Area::Power(exponent) => 1.0 / exponent,
            Area::Curved(_) => 1.0,
        }
    }

    fn single(&self) -> (f64, f64) {
        match (self.form.footprint, self.form.area) {
            (Some((reduced, _)), _) => reduced.single,
            (None, Area::Power(n)) => (n, 1.0),
            (None, Area::Curved(_)) => (1.0, 1.0),
        }
    }

    /// The distance from the middle to the surface, through the thickness.
    pub fn half_thickness(&self) -> Length {
        Length::from_m(self.half)
    }
}
