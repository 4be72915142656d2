//! The pit: a wandering fire, a dial that is not where the meat is, a lid that opens.

use rand::Rng;
use rand_chacha::ChaCha8Rng;
use rand_distr::{Distribution, StandardNormal};

use crate::surface::Surroundings;

/// What the pit truly is. Temperatures in C, differences in Celsius degrees, times in seconds.
#[derive(Clone, Copy, Debug)]
pub struct Truth {
    /// What the dial is held at, until the cook sets it anew.
    pub set: f64,
    /// Time over which the fire follows what is set anew.
    pub follows: f64,
    /// Air at the grate less the dial, mean.
    pub grate_offset: f64,
    /// Spread of the quick wandering and the time over which it forgets.
    pub gusts: (f64, f64),
    /// Spread of the slow drift and the time over which it forgets.
    pub drift: (f64, f64),
    /// Time for the air to fall with the lid open.
    pub fall: f64,
    /// Share of the excess over the room that the air keeps with the lid long open.
    pub kept: f64,
    /// Time for the air to come back after the lid shuts.
    pub recovery: f64,
    /// Walls less air, when settled.
    pub wall_offset: f64,
    /// Time for the walls to follow the air.
    pub wall_lag: f64,
    /// Air outside.
    pub outside: f64,
    /// Vapour pressure in the pit, Pa.
    pub vapour: f64,
}

/// The pit as it runs.
#[derive(Clone, Debug)]
pub struct Pit {
    truth: Truth,
    noise: ChaCha8Rng,
    /// What the dial is to be held at, and what the fire has come to of it.
    aim: f64,
    fire: f64,
    gust: f64,
    drift: f64,
    /// How far the air is below what it would be had the lid stayed shut.
    chill: f64,
    walls: f64,
    lid_open_for: f64,
}

impl Pit {
    /// A pit up to temperature. All its wandering comes from `noise`.
    pub fn new(truth: Truth, mut noise: ChaCha8Rng) -> Self {
        let gust = truth.gusts.0 * normal(&mut noise);
        let drift = truth.drift.0 * normal(&mut noise);
        let walls = truth.set + truth.grate_offset + truth.wall_offset;
        let (aim, fire) = (truth.set, truth.set);
        Self { truth, noise, aim, fire, gust, drift, chill: 0.0, walls, lid_open_for: 0.0 }
    }

    /// Sets the dial anew, C. The fire follows slowly.
    pub fn set(&mut self, celsius: f64) {
        self.aim = celsius;
    }

    /// Opens the lid for a time in seconds.
    pub fn open_lid(&mut self, seconds: f64) {
        self.lid_open_for = self.lid_open_for.max(seconds);
    }

    /// Advances by a step in seconds; the wandering draws the same numbers whatever the lid does.
    pub fn advance(&mut self, step: f64) {
        self.fire += (self.aim - self.fire) * (1.0 - (-step / self.truth.follows).exp());
        self.gust = wander(self.gust, self.truth.gusts, step, normal(&mut self.noise));
        self.drift = wander(self.drift, self.truth.drift, step, normal(&mut self.noise));
        let open = self.lid_open_for.min(step);
        let full_chill = (1.0 - self.truth.kept) * (self.shut_air() - self.truth.outside);
        self.chill = full_chill + (self.chill - full_chill) * (-open / self.truth.fall).exp();
        self.chill *= (-(step - open) / self.truth.recovery).exp();
        self.lid_open_for -= open;
        let goal = self.air() + self.truth.wall_offset;
        self.walls += (goal - self.walls) * (1.0 - (-step / self.truth.wall_lag).exp());
    }

    /// What the meat is in.
    pub fn surroundings(&self) -> Surroundings {
        Surroundings { air: self.air(), walls: self.walls, vapour: self.truth.vapour }
    }

    /// What a perfect dial would show, C.
    pub fn dial(&self) -> f64 {
        self.air() - self.truth.grate_offset
    }

    fn shut_air(&self) -> f64 {
        self.fire + self.truth.grate_offset + self.gust + self.drift
    }

    fn air(&self) -> f64 {
        self.shut_air() - self.chill
    }
}

/// A step of an Ornstein-Uhlenbeck process of a spread and a forgetting time.
fn wander(now: f64, (spread, forget): (f64, f64), step: f64, draw: f64) -> f64 {
    let keep = (-step / forget).exp();
    keep * now + spread * (1.0 - keep * keep).sqrt() * draw
}

fn normal(noise: &mut impl Rng) -> f64 {
    StandardNormal.sample(noise)
}
