//! A cook of a world that a person conducts.

use twin::study::conduct::World;

use crate::chance::Chance;
use crate::draw::Setup;
use crate::fire::Pit;
use crate::piece::Piece;
use crate::record::{FLICKER, SCATTER};

/// Step of pit and pieces, s.
const STEP: f64 = 10.0;
/// Cells through the thickness.
const ACROSS: usize = 7;
/// Air of an oven turned low, C (155 F; common practice, no source).
const OVEN: f64 = 68.0;

/// Where a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Place {
    Raw,
    On,
    Resting,
}

/// A cook under way.
pub struct Live<'a> {
    setup: &'a Setup,
    pit: Pit,
    pieces: Vec<Piece>,
    places: Vec<Place>,
    luck: Chance,
}

impl<'a> Live<'a> {
    /// With all pieces raw, the pit up to temperature.
    pub fn new(setup: &'a Setup) -> Self {
        Self {
            pit: Pit::new(setup.pit, Chance::of(setup.seed, 1)),
            pieces: setup.pieces.iter().map(|truth| Piece::new(*truth, ACROSS)).collect(),
            places: vec![Place::Raw; setup.pieces.len()],
            luck: Chance::of(setup.seed, 3),
            setup,
        }
    }
}

impl World for Live<'_> {
    fn pieces(&self) -> usize {
        self.pieces.len()
    }

    fn step_takes(&self) -> f64 {
        STEP
    }

    fn step(&mut self) {
        self.pit.advance(STEP);
        let (air, walls, vapour) = (self.pit.air(), self.pit.walls(), self.pit.vapour());
        for (piece, place) in self.pieces.iter_mut().zip(&self.places) {
            match place {
                Place::Raw => {}
                Place::On => piece.cook(air, walls, vapour, STEP),
                Place::Resting => piece.rest(STEP),
            }
        }
    }

    fn hold_lid_up(&mut self, seconds: f64) {
        self.pit.open(seconds);
    }

    fn put_on(&mut self, piece: usize) {
        self.places[piece] = Place::On;
    }

    fn pull(&mut self, piece: usize) {
        self.places[piece] = Place::Resting;
    }

    fn keep_hot(&mut self, piece: usize) {
        self.pieces[piece].hold_at(OVEN);
    }

    fn poke(&mut self, piece: usize) -> f64 {
        let pokes = self.luck.count(2, 4);
        let there = self.pieces[piece].poked(pokes, SCATTER, &mut self.luck);
        there + self.setup.instant_off + self.luck.normal(0.0, FLICKER)
    }

    fn dial(&mut self) -> f64 {
        self.pit.dial() + self.setup.dial_shows + self.luck.normal(0.0, FLICKER)
    }

    fn let_fire_die(&mut self) {
        self.pit.tend(false);
    }

    fn mend_fire(&mut self) {
        self.pit.tend(true);
    }

    fn core(&self, piece: usize) -> f64 {
        self.pieces[piece].core()
    }
}
