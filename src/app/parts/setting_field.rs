use core::ops::RangeInclusive;
use std::sync::Arc;

use leptos::prelude::*;

use super::Field;
use crate::derived::Derived;
use crate::getter::Getter;
use crate::typed::{Typed, quantity, quantity_or_blank};
use crate::words::Words;

/// A field for one of the cook's settings: it shows the value that holds, and sets another one as
/// soon as the person is done typing it.
#[component]
pub fn SettingField<Q>(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What to type.
    #[prop(into)]
    label: Words,
    /// The value that holds.
    #[prop(into)]
    value: Getter<Q>,
    /// What is accepted.
    limits: RangeInclusive<Q>,
    /// Called with another value.
    on_set: impl Fn(Q) + Send + Sync + 'static,
    /// A word of help.
    #[prop(optional, into)]
    hint: Words,
) -> impl IntoView
where
    Q: Typed + Send + Sync + 'static,
{
    let held = value.clone();
    let held = move || Held::of(Some(held.get()));
    let set = move |typed: &str| {
        on_set(quantity(typed, &limits, untrack(|| value.get()))?);
        Ok(())
    };
    view! { <Following name=name label=label held=held set=Arc::new(set) hint=hint /> }
}

/// As a [`SettingField`], but a blank field is no value.
#[component]
pub fn OptionalField<Q>(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What to type.
    #[prop(into)]
    label: Words,
    /// The value that holds, if one does.
    #[prop(into)]
    value: Getter<Option<Q>>,
    /// What is accepted.
    limits: RangeInclusive<Q>,
    /// A usual value.
    example: Q,
    /// Called with another value.
    on_set: impl Fn(Option<Q>) + Send + Sync + 'static,
    /// A word of help.
    #[prop(optional, into)]
    hint: Words,
) -> impl IntoView
where
    Q: Typed + Send + Sync + 'static,
{
    let held = move || Held::of(value.get());
    let set = move |typed: &str| {
        on_set(quantity_or_blank(typed, &limits, example)?);
        Ok(())
    };
    view! { <Following name=name label=label held=held set=Arc::new(set) hint=hint /> }
}

/// The value that holds, as the field tells it from others and as it shows it.
#[derive(Clone, PartialEq)]
struct Held {
    exact: Option<f64>,
    shown: String,
}

impl Held {
    fn of<Q: Typed>(value: Option<Q>) -> Self {
        let shown = value.map(Typed::in_field).unwrap_or_default();
        Self { exact: value.map(Typed::in_unit), shown }
    }
}

/// Takes what was typed, or says what is wrong with it.
type Take = Arc<dyn Fn(&str) -> Result<(), String> + Send + Sync>;

/// A field that follows a value: the part that is one for all types.
#[component]
fn Following(
    name: &'static str,
    label: Words,
    #[prop(into)] held: Getter<Held>,
    set: Take,
    hint: Words,
) -> impl IntoView {
    let text = RwSignal::new(String::new());
    let bad = RwSignal::new(None);
    // Only another value may take the place of what is being typed, not every new forecast.
    let held = Derived::new(move || held.get());
    // Follows an undo, and a change of units.
    Effect::new(move || {
        text.set(held.read().shown.clone());
        bad.set(None);
    });
    let done = move |()| {
        let typed = text.get_untracked();
        if typed != held.read_untracked().shown
            && let Err(message) = set(&typed)
        {
            bad.set(Some(message));
        }
    };
    view! { <Field name=name label=label text=text bad=bad hint=hint on_done=done /> }
}
