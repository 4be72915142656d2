//! The phone's vibration, where the browser offers it: an extra, never the only sign.

use js_sys::Array;
use leptos::prelude::window;
use wasm_bindgen::JsValue;

use super::feature;

/// Vibrates for these milliseconds, silent for the next, and so on; false if the browser cannot or
/// does not allow it.
pub fn vibrate(pattern: &[u32]) -> bool {
    if !feature::navigator_has("vibrate") {
        return false;
    }
    let pattern: Array = pattern.iter().map(|millis| JsValue::from(*millis)).collect();
    window().navigator().vibrate_with_pattern(&pattern)
}
