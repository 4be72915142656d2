//! Cooks drawn by seed from what home pits and breasts are like.
//!
//! Ranges are common practice (no source) unless a source is named.

use rand::RngExt;
use rand::seq::IndexedRandom;
use rand_chacha::ChaCha8Rng;
use rand_distr::{Distribution, StandardNormal};

use crate::breast::Proportions;
use crate::cook::{self, Cut, Setup, Told};
use crate::piece;
use crate::pit;
use crate::surface::{Exchange, Rest};
use crate::thermometer::{self, Instrument, Seat};

/// Celsius degrees in a Fahrenheit degree.
const PER_F: f64 = 5.0 / 9.0;
/// Weight, kg, and thickness, m, of a usual breast.
const USUAL: (f64, f64) = (0.25, 0.038);
/// Set temperatures, F, as often as they are used.
const SETTINGS: [f64; 10] = [225.0, 240.0, 250.0, 250.0, 250.0, 260.0, 275.0, 275.0, 275.0, 300.0];
/// Numbers of pieces: weeknights and meal-prep days, and all between.
const WEEKNIGHT: usize = 4;
const PREP_DAY: usize = 12;
/// Pull temperatures, F.
const PULLS: [f64; 4] = [155.0, 157.0, 160.0, 160.0];
/// Chance that the leave-in misses the coldest spot badly.
const MISSED: f64 = 0.3;

struct Draw(ChaCha8Rng);

impl Draw {
    fn normal(&mut self, mean: f64, spread: f64) -> f64 {
        let draw: f64 = StandardNormal.sample(&mut self.0);
        // Beyond 2.5 spreads a cook would notice.
        mean + spread * draw.clamp(-2.5, 2.5)
    }

    fn scale(&mut self, median: f64, spread: f64) -> f64 {
        median * self.normal(0.0, spread).exp()
    }

    fn range(&mut self, low: f64, high: f64) -> f64 {
        self.0.random_range(low..high)
    }

    fn one_of(&mut self, of: &[f64]) -> f64 {
        of.choose(&mut self.0).copied().unwrap_or(of[0])
    }
}

/// The cook of a seed.
pub fn draw(seed: u64) -> Setup {
    let draw = &mut Draw(cook::stream(seed, 0));
    let count = match draw.range(0.0, 1.0) {
        u if u < 0.25 => WEEKNIGHT,
        u if u < 0.45 => PREP_DAY,
        _ => draw.0.random_range(4..=20),
    };
    draw_of(draw, seed, count)
}

/// The cook of a seed with a given number of pieces.
pub fn draw_with(seed: u64, count: usize) -> Setup {
    draw_of(&mut Draw(cook::stream(seed, 0)), seed, count)
}

/// The cook of a seed without the pieces that have no leave-in: the seat is judged by its own piece
/// alone, and the others take most of the time.
pub fn draw_probed(seed: u64) -> Setup {
    let setup = draw(seed);
    let probed = setup.probed;
    let (pieces, told) = (vec![setup.pieces[probed]], vec![setup.told[probed]]);
    Setup { pieces, told, probed: 0, ..setup }
}

fn draw_of(draw: &mut Draw, seed: u64, count: usize) -> Setup {
    let pit = draw_pit(draw, seed, count);
    let exchange = draw_exchange(draw, count);
    let usual_weight = draw.scale(USUAL.0, 0.2);
    let measures = draw.range(0.0, 1.0) < 0.7;
    let believed_start = draw.one_of(&[3.0, 4.0, 5.0, 8.0]);
    let start = believed_start + draw.normal(0.0, 1.2);
    let rest = Rest {
        room: draw.range(16.0, 30.0),
        foil: draw.scale(6.0, 0.25),
        board: draw.scale(12.0, 0.25),
    };
    let (mut pieces, mut told) = (Vec::new(), Vec::new());
    for _ in 0..count {
        let (truth, said) =
            draw_piece(draw, usual_weight, measures, (start, believed_start), exchange, rest);
        pieces.push(truth);
        told.push(said);
    }
    let probed = smallest(&told);
    let missed = draw.range(0.0, 1.0) < MISSED;
    Setup {
        seed,
        pit,
        pieces,
        told,
        pull_at: (draw.one_of(&PULLS) - 32.0) * PER_F,
        probed,
        seat: if missed { Seat::missed(&mut draw.0) } else { Seat::careful(&mut draw.0) },
        instant: Instrument::of_tolerance(thermometer::INSTANT_TOLERANCE, &mut draw.0),
        leave_in: Instrument::of_tolerance(thermometer::LEAVE_IN_TOLERANCE, &mut draw.0),
        pit_dial: Instrument::of_tolerance(thermometer::PIT_TOLERANCE, &mut draw.0),
    }
}

/// The leave-in goes in the smallest.
fn smallest(told: &[Told]) -> usize {
    (0..told.len()).min_by(|&a, &b| told[a].weight.total_cmp(&told[b].weight)).unwrap_or(0)
}

fn draw_pit(draw: &mut Draw, seed: u64, count: usize) -> pit::Truth {
    pit::Truth {
        set: (draw.one_of(&SETTINGS) - 32.0) * PER_F,
        // Of its own stream: it matters only to cooks who set the pit anew.
        follows: Draw(cook::stream(seed, 4)).range(300.0, 1200.0),
        grate_offset: draw.normal(0.0, 7.0 * PER_F),
        gusts: (draw.range(1.5, 5.0), draw.range(120.0, 480.0)),
        drift: (draw.range(1.0, 5.0), draw.range(1200.0, 3600.0)),
        fall: draw.range(15.0, 45.0),
        kept: draw.range(0.3, 0.6),
        recovery: draw.range(90.0, 240.0),
        wall_offset: draw.normal(-4.0, 4.0),
        wall_lag: draw.range(200.0, 600.0),
        outside: draw.range(0.0, 32.0),
        vapour: draw.scale(2500.0, 0.4) + 60.0 * count as f64,
    }
}

/// What the pit gives all pieces alike.
fn draw_exchange(draw: &mut Draw, count: usize) -> Exchange {
    // Pieces close together leave less room for the air: 20 of them cost about a tenth.
    let crowding = 1.0 - 0.005 * count as f64 * draw.range(0.5, 1.5);
    Exchange {
        convection: draw.scale(11.5, 0.18) * crowding,
        top_bias: draw.normal(0.0, 0.15),
        end_bias: 0.0,
        emissivity: draw.range(0.8, 0.95),
        grate: draw.range(1.0, 6.0),
        water: draw.scale(0.05, 0.4),
        supply: draw.scale(5.0e-5, 0.25),
        half_wet: 0.05,
    }
}

fn draw_piece(
    draw: &mut Draw,
    usual_weight: f64,
    measures: bool,
    (start, believed_start): (f64, f64),
    shared: Exchange,
    rest: Rest,
) -> (piece::Truth, Told) {
    let weight = draw.scale(usual_weight, 0.16);
    let cut = match draw.range(0.0, 1.0) {
        u if u < 0.08 => Cut::Even,
        u if u < 0.16 => Cut::Thick,
        _ => Cut::Natural,
    };
    let (thicker, taper) = match cut {
        Cut::Natural => (1.0, draw.range(0.35, 0.6)),
        Cut::Even => (0.72, draw.range(0.05, 0.2)),
        Cut::Thick => (1.15, draw.range(0.35, 0.6)),
    };
    let thickness = draw.scale(USUAL.1 * (weight / USUAL.0).powf(0.4) * thicker, 0.08);
    let truth = piece::Truth {
        weight,
        thickness,
        proportions: Proportions {
            width_to_length: draw.normal(0.58, 0.05),
            thickness_taper: taper,
            width_taper: draw.range(0.3, 0.55),
            outline: draw.range(2.1, 2.9),
        },
        conductivity_scale: draw.scale(1.0, 0.03),
        start: start + draw.normal(0.0, 0.5),
        exchange: Exchange {
            convection: draw.scale(shared.convection, 0.07),
            end_bias: draw.normal(0.0, 0.12),
            water: draw.scale(shared.water, 0.1),
            supply: draw.scale(shared.supply, 0.1),
            ..shared
        },
        place: draw.normal(0.0, 6.0 * PER_F),
        rest,
    };
    let measured = (draw.scale(thickness, 0.03) + draw.normal(0.0, 1.0e-3)) * 1e3;
    let told = Told {
        weight: ((weight * 1e3 + draw.normal(0.0, 3.0)) / 5.0).round() * 5e-3,
        thickness: measures.then_some(measured.round() * 1e-3),
        cut,
        start: believed_start,
    };
    (truth, told)
}
