use cook_model::cook::{Stage, What, limits};
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Length, Mass, Temperature, Units};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::device::clock;
use crate::open_cook::{OpenCook, open_cook};
use crate::parts::{Choice, Each, Field, Heading, If, OptionalField, PieceShape, SettingField};
use crate::screens::set_out_dinner::Dinner;
use crate::typed::{PackWeight, Typed, quantity, quantity_or_blank};
use crate::words::wording;
use crate::{preferences, say, show};

/// Meat from a fridge at 38 F (common practice, no source).
const FROM_THE_FRIDGE: Temperature = Temperature::from_f(38.0);
/// Usual values, shown as examples of what to type.
const USUAL_WEIGHT: Mass = Mass::from_g(230.0);
const USUAL_THICKNESS: Length = Length::from_mm(38.0);
const USUAL_PULL: Temperature = Temperature::from_f(160.0);
/// More pieces than anyone has set out at once.
const MOST_PIECES: u32 = 40;

/// The pieces, one by one or several alike, and what the cook decides for all of them.
#[component]
pub fn SetOut() -> impl IntoView {
    let cook = open_cook();
    let start = RwSignal::new(FROM_THE_FRIDGE);
    // Pieces set out earlier say what the person means by it.
    if let Some(last) = cook.state().read_untracked().history.pieces.last() {
        start.set(last.piece.start);
    }
    view! {
        <section class="screen set-out">
            <Heading text=wording("set-out-title") />
            <UnitChoice />
            <div class="sides">
                <div class="side">
                    <AddPieces start=start />
                    <ul class="rows pieces">
                        <Each
                            each=move || {
                                let state = cook.state().read();
                                state.history.pieces.iter().map(|piece| piece.id).collect::<Vec<_>>()
                            }
                            key=|id| *id
                            let:id
                        >
                            <SetOutRow piece=id />
                        </Each>
                    </ul>
                </div>
                <div class="side">
                    <CookSettings start=start />
                    <p class="caution">{wording("set-out-wash")}</p>
                    <p class="caution">{wording("set-out-keeps")}</p>
                </div>
            </div>
        </section>
    }
}

/// Both unit systems, one tap apart.
#[component]
fn UnitChoice() -> impl IntoView {
    let options = vec![
        (Units::CUSTOMARY, wording("units-customary")),
        (Units::METRIC, wording("units-metric")),
    ];
    view! {
        <Choice
            name="unit-system"
            label=wording("set-out-units")
            options=options
            chosen=preferences::units
            on_choose=move |units| preferences::change(|chosen| chosen.units = units)
            quiet=true
        />
    }
}

/// One piece that is set out.
#[component]
fn SetOutRow(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let facts = Derived::new(move || {
        let state = cook.state().read();
        state.piece(piece).map(|(standing, history)| (standing.stage, history.piece))
    });
    let name = move || show::piece(&cook.state().read(), piece);
    let stage = Derived::new(move || facts.get().map_or(Stage::Raw, |facts| facts.0));
    view! {
        <li class="set-out-row">
            <PieceShape
                size=move || crate::parts::relative_size(piece)
                level=|| 0.0
                stage=stage
            />
            <span class="facts">
                <span class="name">{move || name()}</span>
                <span>{move || facts.get().map(|facts| show::facts(&facts.1))}</span>
            </span>
            <If holds=move || stage.get() == Stage::Raw>
                <button
                    class="small"
                    aria-label=move || {
                        say!(
                            "set-out-remove",
                            piece = show::the_piece(&cook.state().read(), piece)
                        )
                    }
                    on:click=move |_| cook.record(What::PieceTakenAway { piece })
                >
                    <svg viewBox="0 0 24 24" aria-hidden="true">
                        <path d="M5 5L19 19M19 5L5 19" />
                    </svg>
                </button>
            </If>
        </li>
    }
}

/// What the weight typed is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Weighed {
    /// Of each piece.
    Each,
    /// Of the pack, whose pieces share it alike.
    Pack,
}

/// Reads the weight typed as that of one piece.
fn weight_of_one(text: &str, weighed: Weighed, count: u32) -> Result<Mass, String> {
    match weighed {
        Weighed::Each => quantity(text, &limits::WEIGHT, USUAL_WEIGHT),
        Weighed::Pack => {
            let all = |one: Mass| PackWeight(one * f64::from(count));
            let limits = all(*limits::WEIGHT.start())..=all(*limits::WEIGHT.end());
            let PackWeight(pack) = quantity(text, &limits, all(USUAL_WEIGHT))?;
            Ok(pack * (1.0 / f64::from(count)))
        }
    }
}

/// The form for one more piece, or several alike.
#[component]
fn AddPieces(
    /// The temperature at which they go on.
    start: RwSignal<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let count = RwSignal::new(1_u32);
    let weighed = RwSignal::new(Weighed::Each);
    let weight = RwSignal::new(String::new());
    let thickest = RwSignal::new(String::new());
    let shape = RwSignal::new(Shape::Natural);
    let icy = RwSignal::new(false);
    let bad_weight = RwSignal::new(None);
    let bad_thickest = RwSignal::new(None);
    let add = move || {
        let read_weight =
            weight_of_one(&weight.get_untracked(), weighed.get_untracked(), count.get_untracked());
        let read_thickest =
            quantity_or_blank(&thickest.get_untracked(), &limits::THICKEST, USUAL_THICKNESS);
        bad_weight.set(read_weight.as_ref().err().cloned());
        bad_thickest.set(read_thickest.as_ref().err().cloned());
        let (Ok(read_weight), Ok(read_thickest)) = (read_weight, read_thickest) else { return };
        let facts = Piece {
            weight: read_weight,
            thickest: read_thickest,
            shape: shape.get_untracked(),
            start: start.get_untracked(),
            icy: icy.get_untracked(),
        };
        cook.record_all(set_out(cook, facts, count.get_untracked()));
        weight.set(String::new());
        thickest.set(String::new());
        icy.set(false);
        count.set(1);
        weighed.set(Weighed::Each);
    };
    let weight_label = move || match weighed.get() {
        Weighed::Each => say!("set-out-weight", unit = show::mass_unit()),
        Weighed::Pack => say!("set-out-pack", count = count.get(), unit = PackWeight::unit()),
    };
    let middles = vec![(false, wording("middle-thawed")), (true, wording("middle-icy"))];
    let shapes = vec![
        (Shape::Natural, wording("shape-natural")),
        (Shape::Even, wording("shape-even")),
        (Shape::Thick, wording("shape-thick")),
    ];
    view! {
        <form
            class="card add"
            novalidate
            on:submit=move |event| {
                event.prevent_default();
                add();
            }
        >
            <h2>{wording("set-out-add-title")}</h2>
            <Choice
                name="weighed"
                label=wording("set-out-weighed")
                options=vec![
                    (Weighed::Each, wording("set-out-each")),
                    (Weighed::Pack, wording("set-out-whole-pack")),
                ]
                chosen=weighed
                on_choose=move |chosen| weighed.set(chosen)
                quiet=true
            />
            <div class="pair">
                <Field
                    name="weight"
                    label=weight_label
                    text=weight
                    bad=bad_weight
                />
                <Field
                    name="thickest"
                    label=|| say!("set-out-thickest", unit = show::length_unit())
                    text=thickest
                    bad=bad_thickest
                />
            </div>
            <p class="hint">{wording("set-out-thickest-hint")}</p>
            <Choice
                name="shape"
                label=wording("set-out-shape")
                options=shapes
                chosen=shape
                on_choose=move |chosen| shape.set(chosen)
            />
            <Choice
                name="middle"
                label=wording("set-out-middle")
                options=middles
                chosen=icy
                on_choose=move |chosen| icy.set(chosen)
            />
            <div class="stepper" role="group" aria-label=wording("set-out-count")>
                <button
                    type="button"
                    aria-label=wording("set-out-count-less")
                    on:click=move |_| count.update(|count| *count = (*count - 1).max(1))
                >
                    "−"
                </button>
                <button type="submit" class="add-action">
                    {move || say!("set-out-add", count = count.get())}
                </button>
                <button
                    type="button"
                    aria-label=wording("set-out-count-more")
                    on:click=move |_| count.update(|count| *count = (*count + 1).min(MOST_PIECES))
                >
                    "+"
                </button>
            </div>
        </form>
    }
}

/// Entries that set out so many pieces alike, numbered after those there ever were.
fn set_out(cook: OpenCook, facts: Piece, count: u32) -> Vec<What> {
    // What is still being stored counts too.
    let log = cook.journal().with_told();
    let last = log
        .entries()
        .iter()
        .filter_map(|entry| match entry.what {
            What::PieceSetOut { piece, .. } => Some(piece.0),
            _ => None,
        })
        .max()
        .unwrap_or(0);
    (1..=count)
        .map(|next| What::PieceSetOut { piece: PieceId(last + next), facts, name: String::new() })
        .collect()
}

/// What the cook decides for all pieces.
#[component]
fn CookSettings(
    /// The temperature at which pieces go on.
    start: RwSignal<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let set_start = move |typed: Temperature| {
        start.set(typed);
        let state = cook.state().read_untracked();
        let raw = state.each_piece().filter(|(standing, _)| standing.stage == Stage::Raw);
        let again = raw.map(|(standing, history)| What::PieceSetOut {
            piece: history.id,
            facts: Piece { start: typed, ..history.piece },
            name: standing.name.clone(),
        });
        cook.record_all(again.collect());
    };
    let unit = show::temperature_unit;
    view! {
        <div class="card">
            <h2>{wording("set-out-cook-title")}</h2>
            <Dinner now=clock::now() />
            <div class="pair">
                <SettingField
                    name="pit"
                    label=move || say!("set-out-pit", unit = unit())
                    value=move || state.read().settings.pit_target
                    limits=limits::PIT_TARGET
                    on_set=move |target| cook.record(What::PitTargetSet { target })
                />
                <OptionalField
                    name="pull"
                    label=move || say!("set-out-pull", unit = unit())
                    value=move || state.read().settings.pull_target
                    limits=limits::PULL_TARGET
                    example=USUAL_PULL
                    on_set=move |target| cook.record(What::PullTargetSet { piece: None, target })
                />
            </div>
            <p class="hint">{wording("set-out-pull-hint")}</p>
            <div class="pair">
                <SettingField
                    name="start"
                    label=move || say!("set-out-start", unit = unit())
                    value=start
                    limits=limits::START
                    on_set=set_start
                />
                <SettingField
                    name="ambient"
                    label=move || say!("set-out-ambient", unit = unit())
                    value=move || state.read().settings.ambient
                    limits=limits::AMBIENT
                    on_set=move |ambient| cook.record(What::AmbientSet { ambient })
                />
            </div>
            <p class="hint">{wording("set-out-start-hint")}</p>
        </div>
    }
}
