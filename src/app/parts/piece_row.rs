//! A piece's row in the list of the live cook.

use cook_model::cook::Stage;
use cook_model::forecast::PieceForecast;
use cook_model::history::{Instrument, PieceHistory};
use cook_model::piece::PieceId;
use cook_model::quantity::{Mass, Moment};
use leptos::prelude::*;

use super::{Offers, PieceShape};
use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::words::wording;
use crate::{describe, say, show};

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
    let forecast = Derived::new(move || cook.piece_forecast(piece));
    let band_now = move || forecast.get().map(|forecast| forecast.core_at(cook.now()));
    let name = move || show::piece(&cook.state().read(), piece);
    let core = move || band_now().map(|core| show::degrees(core.middle));
    let band = move || {
        band_now().map(|core| {
            say!("live-core-band", low = show::degrees(core.low), high = show::degrees(core.high))
        })
    };
    view! {
        <li class=move || format!("piece {}", super::piece_shape::stage_name(stage.get()))>
            <button class="open" on:click=move |_| navigation.go(Screen::Piece(piece))>
                <PieceShape
                    size=move || relative_size(piece)
                    level=move || level(history.get(), forecast.get(), cook.now())
                    stage=stage
                />
                <span class="name">{move || name()}</span>
                <span class="window">
                    {move || window_words(stage.get(), forecast.get(), cook.now())}
                </span>
                <span class="last">{move || last_reading(history.get(), cook.now())}</span>
                <If holds=move || matches!(stage.get(), Stage::On | Stage::Resting)>
                    <span class="degrees">{move || core()}"°"</span>
                    <span class="band">{move || band()}</span>
                    <span class="unseen">{wording("live-core-now")}</span>
                </If>
            </button>
            <Offers piece=piece />
        </li>
    }
}

/// A piece's size beside the largest one's, as the ratio of lengths in a drawing whose areas go
/// with the weights.
pub fn relative_size(piece: PieceId) -> f64 {
    let facts = open_cook().facts().read();
    let weight = |of: &PieceHistory| of.piece.weight.g();
    let largest = facts.history.pieces.iter().map(weight).fold(Mass::ZERO.g(), f64::max);
    let own = facts.history.piece(piece).map_or(0.0, weight);
    if largest > 0.0 { (own / largest).sqrt() } else { 1.0 }
}

/// How far the core has come from raw to its pull temperature.
fn level(history: Option<PieceHistory>, forecast: Option<PieceForecast>, now: Moment) -> f64 {
    let (Some(history), Some(forecast)) = (history, forecast) else { return 0.0 };
    if history.on().is_none() {
        return 0.0;
    }
    let whole = (forecast.pull_at - history.piece.start).c();
    (forecast.core_at(now).middle - history.piece.start).c() / whole.max(1.0)
}

fn window_words(stage: Stage, forecast: Option<PieceForecast>, now: Moment) -> String {
    match stage {
        Stage::Raw => say!("stage-raw"),
        Stage::On => {
            let known = forecast.as_ref().and_then(|known| Some((known, known.pull?)));
            let Some((forecast, pull)) = known else { return say!("live-pull-far") };
            let temperature = describe::pull_at(forecast);
            match describe::pull_window(&pull, now) {
                Some(window) => {
                    say!("live-pull-window", temperature = temperature, window = window)
                }
                None => {
                    let time = show::the_time(pull.high);
                    say!("live-pull-overdue", temperature = temperature, time = time)
                }
            }
        }
        Stage::Resting => match forecast.and_then(|forecast| forecast.peak) {
            Some(peak) => say!(
                "unproved-peak",
                temperature = show::temperature(peak.temperature.middle),
                time = show::the_time(peak.at)
            ),
            None => say!("stage-resting"),
        },
        Stage::Proved => say!("stage-proved"),
        Stage::Packed => say!("stage-packed"),
    }
}

/// The last reading and its age, if it was read.
pub fn last_reading(history: Option<PieceHistory>, now: Moment) -> Option<String> {
    let last = history?.readings.last().copied()?;
    let (temperature, age) = (show::counted(&last), show::age(last.at, now));
    Some(match last.instrument {
        Instrument::InstantRead => {
            say!("live-read-instant", temperature = temperature, age = age)
        }
        Instrument::LeaveIn => say!("live-read-leave-in", temperature = temperature, age = age),
    })
}
