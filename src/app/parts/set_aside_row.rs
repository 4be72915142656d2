//! A stored text that could not be read, as the log and the kitchen show it.

use cook_model::log::SetAside;
use leptos::prelude::*;

use crate::words::wording;

/// A stored text that could not be read. What was wrong with it is in the reader's own words, which are
/// English: they help who is asked for help.
#[component]
pub fn SetAsideRow(
    /// The text.
    one: SetAside,
) -> impl IntoView {
    view! {
        <li>
            <code>{one.text}</code>
            <details>
                <summary>{wording("set-aside-why")}</summary>
                <p class="details" lang="en">
                    {one.why}
                </p>
            </details>
        </li>
    }
}
