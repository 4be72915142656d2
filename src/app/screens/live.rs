//! The live cook: what to do next, and the pieces in pull order.

use std::time::Duration;

use cook_model::cook::Stage;
use cook_model::cook::duties::Act;
use cook_model::piece::PieceId;
use cook_model::sorting::sort_by_key;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::device::media;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{
    BackOn, Card, Curve, Each, Heading, If, MoveDinner, NearClocks, PieceRow, Prompts, Rack, Zoom,
    in_hand,
};
use crate::words::wording;
use crate::{describe, say, show};

/// So many pieces are drawn with the screen, more than fit on a phone; the rest once it has been
/// painted, so that the tap that led here is answered at once.
const AT_ONCE: usize = 8;

/// What to do next, and the pieces in pull order.
#[component]
pub fn Live() -> impl IntoView {
    let cook = open_cook();
    let order = Derived::new(move || {
        let (on, off) = pieces_in_order(
            &cook.state().read().each_piece().map(|(s, h)| (h.id, s.stage)).collect::<Vec<_>>(),
            &cook.forecast().read().order,
        );
        (on, off)
    });
    let painted = painted();
    let wide = is_wide();
    let drawn = move |pieces: Vec<PieceId>| {
        let most = if painted.get() { usize::MAX } else { AT_ONCE };
        pieces.into_iter().take(most).collect::<Vec<_>>()
    };
    view! {
        <section class="screen live">
            <div class="unseen">
                <Heading text=wording("live-title") />
            </div>
            <div class="sides">
                <div class="side">
                    <Card />
                    <BackOnNow />
                    <NearClocks />
                    <CookFacts />
                </div>
                <div class="side to-pull">
                    <If holds=move || !order.read().0.is_empty()>
                        <h2 class="unseen">{wording("live-order")}</h2>
                        <ol class="rows pieces">
                            <Each each=move || drawn(order.get().0) key=|id| *id let:id>
                                <PieceRow piece=id />
                            </Each>
                        </ol>
                    </If>
                </div>
                <div class="side">
                    <If holds=move || !order.read().1.is_empty()>
                        <h2 class="list-name">{wording("live-off")}</h2>
                        <ul class="rows pieces">
                            <Each each=move || drawn(order.get().1) key=|id| *id let:id>
                                <PieceRow piece=id />
                            </Each>
                        </ul>
                    </If>
                    <Prompts />
                    <Rack in_hand=in_hand() />
                    <If holds=move || wide.get()>
                        <CurveInHand />
                    </If>
                </div>
            </div>
        </section>
    }
}

/// Whether the screen has been painted once since it was put together. Reactive.
fn painted() -> ReadSignal<bool> {
    let painted = RwSignal::new(false);
    // The screen may be gone by then.
    let after_it = move || _ = painted.try_set(true);
    request_animation_frame(move || set_timeout(after_it, Duration::ZERO));
    painted.read_only()
}

/// Whether there is a third column: a phone draws no curve that it has no room for. Reactive.
fn is_wide() -> ReadSignal<bool> {
    let wide = RwSignal::new(media::holds(media::WIDE));
    let watch = media::watch(media::WIDE, move |now| _ = wide.try_set(now));
    let watch = StoredValue::new_local(watch);
    on_cleanup(move || watch.set_value(None));
    wide.read_only()
}

/// The curve of the piece that the card is about, or of the next one to come off.
#[component]
fn CurveInHand() -> impl IntoView {
    let cook = open_cook();
    let in_hand = in_hand();
    let chosen = Derived::new(move || {
        let of_duty = in_hand.read().first().copied();
        of_duty.or_else(|| cook.forecast().read().order.first().copied())
    });
    move || {
        let piece = chosen.get()?;
        let history = cook.state().read().history.piece(piece).cloned()?;
        let forecast = cook.piece_forecast(piece)?;
        history.on()?;
        Some(view! {
            <section class="card">
                <h2>{show::piece(&cook.state().read(), piece)}</h2>
                <Curve history=history forecast=forecast now=cook.now() zoom=Zoom::Whole />
            </section>
        })
    }
}

/// How long the piece that must go back now needs on the pit.
#[component]
fn BackOnNow() -> impl IntoView {
    let cook = open_cook();
    let back = Derived::new(move || {
        let duty = cook.duty().filter(|duty| duty.act == Act::PutBack)?;
        duty.pieces.first().copied()
    });
    view! { {move || back.get().map(|piece| view! { <BackOn piece=piece /> })} }
}

/// The pieces still to come off, in pull order, and those that are off, the last ones to be
/// finished with first.
fn pieces_in_order(
    pieces: &[(PieceId, Stage)],
    pull_order: &[PieceId],
) -> (Vec<PieceId>, Vec<PieceId>) {
    let is_off = |stage: Stage| stage > Stage::On;
    let place = |id: PieceId| pull_order.iter().position(|other| *other == id);
    let mut on: Vec<_> = pieces.iter().filter(|(_, stage)| !is_off(*stage)).copied().collect();
    sort_by_key(&mut on, |(id, stage)| {
        (*stage != Stage::On, place(*id).unwrap_or(usize::MAX), *id)
    });
    let mut off: Vec<_> = pieces.iter().filter(|(_, stage)| is_off(*stage)).copied().collect();
    sort_by_key(&mut off, |(id, stage)| (*stage, *id));
    let ids = |pieces: Vec<(PieceId, Stage)>| pieces.into_iter().map(|(id, _)| id).collect();
    (ids(on), ids(off))
}

/// The pit and dinner.
#[component]
fn CookFacts() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let pit = move || {
        let state = cook.state().read();
        match state.history.pit.readings.last() {
            Some(last) => {
                let age = show::age(last.at, cook.now());
                let temperature = show::temperature(last.temperature);
                (say!("live-pit", temperature = temperature), age)
            }
            None => {
                let aim = show::temperature(state.settings.pit_target);
                (say!("live-pit-none"), say!("live-pit-aim", temperature = aim))
            }
        }
    };
    let dinner = move || {
        let at = cook.state().read().settings.dinner;
        let Some(at) = at else { return (say!("live-no-dinner"), say!("live-no-dinner-hint")) };
        let (title, outlook) = (say!("live-dinner", time = show::clock_short(at)), cook.outlook());
        let Some(outlook) = outlook else { return (title, say!("change")) };
        (title, describe::dinner(&outlook))
    };
    let moving = RwSignal::new(false);
    let on_dinner = move |_| match cook.state().read_untracked().settings.dinner {
        Some(_) => moving.update(|open| *open = !*open),
        None => navigation.go(Screen::SetOut),
    };
    let expanded = move || {
        let dinner = cook.state().read().settings.dinner;
        dinner.is_some().then(|| moving.get().to_string())
    };
    view! {
        <div class="cook-facts">
            <button on:click=move |_| navigation.go(Screen::Pit)>
                <strong>{move || pit().0}</strong>
                <span>{move || pit().1}</span>
            </button>
            <button aria-expanded=expanded on:click=on_dinner>
                <strong>{move || dinner().0}</strong>
                <span>{move || dinner().1}</span>
            </button>
            <button
                class="curves-button"
                aria-label=wording("curves-title")
                on:click=move |_| navigation.go(Screen::Curves)
            >
                <svg viewBox="0 0 32 32" aria-hidden="true">
                    <path d="M4 4V28H28M8 24C14 23 14 10 28 8" />
                </svg>
            </button>
        </div>
        <If holds=move || moving.get()>
            <MoveDinner on_end=move |()| moving.set(false) />
        </If>
    }
}
