//! A cook left to run with the lid coming up now and then, every piece read each time: what the
//! forecasts are later shown parts of, and the truth they are held against.

use rand::RngExt;
use serde::{Deserialize, Serialize};

use crate::cook::{self, Cook, Place, Setup};

/// Cells through the thickness of each piece.
pub const MESH: usize = 10;
/// How long the lid is open to load the pit, s.
pub const LOADING: f64 = 90.0;
/// When the lid first comes up, min.
const FIRST_OPENING: core::ops::Range<f64> = 28.0..42.0;
/// Time from one opening to the next, min.
const BETWEEN: core::ops::Range<f64> = 10.0..18.0;
/// How long the lid stays up, s.
const OPEN_FOR: core::ops::Range<f64> = 40.0..75.0;
/// The leave-in is noted this often, s.
const LEAVE_IN_EVERY: f64 = 600.0;
/// A cook this long has gone wrong, s.
const TOO_LONG: f64 = 6.0 * 3600.0;
/// The rest is followed until the core has fallen this far from its peak, C, or this long, s.
const FALLEN: f64 = 1.0;
const REST: f64 = 2400.0;

/// One opening of the lid, and what was read.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Opening {
    /// When, s since the pieces went on.
    pub at: f64,
    /// For how long, s.
    pub lasted: f64,
    /// The instant-read of each piece, C.
    pub instant: Vec<f64>,
    /// What the pit thermometer showed just before, C.
    pub pit: f64,
}

/// A cook left to run.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Record {
    /// The seed of its setup.
    pub seed: u64,
    /// What the pit thermometer showed as the pieces went on, C.
    pub pit_at_start: f64,
    /// Openings of the lid after loading.
    pub openings: Vec<Opening>,
    /// The leave-in: time, s, and what it showed, C.
    pub leave_in: Vec<(f64, f64)>,
    /// When each piece truly got to its pull temperature, s.
    pub pull: Vec<f64>,
    /// The highest core of each piece, C, had it been pulled then.
    pub peak: Vec<f64>,
}

impl Record {
    /// Runs the cook of a setup.
    pub fn run(setup: &Setup) -> Self {
        let mut cook = Cook::new(setup.clone(), MESH);
        let mut luck = cook::stream(setup.seed, 3);
        let count = setup.pieces.len();
        let mut record = Self {
            seed: setup.seed,
            pit_at_start: cook.read_pit(),
            openings: Vec::new(),
            leave_in: Vec::new(),
            pull: vec![f64::INFINITY; count],
            peak: vec![f64::NAN; count],
        };
        (0..count).for_each(|piece| cook.put_on(piece));
        cook.open_lid(LOADING);
        let mut next = 60.0 * luck.random_range(FIRST_OPENING);
        while record.pull.iter().any(|at| at.is_infinite()) && cook.now() < TOO_LONG {
            cook.step();
            if cook.now() % LEAVE_IN_EVERY == 0.0 {
                record.leave_in.push((cook.now(), cook.read_leave_in()));
            }
            if cook.now() >= next {
                next = cook.now() + 60.0 * luck.random_range(BETWEEN);
                record.open(&mut cook, luck.random_range(OPEN_FOR).round());
            }
            for piece in 0..count {
                if record.pull[piece].is_infinite() && cook.core(piece) >= setup.pull_at {
                    record.pull[piece] = cook.now();
                    record.peak[piece] = peak_if_pulled(&cook, piece);
                }
            }
        }
        record
    }

    fn open(&mut self, cook: &mut Cook, lasted: f64) {
        let pit = cook.read_pit();
        let instant = (0..cook.places().len()).map(|p| cook.read_instant(p)).collect();
        self.leave_in.push((cook.now(), cook.read_leave_in()));
        cook.open_lid(lasted);
        self.openings.push(Opening { at: cook.now(), lasted, instant, pit });
    }
}

/// The highest core, C, of a piece pulled now.
fn peak_if_pulled(cook: &Cook, piece: usize) -> f64 {
    debug_assert_eq!(cook.places()[piece], Place::On);
    let mut alone = cook.piece(piece).clone();
    let mut peak = alone.core();
    let mut rested = 0.0;
    while rested < REST && alone.core() > peak - FALLEN {
        alone.rest(cook::STEP);
        rested += cook::STEP;
        peak = peak.max(alone.core());
    }
    peak
}
