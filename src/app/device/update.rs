//! New versions of the app: offered when one is there, taken when the person says so.
//!
//! A new version waits in the service worker until the page lets it in. The first worker ever also
//! takes the page over, which is no update: nothing is offered before the page has a worker.

use std::cell::Cell;
use std::rc::Rc;

use leptos::prelude::window;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Event, ServiceWorker, ServiceWorkerRegistration, ServiceWorkerState};

use super::{offline, visibility};

/// How long a version is taken for the newest without asking again, in milliseconds.
const ASK_AGAIN_MS: f64 = 60.0 * 60.0 * 1e3;

thread_local! {
    static TAKEN: Cell<bool> = const { Cell::new(false) };
}

/// Calls this when a new version is ready. The app offers it; it should not urge it on a person in
/// the middle of a cook.
pub fn watch(ready: impl Fn() + 'static) {
    let Some(container) = offline::container() else { return };
    let ready = Rc::new(ready);
    // Without a worker at the start, the first to take over is no new version.
    let had_worker = Rc::new(Cell::new(container.controller().is_some()));
    let in_charge = Rc::clone(&ready);
    let taken_over = Closure::<dyn Fn()>::new(move || {
        if TAKEN.get() {
            reload_once();
        } else if had_worker.replace(true) {
            // Another window let the new version in: this one still runs the old.
            in_charge();
        }
    });
    container.set_oncontrollerchange(Some(taken_over.as_ref().unchecked_ref()));
    taken_over.forget();
    spawn_local(async move {
        let found = JsFuture::from(match container.ready() {
            Ok(becoming_ready) => becoming_ready,
            Err(_) => return,
        });
        let Ok(registration) = found.await else { return };
        watch_registration(&registration.unchecked_into(), &ready);
    });
}

/// Lets the new version in and starts the page again with it. What was typed is stored before its
/// tap is acknowledged, so nothing is lost.
pub async fn take() {
    TAKEN.set(true);
    let waiting = offline::registration().await.and_then(|registration| registration.waiting());
    match waiting {
        // The page starts again when the new worker is in charge.
        Some(worker) if worker.post_message(&"skip-waiting".into()).is_ok() => {}
        // Another window has let it in already.
        _ => reload_once(),
    }
}

fn reload_once() {
    if TAKEN.replace(false) {
        // A page that cannot start again goes on as it is.
        let _ = window().location().reload();
    }
}

fn watch_registration(registration: &ServiceWorkerRegistration, ready: &Rc<impl Fn() + 'static>) {
    if registration.waiting().is_some() && has_worker() {
        ready();
    }
    let (found, told) = (registration.clone(), Rc::clone(ready));
    let update_found = Closure::<dyn Fn()>::new(move || {
        if let Some(worker) = found.installing() {
            watch_installing(&worker, &told);
        }
    });
    registration.set_onupdatefound(Some(update_found.as_ref().unchecked_ref()));
    update_found.forget();
    ask_now_and_then(registration.clone());
}

fn watch_installing(worker: &ServiceWorker, ready: &Rc<impl Fn() + 'static>) {
    let told = Rc::clone(ready);
    let changed = Closure::<dyn Fn(Event)>::new(move |event: Event| {
        let worker = event.target().and_then(|target| target.dyn_into::<ServiceWorker>().ok());
        if worker.is_some_and(|worker| worker.state() == ServiceWorkerState::Installed)
            && has_worker()
        {
            told();
        }
    });
    worker.set_onstatechange(Some(changed.as_ref().unchecked_ref()));
    changed.forget();
}

fn has_worker() -> bool {
    offline::container().is_some_and(|container| container.controller().is_some())
}

/// Asks the host for a new version when the page comes to the front, at most once an hour.
fn ask_now_and_then(registration: ServiceWorkerRegistration) {
    let asked = Cell::new(js_sys::Date::now());
    visibility::on_return(move || {
        let now = js_sys::Date::now();
        if now - asked.get() < ASK_AGAIN_MS {
            return;
        }
        asked.set(now);
        if let Ok(asking) = registration.update() {
            spawn_local(async move {
                // With no network there is nothing new.
                let _ = JsFuture::from(asking).await;
            });
        }
    });
}
