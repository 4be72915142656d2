//! Cooks drawn by seed from a world.

use crate::chance::Chance;
use crate::fire;
use crate::kinds::{KINDS, Kind, PER_F};
use crate::piece;

/// What pits are set to, F, in equal shares.
pub const SETTINGS: [f64; 5] = [225.0, 250.0, 275.0, 300.0, 325.0];
/// The dial is never further off, K.
const DIAL_MOST: f64 = 20.0 * PER_F;
/// Weight, kg, and thickness, m, of a usual breast.
const USUAL: (f64, f64) = (0.25, 0.036);

/// What the cook says of a piece.
#[derive(Clone, Copy, Debug)]
pub struct Told {
    /// kg.
    pub weight: f64,
    /// m, if measured.
    pub thickness: Option<f64>,
    /// Whether it was said to be pounded even.
    pub even: bool,
    /// C.
    pub start: f64,
}

/// A cook before it starts.
#[derive(Clone, Debug)]
pub struct Setup {
    /// Which world, by its place in [`KINDS`].
    pub world: usize,
    /// Its seed.
    pub seed: u64,
    /// What the pit is set to, F.
    pub set: f64,
    /// The pit.
    pub pit: fire::Truth,
    /// Pieces as they are.
    pub pieces: Vec<piece::Truth>,
    /// As they are told.
    pub told: Vec<Told>,
    /// C.
    pub pull_at: f64,
    /// What the instant-read and the dial show over what is there, K.
    pub instant_off: f64,
    /// See `instant_off`.
    pub dial_shows: f64,
    /// Whether the pit is read again after it was loaded.
    pub pit_read: bool,
}

/// The cook of a number within its world; settings take turns.
pub fn draw(world: usize, number: u64) -> Setup {
    draw_with(world, number, None)
}

/// The same with a given number of pieces.
pub fn draw_with(world: usize, number: u64, count: Option<usize>) -> Setup {
    let kind = &KINDS[world];
    let seed = number * KINDS.len() as u64 + world as u64;
    let c = &mut Chance::of(seed, 0);
    let set = SETTINGS[(number % SETTINGS.len() as u64) as usize];
    let pit = pit(kind, set, c);
    let (law, meat) = ((kind.law)(c), (kind.meat)(c));
    let convection = c.range(kind.convection.0, kind.convection.1);
    let emissivity = c.range(kind.radiates.0, kind.radiates.1);
    let usual = c.scale(USUAL.0, 0.2);
    let believed = [3.0, 4.0, 5.0, 8.0][c.count(0, 3)];
    let start = believed + c.range(-kind.start_off, kind.start_off);
    let rest = [c.scale(6.5, 0.25), c.scale(11.0, 0.25), c.range(17.0, 30.0)];
    let measures = c.happens(0.75);
    let hotter = c.range(-kind.places.1, kind.places.1);
    let drawn = c.count(3, 6);
    let count = count.unwrap_or(drawn);
    let (mut pieces, mut told) = (Vec::new(), Vec::new());
    for number in 0..count {
        let form = (kind.form)(c);
        let weight = c.scale(usual, 0.18);
        let plump = if form.brick { 0.85 } else { 1.0 };
        let thickness = c.scale(USUAL.1 * plump * (weight / USUAL.0).powf(0.4), 0.09);
        let side = number as f64 / (count - 1) as f64 - 0.5;
        let truth = piece::Truth {
            weight,
            thickness,
            form,
            meat,
            start: (start + c.normal(0.0, 0.5)).max(0.0),
            law,
            convection: c.scale(convection, 0.06),
            top_bias: c.normal(0.0, 0.12),
            emissivity,
            place: c.normal(0.0, kind.places.0) + side * hotter,
            rest,
        };
        let slip = if c.happens(kind.mistyped) { c.range(-0.25, 0.25) } else { 0.0 };
        let measured = c.scale(thickness, 0.03) + c.normal(0.0, 1.0e-3) + slip * thickness;
        told.push(Told {
            weight: ((weight * 1e3 + c.normal(0.0, 3.0)) / 5.0).round() * 5e-3,
            thickness: measures.then_some((measured * 1e3).round() * 1e-3),
            even: form.brick,
            start: believed,
        });
        pieces.push(truth);
    }
    let pull_at = ([155.0, 157.0, 160.0, 160.0][c.count(0, 3)] - 32.0) * PER_F;
    Setup {
        world,
        seed,
        set,
        pit,
        pieces,
        told,
        pull_at,
        instant_off: c.normal(0.0, 0.5 * PER_F),
        dial_shows: c.normal(0.0, 2.0 * PER_F),
        pit_read: c.happens(0.6),
    }
}

fn pit(kind: &Kind, set: f64, c: &mut Chance) -> fire::Truth {
    fire::Truth {
        set: (set - 32.0) * PER_F,
        dial_off: c.normal(0.0, kind.dial).clamp(-DIAL_MOST, DIAL_MOST),
        wander: (kind.wander)(c),
        unrest: c.range(0.5, 2.5),
        lid: (kind.lid)(c),
        keeps: c.range(0.3, 0.6),
        loading: (c.range(0.0, 18.0), c.range(120.0, 420.0)),
        walls: (c.normal(-3.0, 4.0), c.range(150.0, 600.0)),
        outside: c.range(0.0, 32.0),
        dew: c.range(kind.dew.0, kind.dew.1),
    }
}
