use cook_model::cook::thinking::{Answer, Question};
use cook_model::cook::{CookState, Stage};
use cook_model::forecast::Peak;
use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use cook_model::quantity::Moment;
use cook_model::safety::{HoldProgress, ProofRule, hold_progress};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::thought_out::thought_out;
use crate::words::wording;
use crate::{safety_words, say, show};

/// What a resting piece still lacks, when to read it, and what to do if its peak has passed.
#[component]
pub fn ProofStatus(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let resting = Derived::new(move || {
        let state = state.read();
        state.piece(piece).is_some_and(|(standing, _)| standing.stage == Stage::Resting)
    });
    let peak = Derived::new(move || cook.forecast().read().piece(piece)?.peak);
    let hold = Derived::new(move || {
        let state = state.read();
        progress(&state, state.history.piece(piece)?)
    });
    let why = move || {
        let state = state.read();
        state.history.piece(piece).map(|history| safety_words::why_unproved(&state, history))
    };
    let instant = move || state.read().settings.proof_rule.instant();
    let too_low = move || peak.get().is_some_and(|peak| peak.temperature.high < instant());
    let when = move || match hold.get() {
        Some(hold) => Some(hold_words(hold)),
        None => Some(peak_words(peak.get()?, cook.now())),
    };
    let gone = Derived::new(move || peak.get().is_some_and(|peak| peak.at < cook.now()));
    let back = move || hold.read().is_none() && (gone.get() || too_low());
    view! {
        <If holds=move || resting.get()>
            <div class="unproved">
                <p class="note">
                    {wording("unproved")} " " {move || hold.read().is_none().then(why)}
                </p>
                <p>{move || when()}</p>
                <If holds=move || hold.read().is_none() && too_low()>
                    <p>{move || say!("proof-peak-low", rule = show::temperature(instant()))}</p>
                </If>
                <If holds=back>
                    <BackOn piece=piece />
                </If>
            </div>
        </If>
    }
}

/// How far a hold has come, where the rule chosen counts one.
fn progress(state: &CookState, history: &PieceHistory) -> Option<HoldProgress> {
    let ProofRule::Held { fat } = state.settings.proof_rule else { return None };
    hold_progress(&state.history, history, fat, state.doubted())
}

fn hold_words(hold: HoldProgress) -> String {
    let temperature = show::temperature(hold.at_least);
    let (since, by) = (show::the_time(hold.since), show::the_time(hold.read_by));
    let complete = show::the_time(hold.complete_at);
    if hold.complete_at <= hold.read_by {
        say!("proof-hold", temperature = temperature, since = since, complete = complete, by = by)
    } else {
        say!(
            "proof-hold-keep",
            temperature = temperature,
            since = since,
            complete = complete,
            by = by
        )
    }
}

fn peak_words(peak: Peak, now: Moment) -> String {
    let time = show::the_time(peak.at);
    if peak.at < now {
        return say!("proof-peak-gone", time = time);
    }
    let temperature = show::temperature(peak.temperature.middle);
    say!("proof-read-at", time = time, temperature = temperature)
}

/// How long a piece that is off and unproved needs back on the pit.
#[component]
pub fn BackOn(
    /// Which piece.
    piece: PieceId,
) -> impl IntoView {
    let state = open_cook().state();
    let time = thought_out(move || Some(Question::TimeBackOn { piece }));
    let words = move || {
        let rule = show::temperature(state.read().settings.proof_rule.instant());
        match time.get() {
            Some(Answer::TimeBackOn(Some(time))) => say!(
                "back-on",
                middle = show::span(time.middle),
                low = show::span(time.low),
                high = show::span(time.high),
                rule = rule
            ),
            _ => say!("back-on-unknown", rule = rule),
        }
    };
    view! { <p class="back-on">{move || words()}</p> }
}
