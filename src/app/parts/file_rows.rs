//! A log as one file, out and in: the two rows for it, and what came of the last of them.

use cook_model::file::{ImportProblem, MOST_ENTRIES};
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::If;
use crate::device::files::{self, FileProblem};
use crate::getter::Getter;
use crate::words::Words;
use crate::{describe, region, say};

/// The kind of file that this app saves for itself.
const KIND: &str = "application/json";

/// Saves a log as a file, and takes one in.
#[component]
pub fn FileRows(
    /// Whether there is something to save.
    #[prop(into)]
    some: Getter<bool>,
    /// What the row that saves says.
    save: Words,
    /// What the row that opens says.
    open: Words,
    /// What is said of a file that is none of these.
    not_ours: Words,
    /// The file to save: its name and its text.
    file: Callback<(), (String, String)>,
    /// Takes in the text of a file, and tells what is to be said of that, if anything.
    take_in: Callback<String, Result<Option<String>, ImportProblem>>,
) -> impl IntoView {
    let said = RwSignal::new(None::<String>);
    let hand_over = move |_| {
        let (name, text) = file.run(());
        spawn_local(async move {
            said.set(describe::handed(files::hand_over(&name, KIND, &text).await, &name));
        });
    };
    let choose = move |_| {
        let not_ours = not_ours.clone();
        spawn_local(async move {
            let told = match files::choose(".json,application/json").await {
                Ok(None) => None,
                Ok(Some(text)) => {
                    take_in.run(text).unwrap_or_else(|why| Some(in_words(&why, &not_ours)))
                }
                Err(FileProblem::TooLong) => Some(say!("file-too-long")),
                Err(FileProblem::Unreadable) => Some(say!("file-unreadable")),
            };
            if told.is_some() {
                said.set(told);
            }
        });
    };
    view! {
        <ul class="rows">
            <If holds=move || some.get()>
                <li>
                    <button class="row" on:click=hand_over>
                        {save.clone()}
                    </button>
                </li>
            </If>
            <li>
                <button class="row" on:click=choose>
                    {open}
                </button>
            </li>
        </ul>
        <p role="status">{move || said.get()}</p>
    }
}

/// Why a file was not taken in.
fn in_words(problem: &ImportProblem, not_ours: &Words) -> String {
    match problem {
        ImportProblem::TooLong => say!("file-too-long"),
        ImportProblem::Later(_) => say!("file-later"),
        ImportProblem::TooMany => say!("file-too-many", most = region::grouped(MOST_ENTRIES)),
        _ => not_ours.get(),
    }
}
