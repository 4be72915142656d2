//! The service worker, which keeps a copy of every file so that the app starts without a network.

use leptos::prelude::window;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{RegistrationOptions, ServiceWorkerUpdateViaCache};

/// Asks the browser to install `sw.js` beside the page. Where the browser refuses (a private window,
/// a page not served over HTTPS) the app works as long as the network does.
pub fn register_service_worker() {
    let options = RegistrationOptions::new();
    options.set_update_via_cache(ServiceWorkerUpdateViaCache::None);
    let registering =
        window().navigator().service_worker().register_with_options("sw.js", &options);
    spawn_local(async move {
        if let Err(reason) = JsFuture::from(registering).await {
            leptos::logging::warn!("the app is not kept for offline use: {reason:?}");
        }
    });
}
