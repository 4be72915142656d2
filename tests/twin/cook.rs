//! A cook that can be driven: put pieces on, open the lid, read, pull.

use rand_chacha::ChaCha8Rng;

use crate::piece::{self, Piece};
use crate::pit::{self, Pit};
use crate::thermometer::{Instrument, Seat};

/// Step of the pit and of all pieces, s. Openings, readings and pulls happen on steps.
pub const STEP: f64 = 10.0;

/// Air of an oven turned low, C (155 F; common practice, no source).
const OVEN: f64 = 68.0;
/// After this long in the pit, s, the coldest spot has settled where it stays.
const AIMING: f64 = 2400.0;

/// What the cook knows and says of one piece.
#[derive(Clone, Copy, Debug)]
pub struct Told {
    /// Weight as weighed, kg.
    pub weight: f64,
    /// Greatest thickness as measured, m, if it was.
    pub thickness: Option<f64>,
    /// How it was cut.
    pub cut: Cut,
    /// Core temperature as believed when it goes on, C.
    pub start: f64,
}

/// How a piece was cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cut {
    /// As trimmed.
    Natural,
    /// Pounded or butterflied.
    Even,
    /// Very thick for its weight.
    Thick,
}

/// A cook before it starts.
#[derive(Clone, Debug)]
pub struct Setup {
    /// Seed it was drawn from.
    pub seed: u64,
    /// The pit.
    pub pit: pit::Truth,
    /// The pieces as they are.
    pub pieces: Vec<piece::Truth>,
    /// The pieces as told.
    pub told: Vec<Told>,
    /// Temperature to pull at, C.
    pub pull_at: f64,
    /// The piece with the leave-in.
    pub probed: usize,
    /// Where the leave-in sits at first.
    pub seat: Seat,
    /// Its instruments: instant-read, leave-in, pit.
    pub instant: Instrument,
    /// The leave-in.
    pub leave_in: Instrument,
    /// The pit thermometer.
    pub pit_dial: Instrument,
}

/// Where a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// Still in the kitchen.
    Raw,
    /// In the pit.
    On,
    /// Pulled.
    Resting,
}

/// A cook under way.
#[derive(Clone, Debug)]
pub struct Cook {
    setup: Setup,
    pit: Pit,
    pieces: Vec<Piece>,
    places: Vec<Place>,
    seat: Seat,
    luck: ChaCha8Rng,
    steps: u64,
    openings: usize,
}

/// Streams of one seed, so that no draw shifts another's.
pub(crate) fn stream(seed: u64, stream: u64) -> ChaCha8Rng {
    use rand::SeedableRng;
    let mut luck = ChaCha8Rng::seed_from_u64(seed);
    luck.set_stream(stream);
    luck
}

impl Cook {
    /// A cook with the pit up to temperature and all pieces raw; `across` cells through the
    /// thickness of each (10 for studies).
    pub fn new(setup: Setup, across: usize) -> Self {
        let pit = Pit::new(setup.pit, stream(setup.seed, 1));
        let mut pieces: Vec<Piece> =
            setup.pieces.iter().map(|&truth| Piece::new(truth, across)).collect();
        if let Some(probed) = pieces.get_mut(setup.probed) {
            probed.aim_at_coldest(&pit.surroundings(), AIMING);
        }
        Self {
            pit,
            pieces,
            places: vec![Place::Raw; setup.pieces.len()],
            seat: setup.seat,
            luck: stream(setup.seed, 2),
            steps: 0,
            openings: 0,
            setup,
        }
    }

    /// What it was drawn as.
    pub fn setup(&self) -> &Setup {
        &self.setup
    }

    /// Seconds since the start.
    pub fn now(&self) -> f64 {
        self.steps as f64 * STEP
    }

    /// Where each piece is.
    pub fn places(&self) -> &[Place] {
        &self.places
    }

    /// A piece as it is now: no cook sees this.
    pub fn piece(&self, piece: usize) -> &Piece {
        &self.pieces[piece]
    }

    /// Lid openings so far.
    pub fn openings(&self) -> usize {
        self.openings
    }

    /// Lets one step pass.
    pub fn step(&mut self) {
        self.pit.advance(STEP);
        let around = self.pit.surroundings();
        for (piece, place) in self.pieces.iter_mut().zip(&self.places) {
            match place {
                Place::Raw => {}
                Place::On => piece.cook(&around, STEP),
                Place::Resting => piece.rest(STEP),
            }
        }
        self.steps += 1;
    }

    /// Lets time pass until `seconds` since the start.
    pub fn run_to(&mut self, seconds: f64) {
        while self.now() < seconds {
            self.step();
        }
    }

    /// Opens the lid for a time in seconds, from now.
    pub fn open_lid(&mut self, seconds: f64) {
        self.pit.open_lid(seconds);
        self.openings += 1;
    }

    /// Sets the pit's dial anew, C.
    pub fn set_pit(&mut self, celsius: f64) {
        self.pit.set(celsius);
    }

    /// Puts a piece on, or back on.
    pub fn put_on(&mut self, piece: usize) {
        self.places[piece] = Place::On;
    }

    /// Takes a piece off, to rest under foil.
    pub fn pull(&mut self, piece: usize) {
        if self.places[piece] == Place::On {
            self.places[piece] = Place::Resting;
        }
    }

    /// Puts a piece that rests into an oven turned low, still under its foil.
    pub fn hold(&mut self, piece: usize) {
        self.pieces[piece].hold_at(OVEN);
    }

    /// The true core, C: no cook sees this.
    pub fn core(&self, piece: usize) -> f64 {
        self.pieces[piece].core()
    }

    /// An instant-read of a piece, C.
    pub fn read_instant(&mut self, piece: usize) -> f64 {
        self.setup.instant.pokes(&self.pieces[piece], &mut self.luck)
    }

    /// What the leave-in shows, C.
    pub fn read_leave_in(&mut self) -> f64 {
        let tip = self.pieces[self.setup.probed].at_tip(self.seat.up, self.seat.along);
        self.setup.leave_in.shows(tip, &mut self.luck)
    }

    /// What the pit thermometer shows, C.
    pub fn read_pit(&mut self) -> f64 {
        self.setup.pit_dial.shows(self.pit.dial(), &mut self.luck)
    }

    /// Puts the leave-in in afresh, with care.
    pub fn reseat(&mut self) {
        self.seat = Seat::careful(&mut self.luck);
    }

    /// How far the leave-in is off where it was aimed, through the thickness, m.
    pub fn seat_error(&self) -> f64 {
        self.seat.up.abs()
    }
}
