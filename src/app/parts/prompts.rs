use cook_model::cook::What;
use cook_model::safety::Prompt;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::say;
use crate::words::wording;

/// Where raw could reach cooked: what to wash or change, one tap to be rid of it.
#[component]
pub fn Prompts() -> impl IntoView {
    let cook = open_cook();
    let first = Derived::new(move || cook.state().read().prompts().into_iter().next());
    view! {
        {move || {
            first
                .get()
                .map(|prompt| {
                    view! {
                        <section class="prompt" aria-label=wording("prompts")>
                            <p>{words(prompt)}</p>
                            <button
                                class="small"
                                on:click=move |_| cook.record(What::PromptDismissed { prompt })
                            >
                                {say!("prompt-done")}
                            </button>
                        </section>
                    }
                })
        }}
    }
}

fn words(prompt: Prompt) -> String {
    match prompt {
        Prompt::CleanProbe { .. } => say!("prompt-probe"),
        Prompt::CleanPlate => say!("prompt-plate"),
    }
}
