//! Whether the browser promises not to clear away what is stored.

use leptos::prelude::window;
use wasm_bindgen_futures::JsFuture;

/// Asks the browser to keep what is stored even when the phone runs short of room. Some ask the
/// person, so this is done when there is something to lose. Returns what the browser promises.
pub async fn request() -> bool {
    let Ok(promise) = window().navigator().storage().persist() else { return false };
    JsFuture::from(promise).await.is_ok_and(|granted| granted.is_truthy())
}

/// Whether the browser has promised it.
pub async fn granted() -> bool {
    let Ok(promise) = window().navigator().storage().persisted() else { return false };
    JsFuture::from(promise).await.is_ok_and(|granted| granted.is_truthy())
}
