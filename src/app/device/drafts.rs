//! What is half typed in the kitchen, kept on this phone until it is used. It is no part of a log.

use serde::Serialize;
use serde::de::DeserializeOwned;

use super::small_store;

const BEGINNING: &str = "draft/";

/// The draft of this name; none where none is kept or it cannot be read.
pub fn load<T: DeserializeOwned>(name: &str) -> Option<T> {
    serde_json::from_str(&small_store::get(&key(name))?).ok()
}

/// Keeps a draft. Where the browser refuses, it lasts until the page closes.
pub fn save<T: Serialize>(name: &str, draft: &T) {
    if let Ok(text) = serde_json::to_string(draft) {
        small_store::set(&key(name), &text);
    }
}

fn key(name: &str) -> String {
    format!("{BEGINNING}{name}")
}
