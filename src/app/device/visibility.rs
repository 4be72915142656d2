//! When the page is in front, and when it comes back after having been hidden, frozen or asleep.

use std::rc::Rc;

use leptos::ev;
use leptos::prelude::{document, window_event_listener};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::VisibilityState;

/// Whether the page is in front.
pub fn is_visible() -> bool {
    document().visibility_state() == VisibilityState::Visible
}

/// Calls this whenever the page may have missed something: it came to the front, was shown again
/// from the browser's cache, got the focus, or was thawed. It is called more often than needed,
/// never less.
pub fn on_return(returned: impl Fn() + 'static) {
    let returned = Rc::new(returned);
    for event in ["visibilitychange", "resume"] {
        let returned = Rc::clone(&returned);
        on_document(event, move || {
            if is_visible() {
                returned();
            }
        });
    }
    let shown = Rc::clone(&returned);
    drop(window_event_listener(ev::pageshow, move |_| shown()));
    drop(window_event_listener(ev::focus, move |_| returned()));
}

/// Calls this when the page is hidden. It may be the last that the page gets to do.
pub fn on_hidden(hidden: impl Fn() + 'static) {
    on_document("visibilitychange", move || {
        if !is_visible() {
            hidden();
        }
    });
}

/// Listens on the document as long as the page lives.
fn on_document(event: &str, heard: impl Fn() + 'static) {
    let closure = Closure::<dyn Fn()>::new(heard);
    let listening =
        document().add_event_listener_with_callback(event, closure.as_ref().unchecked_ref());
    if listening.is_ok() {
        closure.forget();
    }
}
