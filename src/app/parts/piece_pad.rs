//! A reading of one piece, typed where what is expected of it stands.

use cook_model::cook::duties::{Act, Duty};
use cook_model::cook::{CookState, Stage, What, limits};
use cook_model::history::Instrument;
use cook_model::piece::PieceId;
use cook_model::quantity::Temperature;
use cook_model::safety::SecondPlace;
use leptos::prelude::*;

use super::{Choice, Keypad, last_reading};
use crate::derived::Derived;
use crate::open_cook::{OpenCook, open_cook};
use crate::parts::If;
use crate::typed::quantity;
use crate::words::wording;
use crate::{describe, safety_words, say, show};

/// A usual reading, shown as an example of what to type.
const USUAL: Temperature = Temperature::from_f(147.0);

/// The number pad for one piece: what is expected of it, with which thermometer and in how many places
/// it is read, and the keys.
#[component]
pub fn PiecePad(
    /// Which piece. It may change while digits are typed only where the cook was led to another.
    piece: Derived<PieceId>,
    /// The thermometer, where it is settled which; else the cook chooses.
    #[prop(optional)]
    settled: Option<Instrument>,
    /// Called with what was typed, once it is on its way into the log.
    #[prop(into)]
    on_stored: Callback<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let text = RwSignal::new(String::new());
    let bad = RwSignal::new(None);
    let last = || last_instrument(&state.read_untracked(), piece.get_untracked());
    let instrument = RwSignal::new(settled.unwrap_or_else(last));
    let second = second_place_is_typed(cook, piece.get_untracked());
    let usual = usual_places(&state.read_untracked(), piece.get_untracked());
    let two_places = RwSignal::new(second || usual);
    let store = move |()| {
        let typed = match quantity(&text.get_untracked(), &limits::CORE, USUAL) {
            Ok(typed) => typed,
            Err(message) => return bad.set(Some(message)),
        };
        let piece = piece.get_untracked();
        if let Some(message) = takes_no_reading(&cook.facts_as_tapped(), piece) {
            return bad.set(Some(message));
        }
        let places = if two_places.get_untracked() { 2 } else { 1 };
        let instrument = instrument.get_untracked();
        cook.record(What::CoreRead { piece, temperature: typed, instrument, places });
        text.set(String::new());
        on_stored.run(typed);
    };
    let about = move || {
        let forecast = cook.piece_forecast(piece.get())?;
        let core = forecast.core_at(cook.now());
        Some(say!(
            "pad-about",
            temperature = show::temperature(core.middle),
            low = show::degrees(core.low),
            high = show::degrees(core.high)
        ))
    };
    let pull = move || {
        let forecast = cook.piece_forecast(piece.get())?;
        let on = state.read().history.piece(piece.get()).is_some_and(|piece| piece.is_on());
        on.then(|| say!("pad-pull-at", temperature = describe::pull_at(&forecast)))
    };
    let history = Derived::new(move || state.read().history.piece(piece.get()).cloned());
    let offset = move || {
        let (instrument, offset) = (instrument.get(), state.read().offset(instrument.get()));
        (offset.abs() >= show::LEAST_OFFSET).then(|| {
            let thermometer = safety_words::instrument(instrument);
            let offset = safety_words::offset(offset);
            say!("check-now", thermometer = thermometer, offset = offset)
        })
    };
    let instruments = move || {
        vec![
            (Instrument::InstantRead, wording("instant-read")),
            (Instrument::LeaveIn, wording("leave-in")),
        ]
    };
    view! {
        <p class="about">{move || pull()} " " {move || about()}</p>
        <p class="about">{move || last_reading(history.get(), cook.now())} " " {move || offset()}</p>
        <div class="how">
            <If holds=move || settled.is_none()>
                <Choice
                    name="instrument"
                    label=wording("pad-instrument")
                    options=instruments()
                    chosen=instrument
                    on_choose=move |chosen| instrument.set(chosen)
                    quiet=true
                />
            </If>
            <button
                class="toggle"
                aria-pressed=move || two_places.get().to_string()
                on:click=move |_| two_places.update(|two| *two = !*two)
            >
                {wording("places-two")}
            </button>
        </div>
        <Keypad name="reading" text=text bad=bad on_store=store />
    }
}

/// Whether what is typed is the lower figure of a second place.
fn second_place_is_typed(cook: OpenCook, piece: PieceId) -> bool {
    let asks = |duty: &Duty| {
        matches!(duty.act, Act::TrySecondPlace { told: SecondPlace::Figure, .. })
            && duty.pieces.contains(&piece)
            && duty.is_due(cook.now_untracked())
    };
    cook.duties().read_untracked().iter().any(asks)
}

/// The thermometer last chosen for this piece: one that is not touched stays as it was.
fn last_instrument(state: &CookState, piece: PieceId) -> Instrument {
    let last = state.history.piece(piece).and_then(|history| history.readings.last());
    last.map_or(Instrument::InstantRead, |reading| reading.instrument)
}

/// Whether this cook takes the lowest of two places: as last told for this piece, or for any.
fn usual_places(state: &CookState, piece: PieceId) -> bool {
    let pokes = |of: &cook_model::history::PieceHistory| {
        of.readings
            .iter()
            .rfind(|reading| reading.instrument == Instrument::InstantRead)
            .map(|reading| (reading.typed, reading.places))
    };
    let own = state.history.piece(piece).and_then(pokes);
    let any = || state.history.pieces.iter().filter_map(pokes).max();
    own.or_else(any).is_some_and(|(_, places)| places >= 2)
}

/// Why a piece takes no reading, if it takes none.
fn takes_no_reading(state: &CookState, piece: PieceId) -> Option<String> {
    match state.piece(piece).map(|(standing, _)| standing.stage) {
        Some(Stage::On | Stage::Resting | Stage::Proved) => None,
        Some(Stage::Packed) => Some(say!("bad-packed", piece = show::piece(state, piece))),
        Some(Stage::Raw) | None => Some(say!("bad-not-on", piece = show::piece(state, piece))),
    }
}
