//! Salting ahead of the cook, by weight.

use cook_model::kitchen::amounts::SaltLevel;
use cook_model::kitchen::brine::{Brine, BrineProblem, Salting, salting};
use cook_model::quantity::{Length, Mass, Span};
use leptos::prelude::*;

use super::rub_mix::{RawPieces, WhichPieces};
use crate::derived::Derived;
use crate::kitchen::{Plain, open_kitchen};
use crate::parts::{Choice, If, SettingField};
use crate::words::wording;
use crate::{say, show};

const LEVELS: core::ops::RangeInclusive<Plain> = Plain(0.1)..=Plain(3.0);
/// Seasoned through and not salty (common practice, no source).
const USUAL_LEVEL: Plain = Plain(1.0);
const WATERS: core::ops::RangeInclusive<Mass> = Mass::from_g(100.0)..=Mass::from_kg(20.0);

/// How the pieces are salted ahead.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Way {
    None,
    Dry,
    Wet,
}

/// Dry and wet brine, by weight, with the time they need.
#[component]
pub fn Brines() -> impl IntoView {
    let way = RwSignal::new(Way::None);
    let ways = vec![
        (Way::None, wording("brine-none")),
        (Way::Dry, wording("brine-dry")),
        (Way::Wet, wording("brine-wet")),
    ];
    view! {
        <h2>{wording("brine-title")}</h2>
        <Choice
            name="brine-way"
            label=wording("brine-title")
            options=ways
            chosen=way
            on_choose=move |chosen| way.set(chosen)
            quiet=true
        />
        <If holds=move || way.get() != Way::None>
            <Worked way=way />
        </If>
    }
}

/// How much salt, and for how long.
#[component]
fn Worked(
    /// Dry or wet.
    way: RwSignal<Way>,
) -> impl IntoView {
    let draft = open_kitchen().draft();
    let pieces = RawPieces::start();
    let level = RwSignal::new(USUAL_LEVEL);
    let water = RwSignal::new(Mass::from_kg(1.0));
    let worked = Derived::new(move || {
        let all = pieces.all();
        let meat: Mass = all.iter().map(|piece| piece.weight).sum();
        let thickness = all.iter().map(|piece| piece.dimensions().thickness);
        let thickest = thickness.fold(Length::ZERO, |a, b| if b > a { b } else { a });
        let brine = match way.get() {
            Way::Wet => Brine::Wet { water: water.get() },
            Way::Dry | Way::None => Brine::Dry,
        };
        let level = SaltLevel::from_g_per_100g(level.get().0);
        salting(brine, meat, thickest, level, draft.read().solution.salt())
    });
    view! {
        <WhichPieces pieces=pieces count_name="brine-count" weight_name="brine-weight" />
        <div class="pair">
            <SettingField
                name="brine-level"
                label=wording("brine-level")
                value=level
                limits=LEVELS
                on_set=move |typed| level.set(typed)
            />
            <If holds=move || way.get() == Way::Wet>
                <SettingField
                    name="brine-water"
                    label=|| say!("brine-water", unit = show::mass_unit())
                    value=water
                    limits=WATERS
                    on_set=move |typed| water.set(typed)
                />
            </If>
        </div>
        {move || match worked.get() {
            Ok(salting) => told(salting).into_any(),
            Err(BrineProblem::HeldAlready) => {
                view! { <p class="caution">{say!("brine-held-already")}</p> }.into_any()
            }
            Err(_) => ().into_any(),
        }}
        <p class="hint">{wording("brine-guide")}</p>
    }
}

fn told(salting: Salting) -> impl IntoView {
    let between = |[quick, slow]: [Span; 2]| {
        say!("brine-between", quick = show::rough(quick), slow = show::rough(slow))
    };
    let salt = say!("brine-salt", grams = show::number(salting.salt.g(), 1));
    view! {
        <div class="card">
            <p class="name">{salt}</p>
            <p>{say!("brine-outer", span = between(salting.outer_half))}</p>
            <p>{say!("brine-middle", span = between(salting.middle))}</p>
        </div>
        {salting
            .outlasts_raw
            .then(|| view! { <p class="caution">{say!("brine-outlasts")}</p> })}
    }
}
