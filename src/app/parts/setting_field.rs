use core::ops::RangeInclusive;

use leptos::prelude::*;

use super::Field;
use crate::typed::{Typed, quantity};

/// A field for one of the cook's settings: it shows the value that holds, and sets another one as
/// soon as the person is done typing it.
#[component]
pub fn SettingField<Q>(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What to type.
    #[prop(into)]
    label: Signal<String>,
    /// The value that holds.
    #[prop(into)]
    value: Signal<Q>,
    /// What is accepted.
    limits: RangeInclusive<Q>,
    /// Called with another value.
    #[prop(into)]
    on_set: Callback<Q>,
    /// A word of help.
    #[prop(optional, into)]
    hint: MaybeProp<String>,
) -> impl IntoView
where
    Q: Typed + Send + Sync + 'static,
{
    let text = RwSignal::new(String::new());
    let bad = RwSignal::new(None);
    // Only another value may take the place of what is being typed, not every new forecast.
    let value = Memo::new(move |_| value.get());
    // Follows an undo, and a change of units.
    Effect::new(move || {
        text.set(value.get().in_field());
        bad.set(None);
    });
    let done = move |()| {
        let held = value.get_untracked();
        if text.get_untracked() == held.in_field() {
            return;
        }
        match quantity(&text.get_untracked(), &limits, held) {
            Ok(typed) => on_set.run(typed),
            Err(message) => bad.set(Some(message)),
        }
    };
    view! { <Field name=name label=label text=text bad=bad hint=hint on_done=done /> }
}
