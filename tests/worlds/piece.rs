//! One piece as it really is, and its course through pit and rest.

use std::sync::Arc;

use twin::solid::{self, Body, Field, Material};

use crate::chance::Chance;
use crate::meat::Meat;
use crate::shape::{Form, Solid};
use crate::skin::{Around, Law, Spot};

/// Surface coefficient that the time step must bear, W/m2K.
const STIFFEST: f64 = 120.0;

/// What a piece truly is.
#[derive(Clone, Copy, Debug)]
pub struct Truth {
    /// Weight, kg.
    pub weight: f64,
    /// Greatest thickness, m.
    pub thickness: f64,
    /// Its shape.
    pub form: Form,
    /// What it is made of.
    pub meat: Meat,
    /// Temperature when it goes on, C.
    pub start: f64,
    /// How its surface dries.
    pub law: Law,
    /// Convection, W/m2K; that above over the mean, less one; emissivity.
    pub convection: f64,
    /// See `convection`.
    pub top_bias: f64,
    /// See `convection`.
    pub emissivity: f64,
    /// Air at its place less the pit's mean, K.
    pub place: f64,
    /// Coefficients as it rests, W/m2K, above and below; and the room, C.
    pub rest: [f64; 3],
}

/// A piece being cooked.
#[derive(Clone, Debug)]
pub struct Piece {
    truth: Truth,
    body: Arc<Body>,
    field: Field,
    skin: Vec<Spot>,
    longest: f64,
    /// The cell that was coldest when it came off: its rim cools below it, but no cook would call
    /// that the core.
    at_rest: Option<usize>,
}

impl Piece {
    /// Raw, on a mesh with so many cells through the thickness.
    pub fn new(truth: Truth, across: usize) -> Self {
        let solid = Solid::new(truth.form, truth.weight, truth.thickness);
        let body = Body::new(&solid, solid.mesh(across));
        let surface = STIFFEST / truth.meat.conductivity(50.0);
        let longest = 0.9 * solid::longest_step(&body, truth.meat.fastest(), surface);
        Self {
            field: Field::uniform(&body, truth.start),
            skin: vec![Spot::raw(&truth.law, truth.start); body.patches.len()],
            body: Arc::new(body),
            truth,
            longest,
            at_rest: None,
        }
    }

    /// Cooks for a time, s, in a pit's air and walls, C, of a vapour pressure, Pa.
    pub fn cook(&mut self, air: f64, walls: f64, vapour: f64, seconds: f64) {
        self.at_rest = None;
        let Truth { law, convection, top_bias, emissivity, place, meat, .. } = self.truth;
        let steps = (seconds / self.longest).ceil().max(1.0);
        let step = seconds / steps;
        let (skin, body) = (&mut self.skin, &*self.body);
        for _ in 0..steps as usize {
            self.field.advance(body, &meat, step, |p, cell, k| {
                let patch = &body.patches[p];
                let convection = convection * (1.0 + top_bias * patch.normal[2]);
                let around = Around {
                    air: air + place,
                    walls: walls + place,
                    vapour,
                    convection,
                    emissivity,
                };
                skin[p].in_pit(&law, patch, &around, (cell, k), step)
            });
        }
    }

    /// Rests for a time, s.
    pub fn rest(&mut self, seconds: f64) {
        if self.at_rest.is_none() {
            self.at_rest = Some(self.field.core(&self.body).1);
        }
        let Truth { meat, rest: [above, below, room], .. } = self.truth;
        let steps = (seconds / self.longest).ceil().max(1.0);
        let (skin, body) = (&mut self.skin, &*self.body);
        for _ in 0..steps as usize {
            self.field.advance(body, &meat, seconds / steps, |p, cell, k| {
                let patch = &body.patches[p];
                let coefficient = if patch.normal[2] < -0.5 { below } else { above };
                skin[p].at_rest(patch, (coefficient, room), (cell, k))
            });
        }
    }

    /// From now on it rests in air of this temperature, C.
    pub fn hold_at(&mut self, air: f64) {
        self.truth.rest[2] = air;
    }

    fn coldest(&self) -> (f64, usize) {
        match self.at_rest {
            Some(cell) => (self.field.celsius[cell], cell),
            None => self.field.core(&self.body),
        }
    }

    /// The coldest spot, C; at rest, the spot that was coldest at the pull.
    pub fn core(&self) -> f64 {
        self.coldest().0
    }

    /// Water lost from the surface, mean, kg/m2.
    pub fn lost(&self) -> f64 {
        let patches = self.body.patches.iter().zip(&self.skin);
        patches.map(|(patch, spot)| patch.area * spot.lost).sum::<f64>() / self.body.area()
    }

    /// The lowest that so many pokes show whose tips scatter around the coldest spot by `scatter` m,
    /// C, before the thermometer's own error.
    pub fn poked(&self, pokes: usize, scatter: f64, luck: &mut Chance) -> f64 {
        let (core, cell) = self.coldest();
        let poke = |_| {
            let mut tip = self.body.centres[cell];
            tip[2] += luck.normal(0.0, scatter);
            self.field.at(&self.body, tip).unwrap_or(core).max(core)
        };
        (0..pokes).map(poke).fold(f64::INFINITY, f64::min)
    }
}
