use cook_model::cook::CookState;
use cook_model::forecast::Forecast;
use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use cook_model::plan::Plan;
use cook_model::quantity::{Moment, Span, Temperature};
use cook_model::sorting::sort_by_key;
use leptos::prelude::*;

use super::frame::{Frame, WIDTH};
use crate::{say, show};

/// Height of one piece's row, in the drawing's units.
const ROW: f64 = 34.0;
/// Height of a bar in its row.
const BAR: f64 = 18.0;
/// Room above the rows for the names of now and dinner.
const TOP: f64 = 22.0;
/// Room below them for the times.
const BOTTOM: f64 = 26.0;
/// What is drawn before the first and after the last time.
const AROUND: Span = Span::minutes(10);

/// The times of one piece: what happened, and then what is likely.
#[derive(Clone, Debug, PartialEq)]
pub struct Track {
    /// Which piece.
    pub piece: PieceId,
    /// When it goes on, or went.
    pub on: Moment,
    /// Its pull window; one moment once it is off.
    pub pull: (Moment, Moment),
    /// When it has rested.
    pub rested: Moment,
}

/// The times of every piece, in the order in which they come off.
pub fn tracks(state: &CookState, forecast: &Forecast, plan: &Plan) -> Vec<Track> {
    let pieces = state.history.pieces.iter();
    let mut tracks: Vec<Track> =
        pieces.filter_map(|piece| track(piece, state, forecast, plan)).collect();
    sort_by_key(&mut tracks, |track| (track.pull, track.piece));
    tracks
}

fn track(
    piece: &PieceHistory,
    state: &CookState,
    forecast: &Forecast,
    plan: &Plan,
) -> Option<Track> {
    let planned = plan.pieces.iter().find(|planned| planned.piece == piece.id);
    let (on, pull) = match (piece.on(), piece.off()) {
        (Some(on), Some(off)) => (on, (off, off)),
        (Some(on), None) => {
            // A piece that is not likely to get there stays in sight, where it was planned.
            let pull = forecast.piece(piece.id).and_then(|piece| piece.pull);
            let pull = pull.or(planned.map(|planned| planned.pull))?;
            (on, (pull.low, pull.high))
        }
        (None, _) => (planned?.on, (planned?.pull.low, planned?.pull.high)),
    };
    let middle = pull.0 + (pull.1 - pull.0) / 2;
    Some(Track { piece: piece.id, on, pull, rested: middle + state.settings.habits.rest })
}

/// Pieces as rows, now as a line: on, pull window, rest and dinner drawn to scale.
#[component]
pub fn Timeline(
    /// The times of every piece.
    tracks: Vec<Track>,
    /// When the fire is lit.
    light: Moment,
    /// When people eat.
    dinner: Moment,
    /// The present moment.
    now: Moment,
) -> impl IntoView {
    let height = TOP + ROW * tracks.len() as f64 + BOTTOM;
    let bottom = height - BOTTOM;
    let first = tracks.iter().map(|track| track.on).chain([light]).min().unwrap_or(now);
    let last = tracks.iter().map(|track| track.rested).chain([dinner]).max().unwrap_or(now);
    // Only its horizontal scale is used.
    let frame = Frame {
        from: first - AROUND,
        to: last + AROUND,
        low: Temperature::from_c(0.0),
        high: Temperature::from_c(1.0),
    };
    let (left, right, _, _) = frame.edges();
    let rows = tracks.into_iter().enumerate().map(|(row, track)| {
        let y = TOP + ROW * row as f64 + (ROW - BAR) / 2.0;
        view! { <Row frame=frame track=track y=y /> }
    });
    let upright = move |at: Moment, class: &'static str, name: String| {
        let x = frame.x(at);
        let anchor = if x > (left + right) / 2.0 { "end" } else { "start" };
        view! {
            <line class=class x1=x x2=x y1=TOP - 4.0 y2=bottom />
            <text class="mark-name" x=x y=TOP - 8.0 text-anchor=anchor>
                {name}
            </text>
        }
    };
    let times = frame.times().into_iter().map(|at| {
        let x = frame.x(at);
        view! {
            <line class="grid" x1=x x2=x y1=TOP y2=bottom />
            <text class="time-name" x=x y=bottom + 20.0>
                {show::clock_short(at)}
            </text>
        }
    });
    view! {
        <svg class="timeline" viewBox=format!("0 0 {WIDTH} {height}") aria-hidden="true">
            {times.collect_view()} {rows.collect_view()}
            {upright(dinner, "dinner-line", say!("plan-dinner-mark"))}
            {frame.holds(now).then(|| upright(now, "now-line", say!("plan-now-mark")))}
        </svg>
    }
}

/// One piece's row: a bar while it is on, a box for the pull window, a thin line for the rest.
#[component]
fn Row(
    /// The horizontal scale.
    frame: Frame,
    /// The piece's times.
    track: Track,
    /// The top of its bar.
    y: f64,
) -> impl IntoView {
    let (left, ..) = frame.edges();
    let (on, low, high) = (frame.x(track.on), frame.x(track.pull.0), frame.x(track.pull.1));
    let rested = frame.x(track.rested);
    let middle = y + BAR / 2.0;
    view! {
        <text class="row-name" x=left - 8.0 y=middle + 5.0>
            {track.piece.0}
        </text>
        <rect class="on-bar" x=on y=y width=(low - on).max(0.0) height=BAR />
        <line class="rest-line" x1=high x2=rested y1=middle y2=middle />
        <rect class="window-box" x=low y=y width=(high - low).max(4.0) height=BAR />
        <circle class="rested-dot" cx=rested cy=middle r="4" />
    }
}
