//! The clocks of food safety, each with its countdown: of one piece, of all that rest, and those near
//! their end.

use cook_model::cook::CookState;
use cook_model::forecast::Forecast;
use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use cook_model::quantity::{Moment, Span};
use cook_model::safety::{COOL_FROM, Clock, ClockKind, cooling};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::{OpenCook, open_cook};
use crate::parts::If;
use crate::words::wording;
use crate::{safety_words, say, show};

/// A clock with less than this left is near its end: the cook's screen shows it.
const NEAR: Span = Span::minutes(30);
/// A clock nearer its end than this is counted down by the second; further off, the minute is
/// enough.
const BY_THE_SECOND: Span = Span::minutes(10);

/// The clocks of one piece, each with its countdown.
#[component]
pub fn PieceClocks(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let clocks = Derived::new(move || {
        let (state, forecast) = (cook.state().read(), cook.forecast().read());
        let own = state.clocks(&forecast).into_iter().filter(|(id, _)| *id == piece);
        let mut clocks: Vec<Clock> = own.map(|(_, clock)| clock).collect();
        if let Some(history) = state.history.piece(piece) {
            clocks.extend(cooling_steps(history, &forecast, cook.now()));
        }
        clocks
    });
    tick_near_the_end(cook, move || clocks.read().clone());
    view! {
        <If holds=move || !clocks.read().is_empty()>
            <ul class="clocks" aria-label=wording("clocks")>
                {move || {
                    let line = |clock| view! { <ClockLine clock=clock pieces=Vec::new() /> };
                    clocks.get().into_iter().map(line).collect_view()
                }}
            </ul>
        </If>
    }
}

/// The clocks of all pieces that are near their end or past it, one line for each kind.
#[component]
pub fn NearClocks() -> impl IntoView {
    let cook = open_cook();
    let running = Derived::new(move || {
        let (state, forecast) = (cook.state().read(), cook.forecast().read());
        state.clocks(&forecast)
    });
    let near = Derived::new(move || {
        let (now, state, forecast) = (cook.now(), cook.state().read(), cook.forecast().read());
        let near = |(piece, clock): &(PieceId, Clock)| {
            clock.left(now) < NEAR || will_stall(&state, &forecast, *piece, clock)
        };
        shared(running.get().into_iter().filter(near), now)
    });
    tick_near_the_end(cook, move || near.read().iter().map(|(clock, _)| *clock).collect());
    view! { <SharedClocks clocks=near /> }
}

/// The clocks of everything off the pit, one for each kind: of all pieces the first to run out.
#[component]
pub fn RestClocks() -> impl IntoView {
    let cook = open_cook();
    let clocks = Derived::new(move || {
        let (now, state, forecast) = (cook.now(), cook.state().read(), cook.forecast().read());
        let rests = |piece: &PieceHistory| piece.off().is_some() && piece.packed.is_none();
        let off = state.history.pieces.iter().filter(|piece| rests(piece));
        let running = state.clocks(&forecast);
        let own = |piece: &PieceHistory| {
            let of_it = running.iter().filter(|(id, _)| *id == piece.id).map(|(_, clock)| *clock);
            let all = of_it.chain(cooling_steps(piece, &forecast, now)).collect::<Vec<_>>();
            all.into_iter().map(|clock| (piece.id, clock)).collect::<Vec<_>>()
        };
        shared(off.flat_map(own), now)
    });
    tick_near_the_end(cook, move || clocks.read().iter().map(|(clock, _)| *clock).collect());
    view! { <SharedClocks clocks=clocks /> }
}

/// One line for each kind of clock: the first to run out, and all the pieces it is told for. Those
/// that have run out stand by themselves: what is to be done with them differs.
fn shared(
    clocks: impl Iterator<Item = (PieceId, Clock)>,
    now: Moment,
) -> Vec<(Clock, Vec<PieceId>)> {
    let mut lines: Vec<(Clock, Vec<PieceId>)> = Vec::new();
    for (piece, clock) in clocks {
        let same = |first: &Clock| {
            first.kind == clock.kind && first.has_run_out(now) == clock.has_run_out(now)
        };
        match lines.iter_mut().find(|(first, _)| same(first)) {
            Some((first, pieces)) => {
                if clock.deadline < first.deadline {
                    *first = clock;
                }
                pieces.push(piece);
            }
            None => lines.push((clock, vec![piece])),
        }
    }
    lines
}

/// Clocks that several pieces share.
#[component]
fn SharedClocks(clocks: Derived<Vec<(Clock, Vec<PieceId>)>>) -> impl IntoView {
    view! {
        <If holds=move || !clocks.read().is_empty()>
            <ul class="clocks" aria-label=wording("clocks")>
                {move || {
                    let line = |(clock, pieces)| view! { <ClockLine clock=clock pieces=pieces /> };
                    clocks.get().into_iter().map(line).collect_view()
                }}
            </ul>
        </If>
    }
}

/// One clock: what is left, what must be reached by when, and why.
#[component]
fn ClockLine(
    /// The clock.
    clock: Clock,
    /// The pieces it is told for; none where that is plain.
    pieces: Vec<PieceId>,
) -> impl IntoView {
    let cook = open_cook();
    let over = Derived::new(move || clock.has_run_out(cook.now()));
    let left = move || {
        let left = clock.left(cook.now());
        let near = left.abs() <= BY_THE_SECOND;
        let span = if near { show::countdown(left) } else { show::span(left) };
        if over.get() { say!("clock-over", over = span) } else { say!("clock-left", left = span) }
    };
    let words = move || safety_words::clock(&clock, cook.now());
    let what = move || {
        let what = words().what;
        if pieces.is_empty() {
            return what;
        }
        say!("clock-of", pieces = show::pieces(&cook.state().read(), &pieces), what = what)
    };
    view! {
        <li class="clock" class:over=move || over.get()>
            <strong class="left">{move || left()}</strong>
            <span class="what">{move || what()}</span>
            <span class="why">
                {move || words().why} " " {move || words().expected.unwrap_or_default()}
            </span>
        </li>
    }
}

/// Whether the forecast says that a piece on its way up does not get hot in time.
fn will_stall(state: &CookState, forecast: &Forecast, piece: PieceId, clock: &Clock) -> bool {
    let known = state.history.piece(piece).is_some_and(PieceHistory::is_on)
        && forecast.piece(piece).is_some_and(|forecast| forecast.pull.is_some());
    clock.kind == ClockKind::WarmUp && known && clock.is_expected_to_run_out()
}

/// The two steps of cooling of a piece off the pit, once a reading or the forecast has it below the
/// temperature from which they count. What they expect is the forecast's warm side.
fn cooling_steps(history: &PieceHistory, forecast: &Forecast, now: Moment) -> Vec<Clock> {
    let Some(off) = history.off().filter(|_| history.packed.is_none()) else { return Vec::new() };
    let coming = forecast.piece(history.id);
    let readings: Vec<_> = history
        .readings
        .iter()
        .filter(|reading| reading.at >= off)
        .map(|reading| (reading.at, reading.shown.max(reading.temperature)))
        .collect();
    let read_cool = readings.last().is_some_and(|(_, core)| *core < COOL_FROM);
    let likely_cool = coming.is_some_and(|coming| coming.core.low < COOL_FROM);
    if !read_cool && !likely_cool {
        return Vec::new();
    }
    let curve = coming.map(|coming| coming.curve.as_slice()).unwrap_or_default();
    let warm: Vec<_> =
        curve.iter().filter(|(at, _)| *at >= off).map(|(at, core)| (*at, core.high)).collect();
    cooling(off, &readings, &warm).into_iter().filter(|step| step.matters(now)).collect()
}

/// Ticks every second while a clock is about to run out.
fn tick_near_the_end(cook: OpenCook, clocks: impl Fn() -> Vec<Clock> + Send + Sync + 'static) {
    cook.each_second_while(move || {
        let now: Moment = cook.now();
        clocks().iter().any(|clock| {
            let left = clock.left(now);
            left > Span::zero() && left <= BY_THE_SECOND
        })
    });
}
