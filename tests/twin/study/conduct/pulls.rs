//! Where pieces are told to be pulled, by thickness and pit, beside how often pieces pulled there, and at
//! 160 F, do not come to a reading that proves them.

use std::fmt::Write;

use cook_model::cook::Seen;
use cook_model::quantity::Temperature;

use crate::cook::{self, Cook, Setup};
use crate::diary::{Diary, id, moment};
use crate::record::{LOADING, MESH};
use crate::study::quantile;

use super::typing::shown;

/// What proves at once, and the trade's pull (common practice, no source), F.
const PROVES: i32 = 165;
const TRADES: i32 = 160;
/// A piece is read this often, s, until it is there.
const EVERY: f64 = 60.0;
/// A cook this long has gone wrong, s.
const TOO_LONG: f64 = 6.0 * 3600.0;
/// A rest is followed until the core has fallen so far, C, or so long, s.
const FALLEN: f64 = 0.5;
const REST: f64 = 2400.0;
/// Bins of true thickness, mm, and of the pit, F.
const THICK: [(f64, f64); 4] = [(0.0, 32.0), (32.0, 38.0), (38.0, 44.0), (44.0, 90.0)];
const PITS: [(f64, f64); 3] = [(220.0, 245.0), (245.0, 265.0), (265.0, 305.0)];

/// One piece.
#[derive(Clone, Copy, Debug)]
pub struct Pulled {
    /// mm.
    thickness: f64,
    /// F.
    pit: f64,
    /// Where it was told at put-on to be pulled, F.
    told: i32,
    /// The highest it was read at rest after it first read 160 F, and after it first read what was told.
    peaks: [Option<i32>; 2],
}

/// The pieces of a cook.
pub fn of(setup: &Setup) -> Vec<Pulled> {
    let count = setup.told.len();
    let mut diary = Diary::with_pulls_left_open(setup);
    diary.all_on(0..count, LOADING);
    let seen = Seen::of(diary.log(), moment(0.0));
    let told = |piece: usize| seen.piece_forecast(id(piece)).map(|piece| piece.proving);
    let f = |celsius: f64| 1.8 * celsius + 32.0;
    let mut pulled: Vec<Pulled> = (0..count)
        .map(|piece| Pulled {
            thickness: setup.pieces[piece].thickness * 1e3,
            pit: f(setup.pit.set),
            told: told(piece).map_or(PROVES, |told: Temperature| told.f().round() as i32),
            peaks: [None; 2],
        })
        .collect();
    let mut cook = Cook::new(setup.clone(), MESH);
    (0..count).for_each(|piece| cook.put_on(piece));
    cook.open_lid(LOADING);
    while pulled.iter().any(|piece| piece.peaks.contains(&None)) && cook.now() < TOO_LONG {
        cook.run_to(cook.now() + EVERY);
        for (piece, outcome) in pulled.iter_mut().enumerate() {
            let read = shown(cook.read_instant(piece));
            for (peak, at) in outcome.peaks.iter_mut().zip([TRADES, outcome.told]) {
                if peak.is_none() && read >= at {
                    *peak = Some(read.max(peak_read(&cook, piece)));
                }
            }
        }
    }
    pulled
}

/// What is read of a piece pulled now, when it is hottest.
fn peak_read(cook: &Cook, piece: usize) -> i32 {
    let mut alone = cook.piece(piece).clone();
    let mut luck = cook::stream(cook.setup().seed, 7 + piece as u64);
    let (mut rested, mut highest) = (0.0, alone.clone());
    while rested < REST && alone.core() > highest.core() - FALLEN {
        alone.rest(cook::STEP);
        rested += cook::STEP;
        if alone.core() > highest.core() {
            highest = alone.clone();
        }
    }
    shown(cook.setup().instant.pokes(&highest, &mut luck))
}

/// The table.
pub fn table(cooks: &[Vec<Pulled>]) -> String {
    let mut text = String::from(
        "## Where to pull\n\nTold as the pieces go on, nothing read yet: the median (one in ten, nine in \
         ten), F. Each is read every minute with one thermometer and pulled when it first shows that; it \
         must go back where the highest that is read at rest is below 165 F.\n\n\
         | thick, mm | pit, F | pieces | told to pull at | must go back then | must go back, pulled at 160 F |\n\
         | --- | --- | --- | --- | --- | --- |\n",
    );
    let all: Vec<&Pulled> = cooks.iter().flatten().collect();
    for thick in THICK {
        for pit in PITS {
            let within = |value: f64, (low, high): (f64, f64)| (low..high).contains(&value);
            let of_it = all.iter().filter(|p| within(p.thickness, thick) && within(p.pit, pit));
            let of_it: Vec<&&Pulled> = of_it.collect();
            if of_it.is_empty() {
                continue;
            }
            let mut told: Vec<f64> = of_it.iter().map(|piece| f64::from(piece.told)).collect();
            told.sort_by(f64::total_cmp);
            let back = |which: usize| {
                let is_short = |p: &&&&Pulled| p.peaks[which].is_none_or(|peak| peak < PROVES);
                100.0 * of_it.iter().filter(is_short).count() as f64 / of_it.len() as f64
            };
            let _ = writeln!(
                text,
                "| {:.0} to {:.0} | {:.0} to {:.0} | {} | {:.0} ({:.0} to {:.0}) | {:.0} % | {:.0} % |",
                thick.0,
                thick.1,
                pit.0,
                pit.1,
                of_it.len(),
                quantile(&told, 0.5),
                quantile(&told, 0.1),
                quantile(&told, 0.9),
                back(1),
                back(0)
            );
        }
    }
    text.push('\n');
    text
}
