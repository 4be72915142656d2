//! The matrix `I - w A` of an implicit step, factored and solved.
//!
//! `A` holds conduction through the thickness (tridiagonal), conduction along the footprint
//! (tridiagonal), exchange at the surface, and what ties the two: the footprint's middle is the mean
//! over the thickness, and what comes along the footprint is spread over it.

use super::body::Grid;
use super::footprint::Footprint;
use super::medium::Point;
use super::tridiagonal::Tridiagonal;

/// What a factorisation needs from the moment it is made at.
pub(super) struct Moment<'a> {
    /// Diffusivity at each node, m2/s.
    pub diffusivity: &'a [f64],
    /// Slope of temperature over heat content at the surface, K m3/J.
    pub surface_slope: f64,
    /// The medium in the mean over the thickness.
    pub mean: Point,
    /// Slope of temperature over heat content at the footprint's other nodes, K m3/J.
    pub slope: &'a [f64],
    /// Slope of the heat entering by surface temperature, W/mK; negative.
    pub entering: f64,
    /// Biot number over the half-thickness.
    pub biot: f64,
    /// How heat from the footprint spreads over the thickness.
    pub spread: Spread,
    /// The step's implicit weight times the rate per conductance.
    pub scale: f64,
}

/// `level (1 - bend x^2)`, with a mean of one over the thickness.
///
/// In a parabolic slowest mode the departure from the air's temperature has the bend
/// `Bi / (Bi + 2)`; how many times that is used comes with the footprint.
#[derive(Clone, Copy)]
pub(super) struct Spread {
    bend: f64,
    level: f64,
}

impl Spread {
    /// `most` is the bend in a surface held at the air's temperature.
    pub(super) fn new(biot: f64, most: f64, mean_square: f64) -> Self {
        let bend = most * biot / (biot + 2.0);
        Self { bend, level: 1.0 / (1.0 - bend * mean_square) }
    }

    #[inline]
    pub(super) fn at(self, x: f64) -> f64 {
        self.level * (1.0 - self.bend * x * x)
    }
}

/// A factored matrix.
pub(super) struct Matrix {
    thickness: Tridiagonal,
    /// The nodes of the footprint but for its middle, which is the mean over the thickness.
    footprint: Option<Tridiagonal>,
    /// What each node of the footprint takes from the mean over the thickness and from the surface.
    by_mean: Vec<f64>,
    by_surface: Vec<f64>,
    /// The thickness's answer to heat from the footprint, its mean and what it gives the surface.
    answer: Vec<f64>,
    answer_mean: f64,
    answer_surface: f64,
    middle: Middle,
}

/// What the mean over the thickness takes from the footprint's first node, from itself and from the
/// surface.
#[derive(Clone, Copy, Default)]
struct Middle {
    first: f64,
    itself: f64,
    surface: f64,
}

/// Slopes of the heat entering a footprint's cell by its own temperature, by the mean over the
/// thickness in the middle and by the surface's there.
#[derive(Clone, Copy)]
struct Slopes {
    own: f64,
    mean: f64,
    surface: f64,
}

impl Slopes {
    fn at(m: &Moment<'_>, height: f64) -> Self {
        let own = m.entering / (1.0 + m.biot * height / 3.0);
        Self { own, mean: -own, surface: own * (1.0 + m.biot / 3.0) }
    }
}

impl Matrix {
    pub(super) fn new(grid: &Grid) -> Self {
        let through = grid.through();
        let out = grid.nodes() - through;
        Self {
            thickness: Tridiagonal::new(through),
            footprint: grid.footprint.as_ref().map(|_| Tridiagonal::new(out)),
            by_mean: vec![0.0; out],
            by_surface: vec![0.0; out],
            answer: vec![0.0; through],
            answer_mean: 0.0,
            answer_surface: 0.0,
            middle: Middle::default(),
        }
    }

    pub(super) fn factor(&mut self, grid: &Grid, m: &Moment<'_>) {
        self.factor_thickness(grid, m);
        let Some(footprint) = &grid.footprint else { return };
        self.factor_footprint(footprint, m);
        for (answer, x) in self.answer.iter_mut().zip(&grid.column.x) {
            *answer = m.spread.at(*x);
        }
        self.thickness.solve(&mut self.answer);
        self.answer_mean = grid.column.mean(&self.answer);
        self.answer_surface = self.answer[grid.through() - 1];
    }

    fn factor_thickness(&mut self, grid: &Grid, m: &Moment<'_>) {
        let last = grid.through() - 1;
        let diffusivity = &m.diffusivity[..=last];
        let per_volume = &grid.column.per_volume[..=last];
        let conductance = &grid.column.conductance[..last];
        self.thickness.factor(|i| {
            let volume = m.scale * per_volume[i];
            let inward = if i == 0 { 0.0 } else { volume * conductance[i - 1] };
            let outward = if i == last { 0.0 } else { volume * conductance[i] };
            let taken = if i == last { volume * m.entering * m.surface_slope } else { 0.0 };
            [
                if i == 0 { 0.0 } else { -inward * diffusivity[i - 1] },
                1.0 + (inward + outward) * diffusivity[i] - taken,
                if i == last { 0.0 } else { -outward * diffusivity[i + 1] },
            ]
        });
    }

    /// The derivatives of what `Equations` computes along the footprint: its nodes by each other, by
    /// the mean over the thickness and by the surface.
    fn factor_footprint(&mut self, f: &Footprint, m: &Moment<'_>) {
        let Some(footprint) = &mut self.footprint else { return };
        let cells = f.y.len() - 1;
        let (slope, diffusivity) =
            (&m.slope[..cells], &m.diffusivity[m.diffusivity.len() - cells..]);
        let (by_mean, by_surface) = (&mut self.by_mean[..cells], &mut self.by_surface[..cells]);
        footprint.factor(|i| {
            let j = i + 1;
            let volume = m.scale * f.per_volume[j];
            let inward = volume * f.conductance[i];
            let outward = if j == cells { 0.0 } else { volume * f.conductance[j] };
            let edge = if j == cells { volume * m.entering * f.edge } else { 0.0 };
            let (here, surface) = (Slopes::at(m, f.height[j]), volume * f.surface[j]);
            let behind = if i == 0 { inward * m.mean.diffusivity } else { 0.0 };
            by_mean[i] = surface * here.mean * m.mean.slope + behind;
            by_surface[i] = surface * here.surface * m.surface_slope;
            let entering = surface * here.own + edge;
            [
                if i == 0 { 0.0 } else { -inward * diffusivity[i - 1] },
                1.0 + (inward + outward) * diffusivity[i] - entering * slope[i],
                if j == cells { 0.0 } else { -outward * diffusivity[j] },
            ]
        });
        footprint.solve(by_mean);
        footprint.solve(by_surface);
        let volume = m.scale * f.per_volume[0];
        self.middle = Middle {
            first: volume * f.conductance[0] * diffusivity[0],
            itself: -volume * f.conductance[0] * m.mean.diffusivity,
            surface: volume * f.surface[0] * m.entering * m.surface_slope,
        };
    }

    /// Solves in place.
    ///
    /// Heat `e` from the footprint lifts the thickness by `answer e`; it is the one that gives the
    /// mean over the thickness the change its own balance asks for.
    pub(super) fn solve(&self, grid: &Grid, x: &mut [f64]) {
        let last = grid.through() - 1;
        let (thickness, out) = x.split_at_mut(last + 1);
        let Some(footprint) = &self.footprint else {
            return self.thickness.solve(thickness);
        };
        let asked = grid.column.mean(thickness);
        self.thickness.solve(thickness);
        footprint.solve(out);
        let mean = grid.column.mean(thickness);
        let by_mean = 1.0 - self.middle.itself - self.middle.first * self.by_mean[0];
        let by_surface = self.middle.surface + self.middle.first * self.by_surface[0];
        let lack =
            asked + self.middle.first * out[0] + by_surface * thickness[last] - by_mean * mean;
        let lift = lack / (by_mean * self.answer_mean - by_surface * self.answer_surface);
        for (x, answer) in thickness.iter_mut().zip(&self.answer) {
            *x += lift * answer;
        }
        let mean = mean + lift * self.answer_mean;
        let surface = thickness[last];
        for ((x, by_mean), by_surface) in out.iter_mut().zip(&self.by_mean).zip(&self.by_surface) {
            *x += by_mean * mean + by_surface * surface;
        }
    }
}
