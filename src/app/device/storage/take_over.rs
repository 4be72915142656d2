//! A newer version of the app in another window may need the database to itself, to change its
//! stores: it asks the older windows to let go, which do so at once.

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{BroadcastChannel, MessageEvent};

const NAME: &str = "pull-order-database";

/// Asks windows whose database is of a lower version to let go of it.
pub fn ask(version: u8) {
    if let Ok(channel) = BroadcastChannel::new(NAME) {
        // A window that does not hear it keeps the database, and the person is told to close it.
        let _ = channel.post_message(&version.into());
    }
}

/// Calls this when a window with a database of a higher version asks for it.
pub fn on_asked(version: u8, let_go: impl Fn() + 'static) {
    let Ok(channel) = BroadcastChannel::new(NAME) else { return };
    let heard = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
        if event.data().as_f64().is_some_and(|asking| asking > f64::from(version)) {
            let_go();
        }
    });
    channel.set_onmessage(Some(heard.as_ref().unchecked_ref()));
    heard.forget();
}
