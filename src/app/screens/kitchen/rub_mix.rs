//! How much rub to mix for the day's pieces.

use cook_model::cook::limits;
use cook_model::kitchen::amounts::SaltLevel;
use cook_model::kitchen::rub::{Coat, Mix, Recipe, RubProblem, USUAL_LIMIT};
use cook_model::piece::Piece;
use cook_model::quantity::Mass;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::kitchen::{Count, Plain, open_kitchen, plain, words};
use crate::open_cook::open_cook;
use crate::parts::{Choice, If, SettingField};
use crate::words::wording;
use crate::{say, show};

const COUNTS: core::ops::RangeInclusive<Count> = Count(1)..=Count(40);
/// Grams of salt on 100 g of meat that someone may want as a limit.
const LIMITS: core::ops::RangeInclusive<Plain> = Plain(0.2)..=Plain(4.0);
const USUAL_WEIGHT: Mass = Mass::from_g(230.0);

/// The raw pieces to be rubbed or salted: the open cook's, or so many of a weight.
#[derive(Clone, Copy)]
pub struct RawPieces {
    count: RwSignal<Count>,
    each: RwSignal<Mass>,
    known: Derived<Vec<Piece>>,
}

impl RawPieces {
    /// Follows the open cook.
    pub fn start() -> Self {
        let cook = open_cook();
        let known = Derived::new(move || {
            let state = cook.state().read();
            state.history.pieces.iter().map(|piece| piece.piece).collect::<Vec<_>>()
        });
        Self { count: RwSignal::new(Count(4)), each: RwSignal::new(USUAL_WEIGHT), known }
    }

    /// The pieces. Reactive.
    pub fn all(self) -> Vec<Piece> {
        let known = self.known.get();
        if !known.is_empty() {
            return known;
        }
        (0..self.count.get().0).map(|_| plain(self.each.get())).collect()
    }
}

/// Which pieces; asked only where no cook says.
#[component]
pub fn WhichPieces(
    /// The pieces.
    pieces: RawPieces,
    /// Names the count's field on the page.
    count_name: &'static str,
    /// Names the weight's field.
    weight_name: &'static str,
) -> impl IntoView {
    let known = move || !pieces.known.read().is_empty();
    let told = move || {
        let all = pieces.all();
        let weight: Mass = all.iter().map(|piece| piece.weight).sum();
        say!("rub-for-cook", count = all.len(), weight = show::mass(weight))
    };
    view! {
        <If holds=known>
            <p class="window">{move || told()}</p>
        </If>
        <If holds=move || !known()>
            <div class="pair">
                <SettingField
                    name=count_name
                    label=wording("portions-how-many")
                    value=pieces.count
                    limits=COUNTS
                    on_set=move |count| pieces.count.set(count)
                />
                <SettingField
                    name=weight_name
                    label=|| say!("set-out-weight", unit = show::mass_unit())
                    value=pieces.each
                    limits=limits::WEIGHT
                    on_set=move |each| pieces.each.set(each)
                />
            </div>
        </If>
    }
}

/// How much to mix for the day's pieces, and how salty it makes them.
#[component]
pub fn Mixed(
    /// The rub.
    recipe: Derived<Recipe>,
) -> impl IntoView {
    let draft = open_kitchen().draft();
    let pieces = RawPieces::start();
    let limit = move || draft.read().salt_limit.unwrap_or(USUAL_LIMIT.g_per_100g());
    let mix = Derived::new(move || {
        let limit = SaltLevel::from_g_per_100g(limit());
        let draft = draft.read();
        recipe.read().mix(&pieces.all(), draft.coat, limit, draft.solution.salt())
    });
    let coats = vec![
        (Coat::Light, wording("coat-light")),
        (Coat::Medium, wording("coat-medium")),
        (Coat::Heavy, wording("coat-heavy")),
    ];
    let told = move || match mix.get() {
        Ok(mix) => Some(view! { <Measures mix=mix limit=limit() /> }.into_any()),
        Err(RubProblem::Empty) => None,
        Err(RubProblem::NoPieces) => {
            Some(view! { <p class="lead">{say!("rub-no-pieces")}</p> }.into_any())
        }
        Err(_) => Some(view! { <p class="bad">{say!("rub-bad")}</p> }.into_any()),
    };
    view! {
        <h2>{wording("rub-mix-title")}</h2>
        <WhichPieces pieces=pieces count_name="rub-count" weight_name="rub-weight" />
        <Choice
            name="rub-coat"
            label=wording("rub-coat")
            options=coats
            chosen=move || draft.read().coat
            on_choose=move |coat| draft.update(|draft| draft.coat = coat)
        />
        <SettingField
            name="rub-limit"
            label=wording("rub-limit")
            value=move || Plain(limit())
            limits=LIMITS
            on_set=move |typed: Plain| draft.update(|draft| draft.salt_limit = Some(typed.0))
        />
        {move || told()}
    }
}

/// What to measure out.
#[component]
fn Measures(
    /// The mix.
    mix: Mix,
    /// The cook's limit, grams of salt on 100 g.
    limit: f64,
) -> impl IntoView {
    let rows = mix.measured.into_iter().map(|line| {
        let weight = say!("grams", count = show::number(line.weight.g(), 1));
        view! {
            <li>
                <span class="what">{line.name}</span>
                <span class="last">{words::spoons(line.volume)} " (" {weight} ")"</span>
            </li>
        }
    });
    let saltiest = show::number(mix.saltiest.g_per_100g(), 1);
    view! {
        <div class="card">
            <ul class="rows bag-list">{rows.collect_view()}</ul>
            <p class="window">
                {say!("rub-total", weight = show::number(mix.weight.g(), 0))}
            </p>
            <p>
                {say!(
                    "rub-level",
                    level = show::number(mix.level.g_per_100g(), 1),
                    saltiest = saltiest.clone()
                )}
            </p>
            <p>{say!("rub-oil", oil = words::spoons(mix.oil))}</p>
        </div>
        {mix
            .over_limit
            .then(|| {
                view! {
                    <p class="caution" role="alert">
                        {say!("rub-over", saltiest = saltiest, limit = show::number(limit, 1))}
                    </p>
                }
            })}
    }
}
