//! What is seen of the app from outside it: the page's title, and a number on its icon.

use js_sys::{Function, Reflect};
use leptos::prelude::{document, window};
use wasm_bindgen::{JsCast, JsValue};

/// The name of the app, the page's title when nothing waits.
const NAME: &str = "Pull Order";

/// Shows how many alarms wait to be answered, and what the first is, or that none does.
pub fn show(waiting: usize, first: Option<&str>) {
    match first {
        Some(first) => document().set_title(&format!("({waiting}) {first}")),
        None => document().set_title(NAME),
    }
    // Where the icon cannot have a number, the title must do.
    let _ = call("setAppBadge", &(waiting as f64).into());
}

/// Calls a function of `navigator` that not every browser has.
fn call(name: &str, argument: &JsValue) -> Result<JsValue, JsValue> {
    let navigator = window().navigator();
    let function: Function = Reflect::get(&navigator, &name.into())?.dyn_into()?;
    function.call1(&navigator, argument)
}
