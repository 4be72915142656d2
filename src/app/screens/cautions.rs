use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::parts::Heading;
use crate::{say, show};

/// What can hurt people, and what the app cannot know.
#[component]
pub fn Cautions() -> impl IntoView {
    let state = open_cook().state();
    let rule = move || show::temperature(state.read().settings.proof_rule.instant());
    view! {
        <section class="screen cautions">
            <Heading text=Signal::derive(|| say!("cautions-title")) />
            <h2>{move || say!("cautions-1-title")}</h2>
            <p>{move || say!("cautions-1", rule = rule())}</p>
            <h2>{move || say!("cautions-2-title")}</h2>
            <p>{move || say!("cautions-2")}</p>
            <h2>{move || say!("cautions-3-title")}</h2>
            <p>{move || say!("cautions-3")}</p>
            <h2>{move || say!("cautions-4-title")}</h2>
            <p>{move || say!("cautions-4")}</p>
            <h2>{move || say!("cautions-5-title")}</h2>
            <p>{move || say!("cautions-5")}</p>
            <h2>{move || say!("cautions-6-title")}</h2>
            <p>{move || say!("cautions-6")}</p>
        </section>
    }
}
