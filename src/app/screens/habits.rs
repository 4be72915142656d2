//! Habits: the pit, its rack, and how long things take around a cook.

use cook_model::cook::gear::Gear;
use cook_model::cook::{What, limits};
use cook_model::plan::Habits;
use cook_model::quantity::{Span, TemperatureDifference};
use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::parts::{BackToCook, Heading, If, NamedGear, PitKindField, SettingField};
use crate::words::{Words, wording};
use crate::{gear, say, show};

/// How much hotter or cooler than the rack's mean a hot or a cool spot is taken to be (common
/// practice, no source).
const SPOT: TemperatureDifference = TemperatureDifference::from_f(15.0);

/// The kind of pit, its rack, how long things take around the cook, and what is for tonight.
#[component]
pub fn HabitsScreen() -> impl IntoView {
    let cook = open_cook();
    let kept = gear::kept();
    view! {
        <section class="screen habits">
            <div class="top">
                <BackToCook />
                <Heading text=wording("habits-title") />
            </div>
            <NamedGear
                name="pit-name"
                label=wording("gear-pit")
                in_use=move || kept.get().pit().map(|pit| pit.name.clone()).unwrap_or_default()
                others=move || {
                    let pits = kept.get().pits.into_iter().enumerate().skip(1);
                    pits.map(|(place, pit)| (place, pit.name)).collect()
                }
                on_name=move |name: String| kept.change(|gear| gear.name_pit(name))
                on_use=move |place: usize| {
                    kept.change(|gear| gear.use_pit(place));
                    gear::use_in(cook);
                }
                on_new=move |()| {
                    kept.change(Gear::new_pit);
                    gear::use_in(cook);
                }
            />
            <PitKindField />
            <Rack />
            <Tonight />
            <Times />
        </section>
    }
}

/// The habit of which safety sets the limit.
const OUT: &str = "fridge";

/// One way to read and to change one of the habits.
type Part = (fn(&Habits) -> Span, fn(&mut Habits, Span));

/// How long things take.
#[component]
fn Times() -> impl IntoView {
    let cook = open_cook();
    let is_fed = move || cook.facts().read().settings.pit_kind.is_fed();
    let field = move |name: &'static str, label: Words, (get, set): Part| {
        let raw = name == OUT;
        view! {
            <SettingField
                name=name
                label=label
                value=move || get(&cook.facts().read().settings.habits)
                limits=if raw { limits::OUT_OF_FRIDGE } else { limits::HABIT }
                on_set=move |span: Span| {
                    let mut habits = cook.facts_as_tapped().settings.habits;
                    set(&mut habits, span);
                    cook.record(What::HabitsSet { habits });
                }
            />
        }
    };
    view! {
        <h2>{wording("habits-times")}</h2>
        <p class="hint">{wording("habits-times-hint")}</p>
        <div class="pair">
            {field(
                "preheat",
                wording("habits-preheat"),
                (|h| h.fire.preheat, |h, span| h.fire.preheat = span),
            )}
            <If holds=is_fed>
                {field(
                    "feed",
                    wording("habits-feed"),
                    (|h| h.fire.feed_every, |h, span| h.fire.feed_every = span),
                )}
            </If>
            {field(
                OUT,
                wording("habits-fridge"),
                (|h| h.out_of_fridge, |h, span| h.out_of_fridge = span),
            )}
            {field(
                "seasoning",
                wording("habits-season"),
                (|h| h.seasoning, |h, span| h.seasoning = span),
            )}
            {field(
                "rest",
                wording("habits-rest"),
                (|h| h.rest, |h, span| h.rest = span),
            )}
            {field(
                "carving",
                wording("habits-carve"),
                (|h| h.carving, |h, span| h.carving = span),
            )}
        </div>
    }
}

/// The places on the rack, each even, hot or cool.
#[component]
fn Rack() -> impl IntoView {
    let cook = open_cook();
    let rack = move || cook.facts().read().settings.rack.clone();
    let as_tapped = move || cook.facts_as_tapped().settings.rack;
    let set = move |places_c: Vec<TemperatureDifference>| cook.record(What::RackSet { places_c });
    let fewer = move |_| {
        let mut places = as_tapped();
        if places.pop().is_some() {
            set(places);
        }
    };
    let more = move |_| {
        let mut places = as_tapped();
        if places.len() < limits::PLACES {
            places.push(TemperatureDifference::ZERO);
            set(places);
        }
    };
    let turn = move |place: usize| {
        let mut places = as_tapped();
        if let Some(heat) = places.get_mut(place) {
            *heat = next_heat(*heat);
            set(places);
        }
    };
    let places = move || {
        let rows = rack().into_iter().enumerate().map(|(place, heat)| {
            let words = say!("rack-place", number = place + 1, heat = heat_words(heat));
            view! {
                <li>
                    <button on:click=move |_| turn(place)>{words}</button>
                </li>
            }
        });
        rows.collect_view()
    };
    view! {
        <h2>{wording("rack-title")}</h2>
        <p class="hint">
            {move || match rack().len() {
                0 => say!("rack-any"),
                count => say!("rack-count", count = count),
            }}
        </p>
        <div class="stepper" role="group" aria-label=wording("rack-title")>
            <button aria-label=wording("rack-fewer") on:click=fewer>
                "\u{2212}"
            </button>
            <output class="stepped">{move || rack().len()}</output>
            <button aria-label=wording("rack-more") on:click=more>
                "+"
            </button>
        </div>
        <ul class="rack">{move || places()}</ul>
    }
}

/// Even, hot, cool, and even again.
fn next_heat(heat: TemperatureDifference) -> TemperatureDifference {
    if heat == TemperatureDifference::ZERO {
        SPOT
    } else if heat > TemperatureDifference::ZERO {
        -SPOT
    } else {
        TemperatureDifference::ZERO
    }
}

fn heat_words(heat: TemperatureDifference) -> String {
    if heat == TemperatureDifference::ZERO {
        say!("rack-even")
    } else if heat > TemperatureDifference::ZERO {
        say!("rack-hot")
    } else {
        say!("rack-cool")
    }
}

/// Which pieces are for tonight, and which for later.
#[component]
fn Tonight() -> impl IntoView {
    let cook = open_cook();
    let rows = move || {
        let facts = cook.facts().read();
        let rows = facts.history.pieces.iter().map(|piece| {
            let (id, tonight) = (piece.id, piece.tonight);
            let name = show::piece(&facts, id);
            view! {
                <li>
                    <button
                        class="toggle"
                        aria-pressed=tonight.to_string()
                        on:click=move |_| {
                            cook.record(What::TonightSet { piece: id, tonight: !tonight });
                        }
                    >
                        {if tonight {
                            say!("tonight-is", piece = name)
                        } else {
                            say!("tonight-is-not", piece = name)
                        }}
                    </button>
                </li>
            }
        });
        rows.collect_view()
    };
    view! {
        <h2>{wording("tonight-title")}</h2>
        <p class="hint">{wording("tonight-hint")}</p>
        <ul class="rack">{move || rows()}</ul>
    }
}
