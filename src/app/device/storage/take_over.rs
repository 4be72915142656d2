//! A newer version of the app in another window may need the database to itself, to change its
//! stores: it asks the older windows to let go, which do so at once.

use crate::device::windows;

const CHANNEL: &str = "pull-order-database";

/// Asks windows whose database is of a lower version to let go of it.
pub fn ask(version: u8) {
    if let Some(channel) = windows::channel(CHANNEL) {
        // A window that does not hear it keeps the database, and the person is told to close it.
        let _ = channel.post_message(&version.into());
    }
}

/// Calls this when a window with a database of a higher version asks for it.
pub fn on_asked(version: u8, let_go: impl Fn() + 'static) {
    windows::on_message(windows::channel(CHANNEL).as_ref(), move |asking| {
        if asking.as_f64().is_some_and(|asking| asking > f64::from(version)) {
            let_go();
        }
    });
}
