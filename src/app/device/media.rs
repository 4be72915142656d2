//! What the phone and its screen are like now, by media queries.

use leptos::prelude::window;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::MediaQueryList;

/// Light text on dark is asked for.
pub const DARK: &str = "(prefers-color-scheme: dark)";
/// There is room for three columns, as the style sheet has it.
pub const WIDE: &str = "(min-width: 64rem)";

/// Whether a query holds now; not, where the browser cannot tell.
pub fn holds(query: &str) -> bool {
    list(query).is_some_and(|list| list.matches())
}

/// Listens until it is dropped.
pub struct Watch {
    list: MediaQueryList,
    changed: Closure<dyn Fn()>,
}

/// Calls this with the answer whenever it changes.
pub fn watch(query: &'static str, changed: impl Fn(bool) + 'static) -> Option<Watch> {
    let list = list(query)?;
    let changed = Closure::<dyn Fn()>::new(move || changed(holds(query)));
    list.add_event_listener_with_callback("change", changed.as_ref().unchecked_ref()).ok()?;
    Some(Watch { list, changed })
}

impl Drop for Watch {
    fn drop(&mut self) {
        let changed = self.changed.as_ref().unchecked_ref();
        // It was added, so it can be taken away.
        let _ = self.list.remove_event_listener_with_callback("change", changed);
    }
}

fn list(query: &str) -> Option<MediaQueryList> {
    window().match_media(query).ok().flatten()
}
