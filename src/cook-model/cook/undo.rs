//! Which entries still count.

use std::collections::BTreeSet;

use super::{Entry, EntryId, What};

/// The entries that count, out of all, which are in the order of their ids.
///
/// Only a later entry can undo, so going from the last to the first settles each undoing before
/// the entry that it undoes: an undoing that is itself undone does nothing.
pub(super) fn standing(entries: &[Entry]) -> Vec<&Entry> {
    let mut undone: BTreeSet<EntryId> = BTreeSet::new();
    let mut standing: Vec<&Entry> = Vec::with_capacity(entries.len());
    for entry in entries.iter().rev() {
        if undone.contains(&entry.id) {
            continue;
        }
        match entry.what {
            What::Undone { entry: target } if target < entry.id => {
                undone.insert(target);
            }
            What::Undone { .. } => {}
            _ => standing.push(entry),
        }
    }
    standing.reverse();
    standing
}
