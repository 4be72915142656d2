use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::chill::{Chilled, Cooling, chill, into_cold_by};
use cook_model::kitchen::log::Bag;
use cook_model::kitchen::packing_order::{ToPack, packing_order};
use cook_model::kitchen::shape::Portion;
use cook_model::quantity::{Mass, Moment, Span, Temperature};
use cook_model::safety::{COOL_FIRST, COOL_FROM, COOL_SECOND};
use leptos::prelude::*;

use super::pack::{is_packed, planned};
use super::portions::Today;
use crate::derived::Derived;
use crate::kitchen::{Count, OpenKitchen, open_kitchen, words};
use crate::open_cook::open_cook;
use crate::parts::{Choice, Heading, If, SettingField};
use crate::words::{Words, wording};
use crate::{say, show};

/// A rested piece as it is bagged, until the person types what theirs reads.
const USUAL_CORE: Temperature = Temperature::from_f(140.0);
/// What is still to be chilled.
const CORES: core::ops::RangeInclusive<Temperature> =
    Temperature::from_f(42.0)..=Temperature::from_f(212.0);
/// Bags packed longer ago are cold, or lost.
const STILL_COOLING: Span = Span::hours(6);
const MINUTES: core::ops::RangeInclusive<Count> = Count(1)..=Count(30);

/// Bags alike: they cool alike.
#[derive(Clone, Debug, PartialEq)]
struct Batch {
    like: Bag,
    count: usize,
    /// When it was last known to be hot; none once it is in the cold.
    hot: Option<Moment>,
    /// The same of what is in the cold.
    was_hot: Moment,
}

impl Batch {
    /// The heaviest of them, which cools last.
    fn portion(&self) -> Portion {
        self.like.portion()
    }

    /// Since when its core is under 135 F, on the unfavourable side, if it reads `core` now.
    fn under_hot_since(&self, core: Temperature, now: Moment) -> Moment {
        if core >= COOL_FROM { now } else { self.hot.unwrap_or(self.was_hot) }
    }

    fn name(&self) -> String {
        let (form, weight) = (words::form(self.like.form), show::mass(self.like.weight));
        let what = if self.like.name.is_empty() { form } else { self.like.name.clone() };
        say!("chill-batch", what = what, count = self.count, weight = weight)
    }
}

/// How fast the bags cool in the refrigerator, on ice and in an ice bath, and which to pack first.
#[component]
pub fn Chill() -> impl IntoView {
    let (kitchen, cook) = (open_kitchen(), open_cook());
    let today = Today::start();
    let core = RwSignal::new(USUAL_CORE);
    let batches = Derived::new(move || batches(kitchen, today, cook.now()));
    view! {
        <section class="screen chill">
            <Heading text=wording("chill-title") />
            <p class="caution">{move || words::caution(Caution::TwoHours)}</p>
            <If
                holds=move || !batches.read().is_empty()
                otherwise=|| view! { <p class="lead">{wording("chill-none")}</p> }
            >
                <SettingField
                    name="chill-core"
                    label=|| say!("chill-core", unit = show::temperature_unit())
                    value=core
                    limits=CORES
                    on_set=move |typed| core.set(typed)
                    hint=wording("chill-core-hint")
                />
                {move || {
                    let cards = batches.get().into_iter();
                    cards.map(|batch| view! { <Times batch=batch core=core /> }).collect_view()
                }}
                <If holds=move || batches.read().iter().any(|batch| batch.hot.is_some())>
                    <Order batches=batches core=core />
                </If>
            </If>
            <h2>{wording("chill-helps-title")}</h2>
            <p>{wording("chill-helps-split")}</p>
            <p>{wording("chill-helps-flat")}</p>
            <p>{wording("chill-helps-ice")}</p>
        </section>
    }
}

/// The bags planned and not packed yet, and those packed lately.
fn batches(kitchen: OpenKitchen, today: Today, now: Moment) -> Vec<Batch> {
    let state = kitchen.state().read();
    let lately = state
        .bags
        .iter()
        .filter(|bag| bag.ended.is_none() && now - bag.stays[0].from < STILL_COOLING)
        .map(|bag| (bag.bag.clone(), None));
    let mut bags: Vec<(Bag, Option<Moment>)> = lately.collect();
    if !is_packed(kitchen) {
        let planned = planned(kitchen, today).into_iter();
        bags.extend(planned.map(|planned| (planned.bag, Some(planned.hot))));
    }
    let mut batches: Vec<Batch> = Vec::new();
    for (bag, hot) in bags {
        let was_hot = hot.or(bag.brings.hot).unwrap_or(bag.cooked);
        let alike = |batch: &&mut Batch| {
            let like = &batch.like;
            like.name == bag.name
                && like.form == bag.form
                && like.thickness == bag.thickness
                && batch.hot.is_some() == hot.is_some()
        };
        if let Some(batch) = batches.iter_mut().find(alike) {
            batch.count += 1;
            batch.like.weight = heavier(batch.like.weight, bag.weight);
            batch.like.cooked = batch.like.cooked.min(bag.cooked);
            batch.hot = batch.hot.min(hot);
            batch.was_hot = batch.was_hot.min(was_hot);
        } else {
            batches.push(Batch { like: bag, count: 1, hot, was_hot });
        }
    }
    batches
}

fn heavier(a: Mass, b: Mass) -> Mass {
    if b > a { b } else { a }
}

/// One batch in each kind of cold.
#[component]
fn Times(
    /// The batch.
    batch: Batch,
    /// Its core as it is bagged.
    core: RwSignal<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let portion = batch.portion();
    let named = batch.name();
    let rows = move || {
        // Each minute would draw it anew; it changes with what is typed.
        let now = untrack(|| cook.now());
        let under_hot = now - batch.under_hot_since(core.get(), now);
        Cooling::ALL.map(|cooling| {
            let told = chill(&portion, core.get(), under_hot, cooling);
            let text = told.map_or_else(|_| say!("reheat-bag-bad"), |chilled| in_words(&chilled));
            view! {
                <li>
                    <span class="what">{words::cooling(cooling)}</span>
                    <span class="last">{text}</span>
                </li>
            }
        })
    };
    view! {
        <section class="card">
            <h2>{named}</h2>
            <ul class="rows bag-list">{move || rows()}</ul>
        </section>
    }
}

fn in_words(chilled: &Chilled) -> String {
    let times = say!(
        "chill-times",
        middle = show::temperature(COOL_FIRST.0),
        first = show::span(chilled.to_middle),
        cold = show::temperature(COOL_SECOND.0),
        second = show::span(chilled.to_cold)
    );
    let worst_first = [
        Caution::CoolingOver,
        Caution::MiddleNotSeen,
        Caution::FirstStepSlow,
        Caution::SecondStepSlow,
    ];
    let broken = worst_first.into_iter().find(|caution| chilled.cautions.contains(caution));
    let broken = broken.map_or_else(|| say!("chill-keeps"), words::caution);
    format!("{times} {broken}")
}

/// The order of packing, by when each batch must be in the cold.
#[component]
fn Order(
    /// The batches.
    batches: Derived<Vec<Batch>>,
    /// Their core as they are bagged.
    core: RwSignal<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let cooling = RwSignal::new(Cooling::Fridge);
    let minutes = RwSignal::new(Count(2));
    let kinds = Cooling::ALL.map(|kind| (kind, Words::from(move || words::cooling(kind))));
    let turns = move || {
        let batches = batches.get();
        let ambient = cook.state().read().settings.ambient;
        let each = Span::minutes(i64::from(minutes.get().0));
        let now = cook.now();
        let to_pack = batches.iter().enumerate().filter_map(|(id, batch)| {
            let since = batch.hot.map(|_| batch.under_hot_since(core.get(), now))?;
            let chilled = chill(&batch.portion(), core.get(), now - since, cooling.get()).ok()?;
            let by = into_cold_by(batch.like.cooked, ambient, Some(since), &chilled);
            Some(ToPack { id, takes: each * i32::try_from(batch.count).ok()?, by })
        });
        let turns = packing_order(now, &to_pack.collect::<Vec<_>>());
        let rows = turns.into_iter().map(|turn| {
            let by = show::the_time(turn.done + turn.spare);
            let late = turn.spare < Span::zero();
            let text = if late {
                say!("chill-late", by = by, span = show::span(turn.spare.abs()))
            } else {
                say!("chill-in-time", by = by, done = show::the_time(turn.done))
            };
            view! {
                <li>
                    <span class="what">{batches.get(turn.id).map(Batch::name)}</span>
                    <span class:last=!late class:bad=late>
                        {text}
                    </span>
                </li>
            }
        });
        rows.collect_view()
    };
    view! {
        <h2>{wording("chill-order-title")}</h2>
        <Choice
            name="chill-where"
            label=wording("chill-where")
            options=kinds.to_vec()
            chosen=cooling
            on_choose=move |kind| cooling.set(kind)
        />
        <SettingField
            name="chill-minutes"
            label=wording("chill-minutes")
            value=minutes
            limits=MINUTES
            on_set=move |typed| minutes.set(typed)
        />
        <ol class="rows bag-list">{move || turns()}</ol>
    }
}
