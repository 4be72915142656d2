use leptos::prelude::*;

use crate::beside::beside;
use crate::derived::Derived;
use crate::navigate::navigation;
use crate::open_cook::open_cook;
use crate::switching::switch_to;
use crate::watching::Watching;
use crate::words::wording;

/// What calls in a cook that is not on the screen, and the way there.
#[component]
pub fn OtherAlarms() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let watching: Watching = expect_context();
    let beside = beside();
    let first = Derived::new(move || watching.elsewhere().first().copied());
    let words = Derived::new(move || {
        let (id, (alarm, _)) = first.get()?;
        Some(beside.words(id, alarm.id))
    });
    let bar = move || {
        let (id, waiting) = first.get()?;
        Some(view! {
            <section class="alarm elsewhere" aria-label=wording("alarms-elsewhere")>
                <button class="open-alarm" on:click=move |_| {
                    watching.heard_elsewhere((id, waiting));
                    switch_to(cook, navigation, id);
                }>
                    <strong>{move || words.get()}</strong>
                </button>
                <button class="small" on:click=move |_| watching.heard_elsewhere((id, waiting))>
                    {wording("alarm-done")}
                </button>
            </section>
        })
    };
    view! {
        <p class="unseen" role="alert">
            {move || words.get()}
        </p>
        {bar}
    }
}
