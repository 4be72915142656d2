//! One opening of the lid, led from piece to piece.

use cook_model::cook::What;
use cook_model::cook::duties::{Act, Duty};
use cook_model::history::Instrument;
use cook_model::piece::PieceId;
use cook_model::quantity::Temperature;
use cook_model::safety::SecondPlace;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::{OpenCook, open_cook};
use crate::parts::{Heading, PiecePad, PitPad, Question, Rack, perform};
use crate::words::wording;
use crate::{describe, say, show};

/// What the number pad led to until the next look at the cook is taken.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Ahead {
    /// Nothing was typed since.
    Nothing,
    /// This piece is next, whatever the look says.
    Next(PieceId),
    /// The look must say.
    Waits,
}

/// What this screen asks for.
#[derive(Clone, Debug, PartialEq)]
enum Asked {
    /// The core of a piece.
    Core(PieceId),
    /// The pit.
    Pit,
    /// An answer or an act, with one tap.
    Tap(Duty),
    /// A moment's patience.
    Wait,
}

/// One thing after another while the cook is at it: the pieces of a round, or of a rest, read in turn,
/// and what their readings call for on the spot. It ends by itself.
#[component]
pub fn RoundScreen() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let ahead = RwSignal::new(Ahead::Nothing);
    Effect::new(move || {
        cook.seen().track();
        // A look that another reading already waits behind does not say what is next.
        if !cook.has_unwritten() {
            ahead.set(Ahead::Nothing);
        }
    });
    let asked = Derived::new(move || asked(cook, ahead.get()));
    // Nothing more to do here: back to the cook.
    Effect::new(move || {
        if asked.read().is_none() {
            navigation.replace(Screen::Live);
        }
    });
    let piece = Derived::new(move || match asked.get() {
        Some(Asked::Core(piece)) => Some(piece),
        _ => None,
    });
    let kind = Derived::new(move || match asked.get() {
        Some(Asked::Core(_)) => 0,
        Some(Asked::Pit) => 1,
        Some(Asked::Tap(_)) => 2,
        Some(Asked::Wait) | None => 3,
    });
    let title = move || match asked.get() {
        Some(Asked::Core(piece)) => show::piece(&cook.state().read(), piece),
        Some(Asked::Pit) => say!("pad-title-pit"),
        Some(Asked::Tap(duty)) => describe::duty(&cook.seen().read(), &duty).what,
        Some(Asked::Wait) | None => say!("live-thinking"),
    };
    let stored = move |typed: Temperature| {
        if let Some(piece) = piece.get_untracked() {
            ahead.set(after(cook, piece, typed));
        }
    };
    view! {
        <section
            class="screen reading round"
            class:told=move || kind.get() == 3 && !cook.is_slow()
            aria-busy=move || cook.is_thinking().to_string()
        >
            <div class="sides">
                <div class="side entry">
                    <header class="top">
                        <Heading text=title />
                        <Progress piece=piece />
                    </header>
                    <Rack in_hand=Derived::new(move || piece.get().into_iter().collect()) drawn=true />
                    {move || match kind.get() {
                        0 => {
                            let first = piece.get_untracked();
                            let pad = first
                                .map(|first| {
                                    view! {
                                        <PiecePad
                                            piece=Derived::new(move || piece.get().unwrap_or(first))
                                            settled=Instrument::InstantRead
                                            on_stored=stored
                                        />
                                    }
                                });
                            pad.into_any()
                        }
                        1 => view! { <PitPad on_stored=move |_| ahead.set(Ahead::Waits) /> }.into_any(),
                        2 => view! { <Tap asked=asked /> }.into_any(),
                        _ => ().into_any(),
                    }}
                </div>
            </div>
            <Leave piece=piece />
        </section>
    }
}

/// What is asked for now; none once nothing is left to do here.
fn asked(cook: OpenCook, ahead: Ahead) -> Option<Asked> {
    match ahead {
        Ahead::Next(piece) => return Some(Asked::Core(piece)),
        Ahead::Waits => return Some(Asked::Wait),
        Ahead::Nothing => {}
    }
    // What was just tapped may not be in the log yet, or the look not be of it; and of a cook just opened
    // no look was taken yet.
    let seen = cook.seen().read();
    let looked = seen.forecast.is_some() && seen.is_of(&cook.log().read());
    let in_time = looked && !cook.has_unwritten();
    let duty = cook.duty().filter(|duty| duty.is_due(cook.now()));
    let Some(duty) = duty else { return (!in_time).then_some(Asked::Wait) };
    let first = duty.pieces.first().copied();
    let round = cook.state().read().round(cook.now()).is_some();
    match duty.act {
        Act::Read | Act::Prove | Act::TrySecondPlace { told: SecondPlace::Figure, .. } => {
            first.map(Asked::Core)
        }
        Act::ReadPit if round => Some(Asked::Pit),
        Act::Answer { .. } | Act::Pull | Act::Reseat | Act::TrySecondPlace { .. } => {
            Some(Asked::Tap(duty))
        }
        _ => (!in_time).then_some(Asked::Wait),
    }
}

/// Where the pad leads after a reading, before a new look says more: to the next piece, unless the
/// reading may call for a pull, or was the last.
fn after(cook: OpenCook, piece: PieceId, typed: Temperature) -> Ahead {
    let seen = cook.seen().read_untracked();
    let hot = seen.piece_forecast(piece).is_none_or(|forecast| typed >= forecast.pull_at);
    let round = seen.state.round(cook.now_untracked());
    let left = round.map(|round| {
        let unread = |other: &&PieceId| **other != piece && !round.answered.contains(other);
        round.pieces.iter().find(unread).copied()
    });
    match left {
        Some(Some(next)) if !hot => Ahead::Next(next),
        _ => Ahead::Waits,
    }
}

/// The pieces of the round, those that were read with their figures.
#[component]
fn Progress(
    /// The piece in hand, if one is.
    piece: Derived<Option<PieceId>>,
) -> impl IntoView {
    let cook = open_cook();
    let pieces = move || {
        let state = cook.state().read();
        let round = state.round(cook.now()).filter(|round| round.pieces.len() > 1);
        let Some(round) = round else { return Vec::new() };
        let chip = |id: &PieceId| {
            let history = state.history.piece(*id);
            let read = history.and_then(|history| history.last_poke().copied());
            let read = read.filter(|read| read.at >= round.at && round.answered.contains(id));
            let figure = read.map(|read| format!(" {}°", show::degrees(read.temperature)));
            let words = format!("{}{}", id.0, figure.unwrap_or_default());
            let current = Some(*id) == piece.get();
            view! { <li aria-current=current.then_some("step")>{words}</li> }
        };
        round.pieces.iter().map(chip).collect()
    };
    view! { <ol class="round-pieces" aria-label=wording("round-pieces")>{move || pieces()}</ol> }
}

/// What is done with one tap: a pull, an answer, another place, the leave-in re-seated.
#[component]
fn Tap(
    /// What is asked for.
    asked: Derived<Option<Asked>>,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let duty = Derived::new(move || match asked.get() {
        Some(Asked::Tap(duty)) => Some(duty),
        _ => None,
    });
    let words = move || duty.get().map(|duty| describe::duty(&cook.seen().read(), &duty));
    let is_question =
        move || duty.read().as_ref().is_some_and(|duty| matches!(duty.act, Act::Answer { .. }));
    move || {
        if is_question() {
            return view! { <Question /> }.into_any();
        }
        view! {
            <p class="lead">{words().map(|words| words.why)}</p>
            <button
                class="main-action"
                on:click=move |_| {
                    if let Some(duty) = duty.get_untracked() {
                        perform(&duty, cook, navigation);
                    }
                }
            >
                {words().map(|words| words.button)}
            </button>
        }
        .into_any()
    }
}

/// The ways out of a round: not this piece, or the lid is down.
#[component]
fn Leave(
    /// The piece in hand, if one is.
    piece: Derived<Option<PieceId>>,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let in_round = Derived::new(move || cook.state().read().round(cook.now()).is_some());
    let done = move |_| {
        if in_round.get_untracked() {
            cook.record(What::RoundEnded);
        }
        navigation.replace(Screen::Live);
    };
    view! {
        <div class="pair">
            {move || {
                piece
                    .get()
                    .filter(|_| in_round.get())
                    .map(|piece| {
                        let skip = move |_| cook.record(What::PieceSkipped { piece });
                        let words = move || {
                            say!("round-skip", piece = show::the_piece(&cook.state().read(), piece))
                        };
                        view! { <button on:click=skip>{words}</button> }
                    })
            }}
            <button on:click=done>
                {move || if in_round.get() { say!("round-lid-closed") } else { say!("back") }}
            </button>
        </div>
    }
}
