//! What the package says of salt that is in the chicken already.

use cook_model::kitchen::amounts::Fraction;
use cook_model::kitchen::solution::{STATED, Solution};
use leptos::prelude::*;

use crate::kitchen::{Plain, open_kitchen};
use crate::parts::{Choice, If, SettingField};
use crate::words::wording;
use crate::{say, show};

/// What most such packages say (common practice, no source): it stands in the field until theirs is typed.
const USUAL: Fraction = Fraction::from_percent(15.0);
const PER_CENT: core::ops::RangeInclusive<Plain> =
    Plain(STATED.start().percent())..=Plain(STATED.end().percent());

/// The same without the figure.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Answer {
    None,
    Stated,
    Unknown,
}

/// Asks whether the chicken was sold with a solution, and says what salt that is taken to be.
#[component]
pub fn SoldWith() -> impl IntoView {
    let draft = open_kitchen().draft();
    let solution = move || draft.read().solution;
    let answer = move || match solution() {
        Solution::None => Answer::None,
        Solution::Stated(_) => Answer::Stated,
        Solution::Unknown => Answer::Unknown,
    };
    let set = move |solution| draft.update(|draft| draft.solution = solution);
    let share = move || match solution() {
        Solution::Stated(share) => Plain(share.percent()),
        Solution::None | Solution::Unknown => Plain(USUAL.percent()),
    };
    let told = move || {
        let held = show::number(solution().salt().g_per_100g(), 2);
        match solution() {
            Solution::None => None,
            Solution::Stated(_) => Some(say!("solution-holds", held = held)),
            Solution::Unknown => Some(say!("solution-may-hold", held = held)),
        }
    };
    view! {
        <h2>{wording("solution-title")}</h2>
        <Choice
            name="solution"
            label=wording("solution-title")
            options=vec![
                (Answer::None, wording("solution-none")),
                (Answer::Stated, wording("solution-stated")),
                (Answer::Unknown, wording("solution-unknown")),
            ]
            chosen=answer
            on_choose=move |answer| set(match answer {
                Answer::None => Solution::None,
                Answer::Stated => Solution::Stated(USUAL),
                Answer::Unknown => Solution::Unknown,
            })
            quiet=true
        />
        <If holds=move || answer() == Answer::Stated>
            <SettingField
                name="solution-share"
                label=wording("solution-share")
                value=share
                limits=PER_CENT
                on_set=move |Plain(share)| set(Solution::Stated(Fraction::from_percent(share)))
            />
        </If>
        <p class="hint">{wording("solution-hint")}</p>
        <p class="window" role="status">
            {move || told()}
        </p>
    }
}
