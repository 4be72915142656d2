//! A browser may lose the process that stores, and then asks for the page to be loaded anew. What is
//! not stored is taken along, in every place that outlives a reload: the second copy, the window's own
//! store, and the state of its history entry, which is no part of the lost process.

use js_sys::Reflect;
use leptos::prelude::{document, window};
use wasm_bindgen::JsValue;

use super::pending::Texts;
use crate::device::small_store::{self, Kind};
use crate::device::storage::{CookId, Store};

/// Under which it lies in the window's own store.
const KEY: &str = "taken-along";
/// A page that was itself begun by a reload does not reload by itself sooner than this after it began:
/// where reloading did not help it would never end.
const NOT_BEFORE_MS: f64 = 600_000.0;
/// What the browser calls a page begun by a reload (Navigation Timing Level 2).
const BY_RELOAD: &str = "reload";

/// Puts what is not stored yet where a reload finds it; once that is nothing, takes it away again.
pub fn take_along(all: Vec<(CookId, Texts)>) {
    if all.is_empty() {
        if small_store::of_window(KEY).is_some() {
            small_store::remove(Kind::Window, KEY);
        }
        if in_history().is_some() {
            put_in_history(&JsValue::NULL);
        }
        return;
    }
    for (of, texts) in &all {
        Store::keep_second(*of, texts);
    }
    if let Ok(text) = serde_json::to_string(&all) {
        small_store::set_in(Kind::Window, KEY, &text);
        put_in_history(&text.into());
    }
}

/// What an earlier page of this window took along.
pub fn taken_along() -> Vec<(CookId, Texts)> {
    let mut all: Vec<(CookId, Texts)> = Vec::new();
    for text in small_store::of_window(KEY).into_iter().chain(in_history()) {
        let found: Vec<(CookId, Texts)> = serde_json::from_str(&text).unwrap_or_default();
        for tap in found {
            if !all.contains(&tap) {
                all.push(tap);
            }
        }
    }
    all
}

/// Loads the page anew, unless the person is typing or it has been tried already.
pub fn reload_if_idle(all: &[(CookId, Texts)]) {
    if !is_typing() && !was_tried() {
        reload(all);
    }
}

/// Loads the page anew with what is not stored.
pub fn reload(all: &[(CookId, Texts)]) {
    take_along(all.to_vec());
    // A page that cannot be reloaded stays, and goes on trying.
    let _ = window().location().reload();
}

fn in_history() -> Option<String> {
    window().history().and_then(|history| history.state()).ok()?.as_string()
}

fn put_in_history(state: &JsValue) {
    if let Ok(history) = window().history() {
        // The window's own store and the second copy remain.
        let _ = history.replace_state(state, "");
    }
}

/// Whether a field has the keyboard, or the number pad is open.
fn is_typing() -> bool {
    let in_field = document().active_element().is_some_and(|element| element.tag_name() == "INPUT");
    let at_the_pad = document().query_selector(".pad").ok().flatten().is_some();
    in_field || at_the_pad
}

fn was_tried() -> bool {
    let Some(performance) = window().performance() else { return true };
    let begun = performance.get_entries_by_type("navigation").get(0);
    let how = Reflect::get(&begun, &"type".into()).ok().and_then(|how| how.as_string());
    how.is_none_or(|how| how == BY_RELOAD) && performance.now() < NOT_BEFORE_MS
}
