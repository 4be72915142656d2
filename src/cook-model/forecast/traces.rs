//! The heat model run for a few speeds and offsets of one piece, and interpolated between.

use super::{cells, prior};
use crate::heat::{
    Body, Leg, Start, State, Surface, Surroundings, Trace, Tuning, resume, resume_to_core,
};
use crate::history::{PieceHistory, Spell};
use crate::piece::Piece;
use crate::quantity::{
    Length, Moment, Span, Temperature, TemperatureDifference, minutes, seconds, to_seconds,
};

/// ln(speed) at which a piece in its first spell is computed. In time counted as speed times clock
/// time the curves of all speeds are nearly one, so that a parabola through three is enough.
const STRETCHED: [f64; 3] = [-0.4, 0.0, 0.4];
/// The same once it has come off: the curves then differ in kind.
const DIRECT: [f64; 5] = [-0.6, -0.3, 0.0, 0.3, 0.6];
/// Offsets at which it is computed, K; core temperatures are straight between and beyond.
const OFFSET_NODES: [f64; 2] = [SLOWEST, 8.0];
const SLOWEST: f64 = -8.0;
/// How long after going on is looked at.
pub(super) const HORIZON: Span = Span::hours(6);
/// Heating is followed until the core is this far above the pull temperature.
const BEYOND_PULL: TemperatureDifference = TemperatureDifference::from_c(12.0);
/// And at least this much longer than the piece has been on.
const BEYOND_NOW: f64 = 1.25;
/// Steps in which a piece that was put back is looked at, s.
const AGAIN_STEP: f64 = 60.0;
/// A rest is followed this long, and so is a piece that was put back.
pub(super) const REST: Span = Span::minutes(60);
/// The span over which a rate of rise is taken from a trace, s.
pub(super) const RATE_OVER: f64 = 120.0;

/// Where in the piece a temperature is asked for.
#[derive(Clone, Copy, Debug)]
pub(super) enum Spot {
    Core,
    Surface,
    Off(Length),
}

/// The traces of one piece.
pub(super) struct Traces {
    /// When it began to heat, s since the clock's zero.
    pub on: f64,
    /// When it last went on, and until when it is computed if it was put back; likewise.
    last_on: f64,
    until: f64,
    /// Whether time is stretched by speed.
    stretched: bool,
    speeds: &'static [f64],
    /// By speed, then offset.
    nodes: Vec<Trace>,
    /// How each speed of the cells is found from those computed: asked for at every reading.
    mixes: Vec<Mix>,
    pub body: Body,
    /// Where it is from the pull on, counted from the pull.
    rest: Surroundings,
}

/// What traces are made from besides the piece.
pub(super) struct Setting<'a> {
    /// Spans count from here.
    pub zero: Moment,
    pub now: Moment,
    pub pit: &'a Leg,
    pub ambient: Temperature,
}

impl Traces {
    pub(super) fn new(history: &PieceHistory, setting: &Setting<'_>) -> Self {
        let body = Body::of_piece(&history.piece);
        let first = history.spells.first().copied();
        let on = first.map_or(setting.now, |spell| spell.on) - setting.zero + prior::LOADING;
        let rest = Surroundings::new(Leg::steady(Surface::under_foil(), setting.ambient));
        let stretched = first.is_none_or(|spell| spell.off.is_none());
        let start = State::begin(&body, start(&history.piece)).at(on);
        let around = surroundings(&history.spells, setting);
        let speeds: &'static [f64] = if stretched { &STRETCHED } else { &DIRECT };
        let mut known = None;
        let length = if stretched {
            let until = (on + HORIZON, history.pull_at + BEYOND_PULL);
            let slowest = resume_to_core(&body, &start, &around, until, &tuning(0.0, SLOWEST));
            let cooked = seconds(to_seconds(setting.now - setting.zero - on) * BEYOND_NOW);
            known.insert(slowest).end().max(on + cooked) - on
        } else {
            let last = history.off().unwrap_or(setting.now).max(setting.now) - setting.zero;
            last - on + REST
        };
        let nodes = speeds
            .iter()
            .flat_map(|speed| OFFSET_NODES.map(|offset| (*speed, offset)))
            .map(|(speed, offset)| {
                let stretch = if stretched { libm::exp(-speed) } else { 1.0 };
                let until = on + seconds(to_seconds(length) * stretch);
                let is_it =
                    |known: &mut Trace| (speed, offset) == (0.0, SLOWEST) && known.end() >= until;
                let run = || resume(&body, &start, &around, until, &tuning(speed, offset));
                known.take_if(is_it).unwrap_or_else(run)
            })
            .collect();
        let last_on = history.spells.last().map_or(on, |spell| spell.on - setting.zero);
        Self {
            on: to_seconds(on),
            last_on: to_seconds(last_on),
            until: to_seconds(on + length),
            stretched,
            speeds,
            nodes,
            mixes: cells::speeds().map(|speed| Mix::of(speeds, stretched, speed)).collect(),
            body,
            rest,
        }
    }

    /// Until when it is computed, s since the clock's zero.
    pub(super) fn ends(&self) -> f64 {
        self.until
    }

    /// The temperature at a spot for every cell at a time in s since the clock's zero.
    pub(super) fn all_cells(&self, spot: Spot, at: f64) -> Vec<f64> {
        let mut all = Vec::with_capacity(cells::COUNT);
        for mix in &self.mixes {
            let [low, high] = self.at_speed(spot, mix, at);
            all.extend(cells::OFFSETS.map(|offset| between_offsets(low, high, offset)));
        }
        all
    }

    /// The temperature at a spot for one speed and offset.
    pub(super) fn at(&self, spot: Spot, (speed, offset): (f64, f64), at: f64) -> f64 {
        let [low, high] = self.at_speed(spot, &Mix::of(self.speeds, self.stretched, speed), at);
        between_offsets(low, high, offset)
    }

    /// The temperature at a spot for one speed at both offsets computed.
    fn at_speed(&self, spot: Spot, mix: &Mix, at: f64) -> [f64; 2] {
        let mut sums = [0.0; 2];
        for (Share { weight, pace }, traces) in mix.0.iter().zip(self.nodes.chunks_exact(2)) {
            let at = self.on + (at - self.on) * pace;
            for (sum, trace) in sums.iter_mut().zip(traces) {
                *sum += weight
                    * match spot {
                        Spot::Core => trace.core_at(at),
                        Spot::Surface => trace.surface_at(at),
                        Spot::Off(distance) => trace.off_centre_at(distance, at),
                    };
            }
        }
        sums
    }

    /// When the core reaches a temperature for every cell in this spell on the pit, s since the
    /// clock's zero; none for a cell that does not within the horizon.
    pub(super) fn reaches(&self, temperature: Temperature) -> Vec<Option<f64>> {
        if !self.stretched {
            return self.reaches_again(temperature);
        }
        let reached: Vec<Option<f64>> = self
            .nodes
            .iter()
            .map(|trace| trace.core_reaches(temperature).map(|at| to_seconds(at) - self.on))
            .collect();
        let mut all = Vec::with_capacity(cells::COUNT);
        for (speed, mix) in cells::speeds().zip(&self.mixes) {
            // The logarithm of the stretched time is the smoothest thing to interpolate.
            let times = self.between_nodes(&reached, mix);
            all.extend(cells::OFFSETS.map(|offset| {
                let [low, high] = times?;
                let after = libm::exp(between_offsets(low, high, offset) - speed);
                (after < to_seconds(HORIZON)).then_some(self.on + after)
            }));
        }
        all
    }

    /// The same for a piece that was put back, minute by minute: its core fell in between, so that
    /// the times of the cells have no smooth law.
    fn reaches_again(&self, temperature: Temperature) -> Vec<Option<f64>> {
        let target = temperature.c();
        let mut reached: Vec<Option<f64>> = vec![None; cells::COUNT];
        let (mut at, mut before) = (self.last_on, self.all_cells(Spot::Core, self.last_on));
        while at < self.until {
            let next = at + AGAIN_STEP;
            let after = self.all_cells(Spot::Core, next);
            for (cell, found) in reached.iter_mut().enumerate().filter(|(_, f)| f.is_none()) {
                let (from, to) = (before[cell], after[cell]);
                if to >= target {
                    let share = if from < target { (target - from) / (to - from) } else { 0.0 };
                    *found = Some(at + share * AGAIN_STEP);
                }
            }
            (at, before) = (next, after);
        }
        reached
    }

    /// ln of stretched times at a speed, at both offsets; none if a node has none.
    fn between_nodes(&self, times: &[Option<f64>], mix: &Mix) -> Option<[f64; 2]> {
        let mut sums = [0.0; 2];
        let nodes = self.speeds.iter().zip(times.chunks_exact(2));
        for (Share { weight, .. }, (node, times)) in mix.0.iter().zip(nodes) {
            for (sum, time) in sums.iter_mut().zip(times) {
                *sum += weight * (libm::log((*time)?.max(1.0)) + node);
            }
        }
        Some(sums)
    }

    /// The rest after a pull at a temperature, counted from the pull, for the expected speed and an offset
    /// of the air: straight between the states at the pull at both offsets computed.
    pub(super) fn rest_after(&self, pull: Temperature, offset: f64) -> Option<Trace> {
        let warm = self.state_at(pull, 1)?;
        let share = share_of_offset(offset);
        let state = self.state_at(pull, 0).map_or(warm.clone(), |cold| cold.towards(&warm, share));
        Some(self.rest_from(&state))
    }

    /// About when one cell gets to a temperature in this spell on the pit, s since the clock's zero: by its
    /// speed, at the warmer offset computed.
    pub(super) fn about(&self, temperature: Temperature, speed: f64) -> Option<f64> {
        let at = self.nodes[2 * (self.speeds.len() / 2) + 1].core_reaches(temperature)?;
        let stretch = if self.stretched { libm::exp(-speed) } else { 1.0 };
        Some(self.on + (to_seconds(at) - self.on) * stretch)
    }

    /// The piece when its core reaches a temperature, at the expected speed and one of the offsets
    /// computed.
    fn state_at(&self, core: Temperature, offset: usize) -> Option<State> {
        let trace = &self.nodes[2 * (self.speeds.len() / 2) + offset];
        Some(trace.state(trace.core_reaches(core)?).at(Span::zero()))
    }

    fn rest_from(&self, begin: &State) -> Trace {
        resume(&self.body, begin, &self.rest, REST, &Tuning::default())
    }
}

/// How a value at some speed is found from those at the speeds computed: by the polynomial in
/// ln(speed) through them.
struct Mix(Vec<Share>);

/// What one of the speeds computed gives.
struct Share {
    weight: f64,
    /// How much of the computed speed's time goes by in one of the other's.
    pace: f64,
}

impl Mix {
    fn of(nodes: &[f64], stretched: bool, speed: f64) -> Self {
        let share = |node: &f64| {
            let others = nodes.iter().filter(|other| *other != node);
            Share {
                weight: others.map(|other| (speed - other) / (node - other)).product(),
                pace: if stretched { libm::exp(speed - node) } else { 1.0 },
            }
        };
        Self(nodes.iter().map(share).collect())
    }
}

fn between_offsets(low: f64, high: f64, offset: f64) -> f64 {
    low + share_of_offset(offset) * (high - low)
}

/// How far on from the first to the second of the offsets computed.
fn share_of_offset(offset: f64) -> f64 {
    (offset - OFFSET_NODES[0]) / (OFFSET_NODES[1] - OFFSET_NODES[0])
}

/// How the heat model departs from its defaults at a speed and an offset.
fn tuning(speed: f64, offset: f64) -> Tuning {
    let offset = TemperatureDifference::from_c(offset);
    Tuning { speed: libm::exp(speed), offset }
}

/// The start, if its temperature makes sense; otherwise the nearest that does.
fn start(piece: &Piece) -> Start {
    Start::of_piece(piece).unwrap_or(Start::cooked(piece.start))
}

/// Pit and rest, one after another, as the spells have it.
fn surroundings(spells: &[Spell], setting: &Setting<'_>) -> Surroundings {
    let mut around = Surroundings::new(setting.pit.clone());
    for (i, spell) in spells.iter().enumerate() {
        if i > 0 {
            around = around.then(spell.on - setting.zero, setting.pit.clone());
        }
        let Some(off) = spell.off else { continue };
        let open = Leg::steady(Surface::uncovered(), setting.ambient);
        let foil = Leg::steady(Surface::under_foil(), setting.ambient);
        // A piece just pulled is taken to be covered soon.
        let covered = spell.covered.unwrap_or_else(|| setting.now.max(off + minutes(1.0)));
        around = around.then(off - setting.zero, open).then(covered - setting.zero, foil);
    }
    around
}
