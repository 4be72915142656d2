//! The rates of change inside a body.

use super::body::{Body, Grid};
use super::footprint::Footprint;
use super::matrix::{Matrix, Moment, Spread};
use super::medium::{Medium, Point};
use super::surface::{Flux, Surface};

/// What passes the surface, averaged over the piece.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Exchange {
    /// At the middle of the face.
    middle: Flux,
    /// How much warmer the surface is on average than there, K.
    warmer: f64,
}

impl Exchange {
    /// Water leaving, kg/m2s.
    pub(super) fn water(&self) -> f64 {
        self.middle.water + self.middle.water_slope * self.warmer
    }

    /// Heat received by convection and radiation, W/m2.
    pub(super) fn sensible(&self) -> f64 {
        self.middle.sensible + self.middle.sensible_slope * self.warmer
    }

    /// Slopes of both by surface temperature.
    pub(super) fn slopes(&self) -> (f64, f64) {
        (self.middle.water_slope, self.middle.sensible_slope)
    }
}

/// The semi-discrete equations of one body, with their scratch space.
pub(super) struct Equations<'a> {
    grid: &'a Grid,
    medium: Medium,
    half: f64,
    /// Rates per conductance, 1/m2: speed over the half-thickness squared.
    scale: f64,
    /// At the last evaluation: conduction potential at each node, W/m; the medium's state at the
    /// surface and in the mean over the thickness; temperature at each of the footprint's other
    /// nodes, C; heat into the cell of each per surface, W/m.
    potential: Vec<f64>,
    surface: Point,
    mean: Point,
    out: Vec<f64>,
    inward: Vec<f64>,
    /// When last factored: diffusivity at each node, m2/s; and slope of temperature over heat content
    /// at each of the footprint's, K m3/J.
    diffusivity: Vec<f64>,
    slope: Vec<f64>,
    matrix: Matrix,
    /// Slope of temperature over heat content at the surface when last factored, K m3/J.
    surface_slope: f64,
}

impl<'a> Equations<'a> {
    pub(super) fn new(body: &'a Body, speed: f64) -> Self {
        let zeros = || vec![0.0; body.grid.nodes()];
        let out = body.grid.nodes() - body.grid.through();
        Self {
            grid: &body.grid,
            medium: body.medium,
            half: body.half,
            scale: speed / (body.half * body.half),
            potential: zeros(),
            surface: Point::default(),
            mean: Point::default(),
            out: vec![0.0; out],
            inward: vec![0.0; out],
            diffusivity: zeros(),
            slope: vec![0.0; out],
            matrix: Matrix::new(&body.grid),
            surface_slope: 0.0,
        }
    }

    /// The rate of change of each node's heat content, J/m3s, into `rate`, at heat contents `heat`
    /// with `air` C around and `lost` kg/m2 evaporated.
    pub(super) fn evaluate(
        &mut self,
        heat: &[f64],
        rate: &mut [f64],
        surface: &Surface,
        air: f64,
        lost: f64,
    ) -> Exchange {
        let (medium, column) = (self.medium, &self.grid.column);
        medium.potentials(heat, &mut self.potential);
        let last = column.x.len() - 1;
        self.surface = medium.at(heat[last]);
        let flux = surface.flux(self.surface.celsius, air, lost);
        let entering = self.half * flux.net();
        let (potential, per_volume) = (&self.potential[..=last], &column.per_volume[..=last]);
        let (conductance, rates) = (&column.conductance[..last], &mut rate[..=last]);
        let mut inflow = 0.0;
        for i in 0..last {
            let onward = conductance[i] * (potential[i + 1] - potential[i]);
            rates[i] = self.scale * per_volume[i] * (onward - inflow);
            inflow = onward;
        }
        rates[last] = self.scale * per_volume[last] * (entering - inflow);
        let grid = self.grid;
        match &grid.footprint {
            Some(footprint) => self.add_footprint(footprint, heat, rate, flux, entering),
            None => Exchange { middle: flux, warmer: 0.0 },
        }
    }

    /// Slope of the heat entering by surface temperature, W/mK; negative.
    fn entering_slope(&self, flux: &Flux) -> f64 {
        self.half * flux.net_slope()
    }

    /// The rates along the footprint, and what they bring to the middle.
    ///
    /// A cell's surface takes `q = [q0 (1 + Bi/3) + q0' (T - T0)] / (1 + Bi h/3)`, where `q0` enters
    /// the middle's, `q0'` is its slope by temperature, `T` and `T0` are the means over the
    /// thickness here and in the middle, `h` the height and `Bi = -q0' L / k`: the surface differs
    /// from the mean by a third of `q h L / k`, as in a parabolic profile.
    fn add_footprint(
        &mut self,
        footprint: &Footprint,
        heat: &[f64],
        rate: &mut [f64],
        flux: Flux,
        entering: f64,
    ) -> Exchange {
        let (grid, medium) = (self.grid, self.medium);
        let column = &grid.column;
        let (through, cells) = (column.x.len(), footprint.y.len() - 1);
        let mean = column.mean(heat);
        self.mean = medium.at(mean);
        medium.temperatures(&heat[through..], &mut self.out);
        let slope = self.entering_slope(&flux);
        let biot = -slope / self.surface.conductivity();
        let middle = self.mean.celsius;

        let mut total = footprint.surface[0] * entering;
        let inward = self.inward.iter_mut().zip(&self.out);
        let there = footprint.height[1..].iter().zip(&footprint.surface[1..]);
        for ((inward, celsius), (height, surface)) in inward.zip(there) {
            let q = (entering * (1.0 + biot / 3.0) + slope * (celsius - middle))
                / (1.0 + biot * height / 3.0);
            *inward = q;
            total += surface * q;
        }
        let out = &self.potential[through..through + cells];
        let rates = &mut rate[through..through + cells];
        let per_volume = &footprint.per_volume[..=cells];
        let from_first = footprint.conductance[0] * (out[0] - medium.potential(mean));
        let to_middle = self.scale * per_volume[0] * (from_first + footprint.surface[0] * entering);
        let mut inflow = from_first;
        for i in 0..cells - 1 {
            let onward = footprint.conductance[i + 1] * (out[i + 1] - out[i]);
            let cell = onward - inflow + footprint.surface[i + 1] * self.inward[i];
            rates[i] = self.scale * per_volume[i + 1] * cell;
            inflow = onward;
        }
        let edge =
            footprint.edge * (entering + slope * (self.out[cells - 1] - self.surface.celsius));
        let cell = footprint.surface[cells] * self.inward[cells - 1] + edge - inflow;
        rates[cells - 1] = self.scale * per_volume[cells] * cell;
        total += edge;

        let extra = to_middle - column.mean(rate);
        let spread = Spread::new(biot, footprint.bend, column.mean_square);
        for (r, x) in rate.iter_mut().zip(&column.x) {
            *r += extra * spread.at(*x);
        }
        let mean_entering = total / footprint.whole_surface();
        let warmer = if slope < 0.0 { (mean_entering - entering) / slope } else { 0.0 };
        Exchange { middle: flux, warmer }
    }

    /// Factors `I - weight A` for the moment last evaluated.
    pub(super) fn factor(&mut self, heat: &[f64], exchange: &Exchange, weight: f64) {
        self.medium.diffusivities(heat, &mut self.diffusivity);
        self.medium.slopes(&heat[self.grid.through()..], &mut self.slope);
        let entering = self.entering_slope(&exchange.middle);
        let biot = -entering / self.surface.conductivity();
        let bend = self.grid.footprint.as_ref().map_or(0.0, |f| f.bend);
        let spread = Spread::new(biot, bend, self.grid.column.mean_square);
        let moment = Moment {
            diffusivity: &self.diffusivity,
            surface_slope: self.surface.slope,
            mean: self.mean,
            slope: &self.slope,
            entering,
            biot,
            spread,
            scale: weight * self.scale,
        };
        self.matrix.factor(self.grid, &moment);
        self.surface_slope = self.surface.slope;
    }

    /// Solves the factored system in place.
    pub(super) fn solve(&self, x: &mut [f64]) {
        self.matrix.solve(self.grid, x);
    }

    /// Slope of temperature over heat content at the surface when last factored.
    pub(super) fn surface_slope(&self) -> f64 {
        self.surface_slope
    }
}
