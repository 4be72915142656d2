//! Which rule of proof the cook goes by, with what each asks for.

use cook_model::cook::What;
use cook_model::quantity::Temperature;
use cook_model::safety::{
    FatColumn, INSTANT_KILL, LONGEST_GAP, ProofRule, RuleCaution, dwell_rows,
};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::parts::{Choice, Field, If};
use crate::typed::{Typed, quantity};
use crate::words::{Words, wording};
use crate::{safety_words, say, show};

/// The hottest figure of one's own: beyond it no breast is worth eating.
const HOTTEST_OWN: Temperature = Temperature::from_f(185.0);
/// A usual figure of those who have one.
const USUAL_OWN: Temperature = Temperature::from_f(170.0);

/// The three rules, without their figures.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Instant,
    Own,
    Held,
}

impl Kind {
    fn of(rule: ProofRule) -> Self {
        match rule {
            ProofRule::Stricter { .. } => Self::Own,
            ProofRule::Held { .. } => Self::Held,
            _ => Self::Instant,
        }
    }
}

/// The choice of the rule. The usual one is taken with one tap; each of the others first shows what
/// it is, where it comes from and what speaks against it.
#[component]
pub fn RuleChoice() -> impl IntoView {
    let cook = open_cook();
    let rule = Derived::new(move || cook.facts().read().settings.proof_rule);
    let looked_at = RwSignal::new(Kind::Instant);
    // Follows a choice made, and an undo.
    Effect::new(move || looked_at.set(Kind::of(rule.get())));
    let choose = move |kind| {
        looked_at.set(kind);
        if kind == Kind::Instant && rule.get_untracked() != ProofRule::Instant {
            cook.record(What::ProofRuleSet { rule: ProofRule::Instant });
        }
    };
    let instant = || show::temperature(INSTANT_KILL);
    let options = vec![
        (Kind::Instant, Words::from(move || say!("rule-instant", temperature = instant()))),
        (Kind::Own, wording("safety-rule-own")),
        (Kind::Held, wording("safety-rule-held")),
    ];
    view! {
        <div class="card">
            <Choice
                name="rule"
                label=wording("safety-rule")
                options=options
                chosen=looked_at
                on_choose=choose
                stacked=true
            />
            <p class="note">
                {move || say!("safety-rule-now", rule = safety_words::rule(rule.get()))}
            </p>
            {move || match looked_at.get() {
                Kind::Instant => {
                    view! {
                        <p>{say!("rule-instant-text", temperature = instant())}</p>
                        <Source rule=ProofRule::Instant />
                    }
                        .into_any()
                }
                Kind::Own => view! { <OwnFigure rule=rule.get() /> }.into_any(),
                Kind::Held => view! { <Table rule=rule.get() /> }.into_any(),
            }}
        </div>
    }
}

/// Where a rule comes from. The title of what was published stays in its own language.
#[component]
fn Source(
    /// The rule.
    rule: ProofRule,
) -> impl IntoView {
    view! { <p class="hint">{move || say!("safety-source", source = rule.source())}</p> }
}

/// A figure of the cook's own, above the usual one.
#[component]
fn OwnFigure(
    /// The rule in force.
    rule: ProofRule,
) -> impl IntoView {
    let cook = open_cook();
    let held = match rule {
        ProofRule::Stricter { .. } => rule.instant(),
        _ => USUAL_OWN,
    };
    let text = RwSignal::new(held.in_field());
    let bad = RwSignal::new(None);
    let take = move |_| match quantity(&text.get_untracked(), &(INSTANT_KILL..=HOTTEST_OWN), held) {
        Ok(at_least) => cook.record(What::ProofRuleSet { rule: ProofRule::Stricter { at_least } }),
        Err(message) => bad.set(Some(message)),
    };
    view! {
        <p>{move || say!("rule-own-text", temperature = show::temperature(INSTANT_KILL))}</p>
        <Source rule=ProofRule::Instant />
        <Field
            name="own-figure"
            label=|| say!("rule-own-field", unit = show::temperature_unit())
            text=text
            bad=bad
        />
        <button on:click=take>{wording("rule-own-use")}</button>
    }
}

/// Time at temperature, with the caution that goes before it.
#[component]
fn Table(
    /// The rule in force.
    rule: ProofRule,
) -> impl IntoView {
    let cook = open_cook();
    let held = match rule {
        ProofRule::Held { fat } => fat,
        _ => FatColumn::default(),
    };
    let fat = RwSignal::new(held);
    let looked_at = move || ProofRule::Held { fat: fat.get() };
    let caution = move || {
        looked_at().caution().map(|RuleCaution::SurfaceNotValidated| {
            let instant = show::temperature(INSTANT_KILL);
            view! { <p class="caution">{say!("rule-held-caution", instant = instant)}</p> }
        })
    };
    let text = move || {
        let (gap, instant) = (show::span(LONGEST_GAP), show::temperature(INSTANT_KILL));
        say!("rule-held-text", gap = gap, instant = instant)
    };
    let rows = move || {
        let row = |row: &cook_model::safety::DwellRow| {
            let (temperature, dwell) = (show::reading(row.at_least), show::countdown(row.dwell));
            let words = say!("rule-held-row", temperature = temperature, dwell = dwell);
            view! { <li>{words}</li> }
        };
        dwell_rows(fat.get()).iter().map(row).collect_view()
    };
    let is_new = move || rule != looked_at();
    view! {
        {move || caution()}
        <p>{move || text()}</p>
        <Source rule=ProofRule::Held { fat: FatColumn::Twelve } />
        <Choice
            name="fat"
            label=wording("rule-held-fat")
            options=vec![
                (FatColumn::Twelve, wording("rule-held-fat-12")),
                (FatColumn::Five, wording("rule-held-fat-5")),
            ]
            chosen=fat
            on_choose=move |column| fat.set(column)
        />
        <p class="note">{wording("rule-held-rows")}</p>
        <ul class="dwell">{move || rows()}</ul>
        <If holds=is_new>
            <button on:click=move |_| {
                cook.record(What::ProofRuleSet { rule: ProofRule::Held { fat: fat.get_untracked() } })
            }>{wording("rule-held-use")}</button>
        </If>
    }
}
