use cook_model::kitchen::card::{Card, CardProblem};
use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::log::KitchenWhat;
use cook_model::kitchen::reheat::{
    BathPlan, CORE, Guidance, ReheatProblem, Thawing, USUAL_BATH, USUAL_CORE, bath_time, guidance,
    thaw_time,
};
use cook_model::kitchen::shape::Portion;
use cook_model::kitchen::storage::Place;
use cook_model::quantity::{Length, Temperature};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::kitchen::{open_kitchen, words};
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{Choice, Heading, If, SettingField};
use crate::words::{Words, wording};
use crate::{say, show};

/// From the coolest bath for the coolest core to boiling water.
const BATH: core::ops::RangeInclusive<Temperature> =
    Temperature::from_f(133.0)..=Temperature::from_f(212.0);
/// What a bag can measure.
const THICKNESS: core::ops::RangeInclusive<Length> = Length::from_mm(5.0)..=Length::from_mm(100.0);

/// How to make one bag hot: by the code on its label, or by the bag itself.
#[component]
pub fn Reheat(
    /// What the code says.
    card: Card,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let known = Derived::new(move || kitchen.state().read().bag(card.bag).cloned());
    // The bag may have been moved since its label was printed.
    let from = RwSignal::new(card.place);
    Effect::new(move || {
        if let Some(place) = known.get().and_then(|bag| bag.place()) {
            from.set(place);
        }
    });
    let bath = RwSignal::new(USUAL_BATH);
    let core = RwSignal::new(USUAL_CORE);
    let thickness = RwSignal::new(card.portion().thickness());
    let plan = Derived::new(move || BathPlan {
        portion: Portion { thickness: Some(thickness.get()), ..card.portion() },
        from: from.get(),
        bath: bath.get(),
        core: core.get(),
        warm: known.get().map_or(card.warm, |bag| bag.bag.brings.warm),
    });
    let cook = open_cook();
    let cautions = Derived::new(move || match known.get() {
        Some(state) => state.cautions(cook.now()),
        None => card.cautions(cook.now()),
    });
    let over = move || {
        let refused = [Caution::PastEatBy, Caution::TooLateIntoCold];
        cautions.read().iter().any(|caution| refused.contains(caution))
    };
    let unsure = move || cautions.read().contains(&Caution::DaysUnknown);
    let title = move || match known.get() {
        Some(state) => say!("reheat-which", bag = words::bag(&state)),
        None => say!("reheat-which", bag = say!("bag-number", number = card.bag.count)),
    };
    let facts = move || {
        let (form, weight) = (words::form(card.form), show::mass(card.weight));
        let cooked = words::day(card.cooked);
        say!("reheat-facts", form = form, weight = weight, cooked = cooked)
    };
    let places = [Place::Fridge, Place::Freezer];
    view! {
        <section class="screen reheat">
            <Heading text=title />
            <p>{move || facts()}</p>
            <StandsNow card=card cautions=cautions />
            <If holds=unsure>
                <p class="caution">{move || words::caution(Caution::DaysUnknown)}</p>
            </If>
            // What is past its limit is not reheated.
            <If holds=move || !over()>
                <Minutes plan=plan />
            </If>
            <Choice
                name="reheat-from"
                label=wording("reheat-from")
                options=places.map(|place| (place, Words::from(move || from_words(place)))).to_vec()
                chosen=from
                on_choose=move |place| from.set(place)
            />
            <div class="pair">
                <SettingField
                    name="reheat-bath"
                    label=|| say!("reheat-bath", unit = show::temperature_unit())
                    value=bath
                    limits=BATH
                    on_set=move |typed| bath.set(typed)
                />
                <SettingField
                    name="reheat-core"
                    label=|| say!("reheat-core", unit = show::temperature_unit())
                    value=core
                    limits=CORE
                    on_set=move |typed| core.set(typed)
                />
            </div>
            <SettingField
                name="reheat-thickness"
                label=|| say!("reheat-thickness", unit = show::length_unit())
                value=thickness
                limits=THICKNESS
                on_set=move |typed| thickness.set(typed)
                hint=wording("reheat-thickness-hint")
            />
            <OtherWays plan=plan />
        </section>
    }
}

fn from_words(place: Place) -> String {
    match place {
        Place::Fridge => say!("reheat-chilled"),
        Place::Freezer => say!("reheat-frozen"),
    }
}

/// What the stock says of the bag, and that it was used.
#[component]
fn StandsNow(
    /// The bag's card.
    card: Card,
    /// What to say beside it.
    cautions: Derived<Vec<Caution>>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let bag = card.bag;
    let known = Derived::new(move || kitchen.state().read().bag(bag).cloned());
    let past = move || {
        let over = [Caution::PastEatBy, Caution::TooLateIntoCold];
        cautions.read().iter().copied().find(|caution| over.contains(caution))
    };
    let there = move || past().is_none() && known.get().is_some_and(|state| state.ended.is_none());
    let standing = move || match known.get() {
        Some(state) if state.ended.is_none() => show::capital(words::keeps(&state)),
        Some(_) => say!("bag-gone"),
        None => say!("reheat-not-here"),
    };
    view! {
        <p class="window">{move || standing()}</p>
        <If holds=move || past().is_some()>
            <p class="caution" role="alert">
                {move || past().map(words::caution)}
            </p>
        </If>
        <If holds=there>
            <button
                class="second-action"
                on:click=move |_| kitchen.record(vec![KitchenWhat::BagUsed { bag }])
            >
                {wording("bag-used")}
            </button>
        </If>
    }
}

/// How long in the bath: the time that is sure, and beside it the likeliest.
#[component]
fn Minutes(
    /// The bag and its bath.
    plan: Derived<BathPlan>,
) -> impl IntoView {
    let cook = open_cook();
    let time = Derived::new(move || bath_time(&plan.get()));
    let shown = move || {
        Some(match time.get() {
            Ok(time) => {
                let ready = show::the_time(cook.now() + time.surely);
                let cautions = time.cautions.into_iter().map(|caution| {
                    view! {
                        <p class="caution">
                            {words::caution(caution)} " " <small>{caution.source()}</small>
                        </p>
                    }
                });
                view! {
                    <div class="card minutes">
                        <p class="name">
                            {say!("reheat-time", bath = show::temperature(plan.get().bath))}
                        </p>
                        <p class="degrees">{show::span(time.surely)}</p>
                        <p class="last">
                            {say!(
                                "reheat-likely",
                                likely = show::span(time.likely),
                                core = show::temperature(plan.get().core),
                                ready = ready
                            )}
                        </p>
                    </div>
                    {cautions.collect_view()}
                }
                .into_any()
            }
            Err(problem) => {
                view! { <p class="bad" role="alert">{problem_words(problem)}</p> }.into_any()
            }
        })
    };
    view! { {move || shown()} }
}

fn problem_words(problem: ReheatProblem) -> String {
    match problem {
        ReheatProblem::BathTooCool => say!("reheat-bath-too-cool"),
        ReheatProblem::BathTooHot => say!("reheat-bath-too-hot"),
        ReheatProblem::Core => say!("reheat-core-bad"),
        ReheatProblem::TooLong => say!("reheat-too-long"),
        _ => say!("reheat-bag-bad"),
    }
}

/// Thawing first, the pan and the oven.
#[component]
fn OtherWays(
    /// The bag and its bath.
    plan: Derived<BathPlan>,
) -> impl IntoView {
    let thawing = move || {
        let plan = plan.get();
        let thaw = |how| thaw_time(&plan.portion, how).ok();
        let time = |how| thaw(how).map(|thaw| show::rough(thaw.time));
        let slow = thaw(Thawing::ColdWater).map(|thaw| thaw.cautions).unwrap_or_default();
        let slow = slow.into_iter().map(|caution| {
            view! {
                <p class="caution">
                    {words::caution(caution)} " " <small>{caution.source()}</small>
                </p>
            }
        });
        (plan.from == Place::Freezer).then(|| {
            view! {
                <h2>{say!("reheat-thaw-title")}</h2>
                <p>
                    {say!(
                        "reheat-thaw",
                        fridge = time(Thawing::Fridge).unwrap_or_default(),
                        water = time(Thawing::ColdWater).unwrap_or_default()
                    )}
                </p>
                {slow.collect_view()}
            }
        })
    };
    let ways = move || {
        let told = guidance(plan.get().portion.form).into_iter();
        let advised = show::temperature(Caution::LEFTOVERS);
        told.map(|way| {
            let advised = advised.clone();
            let text = match way {
                Guidance::Pan { stir: true } => say!("reheat-pan-stir", advised = advised),
                Guidance::Pan { stir: false } => say!("reheat-pan-turn", advised = advised),
                Guidance::Oven { at_least } => {
                    say!("reheat-oven", oven = show::temperature(at_least), advised = advised)
                }
            };
            view! { <p>{text}</p> }
        })
        .collect_view()
    };
    view! {
        {move || thawing()}
        <h2>{wording("reheat-other-title")}</h2>
        {move || ways()}
        <p class="hint">{wording("caution-local-code")}</p>
    }
}

/// A label whose code could not be read.
#[component]
pub fn DamagedLabel(
    /// Why not.
    problem: CardProblem,
) -> impl IntoView {
    let navigation = navigation();
    let why = move || match problem {
        CardProblem::LaterVersion => say!("label-later"),
        _ => say!("label-damaged"),
    };
    view! {
        <section class="screen">
            <Heading text=wording("label-unread") />
            <p class="lead">{move || why()}</p>
            <button class="main-action" on:click=move |_| navigation.replace(Screen::Kitchen)>
                {wording("kitchen-entry")}
            </button>
        </section>
    }
}
