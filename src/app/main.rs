//! Pull Order's web app: it puts the screens on the page and hands the browser's services to them.

// The screens that call all of these come next.
#[allow(dead_code)]
mod device;

use leptos::prelude::*;

fn main() {
    console_error_panic_hook::set_once();
    device::offline::register_service_worker();
    remove_loading_text();
    mount_to_body(App);
}

/// The whole page.
#[component]
fn App() -> impl IntoView {
    view! { <main><h1>"Pull Order"</h1></main> }
}

/// The page shows a static text until the program is there: this takes it away.
fn remove_loading_text() {
    if let Some(text) = document().get_element_by_id("loading") {
        text.remove();
    }
}
