//! "Test my alarms": does at once all that an alarm does, and tells what worked on this phone.

use futures::future::{Either, select};
use gloo_timers::future::TimeoutFuture;

use super::notify::{self, Notice, Permission};
use super::sound::{self, Tune};
use super::storage::persistence;
use super::{feature, vibrate, wake_lock};

/// How long the person has to allow notifications while the test waits, in milliseconds.
const PATIENCE_MS: u32 = 8_000;

/// How long the sound needs to start, in milliseconds.
const SOUND_STARTS_MS: u32 = 300;

/// What worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Report {
    /// The browser sounds a tune; whether the phone is muted no page can know.
    pub sound: bool,
    /// The browser says that it vibrates.
    pub vibration: bool,
    /// The phone showed a notification.
    pub notification: bool,
    /// What the person allows of notifications.
    pub permission: Permission,
    /// The screen can be kept on.
    pub awake: bool,
    /// The app runs from the home screen.
    pub installed: bool,
    /// The browser promises to keep what is stored.
    pub kept: bool,
}

/// Runs the test, in ten seconds at most. To be called from a tap.
pub async fn run(notice: Notice) -> Report {
    // These two must come before anything is waited for: they are allowed by the tap alone.
    sound::unlock();
    sound::play(Tune::Call);
    let vibration = vibrate::vibrate(&[400, 150, 400]);
    let asking = select(Box::pin(notify::ask()), TimeoutFuture::new(PATIENCE_MS)).await;
    let permission = match asking {
        Either::Left((permission, _)) => permission,
        Either::Right(_) => notify::permission(),
    };
    let notification = notify::show(&notice).await;
    TimeoutFuture::new(SOUND_STARTS_MS).await;
    Report {
        sound: sound::is_ready(),
        vibration,
        notification,
        permission,
        awake: wake_lock::try_out().await,
        installed: feature::is_installed(),
        kept: persistence::granted().await,
    }
}
