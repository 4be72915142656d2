//! What is not stored yet, and what is wrong with the phone's storage, in our own words.

use leptos::prelude::*;

use crate::device::storage::Trouble as Found;
use crate::journal::pending::Unstored;
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::say;
use crate::words::wording;

/// Says what the phone has not stored yet, as long as that is so, and what is wrong with its storage.
#[component]
pub fn Trouble() -> impl IntoView {
    let pending = open_cook().pending();
    let words = move || match (pending.unstored(), pending.trouble().get()) {
        (Some(unstored), _) => Some(of_unstored(&unstored)),
        (None, found) => found.map(|found| in_words(&found)),
    };
    let found = move || pending.unstored().map_or_else(|| pending.trouble().get(), |it| it.trouble);
    let is_lost = move || found() == Some(Found::Lost);
    // The browser speaks in its own words, often English: they help who is asked for help.
    let told = move || match found() {
        Some(Found::Failed(told)) => (!told.is_empty()).then_some(told),
        _ => None,
    };
    view! {
        <If holds=move || words().is_some()>
            <section class="caution trouble">
                <p role="alert">{words}</p>
                <If holds=move || told().is_some()>
                    <details>
                        <summary>{wording("trouble-details")}</summary>
                        <p class="details">{told}</p>
                    </details>
                </If>
                <If holds=is_lost>
                    <button class="small" on:click=move |_| pending.reload()>
                        {wording("trouble-reload")}
                    </button>
                </If>
            </section>
        </If>
    }
}

fn of_unstored(unstored: &Unstored) -> String {
    let count = say!("trouble-unstored", count = unstored.entries);
    let why = unstored.trouble.as_ref().map_or_else(|| say!("trouble-slow"), in_words);
    let then = match &unstored.trouble {
        Some(Found::Lost) => say!("trouble-taken-along"),
        _ if unstored.kept => say!("trouble-kept"),
        _ => say!("trouble-not-kept"),
    };
    format!("{count} {why} {then}")
}

fn in_words(found: &Found) -> String {
    match found {
        Found::Denied => say!("trouble-denied"),
        Found::Full => say!("trouble-full"),
        Found::Busy => say!("trouble-busy"),
        Found::Lost => say!("trouble-lost"),
        Found::Replaced => say!("trouble-replaced"),
        Found::Taken => say!("trouble-taken"),
        Found::Failed(_) => say!("trouble-failed"),
    }
}
