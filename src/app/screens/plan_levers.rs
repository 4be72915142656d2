use cook_model::cook::What;
use cook_model::cook::thinking::{Answer, Question};
use cook_model::plan::{Lever, Move, Outlook, off_target};
use cook_model::quantity::Span;
use leptos::prelude::*;

use crate::open_cook::{OpenCook, open_cook};
use crate::screens::plan::percent;
use crate::thought_out::thought_out;
use crate::{describe, say, show};

/// Where dinner stands, how the pit keeps its temperature, and what could be done about either.
#[component]
pub fn Levers() -> impl IntoView {
    let cook = open_cook();
    // Each lever costs a forecast of its own, so they follow the forecast, not the clock.
    let offered = thought_out(|| Some(Question::Levers));
    let drift = move || {
        let state = cook.state().read();
        off_target(&state.history.pit, cook.now()).map(|off| describe::pit(&off))
    };
    let rows = move || {
        let now = cook.outlook()?;
        let Some(Answer::Levers(levers)) = offered.get() else { return None };
        let rows = levers.into_iter().map(|lever| view! { <Row lever=lever now=now /> });
        Some(rows.collect_view())
    };
    view! {
        <section class="card" aria-labelledby="outlook">
            <h2 id="outlook">{move || cook.outlook().map(|now| describe::dinner(&now))}</h2>
            <p>{move || cook.outlook().map(|now| ready(&now))}</p>
            {move || drift().map(|words| view! { <p class="note">{words}</p> })}
            <ul class="rows">{move || rows()}</ul>
        </section>
    }
}

fn ready(now: &Outlook) -> String {
    say!(
        "plan-ready",
        window = show::clock_range(now.ready.low, now.ready.high),
        time = show::the_time(now.dinner),
        chance = percent(now.in_time)
    )
}

/// One thing that could be done, with what it changes.
#[component]
fn Row(
    /// What could be done.
    lever: Lever,
    /// Where dinner stands without it.
    now: Outlook,
) -> impl IntoView {
    let cook = open_cook();
    let sooner = now.ready.middle - lever.outlook.ready.middle;
    let effect = match &lever.action {
        Move::MoveDinner { .. } => {
            say!("lever-chance", chance = percent(lever.outlook.in_time))
        }
        Move::ServeFirst { .. } => say!(
            "lever-first-ready",
            time = show::the_time(lever.outlook.ready.middle),
            chance = percent(lever.outlook.in_time)
        ),
        _ if sooner > Span::zero() => say!("lever-sooner", span = show::span(sooner)),
        _ => say!("lever-later", span = show::span(sooner)),
    };
    let what = in_words(cook, &lever.action);
    let entry = entry(&lever.action);
    view! {
        <li class="lever">
            <span class="facts">
                <strong>{what.clone()}</strong>
                <span>{effect}</span>
            </span>
            {entry
                .map(|entry| {
                    view! {
                        <button
                            class="small"
                            aria-label=format!("{}: {what}", say!("lever-choose"))
                            on:click=move |_| cook.record(entry.clone())
                        >
                            {say!("lever-choose")}
                        </button>
                    }
                })}
        </li>
    }
}

fn in_words(cook: OpenCook, action: &Move) -> String {
    match action {
        Move::RaisePit { to } => say!("lever-raise", temperature = show::temperature(*to)),
        Move::LowerPit { to } => say!("lever-lower", temperature = show::temperature(*to)),
        Move::ServeFirst { pieces } => {
            say!("lever-first", pieces = show::the_pieces(&cook.state().read(), pieces))
        }
        Move::MoveDinner { to } => say!("lever-dinner", time = show::the_time(*to)),
    }
}

/// What choosing it writes down; serving some first is the cook's own affair.
fn entry(action: &Move) -> Option<What> {
    match action {
        Move::RaisePit { to } | Move::LowerPit { to } => Some(What::PitTargetSet { target: *to }),
        Move::MoveDinner { to } => Some(What::DinnerSet { at: Some(*to) }),
        Move::ServeFirst { .. } => None,
    }
}
