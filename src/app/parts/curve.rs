//! A piece's curve, for the eye and in words: where the forecast stands beside what was read.

use cook_model::forecast::{Band, PieceForecast};
use cook_model::history::{Instrument, PieceHistory};
use cook_model::quantity::{Moment, Span, Temperature};
use leptos::prelude::*;

use super::axes::Axes;
use super::frame::{Frame, HEIGHT, WIDTH};
use crate::{describe, say, show};

/// The temperatures drawn: from a cold fridge to well past any pull.
const LOW: Temperature = Temperature::from_f(30.0);
const HIGH: Temperature = Temperature::from_f(180.0);
/// What is drawn after the peak.
const AFTER_PEAK: Span = Span::minutes(15);

/// How much of the cook a curve shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Zoom {
    /// All of it.
    Whole,
    /// Half an hour each way.
    Hour,
    /// A quarter of an hour each way.
    HalfHour,
}

/// One piece's core over time: the forecast's middle and band, what was read, the pull temperature
/// and now. The same in words below it.
#[component]
pub fn Curve(
    /// What happened to the piece.
    history: PieceHistory,
    /// What is likely to happen to it.
    forecast: PieceForecast,
    /// The present moment.
    now: Moment,
    /// How much is shown.
    zoom: Zoom,
) -> impl IntoView {
    let frame = window(&history, &forecast, now, zoom);
    let words = in_words(&history, &forecast, now);
    let (left, right, top, bottom) = frame.edges();
    let pull = frame.y(forecast.pull_at);
    let curve = &forecast.curve;
    let level = |of: fn(&Band<Temperature>) -> Temperature| {
        let seen: Vec<(Moment, Temperature)> = curve
            .iter()
            .filter(|(at, _)| frame.holds(*at))
            .map(|(at, band)| (*at, of(band)))
            .collect();
        seen
    };
    let (low, high) = (level(|band| band.low), level(|band| band.high));
    let band = frame.line(low.into_iter().chain(high.into_iter().rev()));
    let middle = frame.line(level(|band| band.middle).into_iter());
    let rest = history.off().or(forecast.pull.map(|pull| pull.middle)).map(|off| frame.x(off));
    let dots = history.readings.iter().filter(|reading| frame.holds(reading.at)).map(|reading| {
        let (x, y) = (frame.x(reading.at), frame.y(reading.temperature));
        match reading.instrument {
            Instrument::InstantRead => view! { <circle class="dot" cx=x cy=y r="6" /> }.into_any(),
            Instrument::LeaveIn => {
                view! { <rect class="dot" x=x - 5.5 y=y - 5.5 width="11" height="11" /> }.into_any()
            }
        }
    });
    let dots = dots.collect_view();
    view! {
        <figure class="curve">
            <svg viewBox=format!("0 0 {WIDTH} {HEIGHT}") aria-hidden="true">
                {rest
                    .map(|rest| {
                        view! {
                            <rect
                                class="rest-time"
                                x=rest
                                y=top
                                width=(right - rest).max(0.0)
                                height=bottom - top
                            />
                        }
                    })}
                <Axes frame=Signal::stored(frame) />
                <path class="band-area" d=format!("{band}Z") />
                <path class="middle-line" d=middle />
                <line class="pull-line" x1=left x2=right y1=pull y2=pull />
                <line class="now-line" x1=frame.x(now) x2=frame.x(now) y1=top y2=bottom />
                {dots}
            </svg>
            <figcaption>{words}</figcaption>
        </figure>
    }
}

fn window(history: &PieceHistory, forecast: &PieceForecast, now: Moment, zoom: Zoom) -> Frame {
    let around = |half: Span| (now - half, now + half);
    let (from, to) = match zoom {
        Zoom::Whole => {
            let from = history.on().unwrap_or(now);
            let peak = forecast.peak.map(|peak| peak.at + AFTER_PEAK);
            let end = peak.or(forecast.curve.last().map(|(at, _)| *at));
            (from, end.unwrap_or(now).max(now + AFTER_PEAK))
        }
        Zoom::Hour => around(Span::minutes(30)),
        Zoom::HalfHour => around(Span::minutes(15)),
    };
    Frame { from, to, low: LOW, high: HIGH }
}

/// What the drawing shows, in words.
fn in_words(history: &PieceHistory, forecast: &PieceForecast, now: Moment) -> String {
    let core = forecast.core_at(now);
    let core = say!(
        "pad-about",
        temperature = show::temperature(core.middle),
        low = show::degrees(core.low),
        high = show::degrees(core.high)
    );
    let window = forecast.pull.and_then(|pull| describe::pull_window(&pull, now));
    let pull = window.map(|window| {
        say!("curve-pull", temperature = describe::pull_at(forecast), window = window)
    });
    let peak = forecast.peak.map(|peak| {
        say!(
            "live-peak",
            temperature = show::temperature(peak.temperature.middle),
            time = show::the_time(peak.at)
        )
    });
    let read = say!("curve-readings", count = history.readings.len());
    let sentences = [Some(core), pull, peak, Some(read)].into_iter().flatten();
    sentences.map(|sentence| format!("{sentence}. ")).collect::<String>().trim_end().to_owned()
}
