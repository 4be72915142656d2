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
    let buttons = options.into_iter().map(|(value, words)| {
        view! {
            <label>
                <input
                    type="radio"
                    name=name
                    prop:checked=move || chosen.get() == value
                    on:change=move |_| on_choose.run(value)
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
