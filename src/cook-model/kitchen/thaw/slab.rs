use super::FreezingMeat;
use crate::heat::{Body, HeatTransferCoefficient};
use crate::quantity::{Length, Span, Temperature, seconds, to_seconds};

/// Cells over the half-thickness: as many as it has millimetres, within these. Cells three times
/// finer move a time by under 1 %.
const FEWEST: usize = 6;
const MOST: usize = 12;
/// Time step over the longest that is stable for an explicit scheme.
const OF_STABLE: f64 = 0.8;

/// What a body lies in: water, air or ice that keeps its temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bath {
    /// Its temperature.
    pub temperature: Temperature,
    /// Heat transfer to the body's surface.
    pub transfer: HeatTransferCoefficient,
}

/// A body of freezing meat, followed along one coordinate from its middle to its surface, as the
/// heat model's [`Body`] is.
///
/// An explicit finite-volume scheme in heat content: the temperature of each cell follows from the
/// heat in it, so that the melting ice needs no front to be tracked (the enthalpy formulation of
/// Mannapperuma & Singh 1988, J. Food Sci. 53:626).
#[derive(Clone, Debug)]
pub struct Layer {
    meat: FreezingMeat,
    half: f64,
    exponent: f64,
    edge: f64,
    cells: usize,
}

fn usual_cells(half: f64) -> usize {
    ((half * 1e3).round() as usize).clamp(FEWEST, MOST)
}

impl Layer {
    fn new(meat: FreezingMeat, half: f64, exponent: f64, edge: f64) -> Self {
        Self { meat, half, exponent, edge, cells: usual_cells(half) }
    }

    /// A slab so wide that its edges do not matter, reached from both faces.
    pub fn slab(thickness: Length, meat: FreezingMeat) -> Self {
        Self::new(meat, thickness.m() / 2.0, 1.0, 1.0)
    }

    /// A sphere.
    pub fn sphere(diameter: Length, meat: FreezingMeat) -> Self {
        Self::new(meat, diameter.m() / 2.0, 3.0, 1.0)
    }

    /// The shape of a body of the heat model.
    pub fn shaped(body: &Body, meat: FreezingMeat) -> Self {
        Self::new(meat, body.half_thickness().m(), body.exponent(), body.edge())
    }

    /// The same on so many times more cells, for showing that the usual ones are enough.
    #[must_use]
    pub fn refined(self, times: usize) -> Self {
        Self { cells: self.cells * times.max(1), ..self }
    }

    /// When the core comes to `target` in a bath, from one temperature throughout; none if it has
    /// not within `limit`. It may be warming or cooling.
    pub fn reaches(
        &self,
        start: Temperature,
        bath: &Bath,
        target: Temperature,
        limit: Span,
    ) -> Option<Span> {
        let warming = bath.temperature >= start;
        let there = |core: f64| {
            if warming { core >= target.c() } else { core <= target.c() }
        };
        let mut run = Run::new(self, start, bath);
        let limit = to_seconds(limit);
        let mut before = run.core();
        if there(before) {
            return Some(Span::zero());
        }
        while run.at < limit {
            run.step();
            let core = run.core();
            if there(core) {
                let share = (target.c() - before) / (core - before);
                return Some(seconds(run.at - run.step * (1.0 - share)));
            }
            before = core;
        }
        None
    }
}

struct Run<'a> {
    layer: &'a Layer,
    bath: &'a Bath,
    at: f64,
    step: f64,
    /// Area of the face outside each cell, the surface's being one; the last is the surface.
    faces: Vec<f64>,
    /// One over the volume of each cell, per area of surface.
    per_volume: Vec<f64>,
    heat: Vec<f64>,
    celsius: Vec<f64>,
    width: f64,
}

impl<'a> Run<'a> {
    fn new(layer: &'a Layer, start: Temperature, bath: &'a Bath) -> Self {
        let n = layer.cells;
        let width = layer.half / n as f64;
        let inside = |i: usize| i as f64 / n as f64;
        let faces: Vec<f64> = (1..=n).map(|i| libm::pow(inside(i), layer.exponent - 1.0)).collect();
        let volume = |i: usize| {
            let outer = libm::pow(inside(i + 1), layer.exponent);
            let inner = libm::pow(inside(i), layer.exponent);
            layer.half * (outer - inner) / layer.exponent
        };
        let per_volume: Vec<f64> = (0..n).map(|i| 1.0 / volume(i)).collect();
        // Stable while no cell can lose more than it holds above its neighbours in one step.
        let most = (0..n)
            .map(|i| {
                let inward = if i > 0 { faces[i - 1] } else { 0.0 };
                let outward = if i + 1 < n { faces[i] } else { 2.0 * layer.edge };
                per_volume[i] * (inward + outward) / width
            })
            .fold(0.0, f64::max);
        Self {
            layer,
            bath,
            at: 0.0,
            step: OF_STABLE / (layer.meat.quickest() * most),
            faces,
            per_volume,
            heat: vec![layer.meat.heat(start.c()); n],
            celsius: vec![start.c(); n],
            width,
        }
    }

    /// Temperature at the middle, C: the parabola through the two innermost cells, flat at zero.
    fn core(&self) -> f64 {
        self.celsius[0] + (self.celsius[0] - self.celsius[1]) / 8.0
    }

    fn step(&mut self) {
        let meat = &self.layer.meat;
        let n = self.heat.len();
        let mut inflow = 0.0;
        let mut k = meat.k(self.celsius[0]);
        for i in 0..n {
            let outward = if i + 1 < n {
                let next = meat.k(self.celsius[i + 1]);
                let mean = 2.0 * k * next / (k + next);
                k = next;
                self.faces[i] * mean * (self.celsius[i + 1] - self.celsius[i]) / self.width
            } else {
                let resistance = 1.0 / self.bath.transfer.w_per_m2k() + 0.5 * self.width / k;
                self.layer.edge * (self.bath.temperature.c() - self.celsius[i]) / resistance
            };
            self.heat[i] += self.step * self.per_volume[i] * (outward - inflow);
            inflow = outward;
        }
        for (celsius, heat) in self.celsius.iter_mut().zip(&self.heat) {
            *celsius = meat.celsius(*heat);
        }
        self.at += self.step;
    }
}
