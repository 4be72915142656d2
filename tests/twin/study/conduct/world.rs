//! What a person at a pit can do and see, whatever simulates pit and meat.

use crate::cook::{Cook, STEP};

/// A fire left to die keeps this part of the pit's excess over the air outside for an hour or two
/// (common practice, no source).
const EMBERS: f64 = 0.35;

/// A pit with its meat. Temperatures in C, times in s.
pub trait World {
    /// How many pieces there are.
    fn pieces(&self) -> usize;
    /// Time that one step takes.
    fn step_takes(&self) -> f64;
    /// Lets one step pass.
    fn step(&mut self);
    /// Has the lid up for so long from now on.
    fn hold_lid_up(&mut self, seconds: f64);
    /// Puts a piece on, or back on.
    fn put_on(&mut self, piece: usize);
    /// Takes a piece off, to rest under foil.
    fn pull(&mut self, piece: usize);
    /// Puts a piece that is off somewhere hot.
    fn keep_hot(&mut self, piece: usize);
    /// What the instant-read shows of a piece, the lowest of a few pokes.
    fn poke(&mut self, piece: usize) -> f64;
    /// What the pit thermometer shows.
    fn dial(&mut self) -> f64;
    /// Lets the fire die.
    fn let_fire_die(&mut self);
    /// Mends it.
    fn mend_fire(&mut self);
    /// The true coldest spot of a piece: no cook sees this.
    fn core(&self, piece: usize) -> f64;
}

impl World for Cook {
    fn pieces(&self) -> usize {
        self.places().len()
    }

    fn step_takes(&self) -> f64 {
        STEP
    }

    fn step(&mut self) {
        Self::step(self);
    }

    fn hold_lid_up(&mut self, seconds: f64) {
        self.open_lid(seconds);
    }

    fn put_on(&mut self, piece: usize) {
        Self::put_on(self, piece);
    }

    fn pull(&mut self, piece: usize) {
        Self::pull(self, piece);
    }

    fn keep_hot(&mut self, piece: usize) {
        self.hold(piece);
    }

    fn poke(&mut self, piece: usize) -> f64 {
        self.read_instant(piece)
    }

    fn dial(&mut self) -> f64 {
        self.read_pit()
    }

    fn let_fire_die(&mut self) {
        let pit = &self.setup().pit;
        self.set_pit(pit.outside + EMBERS * (pit.set - pit.outside));
    }

    fn mend_fire(&mut self) {
        self.set_pit(self.setup().pit.set);
    }

    fn core(&self, piece: usize) -> f64 {
        Self::core(self, piece)
    }
}
