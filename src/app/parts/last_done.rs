//! What was done last, and the way back.

use cook_model::log::Event;
use leptos::prelude::*;

use crate::getter::Getter;
use crate::journal::{Done, Journal};
use crate::parts::If;
use crate::words::wording;

/// What was done last, in words, with the way back and the way forward again. A screen reader hears it
/// without being asked. While it is crowded by an alarm, the words are for that listener alone.
pub fn last_done<E: Event + Send + Sync + 'static>(
    journal: Journal<E>,
    on_undo: impl Fn() + Copy + Send + Sync + 'static,
    on_redo: impl Fn() + Copy + Send + Sync + 'static,
    crowded: impl Fn() -> bool + Send + Sync + 'static,
) -> AnyView {
    view! {
        <LastDone
            done=journal.done()
            can_undo=move || journal.before().is_some()
            can_redo=move || journal.after().is_some()
            on_undo=move |()| on_undo()
            on_redo=move |()| on_redo()
            crowded=crowded
        />
    }
    .into_any()
}

/// The part that is one for all journals.
#[component]
fn LastDone(
    done: RwSignal<Option<Done>>,
    #[prop(into)] can_undo: Getter<bool>,
    #[prop(into)] can_redo: Getter<bool>,
    #[prop(into)] on_undo: Callback<()>,
    #[prop(into)] on_redo: Callback<()>,
    #[prop(into)] crowded: Getter<bool>,
) -> impl IntoView {
    let is_crowded = crowded.clone();
    view! {
        <div class="last-done" class:empty=move || done.read().is_none()>
            <p role="status" class:unseen=move || is_crowded.get()>{move || done.get().map(|done| done.words)}</p>
            <If holds=move || done.read().is_some() && can_undo.get()>
                <button class="small" on:click=move |_| on_undo.run(())>
                    {wording("undo")}
                </button>
            </If>
            <If holds=move || done.read().is_some() && can_redo.get() && !crowded.get()>
                <button class="small" on:click=move |_| on_redo.run(())>
                    {wording("redo")}
                </button>
            </If>
        </div>
    }
}
