//! The second copy of the open cook, in the browser's small store: one text an entry, so that two
//! windows that write at once do not write over each other, and damage stays with one entry.

use std::collections::BTreeMap;

use cook_model::cook::heal::{Repair, Stored};
use cook_model::cook::{DeviceId, EntryId};

use super::CookId;
use crate::device::small_store::{self, Kind};

const BEGINNING: &str = "log/";

/// Keeps a text; false if the browser refused.
pub fn set(cook: CookId, id: EntryId, text: &str) -> bool {
    small_store::set(&key(cook, id), text)
}

/// What it holds at one moment, by name: to list it takes a browser long.
pub struct Listing(Vec<(CookId, EntryId)>);

impl Listing {
    /// What it holds now.
    pub fn now() -> Self {
        Self(small_store::keys(BEGINNING).iter().filter_map(|key| read_key(key)).collect())
    }

    /// The cooks that it holds entries of, with how many.
    pub fn cooks(&self) -> BTreeMap<CookId, usize> {
        let mut cooks = BTreeMap::new();
        for (cook, _) in &self.0 {
            *cooks.entry(*cook).or_default() += 1;
        }
        cooks
    }

    /// All texts of one cook that are still there.
    pub fn texts(&self, cook: CookId) -> Stored {
        let ours = self.0.iter().filter(|(of, _)| *of == cook);
        ours.filter_map(|(of, id)| Some((*id, small_store::get(&key(*of, *id))?))).collect()
    }
}

/// Writes what is missing or damaged.
pub fn repair(cook: CookId, repairs: &[Repair]) {
    for repair in repairs {
        // What this copy refuses is still in the other one.
        set(cook, repair.id, &repair.text);
    }
}

/// Drops a cook that is no longer open and is whole in the database.
pub fn drop_cook(cook: CookId) {
    for key in small_store::keys(BEGINNING) {
        if read_key(&key).is_some_and(|(of, _)| of == cook) {
            small_store::remove(Kind::Phone, &key);
        }
    }
}

fn key(cook: CookId, id: EntryId) -> String {
    format!("{BEGINNING}{}/{}/{}", cook.0, id.count, id.device.0)
}

fn read_key(key: &str) -> Option<(CookId, EntryId)> {
    let mut parts = key.strip_prefix(BEGINNING)?.split('/');
    let cook = CookId(parts.next()?.parse().ok()?);
    let count = parts.next()?.parse().ok()?;
    let device = DeviceId(parts.next()?.parse().ok()?);
    Some((cook, EntryId { count, device }))
}
