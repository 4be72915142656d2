use cook_model::cook::Stage;
use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use cook_model::safety::ProofRule;
use cook_model::sorting::sort_by;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{
    Each, Heading, If, Offers, PieceClocks, PieceShape, ProofStatus, last_reading, level,
    relative_size,
};
use crate::words::wording;
use crate::{say, show};

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
    let rule = move || show::temperature(state.read().settings.proof_rule.instant());
    let held = move || matches!(state.read().settings.proof_rule, ProofRule::Held { .. });
    view! {
        <section class="screen rest">
            <Heading text=wording("rest-title") />
            <p class="caution">{move || say!("rest-lead", rule = rule())}</p>
            <If holds=held>
                <p>{wording("rest-lead-held")}</p>
            </If>
            <If holds=move || off.read().is_empty()>
                <p class="lead">{wording("rest-none")}</p>
            </If>
            <ul class="rows pieces">
                <Each each=move || off.get() key=|id| *id let:id>
                    <RestRow piece=id />
                </Each>
            </ul>
            <button class="second-action" on:click=move |_| navigation.go(Screen::Kitchen)>
                {wording("kitchen-entry")}
            </button>
        </section>
    }
}

/// One piece off the pit.
#[component]
fn RestRow(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let state = cook.state();
    let known = Derived::new(move || {
        let state = state.read();
        state.piece(piece).map(|(standing, history)| (standing.clone(), history.clone()))
    });
    let forecast = Derived::new(move || cook.piece_forecast(piece));
    let history = move || known.get().map(|(_, history)| history);
    let stage = Derived::new(move || known.get().map_or(Stage::Packed, |known| known.0.stage));
    let name = move || show::piece(&state.read(), piece);
    let standing = move || {
        let (standing, history) = known.get()?;
        Some(match (standing.stage, standing.proof) {
            (Stage::Packed, _) => say!("stage-packed"),
            (_, Some(proof)) => say!(
                "live-proved-by",
                temperature = show::reading(proof.temperature),
                time = show::the_time(proof.at)
            ),
            _ => {
                let off = history.off().unwrap_or_else(|| cook.now());
                let covered = if is_covered(&history) {
                    say!("rest-covered")
                } else {
                    say!("rest-uncovered")
                };
                format!("{}, {covered}", say!("rest-off", age = show::age(off, cook.now())))
            }
        })
    };
    view! {
        <li class=move || format!("piece {}", crate::parts::stage_name(stage.get()))>
            <div class="resting-facts">
                <PieceShape
                    size=move || relative_size(piece)
                    level=move || level(history(), forecast.get(), cook.now())
                    stage=stage
                />
                <div class="facts">
                    <p class="name">{move || name()}</p>
                    <p class="window">{move || standing()}</p>
                    <p class="last">
                        {move || {
                            let last = last_reading(history(), cook.now());
                            last.unwrap_or_else(|| say!("live-no-reading"))
                        }}
                    </p>
                </div>
            </div>
            <ProofStatus piece=piece />
            <PieceClocks piece=piece />
            <div class="row-acts">
                <Offers piece=piece />
                <If holds=move || matches!(stage.get(), Stage::Resting | Stage::Proved)>
                    <button on:click=move |_| navigation.go(Screen::Piece(piece))>
                        {wording("rest-read")}
                    </button>
                </If>
            </div>
        </li>
    }
}

fn is_covered(history: &PieceHistory) -> bool {
    history.spells.last().is_some_and(|spell| spell.covered.is_some())
}
