//! What a day brings that nobody planned: drawn by seed, each chance common practice (no source).

use cook_model::quantity::Temperature;
use rand::RngExt;

use crate::cook::stream;

/// The chance that the fire dies once.
const FIRE_DIES: f64 = 0.1;
/// When, s after the first piece went on.
const DIES_AFTER: core::ops::Range<f64> = 900.0..3600.0;
/// The chance that dinner is moved once.
const DINNER_MOVES: f64 = 0.1;
/// When that is said, s after the first piece went on, and by how much, s.
const MOVED_AFTER: core::ops::Range<f64> = 600.0..4200.0;
const MOVED_BY: core::ops::Range<f64> = -1800.0..5400.0;
/// Dinner is this long after all is set out, s.
const AHEAD: core::ops::Range<f64> = 16_000.0..20_000.0;
/// More pieces than this are not all eaten tonight.
const TONIGHT: usize = 6;

/// What a day brings.
#[derive(Clone, Debug)]
pub struct Day {
    /// Seed of all luck of the person.
    pub seed: u64,
    /// The pull temperature chosen; none leaves it open.
    pub pull_choice: Option<Temperature>,
    /// When people eat, s since all was set out.
    pub dinner: f64,
    /// When the fire dies, s since the first piece went on.
    pub fire_dies: Option<f64>,
    /// When dinner is moved, s since the first piece went on, and by how much, s.
    pub dinner_moves: Option<(f64, f64)>,
    /// Whether each piece is for tonight.
    pub tonight: Vec<bool>,
}

impl Day {
    /// The day of a seed with so many pieces.
    pub fn draw(seed: u64, pieces: usize) -> Self {
        let luck = &mut stream(seed, 5);
        // All is drawn each time, so that no chance shifts another's draw.
        let dinner = luck.random_range(AHEAD);
        let (dies, dies_after) = (luck.random_bool(FIRE_DIES), luck.random_range(DIES_AFTER));
        let moves = luck.random_bool(DINNER_MOVES);
        let moved = (luck.random_range(MOVED_AFTER), luck.random_range(MOVED_BY));
        Self {
            seed,
            pull_choice: None,
            dinner,
            fire_dies: dies.then_some(dies_after),
            dinner_moves: moves.then_some(moved),
            tonight: (0..pieces).map(|piece| pieces <= TONIGHT || piece % 2 == 0).collect(),
        }
    }
}
