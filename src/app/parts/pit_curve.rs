//! The pit's curve, for the eye and in words: whether the fire holds.

use cook_model::history::PitHistory;
use cook_model::quantity::{Moment, Span, Temperature};
use leptos::prelude::*;

use super::axes::Axes;
use super::frame::{Frame, HEIGHT, WIDTH};
use crate::{say, show};

/// Room above and below what was read.
const LOWEST: Temperature = Temperature::from_f(150.0);
const HIGHEST: Temperature = Temperature::from_f(350.0);

/// The pit's readings over time, beside the temperature it is set for.
#[component]
pub fn PitCurve(
    /// What happened to the pit.
    pit: PitHistory,
    /// When the first piece went on.
    from: Moment,
    /// The present moment.
    now: Moment,
) -> impl IntoView {
    let readings: Vec<(Moment, Temperature)> =
        pit.readings.iter().map(|reading| (reading.at, reading.temperature)).collect();
    let low = readings.iter().fold(LOWEST, |low, (_, t)| low.min(*t));
    let high = readings.iter().fold(HIGHEST, |high, (_, t)| high.max(*t));
    let from = readings.iter().fold(from, |from, (at, _)| from.min(*at));
    let frame = Frame { from, to: now.max(from + Span::minutes(15)), low, high };
    let (left, right, ..) = frame.edges();
    let aim = frame.y(pit.target);
    let dots = readings.iter().map(|(at, temperature)| {
        view! { <circle class="dot" cx=frame.x(*at) cy=frame.y(*temperature) r="6" /> }
    });
    let dots = dots.collect_view();
    let words = match readings.last() {
        Some((at, temperature)) => say!(
            "curve-pit",
            temperature = show::temperature(*temperature),
            time = show::the_time(*at),
            aim = show::temperature(pit.target)
        ),
        None => say!("curve-pit-none", aim = show::temperature(pit.target)),
    };
    view! {
        <figure class="curve">
            <svg viewBox=format!("0 0 {WIDTH} {HEIGHT}") aria-hidden="true">
                <Axes frame=Signal::stored(frame) />
                <line class="pull-line" x1=left x2=right y1=aim y2=aim />
                <path class="middle-line" d=frame.line(readings.iter().copied()) />
                {dots}
            </svg>
            <figcaption>{words}</figcaption>
        </figure>
    }
}
