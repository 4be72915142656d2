//! Setting up in three steps: when dinner is, what goes on, and how the pit runs.

mod add;
mod dinner;
mod form;
mod kind;
mod pit;
mod row;

use cook_model::quantity::{Temperature, Units};
use leptos::prelude::*;

use crate::device::clock;
use crate::open_cook::open_cook;
use crate::parts::{Choice, Each, Heading};
use crate::preferences;
use crate::words::wording;
use add::AddPieces;
use dinner::Dinner;
use pit::PitSettings;
use row::SetOutRow;

/// Meat from a fridge at 38 F (common practice, no source).
const FROM_THE_FRIDGE: Temperature = Temperature::from_f(38.0);

/// Dinner, the pieces, one by one or several alike, and what the cook decides for all of them.
#[component]
pub fn SetOut() -> impl IntoView {
    let cook = open_cook();
    let start = RwSignal::new(FROM_THE_FRIDGE);
    // Pieces set out earlier say what the person means by it.
    if let Some(last) = cook.facts().read_untracked().history.pieces.last() {
        start.set(last.piece.start);
    }
    let changing = RwSignal::new(None);
    view! {
        <section class="screen set-out">
            <Heading text=wording("set-out-title") />
            <div class="sides">
                <div class="side">
                    <div class="card">
                        <Dinner now=clock::now() />
                    </div>
                    <AddPieces start=start />
                    <ul class="rows pieces">
                        <Each
                            each=move || {
                                let facts = cook.facts().read();
                                facts.history.pieces.iter().map(|piece| piece.id).collect::<Vec<_>>()
                            }
                            key=|id| *id
                            let:id
                        >
                            <SetOutRow piece=id changing=changing />
                        </Each>
                    </ul>
                </div>
                <div class="side">
                    <PitSettings start=start />
                    <UnitChoice />
                    <p class="caution">{wording("set-out-wash")}</p>
                    <p class="caution">{wording("set-out-keeps")}</p>
                </div>
            </div>
        </section>
    }
}

/// Both unit systems, one tap apart.
#[component]
fn UnitChoice() -> impl IntoView {
    let options = vec![
        (Units::CUSTOMARY, wording("units-customary")),
        (Units::METRIC, wording("units-metric")),
    ];
    view! {
        <Choice
            name="unit-system"
            label=wording("set-out-units")
            options=options
            chosen=preferences::units
            on_choose=move |units| preferences::change(|chosen| chosen.units = units)
            quiet=true
        />
    }
}
