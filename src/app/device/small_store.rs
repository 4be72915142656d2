//! The browser's small store of texts (`localStorage`), which may be missing or refuse.

use js_sys::Object;
use leptos::prelude::window;
use web_sys::Storage;

fn storage() -> Option<Storage> {
    window().local_storage().ok().flatten()
}

/// The text under a key.
pub fn get(key: &str) -> Option<String> {
    storage()?.get_item(key).ok().flatten()
}

/// Puts a text under a key; false if the browser refused.
pub fn set(key: &str, text: &str) -> bool {
    storage().is_some_and(|storage| storage.set_item(key, text).is_ok())
}

/// Removes the text under a key, if there is one.
pub fn remove(key: &str) {
    if let Some(storage) = storage() {
        // Only a store that is not there refuses this.
        let _ = storage.remove_item(key);
    }
}

/// All keys that begin so. (To ask the store for one after another takes a browser far longer.)
pub fn keys(beginning: &str) -> Vec<String> {
    let Some(storage) = storage() else { return Vec::new() };
    let keys = Object::keys(&storage);
    let texts = keys.iter().filter_map(|key| key.as_string());
    texts.filter(|key| key.starts_with(beginning)).collect()
}
