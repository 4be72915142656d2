//! Takes in what other windows of the app store, at once or on coming back.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::beside::Beside;
use crate::device::storage::{CookId, KITCHEN};
use crate::device::visibility;
use crate::kitchen::OpenKitchen;
use crate::open_cook::OpenCook;

/// Follows the other windows as long as the page lives.
pub fn follow_other_windows(cook: OpenCook, kitchen: OpenKitchen, beside: Beside) {
    let Some(store) = cook.pending().store() else { return };
    let take_in = move |of: CookId, texts: &[String]| {
        if of == KITCHEN {
            kitchen.journal().take_in(of, texts);
        } else if cook.journal().of_untracked() == Some(of) {
            cook.journal().take_in(of, texts);
        } else {
            beside.look();
        }
    };
    store.follow(move |of, text| take_in(of, &[text]));
    // A window that was frozen may have missed some.
    visibility::on_return(move || {
        for of in [untrack(|| cook.id()), Some(KITCHEN)].into_iter().flatten() {
            let store = store.clone();
            spawn_local(async move {
                if let Ok(texts) = store.load(of).await {
                    take_in(of, &texts);
                }
            });
        }
    });
}
