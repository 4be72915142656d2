use cook_model::cook::{Action, Stage, Step, What};
use cook_model::quantity::Span;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Navigation, Screen};
use crate::open_cook::{OpenCook, open_cook};
use crate::{describe, say, show};

/// A step nearer than this is counted down by the second; further off, the minute is enough.
const BY_THE_SECOND: Span = Span::minutes(10);

/// The one next thing to do, large, with its countdown.
#[component]
pub fn NextStep() -> impl IntoView {
    let cook = open_cook();
    let left = move || cook.step().map(|step| step.due - cook.now());
    cook.each_second_while(move || {
        left().is_some_and(|left| left > Span::zero() && left <= BY_THE_SECOND)
    });
    let is_due = Derived::new(move || left().is_some_and(|left| left <= Span::zero()));
    let words = Derived::new(move || {
        let state = cook.state().read();
        cook.step().map(|step| {
            let words = describe::step(&state, &step);
            (words.what, words.why)
        })
    });
    // Until the first forecast is there, pieces on the pit have no next step.
    let all_done =
        move || cook.state().read().pieces.iter().all(|piece| piece.stage == Stage::Packed);
    let then = move || {
        let state = cook.state().read();
        cook.step_after().map(|step| {
            let what = describe::step(&state, &step).what;
            if step.due <= cook.now() {
                say!("live-then-now", what = what)
            } else {
                say!("live-then", what = what, time = show::clock(step.due))
            }
        })
    };
    view! {
        <section
            class="next"
            class:due=move || is_due.get()
            aria-labelledby="next-what"
            aria-busy=move || cook.is_thinking().to_string()
        >
            <p class="when">
                {move || match left() {
                    None => ().into_any(),
                    Some(left) if left <= Span::zero() => {
                        view! { <strong class="count">{say!("live-due-now")}</strong> }.into_any()
                    }
                    Some(left) => {
                        let due = cook.step().map(|step| show::clock(step.due)).unwrap_or_default();
                        view! {
                            <strong class="count">{count(left)}</strong>
                            <span class="at">{due}</span>
                        }
                            .into_any()
                    }
                }}
            </p>
            <h2 id="next-what">
                {move || match words.get() {
                    Some((what, _)) => what,
                    None if all_done() => say!("live-all-done"),
                    None => say!("live-thinking"),
                }}
            </h2>
            <p class="why">
                {move || is_due.get().then(|| words.get().map(|words| words.1))}
            </p>
            <p class="then">{move || then()}</p>
            <p class="unseen" role="status">
                {move || is_due.get().then(|| words.get().map(|words| words.0))}
            </p>
        </section>
    }
}

/// A countdown as fine as it needs to be.
fn count(left: Span) -> String {
    if left <= BY_THE_SECOND { show::countdown(left) } else { show::span(left) }
}

/// Does what the one button of a step says.
pub fn perform(step: &Step, cook: OpenCook, navigation: Navigation) {
    let each = |what: fn(cook_model::piece::PieceId) -> What| {
        step.pieces.iter().copied().map(what).collect::<Vec<_>>()
    };
    let first = step.pieces.first().copied();
    match &step.action {
        Action::Check | Action::Prove => {
            if let Some(piece) = first {
                navigation.go(Screen::Piece(piece));
            }
        }
        Action::ReadPit => navigation.go(Screen::Pit),
        Action::SetOut => navigation.go(Screen::SetOut),
        Action::TrySecondPlace { reading } => {
            cook.record(What::SecondPlaceTried { reading: *reading });
        }
        // One piece comes off, goes back or is re-seated at a time, each with its own tap.
        Action::Pull => {
            cook.record_all(first.map(|piece| What::Pulled { piece }).into_iter().collect())
        }
        Action::PutBack => {
            cook.record_all(first.map(|piece| What::PutOn { piece }).into_iter().collect());
        }
        Action::Reseat => {
            cook.record_all(first.map(|piece| What::LeaveInSeated { piece }).into_iter().collect());
        }
        Action::Chore { chore } => cook.record(What::ChoreDone { chore: *chore }),
        Action::Cover => cook.record_all(each(|piece| What::Covered { piece })),
        Action::PutOn => cook.record_all(each(|piece| What::PutOn { piece })),
        Action::Pack => cook.record_all(each(|piece| What::Packed { piece })),
    }
}
