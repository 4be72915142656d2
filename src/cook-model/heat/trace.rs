//! A computed cook of one piece, ready to be asked.

use std::sync::Arc;

use super::body::{Body, Grid};
use super::medium::Medium;
use super::solver::State;
use super::units::{AreaHeat, AreaMass};
use crate::quantity::{Length, Span, Temperature, seconds, to_seconds};

/// Nodes beyond this place are outer ones.
const OUTER: f64 = 0.7;
/// Room for so many moments is made at once: enough for an hour or two.
const MOMENTS: usize = 96;
/// Halvings by which a crossing is pinned down: a step of minutes to well under a millisecond.
const HALVINGS: usize = 24;

/// The temperatures inside one piece over time.
///
/// Between the solver's own steps a trace follows the cubic through the heat contents and their
/// rates at both ends; before its start and after its end it keeps the first and last values.
#[derive(Clone, Debug)]
pub struct Trace {
    grid: Arc<Grid>,
    medium: Medium,
    half: f64,
    times: Vec<f64>,
    /// Heat contents, J/m3, node by node, moment after moment; and their rates, J/m3s.
    heat: Vec<f64>,
    rate: Vec<f64>,
    /// Water lost, kg/m2, and heat received, J/m2, each with its rate.
    water: Vec<(f64, f64)>,
    received: Vec<(f64, f64)>,
}

/// One moment of a trace.
pub(super) struct Record<'a> {
    pub at: f64,
    pub heat: &'a [f64],
    pub rate: &'a [f64],
    pub water: (f64, f64),
    pub received: (f64, f64),
}

/// A place between two kept moments: the earlier one, and how far on towards the later.
#[derive(Clone, Copy)]
struct Place {
    index: usize,
    share: f64,
}

impl Trace {
    pub(super) fn new(body: &Body) -> Self {
        let nodes = body.grid.nodes();
        Self {
            grid: body.grid.clone(),
            medium: body.medium,
            half: body.half,
            times: Vec::with_capacity(MOMENTS),
            heat: Vec::with_capacity(MOMENTS * nodes),
            rate: Vec::with_capacity(MOMENTS * nodes),
            water: Vec::with_capacity(MOMENTS),
            received: Vec::with_capacity(MOMENTS),
        }
    }

    pub(super) fn push(&mut self, record: &Record<'_>) {
        self.times.push(record.at);
        self.heat.extend_from_slice(record.heat);
        self.rate.extend_from_slice(record.rate);
        self.water.push(record.water);
        self.received.push(record.received);
    }

    /// Replaces the rates of the outer nodes, kept since a moment's index, by the slopes of parabolas
    /// through three moments: near the surface, which follows its surroundings at once, the stages
    /// of a step tell the rate to first order only.
    pub(super) fn smooth(&mut self, from: usize) {
        let (nodes, through) = (self.grid.nodes(), self.grid.through());
        let outer = self.grid.column.x.partition_point(|x| *x < OUTER);
        for i in from + 1..self.times.len().saturating_sub(1) {
            let (before, after) = (self.width(i - 1), self.width(i));
            let weight = 1.0 / (before + after);
            let (of_fell, of_rises) = (weight * after / before, weight * before / after);
            for node in outer..through {
                let at = |moment: usize| self.heat[moment * nodes + node];
                let (fell, rises) = (at(i) - at(i - 1), at(i + 1) - at(i));
                self.rate[i * nodes + node] = of_fell * fell + of_rises * rises;
            }
        }
    }

    pub(super) fn is_empty(&self) -> bool {
        self.times.is_empty()
    }

    /// The span from the start of the cook at which the trace begins.
    pub fn begin(&self) -> Span {
        seconds(self.times[0])
    }

    /// The span from the start of the cook at which the trace ends.
    pub fn end(&self) -> Span {
        seconds(self.times[self.times.len() - 1])
    }

    /// How many moments the solver computed.
    pub fn moments(&self) -> usize {
        self.times.len()
    }

    /// Core temperature: at the coldest spot while heating, the middle.
    pub fn core(&self, at: Span) -> Temperature {
        Temperature::from_c(self.core_at(to_seconds(at)))
    }

    /// Surface temperature.
    pub fn surface(&self, at: Span) -> Temperature {
        Temperature::from_c(self.surface_at(to_seconds(at)))
    }

    /// What a probe reads whose tip is a distance off the middle; at most at the surface.
    pub fn off_centre(&self, distance: Length, at: Span) -> Temperature {
        Temperature::from_c(self.off_centre_at(distance, to_seconds(at)))
    }

    /// The same three in C, at a time in seconds from the start of the cook: forecasts ask for them
    /// a hundred thousand times.
    pub(crate) fn core_at(&self, at: f64) -> f64 {
        self.celsius(self.place(at), 0)
    }

    pub(crate) fn surface_at(&self, at: f64) -> f64 {
        self.celsius(self.place(at), self.grid.through() - 1)
    }

    pub(crate) fn off_centre_at(&self, distance: Length, at: f64) -> f64 {
        let x = (distance.m() / self.half).clamp(0.0, 1.0);
        let place = self.place(at);
        let nodes = &self.grid.column.x;
        let outer = nodes.partition_point(|node| *node < x).max(1);
        let (a, b) = (nodes[outer - 1], nodes[outer]);
        // Straight in the square of the place: exact for the parabola a profile is near its middle.
        let share = (x * x - a * a) / (b * b - a * a);
        let (inside, outside) = (self.celsius(place, outer - 1), self.celsius(place, outer));
        inside + (outside - inside) * share
    }

    /// Mean temperature: what the piece settles at if it neither gains nor loses heat.
    pub fn mean(&self, at: Span) -> Temperature {
        Temperature::from_c(self.medium.reading(self.mean_heat(self.place(to_seconds(at)))))
    }

    /// Heat stored above 0 C, per area of surface.
    pub fn stored(&self, at: Span) -> AreaHeat {
        let mean = self.mean_heat(self.place(to_seconds(at)));
        AreaHeat::from_j_per_m2(mean * self.half * self.grid.volume_per_surface())
    }

    /// Heat received by convection and radiation, per area of surface.
    pub fn received(&self, at: Span) -> AreaHeat {
        AreaHeat::from_j_per_m2(self.between(&self.received, at))
    }

    /// Water evaporated, per area of surface.
    pub fn evaporated(&self, at: Span) -> AreaMass {
        AreaMass::from_kg_per_m2(self.between(&self.water, at))
    }

    /// When the core first reaches a temperature, if it does.
    pub fn core_reaches(&self, temperature: Temperature) -> Option<Span> {
        let target = self.medium.heat(temperature.c());
        let first = (0..self.times.len()).find(|i| self.kept(*i, 0).0 >= target)?;
        Some(self.crossing(first, |core| core >= target))
    }

    /// When the core, after a span, first falls to a temperature, if it does.
    pub fn core_falls_to(&self, temperature: Temperature, after: Span) -> Option<Span> {
        let target = self.medium.heat(temperature.c());
        let from = to_seconds(after);
        let first = (0..self.times.len())
            .find(|i| self.times[*i] > from && self.kept(*i, 0).0 <= target)?;
        Some(self.crossing(first, |core| core <= target).max(after))
    }

    /// The highest core temperature from a span on, and when.
    pub fn core_peak(&self, from: Span) -> (Span, Temperature) {
        let mut best = (from, self.core(from));
        let start = self.place(to_seconds(from)).index;
        for i in start..self.times.len() {
            let mut at = self.times[i];
            let (a, b) = (self.kept(i, 0), self.kept(self.next(i), 0));
            if a.1 > 0.0 && b.1 < 0.0 {
                at += self.width(i) * turning(a, b, self.width(i));
            }
            let at = seconds(at).max(from);
            let core = self.core(at);
            if core > best.1 {
                best = (at, core);
            }
        }
        best
    }

    /// The state at a span, from which [`resume`](super::resume) goes on.
    pub fn state(&self, at: Span) -> State {
        let place = self.place(to_seconds(at));
        State {
            at: self.times[place.index] + place.share * self.width(place.index),
            heat: (0..self.grid.nodes()).map(|i| self.node(place, i)).collect(),
            lost: self.between(&self.water, at),
            received: self.between(&self.received, at),
        }
    }

    fn place(&self, at: f64) -> Place {
        let after = self.times.partition_point(|t| *t <= at);
        if after == 0 {
            return Place { index: 0, share: 0.0 };
        }
        let index = after - 1;
        let width = self.width(index);
        let share = if width > 0.0 { (at - self.times[index]) / width } else { 0.0 };
        Place { index, share }
    }

    fn next(&self, index: usize) -> usize {
        (index + 1).min(self.times.len() - 1)
    }

    /// Seconds between a kept moment and the next.
    fn width(&self, index: usize) -> f64 {
        self.times[self.next(index)] - self.times[index]
    }

    /// Heat content of a node at a kept moment, and its rate.
    fn kept(&self, index: usize, node: usize) -> (f64, f64) {
        let i = index * self.grid.nodes() + node;
        (self.heat[i], self.rate[i])
    }

    /// Heat content of a node.
    fn node(&self, place: Place, node: usize) -> f64 {
        let (a, b) = (self.kept(place.index, node), self.kept(self.next(place.index), node));
        hermite(a, b, self.width(place.index), place.share)
    }

    /// Temperature of a node, C.
    fn celsius(&self, place: Place, node: usize) -> f64 {
        self.medium.reading(self.node(place, node))
    }

    fn between(&self, kept: &[(f64, f64)], at: Span) -> f64 {
        let place = self.place(to_seconds(at));
        let (a, b) = (kept[place.index], kept[self.next(place.index)]);
        hermite(a, b, self.width(place.index), place.share)
    }

    /// Mean heat content of the whole body.
    fn mean_heat(&self, place: Place) -> f64 {
        let column = &self.grid.column;
        let over_thickness = |weights: &mut dyn Iterator<Item = f64>| {
            let (mut heat, mut sum) = (0.0, 0.0);
            for (i, weight) in weights.enumerate() {
                heat += weight * self.node(place, i);
                sum += weight;
            }
            heat / sum
        };
        let Some(footprint) = &self.grid.footprint else {
            return over_thickness(&mut column.per_volume.iter().map(|per| 1.0 / per));
        };
        let middle = over_thickness(&mut column.share.iter().copied());
        let (mut heat, mut volume) = (0.0, 0.0);
        for (j, per) in footprint.per_volume.iter().enumerate() {
            let node = match j {
                0 => middle,
                _ => self.node(place, self.grid.through() + j - 1),
            };
            heat += node / per;
            volume += 1.0 / per;
        }
        heat / volume
    }

    /// When, in the step before a kept moment, the core first passes a test that it passes there.
    fn crossing(&self, first: usize, passed: impl Fn(f64) -> bool) -> Span {
        let Some(index) = first.checked_sub(1) else {
            return seconds(self.times[0]);
        };
        let (a, b, width) = (self.kept(index, 0), self.kept(first, 0), self.width(index));
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..HALVINGS {
            let middle = 0.5 * (low + high);
            if passed(hermite(a, b, width, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        seconds(self.times[index] + high * width)
    }
}

/// The cubic with given values and rates at both ends of a step.
fn hermite(a: (f64, f64), b: (f64, f64), width: f64, share: f64) -> f64 {
    let rise = b.0 - a.0;
    let (bend_a, bend_b) = (a.1 * width - rise, rise - b.1 * width);
    let rest = 1.0 - share;
    a.0 + share * rise + share * rest * (rest * bend_a + share * bend_b)
}

/// Where between 0 and 1 the cubic that rises at `a` and falls at `b` turns.
fn turning(a: (f64, f64), b: (f64, f64), width: f64) -> f64 {
    let rate = |s: f64| {
        let step = 1e-3;
        hermite(a, b, width, s + step) - hermite(a, b, width, s - step)
    };
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if rate(middle) > 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    low
}
