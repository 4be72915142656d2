//! Pull Order's web app: it puts the screens on the page and hands the browser's services to them.

mod app;
mod demo;
mod describe;
mod device;
mod kitchen;
mod navigate;
mod open_cook;
mod parts;
mod preferences;
mod safety_words;
mod screens;
mod show;
mod thought_out;
mod ticking;
mod typed;
mod watching;
mod words;

use leptos::prelude::*;

fn main() {
    console_error_panic_hook::set_once();
    device::offline::register_service_worker();
    mount_to_body(app::App);
    remove_loading_text();
}

/// The page shows a static text until the program is there: this takes it away.
fn remove_loading_text() {
    if let Some(text) = document().get_element_by_id("loading") {
        text.remove();
    }
}
