//! What one tap did, in a few words, however many pieces it was about; or why it changed nothing.

use cook_model::cook::{CookState, Entry, EntryId, Log, Problem, What, fold};
use cook_model::log::{self, Event};
use cook_model::piece::PieceId;
use cook_model::taps::roots;

use crate::{describe, gear, say, show};

/// What a tap on the cook did.
pub fn done(log: &Log, entries: &[Entry]) -> String {
    let state = fold(log);
    turned(log, entries, |told| words(log, &state, told))
}

/// The words for a tap: for one that took something back, or gave it back, what that was.
pub fn turned<E: Event>(
    log: &log::Log<E>,
    entries: &[log::Entry<E>],
    words: impl Fn(&[log::Entry<E>]) -> String,
) -> String {
    let (undoings, told): (Vec<_>, Vec<_>) =
        entries.iter().cloned().partition(|entry| entry.what.undoes().is_some());
    if undoings.is_empty() {
        return words(&told);
    }
    if !told.is_empty() {
        return say!("done-mended", what = words(&told));
    }
    let ids: Vec<EntryId> = undoings.iter().map(|entry| entry.id).collect();
    let roots = roots(log, &ids);
    let is_root =
        |entry: &&log::Entry<E>| roots.contains(&entry.id) && entry.what.undoes().is_none();
    let about: Vec<log::Entry<E>> = log.entries().iter().filter(is_root).cloned().collect();
    let undone = log.undone_by();
    if about.iter().all(|entry| undone.contains_key(&entry.id)) {
        say!("entry-undone", what = words(&about))
    } else {
        say!("done-again", what = words(&about))
    }
}

fn words(log: &Log, state: &CookState, entries: &[Entry]) -> String {
    let [first, others @ ..] = entries else { return String::new() };
    let whole = || describe::entry(log, state, first);
    let alike = |other: &Entry| {
        core::mem::discriminant(&other.what) == core::mem::discriminant(&first.what)
    };
    let is_first = log.entries().first().is_some_and(|one| one.id == first.id);
    if is_first && entries.iter().all(|entry| gear::is_of_gear(&entry.what)) {
        let each: Vec<String> =
            entries.iter().map(|entry| describe::entry(log, state, entry)).collect();
        return say!("done-from-phone", what = each.join(", "));
    }
    if others.is_empty() || matches!(first.what, What::CoreRead { .. }) {
        return whole();
    }
    if !others.iter().all(alike) {
        return say!("done-more", what = whole(), count = others.len());
    }
    let pieces: Vec<PieceId> = entries.iter().filter_map(|entry| entry.what.piece()).collect();
    let named = || show::pieces(state, &pieces);
    match &first.what {
        What::PieceSetOut { .. } => say!("done-added", count = entries.len()),
        What::PutOn { .. } => say!("entry-put-on", piece = named()),
        What::Covered { .. } => say!("entry-covered", piece = named()),
        What::Packed { .. } => say!("entry-packed", piece = named()),
        What::Pulled { .. } => say!("entry-pulled", piece = named()),
        _ => say!("done-more", what = whole(), count = others.len()),
    }
}

/// Why an entry was not counted.
pub fn problem(why: Problem) -> String {
    match why {
        Problem::UnknownPiece => say!("problem-unknown-piece"),
        Problem::NotOnYet => say!("problem-not-on-yet"),
        Problem::AlreadyOn => say!("problem-already-on"),
        Problem::AlreadyOff => say!("problem-already-off"),
        Problem::AlreadyPacked => say!("problem-already-packed"),
        Problem::UnknownReading => say!("problem-unknown-reading"),
        Problem::TooLate => say!("problem-too-late"),
        Problem::InTheFuture => say!("problem-in-the-future"),
        Problem::ImpossibleValue => say!("problem-impossible-value"),
        _ => say!("problem-other"),
    }
}
