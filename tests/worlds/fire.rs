//! The pit: a fire that wanders, cycles or dies down, a dial that is wrong, walls that lag.

use crate::chance::Chance;
use crate::lid::{Chill, Lid};
use crate::skin::saturation;

/// How the fire departs from what it was set to. Temperatures in K, times in s.
#[derive(Clone, Copy, Debug)]
pub enum Wander {
    /// Forgets: standard deviation and time.
    Forgets(f64, f64),
    /// Goes up and down, as under a thermostat: half of the swing and the period.
    Cycles(f64, f64),
    /// Dies down by so much an hour and is tended each time so much time has gone.
    Dies(f64, f64),
}

/// What a pit truly is.
#[derive(Clone, Copy, Debug)]
pub struct Truth {
    /// What the dial is held at, C.
    pub set: f64,
    /// Air at the grate less the dial, K.
    pub dial_off: f64,
    /// How the fire wanders, and a quick unrest on top, K, that forgets within two minutes.
    pub wander: Wander,
    /// See `wander`.
    pub unrest: f64,
    /// How the air comes back after the lid was open, and the share of its excess over the outside
    /// that it keeps with the lid long open.
    pub lid: Lid,
    /// See `lid`.
    pub keeps: f64,
    /// How far loading cold meat pulls the air down, K, and the time in which that passes, s.
    pub loading: (f64, f64),
    /// Walls less air, K, and the time by which they lag, s.
    pub walls: (f64, f64),
    /// Air outside, C.
    pub outside: f64,
    /// Dew point of the pit's air, C.
    pub dew: f64,
}

/// The pit as it runs.
#[derive(Clone, Debug)]
pub struct Pit {
    truth: Truth,
    luck: Chance,
    wander: f64,
    phase: f64,
    unrest: f64,
    chill: Chill,
    loaded: f64,
    walls: f64,
    open_for: f64,
    /// What is left of the fire, and what that goes towards.
    left: f64,
    leaves: f64,
}

/// What a dying fire leaves of itself, and the time by which it dies and comes back, s.
const EMBERS: f64 = 0.35;
const DIES_IN: f64 = 900.0;

/// What quick unrest forgets in, s.
const UNREST: f64 = 120.0;

impl Pit {
    /// A pit up to temperature, just loaded.
    pub fn new(truth: Truth, mut luck: Chance) -> Self {
        let (wander, phase) = match truth.wander {
            Wander::Forgets(spread, _) => (spread * luck.unit(), 0.0),
            Wander::Cycles(_, period) => (0.0, luck.range(0.0, period)),
            Wander::Dies(rate, every) => (0.0, luck.range(0.0, every) * rate.signum().max(0.0)),
        };
        let unrest = truth.unrest * luck.unit();
        let walls = truth.set + truth.dial_off + truth.walls.0;
        let (chill, loaded) = (Chill::default(), truth.loading.0);
        Self {
            truth,
            luck,
            wander,
            phase,
            unrest,
            chill,
            loaded,
            walls,
            open_for: 0.0,
            left: 1.0,
            leaves: 1.0,
        }
    }

    /// Opens the lid for a time, s.
    pub fn open(&mut self, seconds: f64) {
        self.open_for = self.open_for.max(seconds);
    }

    /// Lets the fire die, or mends it.
    pub fn tend(&mut self, lives: bool) {
        self.leaves = if lives { 1.0 } else { EMBERS };
    }

    /// Lets a step pass, s. The wandering is the same whatever the lid does.
    pub fn advance(&mut self, step: f64) {
        let draws = [self.luck.unit(), self.luck.unit()];
        let forget = |now: f64, spread: f64, time: f64, draw: f64| {
            let keep = (-step / time).exp();
            keep * now + spread * (1.0 - keep * keep).sqrt() * draw
        };
        self.phase += step;
        self.left += (self.leaves - self.left) * (1.0 - (-step / DIES_IN).exp());
        self.wander = match self.truth.wander {
            Wander::Forgets(spread, time) => forget(self.wander, spread, time, draws[0]),
            Wander::Cycles(half, period) => {
                half * (core::f64::consts::TAU * self.phase / period).sin()
            }
            Wander::Dies(rate, every) => rate * (0.5 * every - self.phase % every) / 3600.0,
        };
        self.unrest = forget(self.unrest, self.truth.unrest, UNREST, draws[1]);
        self.loaded *= (-step / self.truth.loading.1).exp();
        let open = self.open_for.min(step);
        let most = (1.0 - self.truth.keeps) * (self.shut() - self.truth.outside);
        self.chill.advance(&self.truth.lid, most, open, step);
        self.open_for -= open;
        let goal = self.air() + self.truth.walls.0;
        self.walls += (goal - self.walls) * (1.0 - (-step / self.truth.walls.1).exp());
    }

    fn shut(&self) -> f64 {
        let lost = (1.0 - self.left) * (self.truth.set - self.truth.outside);
        self.truth.set + self.truth.dial_off + self.wander + self.unrest - self.loaded - lost
    }

    /// The air at the grate, C.
    pub fn air(&self) -> f64 {
        self.shut() - self.chill.kelvin()
    }

    /// The walls, C.
    pub fn walls(&self) -> f64 {
        self.walls
    }

    /// What a perfect thermometer at the dial's place would show, C.
    pub fn dial(&self) -> f64 {
        self.air() - self.truth.dial_off
    }

    /// Vapour pressure in the pit, Pa: with the lid open that of air outside.
    pub fn vapour(&self) -> f64 {
        let full = saturation(self.truth.dew);
        let share = self.chill.kelvin() / (self.shut() - self.truth.outside).max(1.0);
        full + share * (saturation(0.5 * self.truth.outside) - full).min(0.0)
    }
}
