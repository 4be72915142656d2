use serde_json::Value;

use super::{KitchenEntry, KitchenWhat, VERSION};
use crate::history::{DeviceId, EntryId};
use crate::quantity::Moment;

/// A stored entry that could not be read, kept as it was found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SetAside {
    /// The stored text.
    pub text: String,
    /// Why it could not be read.
    pub why: String,
}

/// All entries about the kitchen, in the order of their ids, and those that could not be read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct KitchenLog {
    entries: Vec<KitchenEntry>,
    set_aside: Vec<SetAside>,
}

impl KitchenLog {
    /// A log of these entries. They may come in any order; an entry met twice counts once.
    pub fn from_entries(entries: impl IntoIterator<Item = KitchenEntry>) -> Self {
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
    pub fn entries(&self) -> &[KitchenEntry] {
        &self.entries
    }

    /// What could not be read.
    pub fn set_aside(&self) -> &[SetAside] {
        &self.set_aside
    }

    /// Adds an entry; one already here stays. A different one under the same id is set aside.
    pub fn insert(&mut self, entry: KitchenEntry) {
        match self.entries.binary_search_by_key(&entry.id, |known| known.id) {
            Err(place) => self.entries.insert(place, entry),
            Ok(place) if self.entries[place] != entry => self.set_aside.push(SetAside {
                text: serde_json::to_string(&entry).unwrap_or_default(),
                why: "another entry has the same id".to_owned(),
            }),
            Ok(_) => {}
        }
    }

    /// The next entry this device would write; the caller inserts it once it is stored.
    pub fn next(
        &self,
        device: DeviceId,
        happened: Moment,
        typed: Moment,
        what: KitchenWhat,
    ) -> KitchenEntry {
        let count = self.entries.last().map_or(1, |last| last.id.count.saturating_add(1));
        KitchenEntry { v: VERSION, id: EntryId { count, device }, happened, typed, what }
    }
}

/// Reads one stored entry, or says why not.
fn read(text: &str) -> Result<KitchenEntry, String> {
    let value: Value = serde_json::from_str(text).map_err(|error| error.to_string())?;
    match value.get("v").and_then(Value::as_u64) {
        Some(v) if v == u64::from(VERSION) => {
            serde_json::from_value(value).map_err(|error| error.to_string())
        }
        Some(v) => Err(format!("version {v} is not known; versions up to {VERSION} are read")),
        None => Err("it has no version".to_owned()),
    }
}
