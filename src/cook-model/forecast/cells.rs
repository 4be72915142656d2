//! The grid of lumped parameters over which everything is summed: no draws, no luck.

/// ln(speed) of the cells: fine enough for the sharpest likelihood, wide enough for any piece.
const SPEEDS: usize = 65;
const SPEED_REACH: f64 = 0.8;
/// Offsets of the cells, K.
pub(super) const OFFSETS: [f64; 7] = [-18.0, -12.0, -6.0, 0.0, 6.0, 12.0, 18.0];

/// All cells: ln(speed) by offset, the offset running faster.
pub(super) const COUNT: usize = SPEEDS * OFFSETS.len();

/// The ln(speed) values of the grid, lowest first.
pub(super) fn speeds() -> impl Iterator<Item = f64> {
    (0..SPEEDS).map(|i| SPEED_REACH * (2.0 * i as f64 / (SPEEDS - 1) as f64 - 1.0))
}

/// ln(speed) and offset of every cell, in order.
pub(super) fn each() -> impl Iterator<Item = (f64, f64)> {
    speeds().flat_map(|speed| OFFSETS.iter().map(move |offset| (speed, *offset)))
}
