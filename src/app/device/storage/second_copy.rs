//! The second copy of the open cook, in the browser's small store: one text an entry, so that two
//! windows that write at once do not write over each other, and damage stays with one entry.

use cook_model::cook::heal::{Repair, Stored};
use cook_model::cook::{DeviceId, EntryId};

use super::CookId;
use crate::device::small_store::{self, Kind};

const BEGINNING: &str = "log/";

/// Keeps a text; false if the browser refused.
pub fn set(cook: CookId, id: EntryId, text: &str) -> bool {
    small_store::set(&key(cook, id), text)
}

/// All texts of one cook.
pub fn texts(cook: CookId) -> Stored {
    let keys = small_store::keys(BEGINNING);
    let ours = keys.iter().filter_map(|key| {
        let (of, id) = read_key(key)?;
        (of == cook).then_some((id, small_store::get(key)?))
    });
    ours.collect()
}

/// The cooks that it holds entries of, with how many.
pub fn cooks() -> Vec<(CookId, usize)> {
    let mut cooks: Vec<(CookId, usize)> = Vec::new();
    for (cook, _) in small_store::keys(BEGINNING).iter().filter_map(|key| read_key(key)) {
        match cooks.iter_mut().find(|(known, _)| *known == cook) {
            Some((_, count)) => *count += 1,
            None => cooks.push((cook, 1)),
        }
    }
    cooks
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
