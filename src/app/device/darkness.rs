//! Whether the phone itself is set to light text on dark.

use leptos::prelude::window;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::MediaQueryList;

/// Whether the phone asks for light text on dark now; not, where the browser cannot tell.
pub fn phone_is_dark() -> bool {
    query().is_some_and(|query| query.matches())
}

/// Calls this with the answer whenever it changes, as long as the page lives.
pub fn on_change(changed: impl Fn(bool) + 'static) {
    let Some(query) = query() else { return };
    let closure = Closure::<dyn Fn()>::new(move || changed(phone_is_dark()));
    let listening =
        query.add_event_listener_with_callback("change", closure.as_ref().unchecked_ref());
    if listening.is_ok() {
        closure.forget();
    }
}

fn query() -> Option<MediaQueryList> {
    window().match_media("(prefers-color-scheme: dark)").ok().flatten()
}
