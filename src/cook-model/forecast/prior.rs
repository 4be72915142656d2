//! What is uncertain before any reading, and how much: every figure with its reason.
//!
//! Thickness, wetness of the surface, heat transfer coefficient and shape cannot be told apart by
//! core readings, for each mostly stretches the same curve. So a piece has one lumped *speed*, the
//! factor by which conduction and surface exchange together go faster than the model expects, and
//! one *offset* of the air around it. Speed stretches the curve in time; the offset bends it, since
//! it matters most near the end, where the piece is close to what the air can bring it to. Each is
//! the sum of a part shared by all pieces of the pit and a part of the piece's own.

use crate::piece::Piece;
use crate::quantity::Span;

/// How late a piece begins to heat: the lid is up while pieces are laid on, and a pit loaded with cold meat
/// is not at once at temperature again (common practice, no source).
pub(super) const LOADING: Span = Span::seconds(90);

/// Shared part of ln(speed): heat transfer coefficient (10 W/m2K give or take 2 is 5 % of the
/// time), wetness (6 %), humidity, and the model's own bias. Like the shared offset, the pace and the
/// piece's own part chosen by how often windows hold in the worlds (`worlds table 10 600`).
const SHARED_SPEED: f64 = 0.09;
/// Of the doubt about a thickness guessed from the weight, the part (as a variance) that all pieces
/// share: a pack is bred, cut and trimmed alike.
const PACK: f64 = 0.6;
/// Shared part of the offset, K: a dial hangs away from the grate, and 10-20 F between the two is
/// usual (common practice, no source).
pub(crate) const SHARED_OFFSET: f64 = 5.0;
/// The piece's own part of the offset, K: hot and cool spots of the grate (common practice, no
/// source).
pub(crate) const OWN_OFFSET: f64 = 2.2;
/// The piece's own part of ln(speed) apart from its thickness: shape, its own wetness.
const OWN_SPEED: f64 = 0.03;
/// Time goes with about this power of the thickness, between the 1 of a surface that resists and
/// the 2 of conduction.
const THICKNESS_POWER: f64 = 1.2;

/// How much faster or slower than its trace a piece goes for a while, as a standard deviation of its pace,
/// and the time over which that is forgotten, s (chosen by how often windows hold in the worlds, `worlds table
/// 10 600`: 78 and 74 % after one and two readings; with 0.19 and 1500 s 73 and 71).
pub(super) const PACE: (f64, f64) = (0.22, 1000.0);
/// What an opened lid costs is known to this part; it is about a minute, and so many more for each
/// minute that the lid was open.
pub(super) const LID_DOUBT: f64 = 0.3;
pub(super) const LID_COST: (f64, f64) = (1.0, 1.6);
/// The part of the discrepancy that is there even at the moment of a reading, K.
pub(super) const MISFIT: f64 = 0.5;
/// The same for a leave-in, which is held against instant-reads of the same meat: what the model
/// misses is missed for both.
pub(super) const MISFIT_LEAVE_IN: f64 = 0.35;
/// Traced back from the reading that holds the model to the meat, a leave-in's curve may leave its trace by
/// this much in the end, K, as a standard deviation, and the time over which that comes, s (chosen by
/// `twin seats 1500 2000000`: 89 % of the misplaced flagged, 7 % of the well seated; with 2.2 K 83 and 3 %).
const LEAVES_TRACE: (f64, f64) = (1.2, 600.0);
/// Over this time one such error of the model gives way to another, s.
pub(super) const LEAVE_IN_DRIFTS: f64 = 2400.0;

/// How far a leave-in's tip may be off its trace so many seconds before the reading that holds the model to
/// the meat, K, as a standard deviation.
pub(super) fn leave_in_before(seconds: f64) -> f64 {
    let (most, time) = LEAVES_TRACE;
    most * (1.0 - libm::exp(-seconds / time))
}

/// The chance that a reading is a slip (mistyped, of another piece, not in the meat), and the span
/// over which such a reading may lie anywhere, K.
pub(super) const SLIP: (f64, f64) = (0.02, 100.0);

/// How far a poked-in tip is off the coldest spot: the mean, and the standard deviation, of the
/// square of its distance over the half-thickness, when the lowest of two or more places is taken:
/// the nearest of three pokes scattered by 4 mm in a piece of 38 mm.
pub(super) const POKED: (f64, f64) = (0.01, 0.02);
/// The same when only one place was tried.
pub(super) const POKED_ONCE: (f64, f64) = (0.04, 0.06);

/// A leave-in put in with care ends about this far off the coldest spot in each of two directions, mm
/// (standard deviation): it errs through the thickness and, what matters less, along the piece, and
/// the coldest spot itself moves. It shows most as if it were that far off, and seldom the core.
const SEATED_MM: f64 = 2.5;
/// The chance that it missed, and may be at any depth from [`MISPLACED_MM`] to the surface (guessed, no
/// source).
pub(super) const MISSED: f64 = 0.3;
/// A leave-in further off than this, mm, is called misplaced.
pub(super) const MISPLACED_MM: f64 = 6.0;

/// How likely it is, but for a factor, that a leave-in put in with care shows as if it were so many
/// mm off the middle: Rayleigh's law of a distance in a plane.
pub(super) fn seated(mm: f64) -> f64 {
    let z = mm / SEATED_MM;
    z * libm::exp(-0.5 * z * z)
}

/// How far two readings of one spot by the same thermometer scatter about it, K (0.6 F; common practice,
/// no source).
pub(super) const POKE_SCATTER: f64 = 0.35;
/// Of the rise after the pull: its standard deviation over its size (foil, plate, draught).
pub(super) const RISE_SPREAD: f64 = 0.3;

/// Standard deviation of ln(time) for the doubt about a piece's thickness.
fn thickness(piece: &Piece) -> f64 {
    THICKNESS_POWER * piece.thickness_spread()
}

/// Standard deviation of a piece's own part of ln(speed).
pub(crate) fn own_speed(piece: &Piece) -> f64 {
    let own = if piece.thickest.is_some() { 1.0 } else { 1.0 - PACK };
    let thickness = thickness(piece);
    libm::sqrt(OWN_SPEED * OWN_SPEED + own * thickness * thickness)
}

/// Means of the pieces' own parts of ln(speed).
///
/// A piece measured thinner than the rest is likely to have been measured too thin: measured
/// thicknesses are drawn towards their mean by the part of their variance that measuring adds
/// (regression to the mean), or the thinnest piece, read first, would make the pit look slow.
pub(crate) fn own_means(pieces: &[&Piece]) -> Vec<f64> {
    let log = |piece: &Piece| piece.thickest.map(|thickest| libm::log(thickest.mm()));
    let logs: Vec<f64> = pieces.iter().filter_map(|piece| log(piece)).collect();
    let count = logs.len() as f64;
    if count < 2.0 {
        return vec![0.0; pieces.len()];
    }
    let mean = logs.iter().sum::<f64>() / count;
    let variance = logs.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / (count - 1.0);
    let drawn = |piece: &Piece| {
        let measuring = piece.thickness_spread() * piece.thickness_spread();
        let share = measuring / variance.max(2.0 * measuring);
        log(piece).map_or(0.0, |log| THICKNESS_POWER * share * (log - mean))
    };
    pieces.iter().map(|piece| drawn(piece)).collect()
}

/// Standard deviation of the shared part of ln(speed) for these pieces.
pub(crate) fn shared_speed<'a>(pieces: impl Iterator<Item = &'a Piece>) -> f64 {
    let (mut pack, mut count) = (0.0, 0.0_f64);
    for piece in pieces {
        count += 1.0;
        if piece.thickest.is_none() {
            pack += PACK * thickness(piece) * thickness(piece);
        }
    }
    libm::sqrt(SHARED_SPEED * SHARED_SPEED + pack / count.max(1.0))
}
