//! What calls in a cook that is not on the screen: an alarm must not go unheard for being of another cook.

use leptos::prelude::*;

use crate::beside::beside;
use crate::derived::Derived;
use crate::device::alarms::Elsewhere;
use crate::getter::Getter;
use crate::navigate::navigation;
use crate::open_cook::open_cook;
use crate::switching::switch_to;
use crate::watching::Watching;
use crate::words::wording;

/// What calls most urgently in a cook that is not on the screen, if something does.
pub fn calls_elsewhere() -> Derived<Option<Elsewhere>> {
    let watching: Watching = expect_context();
    let kind = |(_, (alarm, _)): &Elsewhere| alarm.id.kind;
    Derived::new(move || watching.elsewhere().into_iter().min_by_key(kind))
}

/// What calls in a cook that is not on the screen, and the way there.
#[component]
pub fn OtherAlarms(
    /// Whether its words stand above one row of buttons, and are none.
    #[prop(into)]
    one_row: Getter<bool>,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let watching: Watching = expect_context();
    let beside = beside();
    let first = calls_elsewhere();
    let words = Derived::new(move || {
        let (id, (alarm, _)) = first.get()?;
        Some(beside.words(id, alarm.id))
    });
    let bar = move || {
        let (id, waiting) = first.get()?;
        let go = move |_| {
            watching.heard_elsewhere((id, waiting));
            switch_to(cook, navigation, id);
        };
        let told = move || view! { <strong>{move || words.get()}</strong> };
        let way = if one_row.get() {
            view! {
                <p class="calls">{told()}</p>
                <button class="small open-alarm" on:click=go>
                    {wording("alarm-go")}
                </button>
            }
            .into_any()
        } else {
            view! { <button class="open-alarm" on:click=go>{told()}</button> }.into_any()
        };
        Some(view! {
            <section class="alarm elsewhere" aria-label=wording("alarms-elsewhere")>
                {way}
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
        {move || bar()}
    }
}
