use leptos::prelude::*;

use super::{If, TextField};
use crate::getter::Getter;
use crate::say;
use crate::words::{Words, wording};

/// The name of what is in use, and the way to the others of its kind that this phone knows.
#[component]
pub fn NamedGear(
    /// Names the field on the page; unique there.
    name: &'static str,
    /// What to name.
    label: Words,
    /// The name of the one in use.
    #[prop(into)]
    in_use: Getter<String>,
    /// The others, each with its place and its name.
    #[prop(into)]
    others: Getter<Vec<(usize, String)>>,
    /// Called with another name.
    #[prop(into)]
    on_name: Callback<String>,
    /// Called with the place of another one to use.
    #[prop(into)]
    on_use: Callback<usize>,
    /// Called to use one that this phone does not know yet.
    #[prop(into)]
    on_new: Callback<()>,
) -> impl IntoView {
    let named = in_use.clone();
    let button = move |(place, name): (usize, String)| {
        let name = if name.is_empty() { say!("gear-nameless") } else { name };
        view! {
            <button type="button" class="small" on:click=move |_| on_use.run(place)>
                {say!("gear-use", name = name)}
            </button>
        }
    };
    view! {
        <TextField name=name label=label text=move || in_use.get() on_type=on_name />
        <div class="stepwise">
            {move || others.get().into_iter().map(button).collect_view()}
            // One without a name could not be told from another.
            <If holds=move || !named.get().is_empty()>
                <button type="button" class="small" on:click=move |_| on_new.run(())>
                    {wording("gear-new")}
                </button>
            </If>
        </div>
    }
}
