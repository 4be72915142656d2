//! The dock: what is always in reach of the thumb.

use cook_model::cook::duties::Act;
use cook_model::cook::{Stage, What};
use leptos::prelude::*;

use super::{
    AlarmBar, OtherAlarms, Question, Tab, calls_elsewhere, last_done, perform, unanswered,
};
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
        cook.first_of_look().is_some_and(|duty| matches!(duty.act, Act::Answer { .. }))
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
    let any_raw = Derived::new(move || !cook.facts().read().at_stage(Stage::Raw).is_empty());
    let setting_up = move || navigation.screen() == Screen::SetOut && any_raw.get();
    let one_row = move || at_the_cook() || setting_up();
    let shared = move || !one_row() && crowded() && undoes();
    // One row has room for one call: of two cooks' the more urgent.
    let elsewhere = calls_elsewhere();
    let others_first = Derived::new(move || {
        let own = waiting.read().first().map(|(alarm, _)| alarm.id.kind);
        let other = elsewhere.read().as_ref().map(|(_, (alarm, _))| alarm.id.kind);
        other.is_some_and(|other| own.is_none_or(|own| other < own))
    });
    let others = move || if one_row() { others_first.get() } else { elsewhere.read().is_some() };
    let own = move || !(one_row() && others_first.get());
    // With no cook there is nothing to reach for.
    let bare = move || !cook.is_open() && !at_the_kitchen();
    view! {
        <footer
            class="dock"
            class:typing=typing
            class:bare=bare
            class:told=move || at_the_cook() && cook.is_next_unknown()
        >
            <If holds=move || at_the_cook() && asks.get()>
                <Question />
            </If>
            <div class="reach" class:one-row=one_row class:shared=shared>
                <If holds=move || !typing() && others()>
                    <OtherAlarms one_row=one_row />
                </If>
                <If holds=move || !typing() && own()>
                    <AlarmBar
                        waiting=waiting
                        one_row=one_row
                        crowded=move || undoes() || setting_up()
                    />
                </If>
                <If
                    holds=at_the_kitchen
                    otherwise=move || {
                        let (undo, redo) = (move || cook.undo(), move || cook.redo());
                        let crowded = move || crowded() || one_row() && others();
                        last_done(cook.journal(), undo, redo, crowded)
                    }
                >
                    <KitchenDock crowded=crowded />
                </If>
                <If holds=move || at_the_cook() && !asks.get() && cook.first_of_look().is_some()>
                    <CardButton />
                </If>
                <If holds=setting_up>
                    <SetUpButtons />
                </If>
            </div>
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
        cook.first_of_look().map(|duty| describe::duty(&seen, &duty).button)
    };
    let due = move || cook.first_of_look().is_some_and(|duty| duty.is_due(cook.now()));
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
    let raw = Derived::new(move || cook.facts().read().at_stage(Stage::Raw));
    let is_to_plan = Derived::new(move || {
        let facts = cook.facts().read();
        facts.began.is_none() && facts.settings.dinner.is_some()
    });
    let all_on = move |_| {
        let raw = cook.facts_as_tapped().at_stage(Stage::Raw);
        let put_on = raw.into_iter().map(|piece| What::PutOn { piece });
        cook.record_all(put_on.collect());
        navigation.go(Screen::Live);
    };
    view! {
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
