//! What a piece is called, alone and in a sentence, and what is known of it raw.

use cook_model::cook::CookState;
use cook_model::piece::{Piece, PieceId};
use cook_model::sorting::sort_by_key;

use super::{length, mass};
use crate::say;

/// Where the name of a piece stands: Spanish gives it an article within a sentence, "la pieza 3".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stands {
    Alone,
    InSentence,
}

/// What a piece is called: its own name, or "Piece 3".
pub fn piece(state: &CookState, id: PieceId) -> String {
    one(state, id, Stands::Alone)
}

/// A piece as it stands within a sentence.
pub fn the_piece(state: &CookState, id: PieceId) -> String {
    one(state, id, Stands::InSentence)
}

/// Several pieces: "Pieces 1, 2 and 4", "Pieces 1 to 6 and 9", or by their own names.
pub fn pieces(state: &CookState, ids: &[PieceId]) -> String {
    several(state, ids, Stands::Alone)
}

/// Several pieces as they stand within a sentence.
pub fn the_pieces(state: &CookState, ids: &[PieceId]) -> String {
    several(state, ids, Stands::InSentence)
}

fn one(state: &CookState, id: PieceId, stands: Stands) -> String {
    match state.piece(id) {
        Some((standing, _)) if !standing.name.is_empty() => standing.name.clone(),
        _ if stands == Stands::Alone => say!("piece", number = id.0),
        _ => say!("the-piece", number = id.0),
    }
}

/// More pieces than this are told by spans of numbers, not each in its turn.
const TOLD_IN_TURN: usize = 5;

fn several(state: &CookState, ids: &[PieceId], stands: Stands) -> String {
    let named = |id: &PieceId| state.piece(*id).is_some_and(|(piece, _)| !piece.name.is_empty());
    let numbers = match ids {
        [] => return String::new(),
        [only] => return one(state, *only, stands),
        ids if ids.iter().any(named) => {
            return list(&ids.iter().map(|id| one(state, *id, stands)).collect::<Vec<_>>());
        }
        ids if ids.len() > TOLD_IN_TURN => list(&spans(ids)),
        ids => list(&ids.iter().map(|id| id.0.to_string()).collect::<Vec<_>>()),
    };
    match stands {
        Stands::Alone => say!("pieces", numbers = numbers),
        Stands::InSentence => say!("the-pieces", numbers = numbers),
    }
}

/// The numbers of pieces in order, those that follow each other as a span: "1 to 6", "9".
fn spans(ids: &[PieceId]) -> Vec<String> {
    let mut numbers = ids.iter().map(|id| id.0).collect::<Vec<_>>();
    sort_by_key(&mut numbers, |number| *number);
    let span = |run: &[u32]| match run {
        [first, _, .., last] => vec![say!("span-of", first = *first, last = *last)],
        short => short.iter().map(u32::to_string).collect(),
    };
    numbers.chunk_by(|one, next| one + 1 == *next).flat_map(span).collect()
}

/// "a, b and c".
fn list(words: &[String]) -> String {
    match words.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, before)) => say!("list-and", first = before.join(", "), last = last.as_str()),
    }
}

/// The facts of a raw piece: "8.1 oz, 1.6 in thick".
pub fn facts(piece: &Piece) -> String {
    let size = match piece.thickest {
        Some(thickest) => {
            say!("set-out-facts", weight = mass(piece.weight), thickest = length(thickest))
        }
        None => say!("set-out-facts-weight", weight = mass(piece.weight)),
    };
    if piece.icy { say!("set-out-facts-icy", facts = size) } else { size }
}
