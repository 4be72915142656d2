use cook_model::cook::{CookState, Stage, What, limits};
use cook_model::history::Instrument;
use cook_model::piece::PieceId;
use cook_model::quantity::Temperature;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{
    BackToCook, Choice, CrossSection, Curve, ForecastLethality, Heading, Keypad, PieceClocks,
    PullProposal, Zoom, last_reading,
};
use crate::typed::quantity;
use crate::words::wording;
use crate::{safety_words, say, show};

/// A usual reading, shown as an example of what to type.
const USUAL: Temperature = Temperature::from_f(147.0);

/// The number pad for one piece.
#[component]
pub fn Reading(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let state = cook.state();
    let text = RwSignal::new(String::new());
    let bad = RwSignal::new(None);
    let instrument = RwSignal::new(Instrument::InstantRead);
    let two_places = RwSignal::new(false);
    let name = move || show::piece(&state.read(), piece);
    let forecast = Derived::new(move || cook.forecast().read().piece(piece).cloned());
    let what = move |temperature| What::CoreRead {
        piece,
        temperature,
        instrument: instrument.get_untracked(),
        places: if two_places.get_untracked() { 2 } else { 1 },
    };
    let back = move || navigation.replace(Screen::Live);
    let store = move |()| {
        let typed = match quantity(&text.get_untracked(), &limits::CORE, USUAL) {
            Ok(typed) => typed,
            Err(message) => return bad.set(Some(message)),
        };
        if let Some(message) = takes_no_reading(&state.read_untracked(), piece) {
            return bad.set(Some(message));
        }
        cook.record(what(typed));
        back();
    };
    let history = Derived::new(move || state.read().history.piece(piece).cloned());
    let section = move || {
        let seating = forecast.get()?.seating?;
        let thickest = history.get()?.piece.thickest;
        seating.is_suspect().then(|| view! { <CrossSection seating=seating thickest=thickest /> })
    };
    let offset = move || {
        let (instrument, offset) = (instrument.get(), state.read().offset(instrument.get()));
        (offset.abs() >= show::LEAST_OFFSET).then(|| {
            let thermometer = safety_words::instrument(instrument);
            let offset = safety_words::offset(offset);
            say!("check-now", thermometer = thermometer, offset = offset)
        })
    };
    let curve = move || {
        let (history, forecast) = (history.get()?, forecast.get()?);
        history.on()?;
        let now = cook.now();
        Some(view! { <Curve history=history forecast=forecast now=now zoom=Zoom::Whole /> })
    };
    let instruments = vec![
        (Instrument::InstantRead, wording("instant-read")),
        (Instrument::LeaveIn, wording("leave-in")),
    ];
    view! {
        <section class="screen reading">
            <div class="sides">
                <div class="side entry">
                    <header class="top">
                        <BackToCook />
                        <div>
                            <Heading text=name />
                            <p class="about">
                                {move || {
                                    forecast
                                        .get()
                                        .map(|forecast| {
                                            say!(
                                                "pad-about",
                                                temperature = show::temperature(forecast.core.middle),
                                                low = show::degrees(forecast.core.low),
                                                high = show::degrees(forecast.core.high)
                                            )
                                        })
                                }}
                            </p>
                            <p class="about">
                                {move || last_reading(history.get(), cook.now())}
                            </p>
                            <p class="about">{move || offset()}</p>
                        </div>
                    </header>
                    <div class="how">
                        <Choice
                            name="instrument"
                            label=wording("pad-instrument")
                            options=instruments
                            chosen=instrument
                            on_choose=move |chosen| instrument.set(chosen)
                            quiet=true
                        />
                        <button
                            class="toggle"
                            aria-pressed=move || two_places.get().to_string()
                            on:click=move |_| two_places.update(|two| *two = !*two)
                        >
                            {wording("places-two")}
                        </button>
                    </div>
                    <Keypad
                        name="reading"
                        text=text
                        bad=bad
                        on_store=store
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
    let name = move || show::piece(&state.read(), piece);
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

/// Why a piece takes no reading, if it takes none.
fn takes_no_reading(state: &CookState, piece: PieceId) -> Option<String> {
    match state.piece(piece).map(|(standing, _)| standing.stage) {
        Some(Stage::On | Stage::Resting | Stage::Proved) => None,
        Some(Stage::Packed) => Some(say!("bad-packed", piece = show::piece(state, piece))),
        Some(Stage::Raw) | None => Some(say!("bad-not-on", piece = show::piece(state, piece))),
    }
}
