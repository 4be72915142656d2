//! Keeps the screen on, where the browser allows it.
//!
//! The browser ends a wake lock whenever the page is hidden; it is taken again when the page comes
//! back. Refusing one, when the battery is low for example, is normal.

use std::cell::{Cell, RefCell};

use js_sys::Promise;
use leptos::prelude::window;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

use super::{feature, visibility};

#[wasm_bindgen]
extern "C" {
    type NavigatorWithWakeLock;
    #[wasm_bindgen(method, getter, js_name = wakeLock)]
    fn wake_lock(this: &NavigatorWithWakeLock) -> WakeLock;

    type WakeLock;
    #[wasm_bindgen(method, catch)]
    fn request(this: &WakeLock, kind: &str) -> Result<Promise, JsValue>;

    #[derive(Clone)]
    type Sentinel;
    #[wasm_bindgen(method, getter)]
    fn released(this: &Sentinel) -> bool;
    #[wasm_bindgen(method, catch)]
    fn release(this: &Sentinel) -> Result<Promise, JsValue>;
}

thread_local! {
    static WANTED: Cell<bool> = const { Cell::new(false) };
    static HELD: RefCell<Option<Sentinel>> = const { RefCell::new(None) };
}

/// Takes the wake lock again whenever the page comes back while it is wanted. Called once.
pub fn renew_on_return() {
    visibility::on_return(|| {
        if WANTED.get() {
            spawn_local(async {
                take().await;
            });
        }
    });
}

/// Keeps the screen on from now on, or lets it go off again. Returns whether it is kept on. Browsers
/// want the first call to come from a tap.
pub async fn keep_awake(wanted: bool) -> bool {
    WANTED.set(wanted);
    if wanted {
        return take().await;
    }
    if let Some(held) = HELD.take()
        && let Ok(releasing) = held.release()
    {
        // Whether it was held or not, it is not wanted any more.
        let _ = JsFuture::from(releasing).await;
    }
    false
}

/// Whether the browser can keep the screen on at all.
pub fn is_offered() -> bool {
    feature::navigator_has("wakeLock")
}

/// Whether the screen is kept on.
pub fn is_held() -> bool {
    HELD.with_borrow(|held| held.as_ref().is_some_and(|held| !held.released()))
}

/// Whether the screen can be kept on now: takes the wake lock, and gives it back if it is not wanted.
pub async fn try_out() -> bool {
    let works = take().await;
    if !WANTED.get() {
        keep_awake(false).await;
    }
    works
}

async fn take() -> bool {
    if is_held() || !is_offered() || !visibility::is_visible() {
        return is_held();
    }
    let navigator: NavigatorWithWakeLock = window().navigator().unchecked_into();
    let Ok(asking) = navigator.wake_lock().request("screen") else { return false };
    let Ok(sentinel) = JsFuture::from(asking).await else { return false };
    HELD.set(Some(sentinel.unchecked_into()));
    true
}
