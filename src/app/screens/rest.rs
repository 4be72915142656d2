//! Everything off the pit: one line a piece, and what is due with all of them at once.

use cook_model::cook::Stage;
use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use cook_model::safety::ProofRule;
use cook_model::sorting::sort_by;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{AllDue, Each, Heading, If, Offers, ProofStatus, RestClocks, last_reading};
use crate::words::wording;
use crate::{safety_words, say, show};

/// What is off the pit: covered, read near its peak, proved, and then served or packed.
#[component]
pub fn Rest() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let state = cook.state();
    let off = Derived::new(move || {
        let state = state.read();
        let mut off: Vec<(Stage, PieceId)> = state
            .each_piece()
            .filter(|(standing, _)| standing.stage > Stage::On)
            .map(|(standing, history)| (standing.stage, history.id))
            .collect();
        sort_by(&mut off, Ord::cmp);
        off.into_iter().map(|(_, id)| id).collect::<Vec<_>>()
    });
    // One piece has the room to be seen whole.
    let alone = Derived::new(move || off.read().len() == 1);
    let rule = move || show::temperature(state.read().settings.proof_rule.instant());
    let held = move || matches!(state.read().settings.proof_rule, ProofRule::Held { .. });
    view! {
        <section class="screen rest">
            <Heading text=wording("rest-title") />
            <If holds=move || off.read().is_empty()>
                <p class="lead">{wording("rest-none")}</p>
            </If>
            <AllDue />
            <ul class="rows pieces">
                <Each each=move || off.get() key=|id| *id let:id>
                    <RestRow piece=id alone=alone />
                </Each>
            </ul>
            <RestClocks />
            <p class="hint">{move || say!("rest-lead", rule = rule())}</p>
            <If holds=held>
                <p class="hint">{wording("rest-lead-held")}</p>
            </If>
            <button class="second-action" on:click=move |_| navigation.go(Screen::Kitchen)>
                {wording("kitchen-entry")}
            </button>
        </section>
    }
}

/// One piece off the pit, in one line; a tap tells all of it.
#[component]
fn RestRow(
    /// Which piece.
    piece: PieceId,
    /// Whether no other is off the pit: it is told whole then.
    alone: Derived<bool>,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let state = cook.state();
    let known = Derived::new(move || {
        let state = state.read();
        state.piece(piece).map(|(standing, history)| (standing.clone(), history.clone()))
    });
    let history = move || known.get().map(|(_, history)| history);
    let stage = Derived::new(move || known.get().map_or(Stage::Packed, |known| known.0.stage));
    let name = move || show::piece(&state.read(), piece);
    let standing = move || {
        let (standing, history) = known.get()?;
        Some(match (standing.stage, standing.proof, standing.run_out) {
            (Stage::Packed, ..) => say!("stage-packed"),
            (.., Some(over)) => safety_words::run_out(&over),
            (_, Some(proof), _) => say!(
                "live-proved-by",
                temperature = show::reading(proof.temperature),
                time = show::clock_short(proof.at)
            ),
            _ => {
                let off = history.off().unwrap_or_else(|| cook.now());
                say!("rest-off", span = show::span(cook.now() - off))
            }
        })
    };
    let last = move || {
        let history = history()?;
        let covered =
            if is_covered(&history) { say!("rest-covered") } else { say!("rest-uncovered") };
        let last = last_reading(Some(history), cook.now());
        let last = last.unwrap_or_else(|| say!("live-no-reading"));
        Some(if stage.get() == Stage::Packed { last } else { format!("{last}, {covered}") })
    };
    view! {
        <li class=move || format!("piece {}", crate::parts::stage_name(stage.get()))>
            <details class="rest-piece" prop:open=move || alone.get()>
                <summary>
                    <span class="name">{move || name()}</span>
                    <span class="window">{move || standing()}</span>
                </summary>
                <p class="last">{move || last()}</p>
                <ProofStatus piece=piece />
                <div class="row-acts">
                    <Offers piece=piece />
                    <If holds=move || matches!(stage.get(), Stage::Resting | Stage::Proved)>
                        <button on:click=move |_| navigation.go(Screen::Piece(piece))>
                            {wording("rest-read")}
                        </button>
                    </If>
                </div>
            </details>
        </li>
    }
}

fn is_covered(history: &PieceHistory) -> bool {
    history.spells.last().is_some_and(|spell| spell.covered.is_some())
}
