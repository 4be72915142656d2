//! Which entries still count.

use std::collections::BTreeMap;

use super::{Entry, EntryId, Log, What};

impl Log {
    /// The entries that do not count any more, each with the entry that undid it. To bring one
    /// back, undo that one.
    pub fn undone_by(&self) -> BTreeMap<EntryId, EntryId> {
        settle(self.entries()).1
    }
}

/// The entries that count, out of all, which are in the order of their ids.
pub(super) fn standing(entries: &[Entry]) -> Vec<&Entry> {
    settle(entries).0
}

/// The entries that count, and those undone, each with the entry that undid it.
///
/// Only a later entry can undo, so going from the last to the first settles each undoing before
/// the entry that it undoes: an undoing that is itself undone does nothing.
fn settle(entries: &[Entry]) -> (Vec<&Entry>, BTreeMap<EntryId, EntryId>) {
    let mut undone: BTreeMap<EntryId, EntryId> = BTreeMap::new();
    let mut standing: Vec<&Entry> = Vec::with_capacity(entries.len());
    for entry in entries.iter().rev() {
        if undone.contains_key(&entry.id) {
            continue;
        }
        match entry.what {
            What::Undone { entry: target } if target < entry.id => {
                undone.insert(target, entry.id);
            }
            What::Undone { .. } => {}
            _ => standing.push(entry),
        }
    }
    standing.reverse();
    (standing, undone)
}
