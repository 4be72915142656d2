//! One of a few, all in sight.

use std::sync::Arc;

use leptos::prelude::*;

use crate::getter::Getter;
use crate::words::Words;

/// One of a few, all in sight: each a large button, one of them pressed.
#[component]
pub fn Choice<T>(
    /// Names the group on the page; unique there.
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
    /// Whether the label is for screen readers only, the options saying enough by themselves.
    #[prop(optional)]
    quiet: bool,
    /// Whether they stand one below the other, each being long.
    #[prop(optional)]
    stacked: bool,
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
    let (chosen, on_choose) = (Getter::from(place), Arc::new(choose));
    view! {
        <Places
            name=name
            label=label
            words=words
            chosen=chosen
            on_choose=on_choose
            quiet=quiet
            stacked=stacked
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
    quiet: bool,
    stacked: bool,
) -> impl IntoView {
    let four = words.len() == 4;
    let buttons = words.into_iter().enumerate().map(|(place, words)| {
        let (chosen, on_choose) = (chosen.clone(), Arc::clone(&on_choose));
        view! {
            <label>
                <input
                    type="radio"
                    name=name
                    prop:checked=move || chosen.get() == Some(place)
                    on:change=move |_| on_choose(place)
                />
                <span>{words}</span>
            </label>
        }
    });
    view! {
        <fieldset class="choice" class:stacked=stacked class:four=four>
            <legend class:unseen=quiet>{label}</legend>
            <div class="options">{buttons.collect_view()}</div>
        </fieldset>
    }
}
