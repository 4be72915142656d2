//! The browser's small stores of texts, which may be missing or refuse: the phone's
//! (`localStorage`), and that of one window, which outlives a reload (`sessionStorage`).

use js_sys::Object;
use leptos::prelude::window;
use web_sys::Storage;

/// Which of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The phone's.
    Phone,
    /// This window's.
    Window,
}

fn storage(kind: Kind) -> Option<Storage> {
    match kind {
        Kind::Phone => window().local_storage(),
        Kind::Window => window().session_storage(),
    }
    .ok()
    .flatten()
}

/// The text under a key, on the phone.
pub fn get(key: &str) -> Option<String> {
    storage(Kind::Phone)?.get_item(key).ok().flatten()
}

/// The text under a key, in this window.
pub fn of_window(key: &str) -> Option<String> {
    storage(Kind::Window)?.get_item(key).ok().flatten()
}

/// Puts a text under a key, on the phone; false if the browser refused.
pub fn set(key: &str, text: &str) -> bool {
    set_in(Kind::Phone, key, text)
}

/// Puts a text under a key; false if the browser refused.
pub fn set_in(kind: Kind, key: &str, text: &str) -> bool {
    storage(kind).is_some_and(|storage| storage.set_item(key, text).is_ok())
}

/// Removes the text under a key, if there is one.
pub fn remove(kind: Kind, key: &str) {
    if let Some(storage) = storage(kind) {
        // Only a store that is not there refuses this.
        let _ = storage.remove_item(key);
    }
}

/// All keys of the phone that begin so. (To ask the store for one after another takes a browser far
/// longer.)
pub fn keys(beginning: &str) -> Vec<String> {
    let Some(storage) = storage(Kind::Phone) else { return Vec::new() };
    let keys = Object::keys(&storage);
    let texts = keys.iter().filter_map(|key| key.as_string());
    texts.filter(|key| key.starts_with(beginning)).collect()
}
