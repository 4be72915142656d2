use cook_model::cook::{Action, CookState, EntryId, Stage, What};
use cook_model::history::Instrument;
use leptos::prelude::*;

use super::question::{Question, open_question};
use super::{AlarmBar, LastDone, Tab, perform};
use crate::derived::Derived;
use crate::kitchen::KitchenDock;
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
    let question = open_question(cook);
    let at_the_cook = move || matches!(navigation.screen(), Screen::Live);
    // The number pad needs the whole screen, and who types is at the pit already.
    let typing = move || matches!(navigation.screen(), Screen::Piece(_) | Screen::Pit);
    let at_the_kitchen = move || navigation.screen().is_kitchen();
    // With no cook there is nothing to reach for.
    let bare = move || !cook.is_open() && !at_the_kitchen();
    view! {
        <footer class="dock" class:typing=typing class:bare=bare>
            <If holds=move || !typing()>
                <AlarmBar />
            </If>
            <If
                holds=at_the_kitchen
                otherwise=move || {
                    view! {
                        <LastDone done=cook.done() on_undo=move |()| cook.undo_last()>
                            <SecondPlace />
                        </LastDone>
                    }
                }
            >
                <KitchenDock />
            </If>
            {move || {
                let question = question.get().filter(|_| at_the_cook());
                question.map(|surprise| view! { <Question surprise=surprise /> })
            }}
            <If holds=move || {
                at_the_cook() && question.read().is_none() && cook.step().is_some()
            }>
                <NextButton />
            </If>
            <If holds=move || navigation.screen() == Screen::SetOut>
                <AllOnButton />
            </If>
            <If holds=move || cook.is_open() && !typing() && !at_the_kitchen()>
                <Tabs />
            </If>
        </footer>
    }
}

/// Where one place of a piece was read last: the button for the second place, beside the undo.
#[component]
fn SecondPlace() -> impl IntoView {
    let cook = open_cook();
    let done = cook.done();
    let second = Derived::new(move || {
        let last = *done.read().as_ref()?.entries.last()?;
        // The one button for the next thing to do may say it already.
        let told = cook.step().is_some_and(
            |step| matches!(step.action, Action::TrySecondPlace { reading } if reading == last),
        );
        (!told && is_of_one_place(&cook.state().read(), last)).then_some(last)
    });
    move || {
        second.get().map(|reading| {
            let tried = What::SecondPlaceTried { reading };
            view! {
                <button class="small" on:click=move |_| cook.record(tried.clone())>
                    {wording("second-place-short")}
                </button>
            }
        })
    }
}

/// Whether this entry is an instant-read's reading of one place only.
fn is_of_one_place(state: &CookState, entry: EntryId) -> bool {
    let mut readings = state.history.pieces.iter().flat_map(|piece| &piece.readings);
    readings.any(|reading| {
        reading.entry == entry
            && reading.instrument == Instrument::InstantRead
            && reading.places < 2
    })
}

/// The one button for the next thing to do.
#[component]
fn NextButton() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let words = move || {
        let state = cook.state().read();
        cook.step().map(|step| describe::step(&state, &step).button)
    };
    let due = move || cook.step().is_some_and(|step| step.due <= cook.now());
    view! {
        <button
            class="main-action"
            class:due=due
            on:click=move |_| {
                if let Some(step) = untrack(|| cook.step()) {
                    perform(&step, cook, navigation);
                }
            }
        >
            {move || words()}
        </button>
    }
}

/// Puts all raw pieces on, where there are any.
#[component]
fn AllOnButton() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let raw = Derived::new(move || cook.state().read().at_stage(Stage::Raw));
    let all_on = move |_| {
        let put_on = raw.get_untracked().into_iter().map(|piece| What::PutOn { piece });
        cook.record_all(put_on.collect());
        navigation.go(Screen::Live);
    };
    view! {
        <If holds=move || !raw.read().is_empty()>
            <button class="main-action" on:click=all_on>
                {move || say!("set-out-put-on", count = raw.read().len())}
            </button>
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
