use cook_model::cook::{CookState, EntryId, SECOND_PLACE_WITHIN, Stage, What};
use cook_model::history::{CoreReading, PieceHistory};
use cook_model::piece::PieceId;
use cook_model::quantity::Moment;
use cook_model::safety::{ProofRule, Shortfall, shortfall};
use cook_model::sorting::sort_by;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{
    Each, Heading, If, PieceClocks, PieceShape, ProofStatus, last_reading, level, relative_size,
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
    let forecast = Derived::new(move || cook.forecast().read().piece(piece).cloned());
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
                time = show::clock(proof.at)
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
    let tap = move |words: String, what: What| {
        view! { <button on:click=move |_| cook.record(what.clone())>{words}</button> }
    };
    let acts = move || {
        let (_, history) = known.get()?;
        let reading = reading_to_second(&state.read(), &history, cook.now());
        Some(view! {
            <If holds={
                let history = history.clone();
                move || !is_covered(&history)
            }>{tap(say!("rest-cover"), What::Covered { piece })}</If>
            {reading.map(|reading| tap(say!("rest-second"), What::SecondPlaceTried { reading }))}
            <If holds=move || stage.get() == Stage::Resting>
                <button on:click=move |_| navigation.go(Screen::Piece(piece))>
                    {wording("rest-read")}
                </button>
                {tap(say!("rest-put-back"), What::PutOn { piece })}
            </If>
            <If holds=move || stage.get() == Stage::Proved>
                {tap(say!("rest-pack"), What::Packed { piece })}
            </If>
        })
    };
    view! {
        <li class=move || format!("piece {}", crate::parts::stage_name(stage.get()))>
            <div class="resting-facts">
                <PieceShape
                    size=move || relative_size(piece)
                    level=move || level(history(), forecast.get())
                    stage=stage
                />
                <div class="facts">
                    <p class="name">{move || name()}</p>
                    <p class="window">{move || standing()}</p>
                    <p class="last">{move || last_reading(history(), cook.now())}</p>
                </div>
            </div>
            <ProofStatus piece=piece />
            <PieceClocks piece=piece />
            <div class="row-acts">{move || (stage.get() != Stage::Packed).then(acts)}</div>
        </li>
    }
}

fn is_covered(history: &PieceHistory) -> bool {
    history.spells.last().is_some_and(|spell| spell.covered.is_some())
}

/// The last reading that lacks only a second place to prove the piece.
fn reading_to_second(state: &CookState, history: &PieceHistory, now: Moment) -> Option<EntryId> {
    let lacks_a_place = |reading: &&CoreReading| {
        let rule = state.settings.proof_rule;
        now - reading.at <= SECOND_PLACE_WITHIN
            && shortfall(&state.history, history, rule, state.doubted(), reading)
                == Some(Shortfall::OnePlace)
    };
    history.readings.iter().rfind(lacks_a_place).map(|reading| reading.entry)
}
