//! Files that leave the app and come into it.

use std::cell::RefCell;
use std::rc::Rc;

use cook_model::file::LONGEST;
use futures::channel::oneshot;
use gloo_timers::callback::Timeout;
use js_sys::Array;
use leptos::prelude::{document, window};
use thiserror::Error;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, File, FilePropertyBag, HtmlElement, HtmlInputElement, ShareData, Url,
};

use super::feature;

/// How long a downloaded file is kept for the browser to read, in milliseconds.
const KEPT_MS: u32 = 60_000;

/// Why a chosen file cannot be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum FileProblem {
    /// It is longer than the longest cook's file.
    #[error("the file is too long; up to 8 MB is accepted")]
    TooLong,
    /// The browser could not read it.
    #[error("the phone could not read this file; choose it again")]
    Unreadable,
}

/// What became of a file that was to leave the app.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Handed {
    /// Another app or the phone's downloads have it.
    Taken,
    /// The person thought better of it.
    Cancelled,
    /// The phone did not take it.
    Refused,
}

/// Hands a text as a file to another app where the phone offers that, or else saves it among its
/// downloads. To be called from a tap.
pub async fn hand_over(name: &str, kind: &str, text: &str) -> Handed {
    match share(name, kind, text).await {
        Handed::Refused if download(name, kind, text) => Handed::Taken,
        other => other,
    }
}

/// Saves a text as a file where the phone keeps downloads; false if the browser refused.
pub fn download(name: &str, kind: &str, text: &str) -> bool {
    try_download(name, kind, text).is_ok()
}

async fn share(name: &str, kind: &str, text: &str) -> Handed {
    if !feature::navigator_has("canShare") {
        return Handed::Refused;
    }
    let Ok(data) = share_data(name, kind, text) else { return Handed::Refused };
    let navigator = window().navigator();
    if !navigator.can_share_with_data(&data) {
        return Handed::Refused;
    }
    match JsFuture::from(navigator.share_with_data(&data)).await {
        Ok(_) => Handed::Taken,
        Err(error) if is_abort(&error) => Handed::Cancelled,
        Err(_) => Handed::Refused,
    }
}

/// Whether the person closed the sheet that offers other apps (W3C Web Share: "AbortError").
fn is_abort(error: &JsValue) -> bool {
    js_sys::Reflect::get(error, &"name".into()).is_ok_and(|name| name == "AbortError")
}

/// Lets the person choose a file, and reads it. None if they chose none. To be called from a tap.
///
/// # Errors
/// A [`FileProblem`] if it is too large or cannot be read.
pub async fn choose(accepted: &str) -> Result<Option<String>, FileProblem> {
    let Some(file) = choose_file(accepted).await else { return Ok(None) };
    if file.size() > LONGEST as f64 {
        return Err(FileProblem::TooLong);
    }
    let text = JsFuture::from(file.text()).await.map_err(|_| FileProblem::Unreadable)?;
    text.as_string().map(Some).ok_or(FileProblem::Unreadable)
}

async fn choose_file(accepted: &str) -> Option<File> {
    let input: HtmlInputElement = document().create_element("input").ok()?.dyn_into().ok()?;
    input.set_type("file");
    input.set_accept(accepted);
    let (chosen, waiting) = oneshot::channel::<()>();
    let chosen = Rc::new(RefCell::new(Some(chosen)));
    let heard = Closure::<dyn Fn()>::new(move || {
        if let Some(chosen) = chosen.take() {
            // Nobody waits any more only if the page is going.
            let _ = chosen.send(());
        }
    });
    for event in ["change", "cancel"] {
        input.add_event_listener_with_callback(event, heard.as_ref().unchecked_ref()).ok()?;
    }
    // A browser may tell of both.
    heard.forget();
    input.click();
    waiting.await.ok()?;
    input.files()?.get(0)
}

fn try_download(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&text.into()), &options)?;
    let address = Url::create_object_url_with_blob(&blob)?;
    let link: HtmlElement = document().create_element("a")?.dyn_into()?;
    link.set_attribute("href", &address)?;
    link.set_attribute("download", name)?;
    link.click();
    Timeout::new(KEPT_MS, move || {
        // An address that is gone already needs no taking back.
        let _ = Url::revoke_object_url(&address);
    })
    .forget();
    Ok(())
}

fn share_data(name: &str, kind: &str, text: &str) -> Result<ShareData, JsValue> {
    let options = FilePropertyBag::new();
    options.set_type(kind);
    let parts = Array::of1(&text.into());
    let file = File::new_with_str_sequence_and_options(&parts, name, &options)?;
    let data = ShareData::new();
    data.set_files(&Array::of1(&file));
    data.set_title(name);
    Ok(data)
}
