//! Notifications of the phone's own, shown through the service worker: the only way that works on
//! phones. The worker tells the page which button was tapped.

use js_sys::{Array, Reflect};
use leptos::prelude::window;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    MessageEvent, Notification, NotificationAction, NotificationOptions, NotificationPermission,
};

use super::{feature, offline};

/// What the person allows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Permission {
    /// The browser has none for this page: on an iPhone, only once it is on the home screen.
    NotOffered,
    /// The person was not asked yet.
    NotAsked,
    /// They are allowed.
    Granted,
    /// They are refused; only the phone's settings can change that.
    Refused,
}

/// A notification.
pub struct Notice {
    /// Its first line.
    pub title: String,
    /// Its text.
    pub body: String,
    /// Names it: a later one of the same name takes its place.
    pub tag: String,
    /// The words on its buttons, where the phone shows any.
    pub buttons: Buttons,
}

/// The words on a notification's buttons.
pub struct Buttons {
    /// To be called again in a while.
    pub snooze: String,
    /// It is done.
    pub done: String,
}

/// What was tapped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answer {
    /// The notification itself.
    Opened,
    /// The button to be called again.
    Snooze,
    /// The button that it is done.
    Done,
}

/// What the person allows now.
pub fn permission() -> Permission {
    if !feature::window_has("Notification") || !feature::navigator_has("serviceWorker") {
        return Permission::NotOffered;
    }
    match Notification::permission() {
        NotificationPermission::Granted => Permission::Granted,
        NotificationPermission::Denied => Permission::Refused,
        _ => Permission::NotAsked,
    }
}

/// Whether this browser's notifications have buttons: on an iPhone and in some others they have none.
pub fn have_buttons() -> bool {
    let most = feature::window_has("Notification")
        .then(|| {
            Reflect::get(
                &Reflect::get(&window(), &"Notification".into()).ok()?,
                &"maxActions".into(),
            )
            .ok()?
            .as_f64()
        })
        .flatten();
    most.is_some_and(|most| most >= 2.0)
}

/// Asks the person. To be called from a tap, after saying what for.
pub async fn ask() -> Permission {
    if permission() == Permission::NotAsked
        && let Ok(asking) = Notification::request_permission()
    {
        // Whatever came of it is told by `permission`.
        let _ = JsFuture::from(asking).await;
    }
    permission()
}

/// Shows a notification; false if it is not allowed or there is no service worker yet.
pub async fn show(notice: &Notice) -> bool {
    if permission() != Permission::Granted {
        return false;
    }
    let Some(registration) = offline::registration().await else { return false };
    let showing = registration.show_notification_with_options(&notice.title, &options(notice));
    match showing {
        Ok(showing) => JsFuture::from(showing).await.is_ok(),
        Err(_) => false,
    }
}

/// Takes a notification away, if it still shows.
pub async fn close(tag: &str) {
    let Some(registration) = offline::registration().await else { return };
    let Ok(asking) = registration.get_notifications() else { return };
    let Ok(found) = JsFuture::from(asking).await else { return };
    for notification in Array::from(&found) {
        let notification: Notification = notification.unchecked_into();
        if notification.tag().as_deref() == Some(tag) {
            notification.close();
        }
    }
}

/// Calls this with the tag of each notification that is tapped, and what was tapped.
pub fn on_answer(answered: impl Fn(String, Answer) + 'static) {
    if !feature::navigator_has("serviceWorker") {
        return;
    }
    let heard = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
        if let Some((tag, answer)) = read_message(&event.data()) {
            answered(tag, answer);
        }
    });
    let container = window().navigator().service_worker();
    container.set_onmessage(Some(heard.as_ref().unchecked_ref()));
    heard.forget();
    if let Some(worker) = container.controller() {
        // What was tapped while no page was open waits in the worker for this.
        let _ = worker.post_message(&"ready".into());
    }
}

fn options(notice: &Notice) -> NotificationOptions {
    let options = NotificationOptions::new();
    options.set_body(&notice.body);
    options.set_tag(&notice.tag);
    options.set_data(&notice.tag.as_str().into());
    options.set_renotify(true);
    options.set_require_interaction(true);
    options.set_icon("icons/icon-192.png");
    let snooze = NotificationAction::new("snooze", &notice.buttons.snooze);
    let done = NotificationAction::new("done", &notice.buttons.done);
    options.set_actions(&Array::of2(&snooze, &done));
    options
}

fn read_message(message: &JsValue) -> Option<(String, Answer)> {
    let part = |name: &str| Reflect::get(message, &name.into()).ok()?.as_string();
    if part("type")? != "notification" {
        return None;
    }
    let answer = match part("action").as_deref() {
        Some("snooze") => Answer::Snooze,
        Some("done") => Answer::Done,
        _ => Answer::Opened,
    };
    Some((part("data")?, answer))
}
