use cook_model::safety::Caution;
use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::parts::Heading;
use crate::words::wording;
use crate::{say, show};

/// What can hurt people, and what the app cannot know.
#[component]
pub fn Cautions() -> impl IntoView {
    let state = open_cook().state();
    let rule = move || show::temperature(state.read().settings.proof_rule.instant());
    let caution = move |caution: Caution| {
        let source = caution.source().map(|source| {
            view! { <p class="hint">{move || say!("safety-source", source = source)}</p> }
        });
        view! {
            <h2>{move || words(caution, rule()).0}</h2>
            <p>{move || words(caution, rule()).1}</p>
            {source}
        }
    };
    view! {
        <section class="screen cautions">
            <Heading text=wording("cautions-title") />
            {Caution::ALL.map(caution).into_iter().collect_view()}
        </section>
    }
}

/// The heading of a caution, and its text.
fn words(caution: Caution, rule: String) -> (String, String) {
    match caution {
        Caution::OnlyReadingsProve => (say!("caution-readings-title"), say!("caution-readings")),
        Caution::InstantKill => {
            (say!("caution-instant-title"), say!("caution-instant", rule = rule))
        }
        Caution::EveryPiece => (say!("caution-every-title"), say!("caution-every")),
        Caution::CleanBetween => (say!("caution-clean-title"), say!("caution-clean")),
        Caution::LocalCodesFirst => (say!("caution-codes-title"), say!("caution-codes")),
        Caution::LicensedPractice => (say!("caution-licence-title"), say!("caution-licence")),
        Caution::ThermometerMaker => {
            (say!("caution-thermometer-title"), say!("caution-thermometer"))
        }
        Caution::HigherCare => (say!("caution-care-title"), say!("caution-care")),
        Caution::WhatItKnows => (say!("caution-knows-title"), say!("caution-knows")),
        Caution::WhatItCannotKnow => (say!("caution-cannot-title"), say!("caution-cannot")),
    }
}
