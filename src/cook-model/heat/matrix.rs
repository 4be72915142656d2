//! The matrix `I - w A` of an implicit step, factored and solved.
//!
//! `A` holds conduction through the thickness (tridiagonal), conduction along the footprint
//! (tridiagonal), exchange at the surface, and what ties the two: the footprint's middle is the mean
//! over the thickness, and what comes along the footprint is spread over it.

use super::body::Grid;
use super::footprint::Footprint;
use super::medium::Point;

/// What a factorisation needs from the moment it is made at.
pub(super) struct Moment<'a> {
    /// Diffusivity at each node, m2/s.
    pub diffusivity: &'a [f64],
    /// Slope of temperature over heat content at the surface, K m3/J.
    pub surface_slope: f64,
    /// The medium in the mean over the thickness and at the footprint's other nodes.
    pub out: &'a [Point],
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
    /// Nodes through the thickness; those along the footprint follow them.
    through: usize,
    /// Through the thickness: sub-diagonal, one over the pivot, super-diagonal over the pivot. Along
    /// the footprint, where the elimination runs from the edge inwards: the coefficient of the next
    /// node out, one over the pivot, and the coefficient of the next node in over the pivot.
    lower: Vec<f64>,
    pivot: Vec<f64>,
    upper: Vec<f64>,
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
        let zeros = || vec![0.0; grid.nodes()];
        let out = || vec![0.0; grid.nodes() - grid.through()];
        Self {
            through: grid.through(),
            lower: zeros(),
            pivot: zeros(),
            upper: zeros(),
            by_mean: out(),
            by_surface: out(),
            answer: vec![0.0; grid.through()],
            answer_mean: 0.0,
            answer_surface: 0.0,
            middle: Middle::default(),
        }
    }

    pub(super) fn factor(&mut self, grid: &Grid, m: &Moment<'_>) {
        self.factor_thickness(grid, m);
        let n = self.through;
        if let Some(footprint) = &grid.footprint {
            self.factor_footprint(footprint, m);
            for (answer, x) in self.answer.iter_mut().zip(&grid.column.x) {
                *answer = m.spread.at(*x);
            }
            sweep(&self.lower[..n], &self.pivot[..n], &self.upper[..n], &mut self.answer);
            self.answer_mean = grid.column.mean(&self.answer);
            self.answer_surface = self.answer[n - 1];
        }
    }

    fn factor_thickness(&mut self, grid: &Grid, m: &Moment<'_>) {
        let n = self.through;
        let diffusivity = &m.diffusivity[..n];
        let (per_volume, conductance) =
            (&grid.column.per_volume[..n], &grid.column.conductance[..n - 1]);
        let (lower, pivot, upper) =
            (&mut self.lower[..n], &mut self.pivot[..n], &mut self.upper[..n]);
        let (mut inward, mut sub, mut over) = (0.0, 0.0, 0.0);
        for i in 0..n - 1 {
            let volume = m.scale * per_volume[i];
            let outward = conductance[i];
            pivot[i] = 1.0 / (1.0 + volume * (inward + outward) * diffusivity[i] - sub * over);
            lower[i] = sub;
            over = -volume * outward * diffusivity[i + 1] * pivot[i];
            upper[i] = over;
            sub = -m.scale * per_volume[i + 1] * outward * diffusivity[i];
            inward = outward;
        }
        let last = n - 1;
        let exchange = inward * diffusivity[last] - m.entering * m.surface_slope;
        pivot[last] = 1.0 / (1.0 + m.scale * per_volume[last] * exchange - sub * over);
        lower[last] = sub;
    }

    /// The derivatives of what `Equations` computes along the footprint, eliminated from the edge
    /// inwards: each node is left as a part of its own, of the next node in, of the mean and of the
    /// surface.
    fn factor_footprint(&mut self, f: &Footprint, m: &Moment<'_>) {
        let n = self.through;
        let cells = f.y.len() - 1;
        let out = m.out;
        // Of the next node out: its conductance, and what its elimination left.
        let mut outward = 0.0;
        let (mut upper, mut by_mean, mut by_surface) = (0.0, 0.0, 0.0);
        let mut edge = m.entering * f.edge;
        for j in (1..=cells).rev() {
            let i = j - 1;
            let here = Slopes::at(m, f.height[j]);
            let volume = m.scale * f.per_volume[j];
            let (surface, inward) = (volume * f.surface[j], volume * f.conductance[i]);
            let own = (surface * here.own + volume * edge) * out[j].slope
                - (inward + volume * outward) * out[j].diffusivity;
            let next = if j < cells { volume * outward * out[j + 1].diffusivity } else { 0.0 };
            let pivot = 1.0 / (1.0 - own - next * upper);
            let behind = inward * out[i].diffusivity;
            let mean = surface * here.mean * out[0].slope + if j == 1 { behind } else { 0.0 };
            upper = if j == 1 { 0.0 } else { behind * pivot };
            by_mean = (mean + next * by_mean) * pivot;
            by_surface = (surface * here.surface * m.surface_slope + next * by_surface) * pivot;
            self.lower[n + i] = next;
            self.pivot[n + i] = pivot;
            self.upper[n + i] = upper;
            self.by_mean[i] = by_mean;
            self.by_surface[i] = by_surface;
            (outward, edge) = (f.conductance[i], 0.0);
        }
        let volume = m.scale * f.per_volume[0];
        self.middle = Middle {
            first: volume * outward * out[1].diffusivity,
            itself: -volume * outward * out[0].diffusivity,
            surface: volume * f.surface[0] * m.entering * m.surface_slope,
        };
    }

    /// Solves in place.
    ///
    /// Heat `e` from the footprint lifts the thickness by `answer e`; it is the one that gives the
    /// mean over the thickness the change its own balance asks for.
    pub(super) fn solve(&self, grid: &Grid, x: &mut [f64]) {
        let n = self.through;
        let (thickness, footprint) = x.split_at_mut(n);
        let asked = if footprint.is_empty() { 0.0 } else { grid.column.mean(thickness) };
        sweep(&self.lower[..n], &self.pivot[..n], &self.upper[..n], thickness);
        if footprint.is_empty() {
            return;
        }
        let (lower, pivot, upper) = (&self.lower[n..], &self.pivot[n..], &self.upper[n..]);
        let mut first = 0.0;
        for i in (0..footprint.len()).rev() {
            first = (footprint[i] + lower[i] * first) * pivot[i];
            footprint[i] = first;
        }
        let mean = grid.column.mean(thickness);
        let by_mean = 1.0 - self.middle.itself - self.middle.first * self.by_mean[0];
        let by_surface = self.middle.surface + self.middle.first * self.by_surface[0];
        let lack =
            asked + self.middle.first * first + by_surface * thickness[n - 1] - by_mean * mean;
        let lift = lack / (by_mean * self.answer_mean - by_surface * self.answer_surface);
        for (x, answer) in thickness.iter_mut().zip(&self.answer) {
            *x += lift * answer;
        }
        let mean = mean + lift * self.answer_mean;
        let surface = thickness[n - 1];
        let mut behind = 0.0;
        for (i, x) in footprint.iter_mut().enumerate() {
            behind = *x + upper[i] * behind + self.by_mean[i] * mean + self.by_surface[i] * surface;
            *x = behind;
        }
    }
}

/// Solves a factored tridiagonal system in place.
#[inline]
fn sweep(lower: &[f64], pivot: &[f64], upper: &[f64], x: &mut [f64]) {
    let n = x.len();
    let (lower, pivot, upper) = (&lower[..n], &pivot[..n], &upper[..n]);
    let mut before = 0.0;
    for i in 0..n {
        before = (x[i] - lower[i] * before) * pivot[i];
        x[i] = before;
    }
    for i in (0..n - 1).rev() {
        before = x[i] - upper[i] * before;
        x[i] = before;
    }
}
