use leptos::prelude::*;

/// One of a few, all in sight: each a large button, one of them pressed.
#[component]
pub fn Choice<T>(
    /// Names the group on the page; unique there.
    name: &'static str,
    /// What is chosen here.
    #[prop(into)]
    label: Signal<String>,
    /// What there is to choose from, each with its words.
    options: Vec<(T, Signal<String>)>,
    /// The one chosen.
    #[prop(into)]
    chosen: Signal<T>,
    /// Called with another choice.
    #[prop(into)]
    on_choose: Callback<T>,
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
    let (values, words): (Vec<T>, Vec<Signal<String>>) = options.into_iter().unzip();
    let values = StoredValue::new(values);
    let place = move || {
        let chosen = chosen.get();
        values.with_value(|values| values.iter().position(|value| *value == chosen))
    };
    let choose = move |place: usize| {
        if let Some(value) = values.with_value(|values| values.get(place).copied()) {
            on_choose.run(value);
        }
    };
    let (chosen, on_choose) = (Signal::derive(place), Callback::new(choose));
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
    label: Signal<String>,
    words: Vec<Signal<String>>,
    chosen: Signal<Option<usize>>,
    on_choose: Callback<usize>,
    quiet: bool,
    stacked: bool,
) -> impl IntoView {
    let buttons = words.into_iter().enumerate().map(|(place, words)| {
        view! {
            <label>
                <input
                    type="radio"
                    name=name
                    prop:checked=move || chosen.get() == Some(place)
                    on:change=move |_| on_choose.run(place)
                />
                <span>{move || words.get()}</span>
            </label>
        }
    });
    view! {
        <fieldset class="choice" class:stacked=stacked>
            <legend class:unseen=quiet>{move || label.get()}</legend>
            <div class="options">{buttons.collect_view()}</div>
        </fieldset>
    }
}
