//! Which of the pits that people own it is.

use cook_model::cook::gear::pit_chosen;
use cook_model::heat::PitKind;
use leptos::prelude::*;

use super::Pick;
use crate::open_cook::open_cook;
use crate::say;
use crate::words::{Words, wording};

/// Which of the pits that people own it is; its usual times come with it.
#[component]
pub fn PitKindField() -> impl IntoView {
    let cook = open_cook();
    let option = |kind| (kind, Words::from(move || pit_kind(kind)));
    view! {
        <Pick
            name="pit-kind"
            label=wording("habits-pit")
            options=PitKind::ALL.into_iter().map(option).collect()
            chosen=move || cook.facts().read().settings.pit_kind
            on_choose=move |kind| {
                let chosen = pit_chosen(&cook.facts_as_tapped().settings, kind);
                cook.record_all(chosen);
            }
        />
    }
}

/// A kind of pit in words.
pub fn pit_kind(kind: PitKind) -> String {
    match kind {
        PitKind::Indirect => say!("pit-indirect"),
        PitKind::Kettle => say!("pit-kettle"),
        PitKind::Ceramic => say!("pit-ceramic"),
        PitKind::Drum => say!("pit-drum"),
        PitKind::Water => say!("pit-water"),
        PitKind::Pellet => say!("pit-pellet"),
        PitKind::Gas => say!("pit-gas"),
        PitKind::Electric => say!("pit-electric"),
    }
}
