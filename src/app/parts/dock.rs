//! The dock: what is always in reach of the thumb.

use cook_model::cook::duties::Act;
use cook_model::cook::{Stage, What};
use leptos::prelude::*;

use super::{AlarmBar, OtherAlarms, Question, Tab, last_done, perform, unanswered};
use crate::derived::Derived;
use crate::kitchen::{KitchenDock, open_kitchen};
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::If;
use crate::words::wording;
use crate::{describe, say};

/// What is always in reach of the thumb: what calls and its answers, the undoing of the last tap,
/// the one button for the next thing to do, and the way to the other parts of the app.
#[component]
pub fn Dock() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    // What the card asks is answered where it stands.
    let asks = Derived::new(move || {
        cook.duty().is_some_and(|duty| matches!(duty.act, Act::Answer { .. }))
    });
    let at_the_cook = move || matches!(navigation.screen(), Screen::Live);
    // The number pad needs the whole screen, and who types is at the pit already.
    let typing =
        move || matches!(navigation.screen(), Screen::Piece(_) | Screen::Pit | Screen::Round);
    let at_the_kitchen = move || navigation.screen().is_kitchen();
    let waiting = unanswered();
    // One row holds what calls and what was done: they make room for each other.
    let crowded = move || !waiting.read().is_empty();
    let undoes = move || match at_the_kitchen() {
        true => open_kitchen().journal().done().read().is_some(),
        false => cook.journal().done().read().is_some(),
    };
    let shared = move || !at_the_cook() && crowded() && undoes();
    // With no cook there is nothing to reach for.
    let bare = move || !cook.is_open() && !at_the_kitchen();
    view! {
        <footer class="dock" class:typing=typing class:bare=bare>
            <If holds=move || !typing()>
                <OtherAlarms />
            </If>
            <If holds=move || at_the_cook() && asks.get()>
                <Question />
            </If>
            <div class="reach" class:one-row=at_the_cook class:shared=shared>
                <If holds=move || !typing()>
                    <AlarmBar waiting=waiting at_the_cook=at_the_cook crowded=undoes />
                </If>
                <If
                    holds=at_the_kitchen
                    otherwise=move || {
                        let (undo, redo) = (move || cook.undo(), move || cook.redo());
                        last_done(cook.journal(), undo, redo, crowded)
                    }
                >
                    <KitchenDock crowded=crowded />
                </If>
                <If holds=move || at_the_cook() && !asks.get() && cook.duty().is_some()>
                    <CardButton />
                </If>
            </div>
            <If holds=move || navigation.screen() == Screen::SetOut>
                <SetUpButtons />
            </If>
            <If holds=move || cook.is_open() && !typing() && !at_the_kitchen()>
                <Tabs />
            </If>
        </footer>
    }
}

/// The one button for the duty on the card.
#[component]
fn CardButton() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let words = move || {
        let seen = cook.seen().read();
        cook.duty().map(|duty| describe::duty(&seen, &duty).button)
    };
    let due = move || cook.duty().is_some_and(|duty| duty.is_due(cook.now()));
    view! {
        <button
            class="main-action"
            class:due=due
            on:click=move |_| {
                if let Some(duty) = untrack(|| cook.duty()) {
                    perform(&duty, cook, navigation);
                }
            }
        >
            {move || words()}
        </button>
    }
}

/// What comes after setting up: the plan, while dinner is set and nothing of it has begun; and to put
/// all raw pieces on.
#[component]
fn SetUpButtons() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let raw = Derived::new(move || cook.state().read().at_stage(Stage::Raw));
    let is_to_plan = Derived::new(move || {
        let state = cook.state().read();
        state.began.is_none() && state.settings.dinner.is_some()
    });
    let all_on = move |_| {
        let put_on = raw.get_untracked().into_iter().map(|piece| What::PutOn { piece });
        cook.record_all(put_on.collect());
        navigation.go(Screen::Live);
    };
    view! {
        <If holds=move || !raw.read().is_empty()>
            <div class="set-up">
                <button
                    class="put-on"
                    class:main-action=move || !is_to_plan.get()
                    class:second-action=move || is_to_plan.get()
                    on:click=all_on
                >
                    {move || say!("set-out-put-on", count = raw.read().len())}
                </button>
                <If holds=move || is_to_plan.get()>
                    <button class="main-action" on:click=move |_| navigation.go(Screen::Plan)>
                        {wording("set-out-plan")}
                    </button>
                </If>
            </div>
        </If>
    }
}

/// The parts of the app.
#[component]
fn Tabs() -> impl IntoView {
    view! {
        <nav class="tabs" aria-label=wording("tabs")>
            <Tab to=Screen::Live words=wording("tab-cook") />
            <Tab to=Screen::Rest words=wording("tab-rest") />
            <Tab to=Screen::Log words=wording("tab-log") />
            <Tab to=Screen::More words=wording("tab-more") />
        </nav>
    }
}
