//! Messages between the windows of the app on this phone.

use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{BroadcastChannel, MessageEvent};

/// The channel of this name, where the browser has such.
pub fn channel(name: &str) -> Option<BroadcastChannel> {
    BroadcastChannel::new(name).ok()
}

/// Calls this with each message of another window, as long as the page lives.
pub fn on_message(channel: Option<&BroadcastChannel>, heard: impl Fn(JsValue) + 'static) {
    let Some(channel) = channel else { return };
    let heard = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
        heard(event.data());
    });
    channel.set_onmessage(Some(heard.as_ref().unchecked_ref()));
    heard.forget();
}
