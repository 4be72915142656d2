//! The site's own files besides the program, from the copy kept offline or from the host.

use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// The text of the file at this address relative to the page.
///
/// # Errors
/// The browser's own, or the host's status if it does not have the file.
pub async fn read(address: &str) -> Result<String, JsValue> {
    let response: Response =
        JsFuture::from(window().fetch_with_str(address)).await?.unchecked_into();
    if !response.ok() {
        return Err(format!("{address}: status {}", response.status()).into());
    }
    let text = JsFuture::from(response.text()?).await?;
    Ok(text.as_string().unwrap_or_default())
}
