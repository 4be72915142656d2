//! A log of things that happened, in a cook or in the kitchen: entries are only ever added, undoing
//! is one more entry, and the logs of two phones can be merged.

use core::ops::RangeInclusive;
use std::collections::BTreeMap;

use chrono::Datelike;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::history::{DeviceId, EntryId};
use crate::quantity::Moment;
use crate::sorting::sort_by_key;

/// What a log's entries tell of.
pub trait Event: Clone + PartialEq + Serialize + DeserializeOwned {
    /// The version this crate writes. A higher one in a stored entry is not understood and is kept
    /// aside; a lower one is read as it was meant then.
    const VERSION: u16;

    /// The earlier entry that this undoes, if that is what it does. Undoing an undoing brings the
    /// entry back.
    fn undoes(&self) -> Option<EntryId>;

    /// The moments it names, besides those at which it happened and was typed.
    fn moments(&self) -> Vec<Moment> {
        Vec::new()
    }

    /// What undoes an entry.
    fn undoing(entry: EntryId) -> Self;

    /// Whether the app wrote it down without being told.
    fn is_noted_unasked(&self) -> bool {
        false
    }
}

/// The years for which a clock can be set: a phone that has lost its time begins in 1970.
const YEARS: RangeInclusive<i32> = 1970..=2199;
/// The highest count an entry can have: a thousand a second for thirty years. One at the top of its
/// type would leave no room for any later one.
const HIGHEST_COUNT: u64 = 1_000_000_000_000;

/// One thing that happened. Never changed once written, only undone by a later entry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Entry<E> {
    /// The version of this form.
    pub v: u16,
    /// Its unique, ordered id.
    pub id: EntryId,
    /// When it happened.
    pub happened: Moment,
    /// When it was typed.
    pub typed: Moment,
    /// What happened.
    pub what: E,
}

impl<E: Event> Entry<E> {
    /// Its stored form, as [`Log::from_stored`] reads it; none only if it could not be written as text.
    pub fn stored(&self) -> Option<String> {
        serde_json::to_string(self).ok()
    }
}

/// A stored entry that could not be read. It is kept as it was found, so that a later version of
/// the app, or a person, can still read it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SetAside {
    /// The stored text.
    pub text: String,
    /// Why it could not be read.
    pub why: String,
}

/// All entries of one log, in the order of their ids, and those that could not be read.
#[derive(Clone, Debug, PartialEq)]
pub struct Log<E> {
    entries: Vec<Entry<E>>,
    set_aside: Vec<SetAside>,
}

impl<E> Default for Log<E> {
    /// A log with nothing in it.
    fn default() -> Self {
        Self { entries: Vec::new(), set_aside: Vec::new() }
    }
}

impl<E: Event> Log<E> {
    /// A log of these entries. They may come in any order; an entry met twice counts once.
    pub fn from_entries(entries: impl IntoIterator<Item = Entry<E>>) -> Self {
        let mut log = Self::default();
        for entry in entries {
            log.insert(entry);
        }
        log
    }

    /// Reads stored entries, one JSON text each. What cannot be read is set aside, never lost.
    pub fn from_stored<'a>(texts: impl IntoIterator<Item = &'a str>) -> Self {
        let mut log = Self::default();
        for text in texts {
            match read(text) {
                Ok(entry) => log.insert(entry),
                Err(why) => log.set_aside.push(SetAside { text: text.to_owned(), why }),
            }
        }
        log
    }

    /// The entries, in the order of their ids.
    pub fn entries(&self) -> &[Entry<E>] {
        &self.entries
    }

    /// What could not be read.
    pub fn set_aside(&self) -> &[SetAside] {
        &self.set_aside
    }

    /// Adds an entry that another device wrote, or that was stored; one already here stays.
    /// Two different entries under one id cannot come from honest devices: the first is kept and
    /// the other is set aside.
    pub fn insert(&mut self, entry: Entry<E>) {
        match self.entries.binary_search_by_key(&entry.id, |known| known.id) {
            Err(place) => self.entries.insert(place, entry),
            Ok(place) if self.entries[place] != entry => self.set_aside.push(SetAside {
                text: entry.stored().unwrap_or_default(),
                why: "another entry has the same id".to_owned(),
            }),
            Ok(_) => {}
        }
    }

    /// The next entry this device would write. It is not in the log until it is inserted, which
    /// the caller does once it is stored.
    pub fn next(&self, device: DeviceId, happened: Moment, typed: Moment, what: E) -> Entry<E> {
        let count = self.entries.last().map_or(1, |last| last.id.count.saturating_add(1));
        Entry { v: E::VERSION, id: EntryId { count, device }, happened, typed, what }
    }

    /// The entries that still count, in the order in which they happened; those of one moment in
    /// the order in which they were written. Undoings are not among them.
    pub fn standing(&self) -> Vec<&Entry<E>> {
        let undone = self.undone_by();
        let counts =
            |entry: &&Entry<E>| entry.what.undoes().is_none() && !undone.contains_key(&entry.id);
        let mut standing: Vec<_> = self.entries.iter().filter(counts).collect();
        sort_by_key(&mut standing, |entry| (entry.happened, entry.id));
        standing
    }

    /// The entries that do not count any more, each with the entry that undid it. To bring one
    /// back, undo that one.
    ///
    /// Only a later entry can undo, so going from the last to the first settles each undoing before
    /// the entry that it undoes: an undoing that is itself undone does nothing.
    pub fn undone_by(&self) -> BTreeMap<EntryId, EntryId> {
        let mut undone = BTreeMap::new();
        for entry in self.entries.iter().rev() {
            let target = entry.what.undoes().filter(|target| *target < entry.id);
            if let (Some(target), false) = (target, undone.contains_key(&entry.id)) {
                undone.insert(target, entry.id);
            }
        }
        undone
    }
}

/// The entry, if its times and its count are sane: what is out of all reason would make every sum with
/// it fail.
fn check<E: Event>(entry: Entry<E>) -> Result<Entry<E>, String> {
    let mut all = entry.what.moments().into_iter().chain([entry.happened, entry.typed]);
    if let Some(odd) = all.find(|moment| !YEARS.contains(&moment.year())) {
        return Err(format!("its time, in the year {}, is not possible", odd.year()));
    }
    if entry.id.count > HIGHEST_COUNT {
        return Err(format!("its count, {}, is not possible", entry.id.count));
    }
    Ok(entry)
}

/// Reads one stored entry, or says why not.
pub(crate) fn read<E: Event>(text: &str) -> Result<Entry<E>, String> {
    let value: Value = serde_json::from_str(text).map_err(|error| error.to_string())?;
    match value.get("v").and_then(Value::as_u64) {
        Some(v) if v == u64::from(E::VERSION) => {
            let entry = serde_json::from_value(value).map_err(|error| error.to_string())?;
            check(entry)
        }
        Some(v) => Err(format!("version {v} is not known; versions up to {} are read", E::VERSION)),
        None => Err("it has no version".to_owned()),
    }
}
