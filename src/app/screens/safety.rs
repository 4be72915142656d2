//! Safety: what proves a piece, how far the thermometers may be off, and how bold the checks are.

use cook_model::cook::{What, limits};
use cook_model::history::Tolerances;
use cook_model::quantity::TemperatureDifference;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{Choice, Heading, SettingField};
use crate::screens::safety_rule::RuleChoice;
use crate::typed::{Percent, Typed};
use crate::words::{Words, wording};
use crate::{say, show};

/// What proves a piece in this cook, and how far the thermometers may be off.
#[component]
pub fn Safety() -> impl IntoView {
    let navigation = navigation();
    let row = move |words: Words, to: Screen| {
        view! {
            <button class="row" on:click=move |_| navigation.go(to)>
                {move || words.get()}
            </button>
        }
    };
    view! {
        <section class="screen safety">
            <Heading text=wording("safety-title") />
            <p class="lead">{wording("safety-lead")}</p>
            <RuleChoice />
            <ToleranceFields />
            {row(wording("more-thermometer"), Screen::ThermometerCheck)}
            <Checks />
            {row(wording("more-cautions"), Screen::Cautions)}
        </section>
    }
}

/// How far each thermometer may be off.
#[component]
fn ToleranceFields() -> impl IntoView {
    let cook = open_cook();
    let held = Derived::new(move || cook.facts().read().settings.tolerances);
    let set = move |change: fn(&mut Tolerances, TemperatureDifference)| {
        move |typed| {
            let mut tolerances = cook.facts_as_tapped().settings.tolerances;
            change(&mut tolerances, typed);
            cook.record(What::TolerancesSet { tolerances });
        }
    };
    let unit = show::temperature_unit;
    view! {
        <div class="card">
            <h2>{wording("safety-thermometers")}</h2>
            <p class="hint">{wording("safety-tolerance-hint")}</p>
            <div class="pair">
                <SettingField
                    name="tolerance-instant"
                    label=move || say!("safety-tolerance-instant", unit = unit())
                    value=move || held.get().instant_read
                    limits=limits::TOLERANCE
                    on_set=set(|all, typed| all.instant_read = typed)
                />
                <SettingField
                    name="tolerance-leave-in"
                    label=move || say!("safety-tolerance-leave-in", unit = unit())
                    value=move || held.get().leave_in
                    limits=limits::TOLERANCE
                    on_set=set(|all, typed| all.leave_in = typed)
                />
                <SettingField
                    name="tolerance-pit"
                    label=move || say!("safety-tolerance-pit", unit = unit())
                    value=move || held.get().pit
                    limits=limits::PIT_TOLERANCE
                    on_set=set(|all, typed| all.pit = typed)
                />
            </div>
        </div>
    }
}

/// How bold the checks are, and whether the prompts to clean are shown.
#[component]
fn Checks() -> impl IntoView {
    let cook = open_cook();
    let facts = cook.facts();
    let (least, most) = (*limits::CHECK_RISK.start(), *limits::CHECK_RISK.end());
    view! {
        <div class="card">
            <h2>{wording("safety-checks")}</h2>
            <SettingField
                name="check-risk"
                label=|| say!("safety-risk", unit = Percent::unit())
                value=move || Percent(facts.read().settings.check_risk_percent)
                limits=Percent(least)..=Percent(most)
                hint=wording("safety-risk-hint")
                on_set=move |typed: Percent| cook.record(What::CheckRiskSet { percent: typed.0 })
            />
            <Choice
                name="prompts"
                label=wording("safety-prompts")
                options=vec![
                    (true, wording("on")),
                    (false, wording("off")),
                ]
                chosen=move || facts.read().settings.prompts_shown
                on_choose=move |shown| cook.record(What::PromptsSet { shown })
            />
        </div>
    }
}
