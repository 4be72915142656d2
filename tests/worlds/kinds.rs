//! The worlds: each a set of laws, with the ranges of its numbers.
//!
//! Ranges are common practice and textbook coefficients (no source), as wide as home pits are taken to
//! be; none was moved to suit a forecast.

use crate::chance::Chance;
use crate::fire::Wander;
use crate::lid::Lid;
use crate::meat::Meat;
use crate::shape::Form;
use crate::skin::Law;

/// Kelvin in a Fahrenheit degree.
pub const PER_F: f64 = 5.0 / 9.0;

/// A world.
#[derive(Clone, Copy, Debug)]
pub struct Kind {
    /// What it is called in the tables.
    pub name: &'static str,
    /// How surfaces dry in a cook of it.
    pub law: fn(&mut Chance) -> Law,
    /// Dew point of the pit's air, C, from and to.
    pub dew: (f64, f64),
    /// Convection, W/m2K, from and to.
    pub convection: (f64, f64),
    /// Emissivity towards the walls, from and to; next to none where a baffle hides them.
    pub radiates: (f64, f64),
    /// How the air answers the lid.
    pub lid: fn(&mut Chance) -> Lid,
    /// How the fire wanders.
    pub wander: fn(&mut Chance) -> Wander,
    /// What pieces are shaped like.
    pub form: fn(&mut Chance) -> Form,
    /// What they are made of.
    pub meat: fn(&mut Chance) -> Meat,
    /// Spread of the grate less the dial, K; it is never more than 20 F.
    pub dial: f64,
    /// Spread of the places, K, and how much hotter one side may be than the other, K.
    pub places: (f64, f64),
    /// How far the typed start may be off, K.
    pub start_off: f64,
    /// The chance that a thickness is mistyped by a fifth or a quarter.
    pub mistyped: f64,
    /// How many other openings there may be, and the chance that one is told.
    pub others: (usize, f64),
}

/// All of them.
pub const KINDS: [Kind; 14] = [
    Kind { name: "wet behind a skin", law: |c| Law::Film(c.range(450.0, 1400.0)), ..COMMON },
    Kind { name: "dries slowly", law: slow, dew: (35.0, 48.0), ..COMMON },
    Kind { name: "falling rate", law: falling, meat: drier, ..COMMON },
    Kind { name: "crusts", law: crust, lid: |c| Lid::Climbs(c.range(0.12, 0.5)), ..COMMON },
    Kind { name: "seeps", law: |c| Law::Seep(c.range(0.01, 0.03)), wander: cycles, ..COMMON },
    Kind { name: "humid", dew: (52.0, 60.0), form: ellipsoid, ..COMMON },
    Kind { name: "dry", law: dry, dew: (25.0, 34.0), ..COMMON },
    Kind { name: "fan", convection: (16.0, 20.0), law: crust, lid: quick, ..COMMON },
    Kind { name: "still, walls hidden", convection: (9.0, 14.0), ..STILL },
    Kind { name: "bricks", form: brick, law: |c| Law::Film(c.range(450.0, 1400.0)), ..COMMON },
    Kind { name: "folded tails", form: folded, lid: slow_lid, ..COMMON },
    Kind { name: "uneven rack, wrong dial", dial: 7.0, places: (3.0, 8.0), ..COMMON },
    Kind { name: "wrong starts, mistyped", start_off: 8.0 * PER_F, mistyped: 0.1, ..COMMON },
    Kind {
        name: "fire dies, lid often up",
        wander: dies,
        others: (6, 0.4),
        lid: slow_lid,
        ..COMMON
    },
];

/// What most worlds share, other than in what they are there for.
const COMMON: Kind = Kind {
    name: "",
    law: pool,
    dew: (30.0, 52.0),
    convection: (10.0, 18.0),
    radiates: (0.7, 0.95),
    lid: |c| Lid::Fades(c.range(60.0, 180.0)),
    wander: |c| Wander::Forgets(c.range(1.5, 6.0), c.range(180.0, 1800.0)),
    form: teardrop,
    meat: |c| Meat::Rising { scale: c.scale(1.0, 0.04), capacity: c.range(3400.0, 3650.0) },
    dial: 3.5,
    places: (1.5, 3.0),
    start_off: 1.5,
    mistyped: 0.0,
    others: (2, 0.6),
};

const STILL: Kind = Kind {
    law: falling,
    radiates: (0.2, 0.4),
    lid: |c| Lid::Walls(c.range(0.3, 0.6), c.range(200.0, 400.0)),
    meat: |c| Meat::Constant {
        conductivity: c.range(0.46, 0.52),
        capacity: c.range(3300.0, 3600.0),
    },
    ..COMMON
};

fn pool(c: &mut Chance) -> Law {
    Law::Pool(c.scale(0.05, 0.4), c.scale(5.0e-5, 0.4), 0.05)
}

fn slow(c: &mut Chance) -> Law {
    Law::Pool(c.scale(0.12, 0.3), c.scale(7.0e-5, 0.25), 0.08)
}

fn falling(c: &mut Chance) -> Law {
    Law::Falling(c.scale(0.1, 0.4), c.scale(0.6, 0.3), c.range(0.1, 0.3))
}

fn dry(c: &mut Chance) -> Law {
    if c.happens(0.5) { pool(c) } else { falling(c) }
}

fn crust(c: &mut Chance) -> Law {
    Law::Crust(1.0 / 700.0, c.range(0.1, 0.2), c.scale(1.2e-6, 0.4))
}

fn drier(c: &mut Chance) -> Meat {
    let capacity = c.range(3400.0, 3700.0);
    Meat::Drier { conductivity: c.range(0.47, 0.53), capacity, lost: c.range(0.02, 0.12) }
}

fn quick(c: &mut Chance) -> Lid {
    Lid::Fades(c.range(40.0, 80.0))
}

fn slow_lid(c: &mut Chance) -> Lid {
    Lid::Fades(c.range(150.0, 260.0))
}

fn cycles(c: &mut Chance) -> Wander {
    Wander::Cycles(c.range(2.0, 8.0), c.range(300.0, 1200.0))
}

fn dies(c: &mut Chance) -> Wander {
    Wander::Dies(c.range(8.0, 25.0), c.range(1800.0, 3600.0))
}

fn teardrop(c: &mut Chance) -> Form {
    let taper = (c.range(0.4, 0.7), c.range(0.3, 0.55));
    Form { width: c.normal(0.58, 0.05), taper, round: [c.range(2.1, 2.9), 2.2, 2.4], brick: false }
}

fn ellipsoid(c: &mut Chance) -> Form {
    Form { width: c.range(0.5, 0.7), taper: (0.0, 0.0), round: [2.0, 2.0, 2.0], brick: false }
}

fn brick(c: &mut Chance) -> Form {
    Form { width: c.range(0.5, 0.75), taper: (0.0, 0.0), round: [2.0; 3], brick: true }
}

/// The thin tail is tucked under, so that the far end is nearly as thick.
fn folded(c: &mut Chance) -> Form {
    let taper = (c.range(0.0, 0.2), c.range(0.2, 0.4));
    Form { width: c.range(0.6, 0.75), taper, round: [c.range(2.8, 4.0), 2.4, 3.0], brick: false }
}
