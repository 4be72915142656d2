//! The taps that a log tells of, so that a person can step back through them and forward again. All
//! is read from the log: it is the same after a reload, and in every window and phone that has it.

use std::collections::{BTreeMap, BTreeSet};

use crate::history::{DeviceId, EntryId};
use crate::log::{Entry, Event, Log};
use crate::quantity::Moment;

/// Where one stands between the taps of a log.
///
/// One tap is what one writer typed at one moment; all of it goes and comes back together. Undoing
/// takes the last tap that still counts, never an undoing: those are brought back by going forward.
/// A tap of another kind ends the way forward; what was undone can then still be brought back by
/// undoing its undoing, one by one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Taps {
    back: Vec<Vec<EntryId>>,
    forward: Vec<Vec<EntryId>>,
}

impl Taps {
    /// The taps of a log.
    pub fn of<E: Event>(log: &Log<E>) -> Self {
        let reading = Reading::of(log);
        let mut taps = Self::default();
        for tap in &reading.taps {
            if tap.iter().any(|entry| reading.steps.contains_key(entry)) {
                taps.step(tap, &reading);
            } else {
                taps.back.push(tap.clone());
                taps.forward.clear();
            }
        }
        taps
    }

    /// The entries that the next step back takes away; none at the beginning.
    pub fn back(&self) -> Option<&[EntryId]> {
        self.back.last().map(Vec::as_slice)
    }

    /// The entries that the next step forward brings back; none at the end.
    pub fn forward(&self) -> Option<&[EntryId]> {
        self.forward.last().map(Vec::as_slice)
    }

    /// Follows a tap that did nothing but undo, or undo an undoing.
    fn step(&mut self, tap: &[EntryId], reading: &Reading) {
        let until = tap.iter().copied().max();
        let roots: BTreeSet<EntryId> = tap.iter().filter_map(|id| reading.root(*id)).collect();
        let (stand, gone): (Vec<_>, Vec<_>) =
            roots.into_iter().partition(|root| reading.stands(*root, until));
        let known = |all: &[Vec<EntryId>], id: &EntryId| all.iter().any(|tap| tap.contains(id));
        let gone: Vec<_> = gone.into_iter().filter(|id| known(&self.back, id)).collect();
        let come: Vec<_> = stand.into_iter().filter(|id| !known(&self.back, id)).collect();
        take_out(&mut self.back, &gone);
        take_out(&mut self.forward, &come);
        self.forward.extend((!gone.is_empty()).then_some(gone));
        self.back.extend((!come.is_empty()).then_some(come));
    }
}

/// Takes these entries out of the taps that hold them.
fn take_out(taps: &mut Vec<Vec<EntryId>>, gone: &[EntryId]) {
    for tap in &mut *taps {
        tap.retain(|id| !gone.contains(id));
    }
    taps.retain(|tap| !tap.is_empty());
}

/// The standing entries that must be undone to bring these back.
pub fn undoings<E: Event>(log: &Log<E>, of: &[EntryId]) -> Vec<EntryId> {
    let undone = log.undone_by();
    let takes_one = |entry: &&Entry<E>| {
        let target = entry.what.undoes().filter(|target| *target < entry.id);
        target.is_some_and(|target| of.contains(&target)) && !undone.contains_key(&entry.id)
    };
    log.entries().iter().filter(takes_one).map(|entry| entry.id).collect()
}

/// What these entries are about in the end: themselves, or what the undoings among them undo.
pub fn roots<E: Event>(log: &Log<E>, of: &[EntryId]) -> BTreeSet<EntryId> {
    let reading = Reading::of(log);
    of.iter().filter_map(|id| reading.root(*id)).collect()
}

/// A log taken apart.
struct Reading {
    /// The entries of each tap, in the order of the first of each.
    taps: Vec<Vec<EntryId>>,
    /// What each undoing undoes, for those of taps that did nothing else.
    steps: BTreeMap<EntryId, EntryId>,
    /// Every undoing of an entry.
    undoers: BTreeMap<EntryId, Vec<EntryId>>,
    /// The entries that were told.
    known: BTreeSet<EntryId>,
}

impl Reading {
    fn of<E: Event>(log: &Log<E>) -> Self {
        let mut places: BTreeMap<(DeviceId, Moment), usize> = BTreeMap::new();
        let mut taps: Vec<Vec<&Entry<E>>> = Vec::new();
        let mut undoers: BTreeMap<EntryId, Vec<EntryId>> = BTreeMap::new();
        for entry in log.entries() {
            if let Some(target) = undone(entry) {
                undoers.entry(target).or_default().push(entry.id);
            }
            if entry.what.is_noted_unasked() {
                continue;
            }
            let place = *places.entry((entry.id.device, entry.typed)).or_insert(taps.len());
            match taps.get_mut(place) {
                Some(tap) => tap.push(entry),
                None => taps.push(vec![entry]),
            }
        }
        let only_steps = taps.iter().filter(|tap| tap.iter().all(|one| undone(one).is_some()));
        let steps = only_steps.flatten().filter_map(|one| Some((one.id, undone(one)?))).collect();
        Self {
            taps: taps.iter().map(|tap| tap.iter().map(|one| one.id).collect()).collect(),
            steps,
            undoers,
            known: taps.iter().flatten().map(|entry| entry.id).collect(),
        }
    }

    /// What a chain of undoings is about in the end.
    fn root(&self, mut id: EntryId) -> Option<EntryId> {
        // Each undoing is of an earlier entry, so the chain ends.
        while let Some(target) = self.steps.get(&id) {
            id = *target;
        }
        self.known.contains(&id).then_some(id)
    }

    /// Whether an entry counted once all entries up to this one were written.
    fn stands(&self, id: EntryId, until: Option<EntryId>) -> bool {
        let undoers = self.undoers.get(&id).map(Vec::as_slice).unwrap_or_default();
        !undoers.iter().any(|undoer| Some(*undoer) <= until && self.stands(*undoer, until))
    }
}

fn undone<E: Event>(entry: &Entry<E>) -> Option<EntryId> {
    entry.what.undoes().filter(|target| *target < entry.id)
}
