use leptos::html;
use leptos::prelude::*;

use crate::words::Words;

/// A screen's name. It takes the focus when the screen comes, so that a screen reader tells where
/// the person is and the keyboard starts at the top.
#[component]
pub fn Heading(
    /// The name.
    #[prop(into)]
    text: Words,
) -> impl IntoView {
    let heading = NodeRef::<html::H1>::new();
    Effect::new(move || {
        if let Some(heading) = heading.get() {
            // An element that cannot take the focus is left alone.
            let _ = heading.focus();
        }
    });
    view! {
        <h1 tabindex="-1" node_ref=heading>
            {text}
        </h1>
    }
}
