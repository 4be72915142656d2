//! Whether a finger is on the screen: what it is about to tap must not move away from under it, for the
//! browser gives the tap to what lies there as the finger leaves.

use std::cell::RefCell;
use std::time::Duration;

use leptos::ev;
use leptos::prelude::{set_timeout, window_event_listener};

/// The tap itself follows the finger's leaving within this: some frames of a slow phone (chosen, no source).
const TAPPED: Duration = Duration::from_millis(100);
/// A finger that leaves without a word, or rests on the screen, keeps nothing waiting for longer.
const AT_MOST: Duration = Duration::from_secs(2);

/// What waits for the finger to leave.
type Task = Box<dyn FnOnce()>;

#[derive(Default)]
struct Finger {
    /// How much it has done so far.
    deeds: u32,
    /// The last of it, while it is taken to be there.
    there: Option<u32>,
    waiting: Vec<Task>,
}

thread_local! {
    static FINGER: RefCell<Finger> = RefCell::default();
}

/// Begins to watch for fingers, as long as the page lives.
pub fn watch() {
    drop(window_event_listener(ev::pointerdown, |_| leaves_after(AT_MOST)));
    drop(window_event_listener(ev::pointerup, |_| leaves_after(TAPPED)));
    // The browser scrolls instead: no tap comes of it.
    drop(window_event_listener(ev::pointercancel, |_| leaves_after(Duration::ZERO)));
}

/// Runs this at once, or where a finger is on the screen once it has left and its tap was heard.
pub fn once_it_left(task: impl FnOnce() + 'static) {
    let waits = FINGER.with_borrow(|finger| finger.there.is_some());
    if waits {
        FINGER.with_borrow_mut(|finger| finger.waiting.push(Box::new(task)));
    } else {
        task();
    }
}

fn leaves_after(span: Duration) {
    let deed = FINGER.with_borrow_mut(|finger| {
        finger.deeds += 1;
        finger.there = Some(finger.deeds);
        finger.deeds
    });
    set_timeout(move || has_left(deed), span);
}

/// It has left, unless it did something since.
fn has_left(deed: u32) {
    let waiting = FINGER.with_borrow_mut(|finger| {
        if finger.there != Some(deed) {
            return Vec::new();
        }
        finger.there = None;
        std::mem::take(&mut finger.waiting)
    });
    waiting.into_iter().for_each(|task| task());
}
