//! One piece as it really is, and its course through pit and rest.

use crate::breast::{Breast, Proportions};
use crate::meat::Meat;
use crate::solid::{self, Body, Field};
use crate::surface::{Exchange, Rest, Skin, Surroundings};

/// Surface coefficient, W/(m2 K), that the time step must bear: convection, radiation and
/// evaporation together.
const STIFFEST_SURFACE: f64 = 120.0;
/// Highest diffusivity met, m2/s.
const FASTEST: f64 = 1.5e-7;
/// Half-width below which a piece of meat always has a probe tip to be in, m.
const SKIN_DEPTH: f64 = 1.5e-3;

/// What a piece truly is.
#[derive(Clone, Copy, Debug)]
pub struct Truth {
    /// Weight, kg.
    pub weight: f64,
    /// Greatest thickness, m.
    pub thickness: f64,
    /// Shape.
    pub proportions: Proportions,
    /// Conductivity over the usual one.
    pub conductivity_scale: f64,
    /// Temperature when it goes on, C.
    pub start: f64,
    /// Its surface and place.
    pub exchange: Exchange,
    /// Air at its place less the pit's mean, C.
    pub place: f64,
    /// How it will rest.
    pub rest: Rest,
}

/// A piece being cooked.
#[derive(Clone, Debug)]
pub struct Piece {
    truth: Truth,
    /// Where a probe is aimed, m.
    aim: [f64; 3],
    body: std::sync::Arc<Body>,
    field: Field,
    skin: Skin,
    longest_step: f64,
    /// The cell that was coldest when it came off: at rest the thin rim soon cools below it, but no
    /// cook would call that the core.
    core_at_rest: Option<usize>,
}

impl Piece {
    /// A raw piece on a mesh with `across` cells through the thickness.
    pub fn new(truth: Truth, across: usize) -> Self {
        let breast = Breast::new(truth.weight, truth.thickness, truth.proportions);
        let body = Body::new(&breast, breast.mesh(across));
        let conductivity = 0.52 * truth.conductivity_scale;
        let longest_step = 0.9
            * solid::longest_step(
                &body,
                FASTEST * truth.conductivity_scale,
                STIFFEST_SURFACE / conductivity,
            );
        Self {
            truth,
            aim: breast.centre(),
            field: Field::uniform(&body, truth.start),
            skin: Skin::new(&body, truth.exchange, truth.start),
            body: std::sync::Arc::new(body),
            longest_step,
            core_at_rest: None,
        }
    }

    /// What it truly is.
    pub fn truth(&self) -> &Truth {
        &self.truth
    }

    /// Its cells.
    pub fn body(&self) -> &Body {
        &self.body
    }

    /// Cooks for a time in seconds.
    pub fn cook(&mut self, around: &Surroundings, seconds: f64) {
        self.core_at_rest = None;
        let around = Surroundings { air: around.air + self.truth.place, ..*around };
        let meat = Meat { conductivity_scale: self.truth.conductivity_scale };
        let steps = (seconds / self.longest_step).ceil().max(1.0);
        let step = seconds / steps;
        let (skin, body) = (&mut self.skin, &*self.body);
        for _ in 0..steps as usize {
            self.field.advance(body, &meat, step, |p, cell, k| {
                skin.in_pit(p, &body.patches[p], &around, (cell, k), step)
            });
        }
    }

    /// Rests for a time in seconds.
    pub fn rest(&mut self, seconds: f64) {
        if self.core_at_rest.is_none() {
            self.core_at_rest = Some(self.field.core(&self.body).1);
        }
        let meat = Meat { conductivity_scale: self.truth.conductivity_scale };
        let steps = (seconds / self.longest_step).ceil().max(1.0);
        let step = seconds / steps;
        let (skin, body, rest) = (&mut self.skin, &*self.body, &self.truth.rest);
        for _ in 0..steps as usize {
            self.field.advance(body, &meat, step, |p, cell, k| {
                skin.at_rest(p, &body.patches[p], rest, (cell, k))
            });
        }
    }

    /// From now on it rests in air of this temperature, C.
    pub fn hold_at(&mut self, air: f64) {
        self.truth.rest.room = air;
    }

    /// The temperature of the coldest spot, C; at rest, of the spot that was coldest at the pull.
    pub fn core(&self) -> f64 {
        self.coldest().0
    }

    fn coldest(&self) -> (f64, usize) {
        match self.core_at_rest {
            Some(cell) => (self.field.celsius[cell], cell),
            None => self.field.core(&self.body),
        }
    }

    /// Aims probes at the spot that stays coldest, found by cooking a copy for a time in seconds: near
    /// the thickest part, but further from the blunt end.
    pub fn aim_at_coldest(&mut self, around: &Surroundings, seconds: f64) {
        let mut copy = self.clone();
        copy.cook(around, seconds);
        self.aim = self.body.centres[copy.coldest().1];
    }

    /// What a tip `up` metres above (below, if negative) where it was aimed and `along` metres towards
    /// the thin end is at, C. Tips stay inside the meat.
    pub fn at_tip(&self, up: f64, along: f64) -> f64 {
        let limit = 0.5 * self.truth.thickness - SKIN_DEPTH;
        let mut tip = self.aim;
        tip[0] += along;
        tip[2] = (tip[2] + up).clamp(-limit, limit);
        self.field.at(&self.body, tip).unwrap_or_else(|| self.core()).max(self.core())
    }

    /// The temperature of a tip `off` metres from the coldest spot, up or down, C.
    pub fn near_coldest(&self, off: f64) -> f64 {
        let (core, cell) = self.coldest();
        let mut tip = self.body.centres[cell];
        tip[2] += off;
        self.field.at(&self.body, tip).unwrap_or(core).max(core)
    }

    /// Weight lost by evaporation so far, as a fraction of the raw weight.
    pub fn evaporated(&self) -> f64 {
        let both_halves = 2.0 * self.body.area();
        self.skin.evaporated(&self.body) * both_halves / self.truth.weight
    }
}

#[cfg(test)]
mod tests {
    use crate::cook::Cook;
    use crate::cooks;

    /// Below 38 mm of meat a surface that is 40 F colder for two and a half minutes is felt by less than 1 F:
    /// the half-space's erfc(x / (2 sqrt(a t))) from both faces, a = 1.4e-7 m2/s, is 0.013 (Carslaw & Jaeger).
    /// While the lid is down the core is the coldest spot of all.
    #[test]
    fn the_core_is_the_coldest_spot_of_a_piece_that_warms_and_hardly_feels_the_lid() {
        for seed in [3, 4, 5, 6] {
            let mut setup = cooks::draw_with(seed, 1);
            (setup.pieces[0].thickness, setup.pieces[0].weight) = (0.038, 0.25);
            let mut cook = Cook::new(setup, 10);
            cook.put_on(0);
            while cook.core(0) < 71.0 {
                cook.step();
            }
            let of_all = &cook.piece(0).field.celsius;
            let coldest = of_all.iter().copied().fold(f64::INFINITY, f64::min);
            assert_eq!(coldest, cook.core(0), "seed {seed}");
            cook.open_lid(150.0);
            cook.run_to(cook.now() + 150.0);
            assert!(cook.core(0) > 71.0, "{} C after the lid was up", cook.core(0));
        }
    }
}
