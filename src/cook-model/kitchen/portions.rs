//! Which piece goes where: to dinner, to each lot of bags, to the rest.

use std::collections::BTreeMap;

use thiserror::Error;

use super::form::Form;
use super::portion_search::{Search, Want};
use crate::piece::PieceId;
use crate::quantity::Mass;
use crate::sorting::{sort_by, sort_by_key};

/// The most pieces one allotment takes: as many as a cook's meal-prep day has, and some.
pub const MOST_PIECES: usize = 40;
/// The most destinations one allotment takes.
pub const MOST_LOTS: usize = 12;

/// The most a piece or a serving can weigh.
const MOST_WEIGHT: Mass = Mass::from_kg(10.0);

/// One piece after its rest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CookedPiece {
    /// Which piece.
    pub id: PieceId,
    /// Its cooked weight, weighed or estimated.
    pub weight: Mass,
}

/// How much a destination wants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// So many servings of so much.
    Servings {
        /// How many: people at the table, or boxes.
        count: u16,
        /// What each gets.
        each: Mass,
    },
    /// So many pieces, whatever they weigh.
    Pieces {
        /// How many.
        count: u16,
    },
    /// Whatever is left.
    Rest,
}

/// One destination: dinner, the rice bowls, the soup, the freezer.
#[derive(Clone, Debug, PartialEq)]
pub struct Lot {
    /// The cook's own name for it.
    pub name: String,
    /// What its pieces are made into.
    pub form: Form,
    /// How much it wants.
    pub amount: Amount,
}

/// What one destination gets.
#[derive(Clone, Debug, PartialEq)]
pub struct Share {
    /// The pieces, in order of their numbers.
    pub pieces: Vec<PieceId>,
    /// Their weight together.
    pub weight: Mass,
    /// What was asked for and is not there; nothing for pieces counted and for the rest.
    pub short: Mass,
    /// What is more than was asked for; it makes the servings larger.
    pub over: Mass,
    /// Pieces asked for by number and not there.
    pub pieces_short: u16,
    /// Weight of one serving, where servings were asked for.
    pub serving: Option<Mass>,
}

/// Who gets what.
#[derive(Clone, Debug, PartialEq)]
pub struct Allotment {
    /// One share for each lot, in the lots' order.
    pub shares: Vec<Share>,
    /// Pieces that no lot wanted; none where a lot takes the rest.
    pub left: Vec<PieceId>,
    /// Whether the search was finished, so that no other choice has less over and short (to within
    /// [`CLOSE_ENOUGH`] for each lot). On a very long list it stops early with the best it has seen.
    pub finished: bool,
}

/// Differences under this, for each lot, are not worth searching on for: a gram of the kitchen
/// scale on each of five pieces.
pub const CLOSE_ENOUGH: Mass = Mass::from_g(5.0);

/// Why pieces could not be allotted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum PortionProblem {
    /// No destination.
    #[error("there is nowhere to put the pieces; name at least one use for them")]
    NoLots,
    /// More than can be searched.
    #[error("that is too much at once; up to 40 pieces and 12 uses are accepted")]
    TooMany,
    /// A weight that is not one.
    #[error("each piece and each serving must weigh more than nothing, and up to 10 kg")]
    Weight,
    /// A piece was given to a lot, or is listed, that is not there, or twice.
    #[error("a piece is named that is not there, or is there twice")]
    UnknownPiece,
}

/// Allots pieces to lots with the least over and short, leaving the cook's own choices as they are.
///
/// Pieces are not divided between lots: what a lot gets beyond its wish makes its servings larger.
/// A gram short counts as ten grams over, and more in an earlier lot, so that dinner is served
/// before the freezer. `chosen` says where the cook has put a piece already, by the lot's place in
/// `lots`.
///
/// # Errors
/// [`PortionProblem`] says what cannot be allotted.
pub fn allot(
    pieces: &[CookedPiece],
    lots: &[Lot],
    chosen: &BTreeMap<PieceId, usize>,
) -> Result<Allotment, PortionProblem> {
    check(pieces, lots, chosen)?;
    let mut order: Vec<CookedPiece> = pieces.to_vec();
    // Heaviest first: the search prunes best when the hard choices come early.
    sort_by(&mut order, |a, b| b.weight.g().total_cmp(&a.weight.g()).then(a.id.cmp(&b.id)));
    let wants: Vec<Want> = lots.iter().map(|lot| want(lot.amount)).collect();
    let weights: Vec<f64> = order.iter().map(|piece| piece.weight.g()).collect();
    let fixed: Vec<Option<usize>> =
        order.iter().map(|piece| chosen.get(&piece.id).copied()).collect();
    let close = CLOSE_ENOUGH.g() * lots.len() as f64;
    let (places, finished) = Search::new(&weights, &wants, &fixed, close).run();
    let taken_by = |place: usize| -> Vec<CookedPiece> {
        let mut taken: Vec<CookedPiece> =
            order.iter().zip(&places).filter(|(_, p)| **p == place).map(|(c, _)| *c).collect();
        sort_by_key(&mut taken, |piece| piece.id);
        taken
    };
    let shares = lots.iter().enumerate().map(|(i, lot)| share(lot.amount, &taken_by(i))).collect();
    let left = taken_by(lots.len()).iter().map(|piece| piece.id).collect();
    Ok(Allotment { shares, left, finished })
}

fn check(
    pieces: &[CookedPiece],
    lots: &[Lot],
    chosen: &BTreeMap<PieceId, usize>,
) -> Result<(), PortionProblem> {
    if lots.is_empty() {
        return Err(PortionProblem::NoLots);
    }
    if pieces.len() > MOST_PIECES || lots.len() > MOST_LOTS {
        return Err(PortionProblem::TooMany);
    }
    let real = |mass: Mass| mass > Mass::ZERO && mass <= MOST_WEIGHT;
    let servings = lots.iter().all(|lot| match lot.amount {
        Amount::Servings { each, .. } => real(each),
        Amount::Pieces { .. } | Amount::Rest => true,
    });
    if !(servings && pieces.iter().all(|piece| real(piece.weight))) {
        return Err(PortionProblem::Weight);
    }
    let ids: std::collections::BTreeSet<PieceId> = pieces.iter().map(|piece| piece.id).collect();
    let known = chosen.iter().all(|(id, lot)| ids.contains(id) && *lot < lots.len());
    if ids.len() < pieces.len() || !known {
        return Err(PortionProblem::UnknownPiece);
    }
    Ok(())
}

fn want(amount: Amount) -> Want {
    match amount {
        Amount::Servings { count, each } => Want::Weight(f64::from(count) * each.g()),
        Amount::Pieces { count } => Want::Pieces(usize::from(count)),
        Amount::Rest => Want::Rest,
    }
}

fn share(amount: Amount, taken: &[CookedPiece]) -> Share {
    let weight: Mass = taken.iter().map(|piece| piece.weight).sum();
    let mut share = Share {
        pieces: taken.iter().map(|piece| piece.id).collect(),
        weight,
        short: Mass::ZERO,
        over: Mass::ZERO,
        pieces_short: 0,
        serving: None,
    };
    match amount {
        Amount::Servings { count, each } => {
            let asked = each * f64::from(count);
            if weight < asked {
                share.short = asked - weight;
            } else {
                share.over = weight - asked;
            }
            share.serving = (count > 0).then(|| weight * (1.0 / f64::from(count)));
        }
        Amount::Pieces { count } => {
            let there = u16::try_from(taken.len()).unwrap_or(u16::MAX);
            share.pieces_short = count.saturating_sub(there);
        }
        Amount::Rest => {}
    }
    share
}
