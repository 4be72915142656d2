//! Tells the other windows of the app what this one has stored.

use js_sys::Array;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{BroadcastChannel, MessageEvent};

use super::CookId;

const NAME: &str = "pull-order-log";

/// The way to the other windows, where the browser has one.
pub struct Windows(Option<BroadcastChannel>);

impl Windows {
    /// Joins the other windows.
    pub fn join() -> Self {
        Self(BroadcastChannel::new(NAME).ok())
    }

    /// Tells them of an entry.
    pub fn tell(&self, cook: CookId, text: &str) {
        let Some(channel) = &self.0 else { return };
        // Cook numbers are below 2^53, which JavaScript's numbers hold exactly.
        let message = Array::of2(&(cook.0 as f64).into(), &text.into());
        // A window that misses it reads the store when it comes to the front.
        let _ = channel.post_message(&message);
    }

    /// Calls this with each entry that another window has stored.
    pub fn follow(&self, stored: impl Fn(CookId, String) + 'static) {
        let Some(channel) = &self.0 else { return };
        let heard = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            let Ok(message) = event.data().dyn_into::<Array>() else { return };
            if let (Some(cook), Some(text)) = (message.get(0).as_f64(), message.get(1).as_string())
            {
                stored(CookId(cook as u64), text);
            }
        });
        channel.set_onmessage(Some(heard.as_ref().unchecked_ref()));
        heard.forget();
    }
}
