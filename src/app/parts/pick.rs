//! One of many, chosen from the phone's own list: where buttons for all of them would fill the screen.

use std::sync::Arc;

use leptos::prelude::*;

use crate::getter::Getter;
use crate::words::Words;

/// One of many, chosen from the phone's own list.
#[component]
pub fn Pick<T>(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What is chosen here.
    #[prop(into)]
    label: Words,
    /// What there is to choose from, each with its words.
    options: Vec<(T, Words)>,
    /// The one chosen.
    #[prop(into)]
    chosen: Getter<T>,
    /// Called with another choice.
    on_choose: impl Fn(T) + Send + Sync + 'static,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let (values, words): (Vec<T>, Vec<Words>) = options.into_iter().unzip();
    let values: Arc<[T]> = values.into();
    let known = Arc::clone(&values);
    let place = move || {
        let chosen = chosen.get();
        known.iter().position(|value| *value == chosen)
    };
    let choose = move |place: usize| {
        if let Some(value) = values.get(place) {
            on_choose(*value);
        }
    };
    view! {
        <Places
            name=name
            label=label
            words=words
            chosen=Getter::from(place)
            on_choose=Arc::new(choose)
        />
    }
}

/// The same by the places of the options: the part that is one for all types.
#[component]
fn Places(
    name: &'static str,
    label: Words,
    words: Vec<Words>,
    chosen: Getter<Option<usize>>,
    on_choose: Arc<dyn Fn(usize) + Send + Sync>,
) -> impl IntoView {
    let options = words.into_iter().enumerate().map(|(place, words)| {
        let chosen = chosen.clone();
        view! {
            <option value=place prop:selected=move || chosen.get() == Some(place)>
                {words}
            </option>
        }
    });
    view! {
        <div class="field">
            <label for=name>{label}</label>
            <select
                id=name
                on:change=move |event| {
                    if let Ok(place) = event_target_value(&event).parse() {
                        on_choose(place);
                    }
                }
            >
                {options.collect_view()}
            </select>
        </div>
    }
}
