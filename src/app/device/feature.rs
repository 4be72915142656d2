//! What this browser offers. Asking for what it does not have would stop the program.

use js_sys::Reflect;
use leptos::prelude::window;

/// Whether `navigator` has this.
pub fn navigator_has(name: &str) -> bool {
    Reflect::get(&window().navigator(), &name.into()).is_ok_and(|found| found.is_truthy())
}

/// Whether `window` has this.
pub fn window_has(name: &str) -> bool {
    Reflect::get(&window(), &name.into()).is_ok_and(|found| found.is_truthy())
}

/// Whether the app runs on its own, from the home screen, and not in a browser's tab.
pub fn is_installed() -> bool {
    let media = window().match_media("(display-mode: standalone)").ok().flatten();
    media.is_some_and(|media| media.matches())
}
