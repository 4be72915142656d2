use cook_model::cook::{Stage, What};
use cook_model::forecast::PieceForecast;
use cook_model::history::{Instrument, PieceHistory};
use cook_model::piece::PieceId;
use cook_model::quantity::{Mass, Moment};
use leptos::prelude::*;

use super::PieceShape;
use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::words::wording;
use crate::{say, show};

/// The chance of being at the pull temperature from which the row offers to pull.
const WORTH_PULLING: f64 = 0.1;

/// One piece of the live cook: tapped, it takes a reading.
#[component]
pub fn PieceRow(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let stage = Derived::new(move || {
        cook.state().read().piece(piece).map_or(Stage::Raw, |(standing, _)| standing.stage)
    });
    let history = Derived::new(move || cook.state().read().history.piece(piece).cloned());
    let forecast = Derived::new(move || cook.forecast().read().piece(piece).cloned());
    let name = move || show::piece(&cook.state().read(), piece);
    let weight = move || history.get().map(|history| show::mass(history.piece.weight));
    let core = move || forecast.get().map(|forecast| show::degrees(forecast.core.middle));
    let band = move || {
        forecast.get().map(|forecast| {
            say!(
                "live-core-band",
                low = show::degrees(forecast.core.low),
                high = show::degrees(forecast.core.high)
            )
        })
    };
    view! {
        <li class=move || format!("piece {}", super::piece_shape::stage_name(stage.get()))>
            <button class="open" on:click=move |_| navigation.go(Screen::Piece(piece))>
                <PieceShape
                    size=move || relative_size(piece)
                    level=move || level(history.get(), forecast.get())
                    stage=stage
                />
                <span class="name">
                    {move || name()} " " <span class="weight">{move || weight()}</span>
                </span>
                <span class="window">
                    {move || window_words(stage.get(), forecast.get())}
                </span>
                <span class="last">{move || last_reading(history.get(), cook.now())}</span>
                <If holds=move || matches!(stage.get(), Stage::On | Stage::Resting)>
                    <span class="degrees">{move || core()}"°"</span>
                    <span class="band">{move || band()}</span>
                    <span class="unseen">{wording("live-core-now")}</span>
                </If>
            </button>
            {move || {
                let act = row_act(stage.get(), history.get(), forecast.get())?;
                let (words, what) = match act {
                    Act::PutOn => (say!("pad-put-on", piece = name()), What::PutOn { piece }),
                    Act::Pull => (say!("pad-pull", piece = name()), What::Pulled { piece }),
                };
                Some(
                    view! {
                        <button class="act" on:click=move |_| cook.record(what.clone())>
                            {words}
                        </button>
                    },
                )
            }}
        </li>
    }
}

/// What a row offers to do with one tap, where it is likely to be wanted.
enum Act {
    PutOn,
    Pull,
}

fn row_act(
    stage: Stage,
    history: Option<PieceHistory>,
    forecast: Option<PieceForecast>,
) -> Option<Act> {
    match stage {
        Stage::Raw => Some(Act::PutOn),
        Stage::On => {
            let history = history?;
            let read =
                history.readings.last().is_some_and(|last| last.temperature >= history.pull_at);
            let likely = forecast.is_some_and(|forecast| forecast.ready.value() > WORTH_PULLING);
            (read || likely).then_some(Act::Pull)
        }
        Stage::Resting | Stage::Proved | Stage::Packed => None,
    }
}

/// A piece's size beside the largest one's, as the ratio of lengths in a drawing whose areas go
/// with the weights.
pub fn relative_size(piece: PieceId) -> f64 {
    let state = open_cook().state();
    let state = state.read();
    let weight = |of: &PieceHistory| of.piece.weight.g();
    let largest = state.history.pieces.iter().map(weight).fold(Mass::ZERO.g(), f64::max);
    let own = state.history.piece(piece).map_or(0.0, weight);
    if largest > 0.0 { (own / largest).sqrt() } else { 1.0 }
}

/// How far the core has come from raw to its pull temperature.
pub fn level(history: Option<PieceHistory>, forecast: Option<PieceForecast>) -> f64 {
    let (Some(history), Some(forecast)) = (history, forecast) else { return 0.0 };
    if history.on().is_none() {
        return 0.0;
    }
    let whole = (history.pull_at - history.piece.start).c();
    (forecast.core.middle - history.piece.start).c() / whole.max(1.0)
}

fn window_words(stage: Stage, forecast: Option<PieceForecast>) -> String {
    match stage {
        Stage::Raw => say!("stage-raw"),
        Stage::On => match forecast.and_then(|forecast| forecast.pull) {
            Some(pull) => say!("live-pull-window", window = show::clock_range(pull.low, pull.high)),
            None => say!("live-pull-far"),
        },
        Stage::Resting => match forecast.and_then(|forecast| forecast.peak) {
            Some(peak) => say!(
                "unproved-peak",
                temperature = show::temperature(peak.temperature.middle),
                time = show::clock(peak.at)
            ),
            None => say!("stage-resting"),
        },
        Stage::Proved => say!("stage-proved"),
        Stage::Packed => say!("stage-packed"),
    }
}

/// The last reading and its age.
pub fn last_reading(history: Option<PieceHistory>, now: Moment) -> String {
    let Some(last) = history.and_then(|history| history.readings.last().copied()) else {
        return say!("live-no-reading");
    };
    let (temperature, age) = (show::counted(&last), show::age(last.at, now));
    match last.instrument {
        Instrument::InstantRead => {
            say!("live-read-instant", temperature = temperature, age = age)
        }
        Instrument::LeaveIn => say!("live-read-leave-in", temperature = temperature, age = age),
    }
}
