//! The equations themselves, for holding the stepping against other solvers.

use super::body::Body;
use super::equations::Equations;
use super::solver::{State, Tuning};
use super::start::Start;
use super::surroundings::Leg;
use crate::quantity::{Span, Temperature, to_seconds};

/// The ordinary differential equations of a body in one leg of its way, which [`trace`](super::trace)
/// solves by its own steps and any general solver can.
///
/// Unknowns are the heat content at each node, J/m3 above 0 C, first the nodes through the
/// thickness, then those out to the edge; and last the water lost, kg/m2.
pub struct System<'a> {
    equations: Equations<'a>,
    body: &'a Body,
    leg: &'a Leg,
    tuning: Tuning,
}

impl<'a> System<'a> {
    /// The equations of a body in a leg.
    pub fn new(body: &'a Body, leg: &'a Leg, tuning: Tuning) -> Self {
        Self { equations: Equations::new(body, tuning.speed), body, leg, tuning }
    }

    /// The unknowns of a body that has just begun.
    pub fn begin(body: &Body, start: Start) -> Vec<f64> {
        let state = State::begin(body, start);
        let mut unknowns = state.heat;
        unknowns.push(state.lost);
        unknowns
    }

    /// The rate of change of each unknown, per second, at a span from the start of the cook, into
    /// `rates`. Both slices are as long as [`begin`](Self::begin) makes them.
    pub fn rates(&mut self, at: Span, unknowns: &[f64], rates: &mut [f64]) {
        let Some((lost, heat)) = unknowns.split_last() else { return };
        let Some((lost_rate, heat_rates)) = rates.split_last_mut() else { return };
        let offset = if self.leg.pit { self.tuning.offset.c() } else { 0.0 };
        let air = self.leg.air(to_seconds(at)) + offset;
        let exchange = self.equations.evaluate(heat, heat_rates, &self.leg.surface, air, *lost);
        *lost_rate = self.tuning.speed * exchange.water();
    }

    /// The core temperature of these unknowns.
    pub fn core(&self, unknowns: &[f64]) -> Temperature {
        Temperature::from_c(self.body.medium.celsius(unknowns[0]))
    }
}
