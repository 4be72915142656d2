use core::ops::RangeInclusive;

use leptos::prelude::*;

use super::Field;
use crate::typed::{Typed, quantity_or_blank};

/// As a [`super::SettingField`], but a blank field is no value.
#[component]
pub fn OptionalField<Q>(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What to type.
    #[prop(into)]
    label: Signal<String>,
    /// The value that holds, if one does.
    #[prop(into)]
    value: Signal<Option<Q>>,
    /// What is accepted.
    limits: RangeInclusive<Q>,
    /// A usual value.
    example: Q,
    /// Called with another value.
    #[prop(into)]
    on_set: Callback<Option<Q>>,
    /// A word of help.
    #[prop(optional, into)]
    hint: MaybeProp<String>,
) -> impl IntoView
where
    Q: Typed + Send + Sync + 'static,
{
    let text = RwSignal::new(String::new());
    let bad = RwSignal::new(None);
    let in_field = |value: Option<Q>| value.map(Typed::in_field).unwrap_or_default();
    Effect::new(move || {
        text.set(in_field(value.get()));
        bad.set(None);
    });
    let done = move |()| {
        if text.get_untracked() == in_field(value.get_untracked()) {
            return;
        }
        match quantity_or_blank(&text.get_untracked(), &limits, example) {
            Ok(typed) => on_set.run(typed),
            Err(message) => bad.set(Some(message)),
        }
    };
    view! { <Field name=name label=label text=text bad=bad hint=hint on_done=done /> }
}
