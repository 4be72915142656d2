//! The service worker, which keeps a copy of every file so that the app starts without a network.

use leptos::prelude::window;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    RegistrationOptions, ServiceWorkerContainer, ServiceWorkerRegistration,
    ServiceWorkerUpdateViaCache,
};

use super::feature;

/// Asks the browser to install `sw.js` beside the page. Where the browser refuses (a private window,
/// a page not served over HTTPS) the app works as long as the network does.
pub fn register_service_worker() {
    let Some(container) = container() else { return };
    let options = RegistrationOptions::new();
    options.set_update_via_cache(ServiceWorkerUpdateViaCache::None);
    let registering = container.register_with_options("sw.js", &options);
    spawn_local(async move {
        if let Err(reason) = JsFuture::from(registering).await {
            leptos::logging::warn!("the app is not kept for offline use: {reason:?}");
        }
    });
}

/// The browser's service workers, if it has them for this page.
pub fn container() -> Option<ServiceWorkerContainer> {
    feature::navigator_has("serviceWorker").then(|| window().navigator().service_worker())
}

/// The service worker's registration, if there is one.
pub async fn registration() -> Option<ServiceWorkerRegistration> {
    let found = JsFuture::from(container()?.get_registration()).await.ok()?;
    found.dyn_into().ok()
}
