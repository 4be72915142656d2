//! Tells the other windows of the app what this one has stored.

use js_sys::Array;
use wasm_bindgen::JsCast;
use web_sys::BroadcastChannel;

use super::CookId;
use super::database::number;
use crate::device::windows;

const CHANNEL: &str = "pull-order-log";

/// The way to the other windows, where the browser has one.
pub struct Announcer(Option<BroadcastChannel>);

impl Announcer {
    /// Joins the other windows.
    pub fn new() -> Self {
        Self(windows::channel(CHANNEL))
    }

    /// Tells them of an entry.
    pub fn tell(&self, cook: CookId, text: &str) {
        if let Some(channel) = &self.0 {
            // A window that misses it reads the store when it comes to the front.
            let _ = channel.post_message(&Array::of2(&number(cook.0), &text.into()));
        }
    }

    /// Calls this with each entry that another window has stored.
    pub fn follow(&self, stored: impl Fn(CookId, String) + 'static) {
        windows::on_message(self.0.as_ref(), move |message| {
            let Ok(message) = message.dyn_into::<Array>() else { return };
            if let (Some(cook), Some(text)) = (message.get(0).as_f64(), message.get(1).as_string())
            {
                stored(CookId(cook as u64), text);
            }
        });
    }
}
