//! The earlier cooks on the start screen, a card each: when it was, how many pieces, and how it stands.

use cook_model::cook::{CookState, Log, Stage, fold};
use leptos::prelude::*;

use crate::device::storage::{CookId, CookSummary};
use crate::navigate::navigation;
use crate::open_cook::{OpenCook, open_cook};
use crate::switching::switch_to;
use crate::words::wording;
use crate::{say, show};

/// How many earlier cooks are listed.
const LISTED: usize = 20;

/// The stored cooks, each to be opened again.
#[component]
pub fn Earlier(
    /// The stored cooks, the latest first.
    cooks: Vec<CookSummary>,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let rows = cooks.into_iter().take(LISTED).map(|summary| {
        let begun = summary.id.set_up();
        let state = LocalResource::new(move || look_at(cook, summary.id));
        view! {
            <li>
                <button
                    class="row cook-card"
                    on:click=move |_| switch_to(cook, navigation, summary.id)
                >
                    <strong>{move || say!("cook-begun", when = show::day_and_clock(begun))}</strong>
                    <span class="hint">{move || state.get().map(|state| standing(&state))}</span>
                </button>
            </li>
        }
    });
    view! {
        <h2>{wording("start-earlier")}</h2>
        <ul class="rows">{rows.collect_view()}</ul>
    }
}

/// What a stored cook adds up to, the copies of it left as they are.
async fn look_at(cook: OpenCook, id: CookId) -> CookState {
    let texts = cook.pending().peek(id).await;
    fold(&Log::from_stored(texts.iter().map(String::as_str)))
}

/// How many pieces, and how many of them are where. Nothing is called proved here: no forecast has looked at
/// the readings.
fn standing(state: &CookState) -> String {
    let pieces = say!("cook-pieces", count = state.pieces.len());
    if state.is_all_packed() {
        return format!("{pieces}: {}", say!("cook-all-packed"));
    }
    let count = |stages: &[Stage]| {
        state.pieces.iter().filter(|piece| stages.contains(&piece.stage)).count()
    };
    let (raw, on) = (count(&[Stage::Raw]), count(&[Stage::On]));
    let packed = count(&[Stage::Packed]);
    let off = count(&[Stage::Resting, Stage::Proved]);
    let told = [
        (raw > 0).then(|| say!("cook-raw", count = raw)),
        (on > 0).then(|| say!("cook-on", count = on)),
        (off > 0).then(|| say!("cook-off", count = off)),
        (packed > 0).then(|| say!("cook-packed", count = packed)),
    ];
    let told: Vec<String> = told.into_iter().flatten().collect();
    if told.is_empty() { pieces } else { format!("{pieces}: {}", told.join(", ")) }
}
