//! Pull Order's web app: it puts the screens on the page and hands the browser's services to them.

mod app;
mod asking;
mod beside;
mod demo;
mod derived;
mod describe;
mod device;
mod gear;
mod getter;
mod journal;
mod kitchen;
mod navigate;
mod open_cook;
mod parts;
mod preferences;
mod region;
mod safety_words;
mod screens;
mod show;
mod switching;
mod tap_words;
mod thought_out;
mod ticking;
mod typed;
mod watching;
mod words;

use std::cell::RefCell;

use cook_model::cook::thinking::Thinker;
use leptos::prelude::*;
use wasm_bindgen::prelude::*;

/// What `start.js` calls is [`run`]; a program for the browser has nothing to do before.
fn main() {
    console_error_panic_hook::set_once();
}

/// Starts the app, once the texts of its language are there.
///
/// # Errors
/// The browser's own, if the texts cannot be had: `start.js` then tells the person.
#[wasm_bindgen]
#[cfg_attr(not(target_arch = "wasm32"), allow(dead_code, reason = "only the browser calls it"))]
pub async fn run() -> Result<(), JsValue> {
    device::offline::register_service_worker();
    words::load(preferences::kept_language()).await?;
    mount_to_body(app::App);
    remove_loading_text();
    Ok(())
}

/// What `think.js` calls, in the second thread: the answer to a question; none to what is no question.
#[wasm_bindgen]
#[cfg_attr(not(target_arch = "wasm32"), allow(dead_code, reason = "only the browser calls it"))]
pub fn think(question: &[u8]) -> Option<Vec<u8>> {
    thread_local! {
        static THINKER: RefCell<Thinker> = RefCell::default();
    }
    THINKER.with_borrow_mut(|thinker| thinker.answer_to(question))
}

/// The page shows a static text until the program is there: this takes it away.
fn remove_loading_text() {
    if let Some(text) = document().get_element_by_id("loading") {
        text.remove();
    }
}
