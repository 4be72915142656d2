//! The card: the one instruction in sight.

use cook_model::cook::duties::{Act, Doing, Duty};
use cook_model::quantity::Span;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Navigation, Screen};
use crate::open_cook::{OpenCook, open_cook};
use crate::{describe, say, show};

/// What is nearer than this is counted down by the second; further off, the minute is enough.
const BY_THE_SECOND: Span = Span::minutes(10);

/// The one thing to do now or next, large, with its countdown.
#[component]
pub fn Card() -> impl IntoView {
    let cook = open_cook();
    // What was told meanwhile keeps its place, unseen, until it is known what follows: nothing on the
    // screen moves twice for one tap.
    let duty = Derived::new(move || {
        cook.first_of_look().filter(|_| !cook.is_slow() || !cook.is_next_unknown())
    });
    let unknown = Derived::new(move || cook.is_next_unknown());
    let left = move || duty.read().as_ref().map(|duty| duty.from - cook.now());
    cook.each_second_while(move || {
        left().is_some_and(|left| left > Span::zero() && left <= BY_THE_SECOND)
    });
    let is_due = Derived::new(move || left().is_some_and(|left| left <= Span::zero()));
    let words = Derived::new(move || {
        let seen = cook.seen().read();
        duty.read().as_ref().map(|duty| {
            let words = describe::duty(&seen, duty);
            (words.what, words.why)
        })
    });
    // Until the first forecast is there, pieces on the pit have no next step.
    let all_done = move || cook.state().read().is_all_packed();
    let why = move || {
        let overdue = duty.read().as_ref().and_then(|duty| describe::overdue(duty, cook.now()));
        overdue.or_else(|| words.get().map(|words| words.1).filter(|_| is_due.get()))
    };
    let then = move || {
        cook.duty_after().filter(|_| !unknown.get()).map(|after| {
            let what = describe::duty(&cook.seen().read(), &after).what;
            if after.from <= cook.now() {
                say!("live-then-now", what = what)
            } else {
                say!("live-then", what = what, time = show::the_time(after.from))
            }
        })
    };
    view! {
        <section
            class="next"
            class:due=move || is_due.get()
            class:told=move || unknown.get() && !cook.is_slow()
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
                        let due = duty.read().as_ref().map(|duty| show::clock(duty.from));
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
            <p class="why">{move || why()}</p>
            <p class="then">{move || then()}</p>
            <p class="unseen" role="status">
                {move || (is_due.get() && !unknown.get()).then(|| words.get().map(|words| words.0))}
            </p>
        </section>
    }
}

/// A countdown as fine as it needs to be.
fn count(left: Span) -> String {
    if left <= BY_THE_SECOND { show::countdown(left) } else { show::span(left) }
}

/// Does a duty in its usual way: writes it down, or goes where it is typed.
pub fn perform(duty: &Duty, cook: OpenCook, navigation: Navigation) {
    match duty.doing().into_iter().next() {
        _ if matches!(duty.act, Act::Answer { .. }) => navigation.go(Screen::Round),
        Some(Doing::Write { entries }) => {
            cook.record_all(entries);
            if duty.act == Act::Check {
                navigation.go(Screen::Round);
            }
        }
        Some(Doing::TypeCore { .. }) if duty.act == Act::KeepHot || duty.act == Act::HurryUp => {
            duty.pieces.first().into_iter().for_each(|piece| navigation.go(Screen::Piece(*piece)));
        }
        Some(Doing::TypeCore { .. }) => navigation.go(Screen::Round),
        Some(Doing::TypePit) => navigation.go(Screen::Pit),
        Some(Doing::TypePieces) => navigation.go(Screen::SetOut),
        None => {}
    }
}
