use cook_model::cook::{What, forecast_lethality};
use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use cook_model::quantity::{Length, Temperature, TemperatureDifference};
use cook_model::safety::ASKED_OF_POULTRY;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::thought_out::thought_out;
use crate::{say, show};

/// A piece up to this thick counts as thin here.
const THIN: Length = Length::from_mm(30.0);
/// What a thin piece rises after the pull, and at which thickness: by the app's heat model, from
/// a 250 F pit.
const THIN_RISE: (TemperatureDifference, Length) =
    (TemperatureDifference::from_f(3.0), Length::from_mm(25.0));
/// Where the forecast's death of bacteria comes from.
const LETHALITY_SOURCE: &str = "Murphy et al. 2004, Poultry Science 83:1218";
/// Less of it is not worth a line.
const LEAST_SHOWN: f64 = 0.1;

/// The lowest pull after which the rest can be relied on to prove the piece, beside the cook's own.
#[component]
pub fn PullProposal(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let is_on =
        Derived::new(move || state.read().history.piece(piece).is_some_and(PieceHistory::is_on));
    let proposal =
        thought_out(move || is_on.get(), move |state, now| state.propose_pull(piece, now));
    let thin = Derived::new(move || {
        let state = state.read();
        let thickest = state.history.piece(piece).and_then(|history| history.piece.thickest);
        thickest.is_some_and(|thickest| thickest <= THIN)
    });
    let thin_words = move || {
        let (rise, thickness) = (show::difference(THIN_RISE.0), show::length(THIN_RISE.1));
        say!("proposal-thin", rise = rise, thickness = thickness)
    };
    move || {
        let proposal = proposal.get()?;
        // Follows at once when the cook takes the proposal, or another figure.
        let chosen = state.read().history.piece(piece)?.pull_at;
        let target = proposal.lowest;
        let too_low = chosen < target;
        let differs = (chosen - target).abs() >= TemperatureDifference::from_f(0.5);
        let in_words = |temperature: Temperature| show::reading(temperature);
        Some(view! {
            <section class="card proposal">
                <p>
                    {say!("proposal-lowest")} ": " <strong>{in_words(target)}</strong> " "
                    {say!("proposal-yours", temperature = in_words(chosen))}
                </p>
                {too_low
                    .then(|| {
                        let words = say!("proposal-too-low", temperature = in_words(chosen));
                        view! { <p class="caution">{words}</p> }
                    })}
                {thin.get().then(|| view! { <p>{thin_words()}</p> })}
                {differs
                    .then(|| {
                        let take = What::PullTargetSet { piece: Some(piece), target };
                        view! {
                            <button on:click=move |_| {
                                cook.record(take.clone())
                            }>{say!("proposal-take", temperature = in_words(target))}</button>
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
