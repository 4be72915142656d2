//! Stepping a body through its surroundings.

use super::body::Body;
use super::equations::{Equations, Exchange};
use super::start::Start;
use super::surroundings::{Leg, Line, Surroundings};
use super::trace::{Record, Trace};
use crate::quantity::{Span, Temperature, TemperatureDifference, to_seconds};

/// Rosenbrock parameter that makes the two-stage method second order and L-stable: 1 - 1/sqrt(2).
const GAMMA: f64 = 1.0 - core::f64::consts::FRAC_1_SQRT_2;
/// Of the sum of both stages of a step, how much the first stage's rate is ahead of the rate at the
/// step's start: `k1 = u' + g t u''` and `k1 + k2 = (1 - 2 g) t u''` to second order.
const AHEAD: f64 = GAMMA / (1.0 - 2.0 * GAMMA);
/// The same, of the whole step.
const STEP_AHEAD: f64 = 1.0 / (1.0 - 2.0 * GAMMA);
/// The longest step, as a Fourier number over the half-thickness.
const LONGEST_STEP: f64 = 0.037;
/// The first step after the surroundings jump, in the same measure.
const FIRST_STEP: f64 = 0.002;
/// A step in which the air is further than this off the straight line that stands for it, K, is
/// halved, but not to less than the first one.
const AIR_OFF: f64 = 4.0;
/// How much longer each step may be than the one before.
const GROWTH: f64 = 1.35;
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
    /// How much hotter the air at the grate is than the pit thermometer says.
    pub offset: TemperatureDifference,
}

impl Default for Tuning {
    fn default() -> Self {
        Self { speed: 1.0, offset: TemperatureDifference::ZERO }
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
    /// Heat received by convection and radiation, J/m2.
    pub(super) received: f64,
}

impl State {
    /// The state of a body that has just begun.
    pub fn begin(body: &Body, start: Start) -> Self {
        Self { at: 0.0, heat: start.heat(body), lost: 0.0, received: 0.0 }
    }

    /// The same state with the clock set to a span from the start of the cook: a piece that goes
    /// on later than the surroundings' own start.
    #[must_use]
    pub fn at(self, span: Span) -> Self {
        Self { at: to_seconds(span), ..self }
    }

    /// The state a part of the way on to another of the same body, its clock left as it is.
    #[must_use]
    pub fn towards(&self, other: &Self, share: f64) -> Self {
        let between = |a: f64, b: f64| a + share * (b - a);
        let heat = self.heat.iter().zip(&other.heat).map(|(a, b)| between(*a, *b)).collect();
        Self {
            at: self.at,
            heat,
            lost: between(self.lost, other.lost),
            received: between(self.received, other.received),
        }
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
/// The state must come from a body of the same make and refinement.
pub fn resume(
    body: &Body,
    state: &State,
    surroundings: &Surroundings,
    until: Span,
    tuning: &Tuning,
) -> Trace {
    Run::new(body, state.clone(), *tuning).follow(surroundings, to_seconds(until))
}

/// The same, but ends with the first step after which the core is at a temperature or above.
pub fn resume_to_core(
    body: &Body,
    state: &State,
    surroundings: &Surroundings,
    (until, core): (Span, Temperature),
    tuning: &Tuning,
) -> Trace {
    let mut run = Run::new(body, state.clone(), *tuning);
    run.enough = body.medium.heat(core.c());
    run.follow(surroundings, to_seconds(until))
}

/// One trace under way.
struct Run<'a> {
    body: &'a Body,
    equations: Equations<'a>,
    /// Of all that passes the surface.
    exchange: f64,
    offset: f64,
    state: State,
    /// Heat content of the core, J/m3, that ends the trace.
    enough: f64,
    /// Right-hand side, then solution, of each stage; where the second is evaluated; and the rates
    /// at the start of a step, then at its end.
    stage1: Vec<f64>,
    stage2: Vec<f64>,
    trial: Vec<f64>,
    rate: Vec<f64>,
}

impl<'a> Run<'a> {
    fn new(body: &'a Body, state: State, tuning: Tuning) -> Self {
        let zeros = || vec![0.0; body.grid.nodes()];
        Self {
            body,
            equations: Equations::new(body, tuning.speed),
            exchange: tuning.speed,
            offset: tuning.offset.c(),
            state,
            enough: f64::INFINITY,
            stage1: zeros(),
            stage2: zeros(),
            trial: zeros(),
            rate: zeros(),
        }
    }

    /// Steps through one leg after another until a time.
    fn follow(mut self, surroundings: &Surroundings, until: f64) -> Trace {
        let mut trace = Trace::new(self.body);
        for (i, (_, leg)) in surroundings.legs.iter().enumerate() {
            let end = surroundings.legs.get(i + 1).map_or(until, |(from, _)| from.min(until));
            if self.is_before(end) {
                self.through(leg, end, &mut trace);
            }
        }
        if trace.is_empty() {
            self.record(surroundings.leg(self.state.at), &mut trace);
        }
        trace
    }

    fn is_before(&self, end: f64) -> bool {
        self.state.at < end && self.state.heat[0] < self.enough
    }

    /// Steps through one leg until its end.
    ///
    /// Steps depend on the body and the air alone, never on the temperatures inside, so that a trace
    /// changes smoothly with the tuning.
    fn through(&mut self, leg: &Leg, end: f64, trace: &mut Trace) {
        let per_fourier = self.body.half * self.body.half / STEP_DIFFUSIVITY;
        let scale = per_fourier * self.body.pace() / self.body.refinement as f64;
        let longest = (LONGEST_STEP * scale).max(SHORTEST_STEP);
        let shortest = (FIRST_STEP * scale).max(SHORTEST_STEP);
        let mut wanted = shortest;
        let growth = 1.0 + (GROWTH - 1.0) / self.body.refinement as f64;
        let begin = trace.moments();
        while self.is_before(end) {
            let left = end - self.state.at;
            let pieces = (left / wanted).ceil().max(1.0);
            let mut next = if pieces == 1.0 { end } else { self.state.at + left / pieces };
            let mut air = leg.line(self.state.at, next);
            while air.off > AIR_OFF && next - self.state.at > shortest {
                wanted = (next - self.state.at) / 2.0;
                next = self.state.at + wanted;
                air = leg.line(self.state.at, next);
            }
            self.step(leg, air, next, trace);
            wanted = (wanted * growth).min(longest);
        }
        self.record(leg, trace);
        trace.smooth(begin);
    }

    /// How much warmer the air of a leg is than the pit thermometer has it, K.
    fn offset(&self, leg: &Leg) -> f64 {
        if leg.pit { self.offset } else { 0.0 }
    }

    fn evaluate(&mut self, leg: &Leg, air: f64) -> Exchange {
        let (state, rate) = (&self.state, &mut self.stage1);
        self.equations.evaluate(&state.heat, rate, &leg.surface, air, state.lost)
    }

    /// Keeps the present moment, at the end of steps through this leg.
    fn record(&mut self, leg: &Leg, trace: &mut Trace) {
        let air = leg.air(self.state.at) + self.offset(leg);
        let exchange = self.evaluate(leg, air);
        self.keep(&exchange, trace);
    }

    fn keep(&self, exchange: &Exchange, trace: &mut Trace) {
        trace.push(&Record {
            at: self.state.at,
            heat: &self.state.heat,
            rate: &self.rate,
            water: (self.state.lost, self.exchange * exchange.water()),
            received: (self.state.received, self.exchange * exchange.sensible()),
        });
    }

    /// One step of the two-stage Rosenbrock method ROS2 (Verwer, Spee, Blom & Hundsdorfer 1999,
    /// SIAM J. Sci. Comput. 20:1456):
    ///
    /// ```text
    /// (I - g t A) k1 = F(u),   (I - g t A) k2 = F(u + t k1) - 2 k1,   u' = u + t (3 k1 + k2) / 2
    /// ```
    ///
    /// second order for any matrix `A`, so that what couples weakly may be left out of it.
    fn step(&mut self, leg: &Leg, air: Line, next: f64, trace: &mut Trace) {
        let step = next - self.state.at;
        let first = self.evaluate(leg, air.first + self.offset(leg));
        self.equations.factor(&self.state.heat, &first, GAMMA * step);
        let last = self.body.grid.through() - 1;
        let implicit = GAMMA * step * self.exchange * self.equations.surface_slope();
        let (water_slope, sensible_slope) = first.slopes();
        let (water_slope, sensible_slope) = (implicit * water_slope, implicit * sensible_slope);

        self.equations.solve(&mut self.stage1);
        let water1 = self.exchange * first.water() + water_slope * self.stage1[last];
        let heat1 = self.exchange * first.sensible() + sensible_slope * self.stage1[last];
        for ((trial, heat), k1) in self.trial.iter_mut().zip(&self.state.heat).zip(&self.stage1) {
            *trial = heat + step * k1;
        }
        let air = air.last + self.offset(leg);
        let lost = self.state.lost + step * water1;
        let second =
            self.equations.evaluate(&self.trial, &mut self.stage2, &leg.surface, air, lost);
        for (k2, k1) in self.stage2.iter_mut().zip(&self.stage1) {
            *k2 -= 2.0 * k1;
        }
        self.equations.solve(&mut self.stage2);
        let k2 = self.stage2[last];
        let water2 = self.exchange * second.water() - 2.0 * water1 + water_slope * k2;
        let heat2 = self.exchange * second.sensible() - 2.0 * heat1 + sensible_slope * k2;
        // The rates kept are those of the stages: the right-hand side itself would magnify whatever
        // the fastest modes, at the surface, are still short of their balance.
        for ((rate, k1), k2) in self.rate.iter_mut().zip(&self.stage1).zip(&self.stage2) {
            *rate = k1 - AHEAD * (k1 + k2);
        }
        self.keep(&first, trace);
        for ((rate, k1), k2) in self.rate.iter_mut().zip(&self.stage1).zip(&self.stage2) {
            *rate += STEP_AHEAD * (k1 + k2);
        }
        for ((heat, k1), k2) in self.state.heat.iter_mut().zip(&self.stage1).zip(&self.stage2) {
            *heat += step * (1.5 * k1 + 0.5 * k2);
        }
        self.state.lost += step * (1.5 * water1 + 0.5 * water2);
        self.state.received += step * (1.5 * heat1 + 0.5 * heat2);
        self.state.at = next;
    }
}
