//! Brings a field in error into sight: who presses a button far below it would see nothing happen.

use leptos::html;
use leptos::prelude::*;
use web_sys::{ScrollIntoViewOptions, ScrollLogicalPosition};

/// Scrolls to a part of the screen whenever something is said to be wrong there, and no further than needed.
pub fn keep_in_sight(part: NodeRef<html::Div>, bad: RwSignal<Option<String>>) {
    Effect::new(move || {
        if bad.read().is_none() {
            return;
        }
        // What is wrong stands there only once this change is drawn.
        request_animation_frame(move || {
            if let Some(part) = part.get_untracked() {
                let nearest = ScrollIntoViewOptions::new();
                nearest.set_block(ScrollLogicalPosition::Nearest);
                part.scroll_into_view_with_scroll_into_view_options(&nearest);
            }
        });
    });
}
