use leptos::prelude::*;

use crate::open_cook::Done;
use crate::parts::If;
use crate::words::wording;

/// What was stored last, in words, with its undo. A screen reader hears it without being asked.
#[component]
pub fn LastDone(
    /// What it was, while its undo is offered.
    done: RwSignal<Option<Done>>,
    /// Undoes it.
    #[prop(into)]
    on_undo: Callback<()>,
    /// What else could be done about it.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    view! {
        <div class="last-done" class:empty=move || done.read().is_none()>
            <p role="status">{move || done.get().map(|done| done.words)}</p>
            {children.map(|children| children())}
            <If holds=move || done.read().is_some()>
                <button class="small" on:click=move |_| on_undo.run(())>
                    {wording("undo")}
                </button>
            </If>
        </div>
    }
}
