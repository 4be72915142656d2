use cook_model::cook::{Stage, What};
use cook_model::piece::PieceId;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{
    BackToCook, CrossSection, Curve, ForecastLethality, Heading, PieceClocks, PiecePad,
    PullProposal, Zoom,
};
use crate::{say, show};

/// The number pad for one piece, and all that is known of it.
#[component]
pub fn Reading(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let state = cook.state();
    let name = move || show::piece(&state.read(), piece);
    let forecast = Derived::new(move || cook.piece_forecast(piece));
    let history = Derived::new(move || state.read().history.piece(piece).cloned());
    let section = move || {
        let seating = forecast.get()?.seating?;
        let thickest = history.get()?.piece.thickest;
        seating.is_suspect().then(|| view! { <CrossSection seating=seating thickest=thickest /> })
    };
    let curve = move || {
        let (history, forecast) = (history.get()?, forecast.get()?);
        history.on()?;
        let now = cook.now();
        Some(view! { <Curve history=history forecast=forecast now=now zoom=Zoom::Whole /> })
    };
    view! {
        <section class="screen reading">
            <div class="sides">
                <div class="side entry">
                    <header class="top">
                        <BackToCook />
                        <div>
                            <Heading text=name />
                        </div>
                    </header>
                    <PiecePad
                        piece=Derived::new(move || piece)
                        on_stored=move |_| navigation.replace(Screen::Live)
                    />
                </div>
                <div class="side">
                    <PieceActs piece=piece />
                    <PullProposal piece=piece />
                    {move || section()}
                    {move || curve()}
                    <PieceClocks piece=piece />
                    <ForecastLethality piece=piece />
                </div>
            </div>
        </section>
    }
}

/// What else can be done with the piece, one tap each.
#[component]
fn PieceActs(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let state = cook.state();
    let stage = Derived::new(move || state.read().piece(piece).map(|(standing, _)| standing.stage));
    let name = move || show::the_piece(&state.read(), piece);
    let act = move |words: String, what: What| {
        view! {
            <button
                class="second-action"
                on:click=move |_| {
                    cook.record(what.clone());
                    navigation.replace(Screen::Live);
                }
            >
                {words}
            </button>
        }
    };
    view! {
        <div class="acts">
            {move || match stage.get() {
                Some(Stage::Raw) => {
                    act(say!("pad-put-on", piece = name()), What::PutOn { piece }).into_any()
                }
                Some(Stage::On) => {
                    view! {
                        {act(say!("pad-pull", piece = name()), What::Pulled { piece })}
                        {act(say!("pad-reseat"), What::LeaveInSeated { piece })}
                    }
                        .into_any()
                }
                Some(Stage::Resting | Stage::Proved) => {
                    act(say!("rest-put-back"), What::PutOn { piece }).into_any()
                }
                Some(Stage::Packed) | None => ().into_any(),
            }}
        </div>
    }
}
