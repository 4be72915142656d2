//! The one place that reads a clock.

use std::cell::Cell;

use cook_model::cook::CLOCK_SET;
use cook_model::quantity::{Moment, Span, seconds};
use leptos::prelude::window;

/// The present moment by the phone's clock, to the millisecond.
pub fn now() -> Moment {
    Moment::from_timestamp_millis(js_sys::Date::now() as i64).unwrap_or_default()
}

/// How the phone's clock moved against the time that went by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Jump {
    /// It was set back by so much.
    Back(Span),
    /// It went forward by so much more than the page knows of: it was set forward, or the phone
    /// slept, in which case nothing is wrong. Only a page that was in front all the time can tell
    /// which: a phone that sleeps hides its pages first.
    ForwardOrSlept(Span),
}

/// Compares the phone's clock with the page's own, which no one can set.
pub struct ClockWatch {
    ahead_ms: Cell<f64>,
}

impl ClockWatch {
    /// Begins to watch.
    pub fn new() -> Self {
        Self { ahead_ms: Cell::new(ahead_ms()) }
    }

    /// How the phone's clock has moved since this was last asked.
    pub fn jump(&self) -> Option<Jump> {
        let ahead = ahead_ms();
        let moved = seconds((ahead - self.ahead_ms.replace(ahead)) / 1e3);
        if moved < -CLOCK_SET {
            Some(Jump::Back(-moved))
        } else if moved > CLOCK_SET {
            Some(Jump::ForwardOrSlept(moved))
        } else {
            None
        }
    }
}

/// How far the phone's clock is ahead of the page's own, which counts from the page's start.
fn ahead_ms() -> f64 {
    let steady = window().performance().map_or(0.0, |performance| performance.now());
    js_sys::Date::now() - steady
}
