use cook_model::cook::{What, forecast_lethality};
use cook_model::piece::PieceId;
use cook_model::quantity::{Temperature, TemperatureDifference};
use cook_model::safety::ASKED_OF_POULTRY;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::{say, show};

/// A chance of having to go back from which it is told.
const WORTH_TELLING: f64 = 0.1;
/// Where the forecast's death of bacteria comes from.
const LETHALITY_SOURCE: &str = "Murphy et al. 2004, Poultry Science 83:1218";
/// Less of it is not worth a line.
const LEAST_SHOWN: f64 = 0.1;

/// At what temperature the piece is to be pulled, and how likely it then is to have to go back; with the
/// lowest pull after which the rest proves it, one tap away where another was chosen.
#[component]
pub fn PullProposal(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let told = Derived::new(move || {
        let forecast = cook.piece_forecast(piece)?;
        Some((forecast.pull_at, forecast.proving, forecast.goes_back?.value()))
    });
    move || {
        let (pull_at, proving, goes_back) = told.get()?;
        let differs = (pull_at - proving).abs() >= TemperatureDifference::from_f(0.5);
        let in_words = |temperature: Temperature| show::temperature(temperature);
        let risk = (goes_back >= WORTH_TELLING).then(|| {
            let chance = (goes_back * 10.0).round();
            let words = say!(
                "proposal-goes-back",
                temperature = in_words(pull_at),
                times = show::number(chance, 0)
            );
            view! { <p class="caution">{words}</p> }
        });
        let take = What::PullTargetSet { piece: Some(piece), target: None };
        Some(view! {
            <section class="card proposal">
                <p>
                    {say!("proposal-pull-at")} ": " <strong>{in_words(pull_at)}</strong> " "
                    {differs.then(|| say!("proposal-lowest", temperature = in_words(proving)))}
                </p>
                {risk}
                {differs
                    .then(|| {
                        view! {
                            <button on:click=move |_| {
                                cook.record(take.clone())
                            }>{say!("proposal-take", temperature = in_words(proving))}</button>
                        }
                    })}
            </section>
        })
    }
}

/// What the forecast says about the death of bacteria: information, and labelled as such.
#[component]
pub fn ForecastLethality(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let words = move || {
        let forecast = cook.forecast().read();
        let cuts = forecast_lethality(&forecast, piece, cook.now());
        (cuts.log10() >= LEAST_SHOWN).then(|| {
            let asked = show::number(ASKED_OF_POULTRY.log10(), 0);
            let cuts = if cuts > ASKED_OF_POULTRY {
                format!("> {asked}")
            } else {
                show::number(cuts.log10(), 1)
            };
            say!("lethality", cuts = cuts, asked = asked, source = LETHALITY_SOURCE)
        })
    };
    view! { <p class="hint">{move || words()}</p> }
}
