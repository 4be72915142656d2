//! What the cook decides for all pieces: how hot the pit runs, and how cold they go on.

use cook_model::cook::{Stage, What, limits};
use cook_model::piece::Piece;
use cook_model::quantity::Temperature;
use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::parts::{OptionalField, PitKindField, SettingField};
use crate::words::wording;
use crate::{say, show};

/// A usual value, shown as an example of what to type.
const USUAL_PULL: Temperature = Temperature::from_f(160.0);

/// What the cook decides for all pieces.
#[component]
pub fn PitSettings(
    /// The temperature at which pieces go on.
    start: RwSignal<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let facts = cook.facts();
    let set_start = move |typed: Temperature| {
        start.set(typed);
        let now = cook.facts_as_tapped();
        let raw = now.each_piece().filter(|(standing, _)| standing.stage == Stage::Raw);
        let again = raw.map(|(standing, history)| What::PieceSetOut {
            piece: history.id,
            facts: Piece { start: typed, ..history.piece },
            name: standing.name.clone(),
        });
        cook.record_all(again.collect());
    };
    let unit = show::temperature_unit;
    view! {
        <div class="card">
            <h2>{wording("set-out-cook-title")}</h2>
            <PitKindField />
            <div class="pair">
                <SettingField
                    name="pit"
                    label=move || say!("set-out-pit", unit = unit())
                    value=move || facts.read().settings.pit_target
                    limits=limits::PIT_TARGET
                    on_set=move |target| cook.record(What::PitTargetSet { target })
                />
                <OptionalField
                    name="pull"
                    label=move || say!("set-out-pull", unit = unit())
                    value=move || facts.read().settings.pull_target
                    limits=limits::PULL_TARGET
                    example=USUAL_PULL
                    on_set=move |target| cook.record(What::PullTargetSet { piece: None, target })
                />
            </div>
            <p class="hint">{wording("set-out-pull-hint")}</p>
            <div class="pair">
                <SettingField
                    name="start"
                    label=move || say!("set-out-start", unit = unit())
                    value=start
                    limits=limits::START
                    on_set=set_start
                />
                <SettingField
                    name="ambient"
                    label=move || say!("set-out-ambient", unit = unit())
                    value=move || facts.read().settings.ambient
                    limits=limits::AMBIENT
                    on_set=move |ambient| cook.record(What::AmbientSet { ambient })
                />
            </div>
            <p class="hint">{wording("set-out-start-hint")}</p>
        </div>
    }
}
