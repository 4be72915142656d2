//! Conduction through the body and exchange at its surface, stepped through time.

use super::body::Body;
use super::medium::Medium;
use super::start::Start;
use super::surface::Flux;
use super::surroundings::{Leg, Surroundings};
use super::trace::{Record, Trace};
use crate::quantity::{Span, TemperatureDifference, to_seconds};

/// Rosenbrock parameter that makes the two-stage method second order and L-stable: 1 - 1/sqrt(2).
const GAMMA: f64 = 1.0 - core::f64::consts::FRAC_1_SQRT_2;
/// The longest step, as a Fourier number over the half-thickness.
const LONGEST_STEP: f64 = 0.05;
/// The first step after the surroundings jump, in the same measure.
const FIRST_STEP: f64 = 0.001;
/// How much longer each step may be than the one before.
const GROWTH: f64 = 1.6;
/// No step is shorter than this, s, whatever the body: keeps the work finite.
const SHORTEST_STEP: f64 = 0.01;
/// Diffusivity by which steps are scaled, m2/s: that of meat; its exact value only scales accuracy.
const STEP_DIFFUSIVITY: f64 = 1.4e-7;

/// The few lumped numbers by which a cook departs from the model's defaults.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tuning {
    /// How many times faster than expected everything goes in this piece: conduction and surface
    /// exchange together, as a thickness misjudged by half as much would have it.
    pub speed: f64,
    /// How many times more heat the surface exchanges than expected.
    pub transfer: f64,
    /// How much hotter the air at the grate is than the pit thermometer says.
    pub offset: TemperatureDifference,
}

impl Default for Tuning {
    fn default() -> Self {
        Self { speed: 1.0, transfer: 1.0, offset: TemperatureDifference::ZERO }
    }
}

/// The inside of a piece at one moment, from which a trace can go on.
#[derive(Clone, Debug, PartialEq)]
pub struct State {
    /// Seconds from the start of the cook.
    pub(super) at: f64,
    /// Heat content at each node, J/m3.
    pub(super) heat: Vec<f64>,
    /// Water lost, kg/m2.
    pub(super) lost: f64,
}

impl State {
    /// The state of a body that has just begun.
    pub fn begin(body: &Body, start: Start) -> Self {
        let heat = body.medium.heat(start.temperature().c());
        Self { at: 0.0, heat: vec![heat; body.grid.x.len()], lost: 0.0 }
    }

    /// The same state with the clock set to a span from the start of the cook: a piece that goes
    /// on later than the surroundings' own start.
    #[must_use]
    pub fn at(self, span: Span) -> Self {
        Self { at: to_seconds(span), ..self }
    }
}

/// Follows a body from a start through its surroundings until a span from the start.
pub fn trace(
    body: &Body,
    start: Start,
    surroundings: &Surroundings,
    until: Span,
    tuning: &Tuning,
) -> Trace {
    resume(body, &State::begin(body, start), surroundings, until, tuning)
}

/// Goes on from a state reached before; the surroundings count from the start of the cook.
///
/// The state must come from a body of the same refinement.
pub fn resume(
    body: &Body,
    state: &State,
    surroundings: &Surroundings,
    until: Span,
    tuning: &Tuning,
) -> Trace {
    let until = to_seconds(until);
    let mut run = Run::new(body, state.clone(), *tuning);
    let mut trace = Trace::new(body);
    for (i, (_, leg)) in surroundings.legs.iter().enumerate() {
        let end = surroundings.legs.get(i + 1).map_or(until, |(from, _)| from.min(until));
        if run.state.at < end {
            run.through(leg, end, &mut trace);
        }
    }
    if trace.is_empty() {
        run.record(surroundings.leg(run.state.at), &mut trace);
    }
    trace
}

/// One trace under way: the state and the solver's scratch space.
struct Run<'a> {
    body: &'a Body,
    medium: Medium,
    tuning: Tuning,
    state: State,
    /// Temperature at each node, C, at the last evaluation.
    celsius: Vec<f64>,
    /// Conductivity at each node, W/mK.
    k: Vec<f64>,
    /// Conductance between each node and the next, W/m2K times the half-thickness squared.
    link: Vec<f64>,
    /// Slope of temperature over heat content at each node.
    slope: Vec<f64>,
    /// Right-hand side, then solution, of each stage.
    stage1: Vec<f64>,
    stage2: Vec<f64>,
    /// The heat contents at which the second stage is evaluated.
    trial: Vec<f64>,
    /// The factored matrix: sub-diagonal, one over the pivots, super-diagonal over pivots.
    lower: Vec<f64>,
    pivot: Vec<f64>,
    upper: Vec<f64>,
}

impl<'a> Run<'a> {
    fn new(body: &'a Body, state: State, tuning: Tuning) -> Self {
        let zeros = || vec![0.0; body.grid.x.len()];
        Self {
            body,
            medium: body.medium,
            tuning,
            state,
            celsius: zeros(),
            k: zeros(),
            link: zeros(),
            slope: zeros(),
            stage1: zeros(),
            stage2: zeros(),
            trial: zeros(),
            lower: zeros(),
            pivot: zeros(),
            upper: zeros(),
        }
    }

    /// Steps through one leg until its end, landing on every knot of the air's temperature.
    ///
    /// Steps depend on the body and the surroundings alone, never on the temperatures, so that a
    /// trace changes smoothly with the tuning.
    fn through(&mut self, leg: &Leg, end: f64, trace: &mut Trace) {
        let per_fourier = self.body.half * self.body.half / STEP_DIFFUSIVITY;
        let scale = per_fourier / self.body.refinement as f64;
        let longest = (LONGEST_STEP * scale).max(SHORTEST_STEP);
        let mut wanted = (FIRST_STEP * scale).max(SHORTEST_STEP);
        let mut knot = leg.knots.partition_point(|k| k.at <= self.state.at);
        while self.state.at < end {
            let target = leg.knots.get(knot).map_or(end, |k| k.at.min(end));
            let left = target - self.state.at;
            let pieces = (left / wanted).ceil().max(1.0);
            let step = left / pieces;
            let next = if pieces == 1.0 { target } else { self.state.at + step };
            self.step(leg, next, trace);
            if pieces == 1.0 {
                knot += 1;
            }
            wanted = (wanted * GROWTH).min(longest);
        }
        self.record(leg, trace);
    }

    /// Air temperature, C.
    fn air(&self, leg: &Leg, at: f64) -> f64 {
        leg.air(at) + if leg.pit { self.tuning.offset.c() } else { 0.0 }
    }

    /// The rate of change of each node's heat content, J/m3s, at heat contents `heat`, into `rate`.
    fn evaluate(&mut self, second: bool, leg: &Leg, at: f64, lost: f64) -> Flux {
        let air = self.air(leg, at);
        let medium = self.medium;
        let (heat, rate) = if second {
            (&self.trial, &mut self.stage2)
        } else {
            (&self.state.heat, &mut self.stage1)
        };
        let n = heat.len();
        let (celsius, k) = (&mut self.celsius[..n], &mut self.k[..n]);
        for i in 0..n {
            celsius[i] = medium.celsius(heat[i]);
            k[i] = medium.k(celsius[i]);
        }
        let last = n - 1;
        let (link, conductance) = (&mut self.link[..n], &self.body.grid.conductance[..last]);
        for i in 0..last {
            link[i] = conductance[i] * 0.5 * (k[i] + k[i + 1]);
        }
        let flux = leg.surface.flux(celsius[last], air, lost);
        let scale = self.tuning.speed / (self.body.half * self.body.half);
        let per_volume = &self.body.grid.per_volume[..n];
        let mut inflow = 0.0;
        for i in 0..last {
            let onward = link[i] * (celsius[i + 1] - celsius[i]);
            rate[i] = scale * per_volume[i] * (onward - inflow);
            inflow = onward;
        }
        let surface = self.body.half * self.body.edge * self.tuning.transfer * flux.net();
        rate[last] = scale * per_volume[last] * (surface - inflow);
        flux
    }

    /// Keeps the present moment in the trace, with the rates under this leg.
    fn record(&mut self, leg: &Leg, trace: &mut Trace) {
        let flux = self.evaluate(false, leg, self.state.at, self.state.lost);
        self.keep(&flux, trace);
    }

    /// Keeps the moment last evaluated.
    fn keep(&mut self, flux: &Flux, trace: &mut Trace) {
        for (slope, heat) in self.slope.iter_mut().zip(&self.state.heat) {
            *slope = self.medium.slope(*heat);
        }
        trace.push(Record {
            at: self.state.at,
            celsius: &self.celsius,
            rate: self.stage1.iter().zip(&self.slope).map(|(rate, slope)| rate * slope),
            lost: self.state.lost,
            losing: flux.water * self.tuning.transfer * self.tuning.speed,
        });
    }

    /// One step of the two-stage Rosenbrock method ROS2 (Verwer, Spee, Blom & Hundsdorfer 1999,
    /// SIAM J. Sci. Comput. 20:1456):
    ///
    /// ```text
    /// (I - g t A) k1 = F(u),   (I - g t A) k2 = F(u + t k1) - 2 k1,   u' = u + t (3 k1 + k2) / 2
    /// ```
    ///
    /// second order for any matrix `A`, so that the conductivity's own slope may be left out of it.
    fn step(&mut self, leg: &Leg, next: f64, trace: &mut Trace) {
        let (now, lost) = (self.state.at, self.state.lost);
        let step = next - now;
        let flux = self.evaluate(false, leg, now, lost);
        self.keep(&flux, trace);
        self.factor(&flux, GAMMA * step);
        let last = self.slope.len() - 1;
        let exchange = self.tuning.transfer * self.tuning.speed;
        let water_slope = GAMMA * step * exchange * flux.water_slope * self.slope[last];

        solve(&self.lower, &self.pivot, &self.upper, &mut self.stage1);
        let losing1 = exchange * flux.water + water_slope * self.stage1[last];
        for ((trial, heat), k1) in self.trial.iter_mut().zip(&self.state.heat).zip(&self.stage1) {
            *trial = heat + step * k1;
        }
        let flux2 = self.evaluate(true, leg, next, lost + step * losing1);
        for (k2, k1) in self.stage2.iter_mut().zip(&self.stage1) {
            *k2 -= 2.0 * k1;
        }
        solve(&self.lower, &self.pivot, &self.upper, &mut self.stage2);
        let losing2 = exchange * flux2.water - 2.0 * losing1 + water_slope * self.stage2[last];
        for ((heat, k1), k2) in self.state.heat.iter_mut().zip(&self.stage1).zip(&self.stage2) {
            *heat += step * (1.5 * k1 + 0.5 * k2);
        }
        self.state.lost += step * (1.5 * losing1 + 0.5 * losing2);
        self.state.at = next;
    }

    /// Factors `I - weight A` for the moment last evaluated.
    fn factor(&mut self, flux: &Flux, weight: f64) {
        let half = self.body.half;
        let scale = weight * self.tuning.speed / (half * half);
        let surface = half * self.body.edge * self.tuning.transfer * flux.net_slope();
        let n = self.slope.len();
        let per_volume = &self.body.grid.per_volume[..n];
        let (link, slope) = (&self.link[..n], &self.slope[..n]);
        let (lower, pivot, upper) =
            (&mut self.lower[..n], &mut self.pivot[..n], &mut self.upper[..n]);
        let mut inward = 0.0;
        for i in 0..n {
            let volume = scale * per_volume[i];
            let outward = if i + 1 < n { link[i] } else { 0.0 };
            let exchange = if i + 1 < n { 0.0 } else { -surface };
            let mut diagonal = 1.0 + volume * (inward + outward + exchange) * slope[i];
            lower[i] = 0.0;
            if i > 0 {
                lower[i] = -volume * inward * slope[i - 1];
                diagonal -= lower[i] * upper[i - 1];
            }
            pivot[i] = 1.0 / diagonal;
            upper[i] = if i + 1 < n { -volume * outward * slope[i + 1] * pivot[i] } else { 0.0 };
            inward = outward;
        }
    }
}

/// Solves the factored tridiagonal system in place.
#[inline]
fn solve(lower: &[f64], pivot: &[f64], upper: &[f64], x: &mut [f64]) {
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
