//! The bags there are, and what can be done with them.

use cook_model::kitchen::log::{BagId, Ending, KitchenEntry, KitchenWhat};
use cook_model::kitchen::storage::Place;
use cook_model::quantity::Moment;
use cook_model::sorting::sort_by_key;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::derived::Derived;
use crate::device::{clock, files};
use crate::kitchen::{open_kitchen, reminder_file, words};
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{Each, Heading, If, SetAsideRow};
use crate::screens::kitchen::bag_file::BagFile;
use crate::show::capital;
use crate::words::wording;
use crate::{describe, say, show};

/// The kind of file reminders are saved as (RFC 5545).
const CALENDAR: &str = "text/calendar";
/// How many bags that are gone are listed.
const GONE_LISTED: usize = 10;

/// What is in the refrigerator and the freezer, the one to eat first at the front.
#[component]
pub fn Home() -> impl IntoView {
    let kitchen = open_kitchen();
    let navigation = navigation();
    let state = kitchen.state();
    let some = move || state.read().bags.iter().any(|bag| bag.ended.is_none());
    view! {
        <section class="screen kitchen">
            <Heading text=wording("kitchen-title") />
            <If
                holds=some
                otherwise=|| view! { <p class="lead">{wording("kitchen-empty")}</p> }
            >
                <p class="lead">
                    {move || say!("kitchen-weight", weight = show::mass(state.read().weight()))}
                </p>
            </If>
            <Stock place=Place::Fridge />
            <Stock place=Place::Freezer />
            <ul class="rows">
                <li>
                    <button class="row" on:click=move |_| navigation.go(Screen::Portions)>
                        {wording("kitchen-to-portions")}
                    </button>
                </li>
                <li>
                    <button class="row" on:click=move |_| navigation.go(Screen::Chill)>
                        {wording("kitchen-to-chill")}
                    </button>
                </li>
                <If holds=some>
                    <li>
                        <button class="row" on:click=move |_| navigation.go(Screen::Labels)>
                            {wording("kitchen-to-labels")}
                        </button>
                    </li>
                    <Reminders />
                </If>
            </ul>
            <BagFile some=some />
            <Gone />
            <SetAside />
            <p class="hint">{wording("caution-local-code")}</p>
        </section>
    }
}

/// The bags of one place.
#[component]
fn Stock(
    /// Which place.
    place: Place,
) -> impl IntoView {
    let state = open_kitchen().state();
    let bags = Derived::new(move || {
        state.read().in_place(place).iter().map(|bag| bag.id).collect::<Vec<_>>()
    });
    view! {
        <If holds=move || !bags.read().is_empty()>
            <h2>{move || words::place(place)}</h2>
            <ul class="rows">
                <Each each=move || bags.get() key=|id| *id let:id>
                    <BagRow bag=id />
                </Each>
            </ul>
        </If>
    }
}

/// One bag: what it is, until when it keeps, and that it was used.
#[component]
fn BagRow(
    /// Which bag.
    bag: BagId,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let cook = open_cook();
    let navigation = navigation();
    let known = Derived::new(move || kitchen.state().read().bag(bag).cloned());
    let past = Derived::new(move || known.get().is_some_and(|bag| bag.is_past(cook.now())));
    let due = Derived::new(move || known.get().is_some_and(|bag| bag.is_due(cook.now())));
    let facts = move || {
        known.get().map(|state| {
            let form = capital(words::form(state.bag.form));
            format!("{form}, {}", show::mass(state.bag.weight))
        })
    };
    view! {
        <li class="bag-row" class:past=move || past.get()>
            <button class="row facts" on:click=move |_| navigation.go(Screen::Bag(bag))>
                <span class="name">{move || known.get().map(|state| words::bag(&state))}</span>
                <span class="weight">{move || facts()}</span>
                <span class="window">{move || known.get().map(|state| capital(words::keeps(&state)))}</span>
                <If holds=move || due.get()>
                    <span class="note">{wording("bag-due")}</span>
                </If>
                <If holds=move || past.get()>
                    <span class="bad">{wording("bag-past")}</span>
                </If>
            </button>
            <If
                holds=move || past.get()
                otherwise=move || {
                    view! {
                        <button
                            class="small"
                            aria-label=move || say!("bag-used-which", number = bag.count)
                            on:click=move |_| kitchen.record(vec![KitchenWhat::BagUsed { bag }])
                        >
                            {wording("bag-used")}
                        </button>
                    }
                }
            >
                <button
                    class="small"
                    aria-label=move || say!("bag-throw-which", number = bag.count)
                    on:click=move |_| kitchen.record(vec![KitchenWhat::BagThrownAway { bag }])
                >
                    {wording("bag-throw-away")}
                </button>
            </If>
        </li>
    }
}

/// Reminders for the phone's own calendar.
#[component]
fn Reminders() -> impl IntoView {
    let kitchen = open_kitchen();
    let said = RwSignal::new(None::<String>);
    let save = move |_| {
        let now = clock::now();
        let Some(text) = reminder_file(&kitchen.state().get_untracked(), now) else {
            return said.set(Some(say!("kitchen-no-reminders")));
        };
        let name = format!("pull-order-{}.ics", now.format("%Y-%m-%d"));
        spawn_local(async move {
            said.set(describe::handed(files::hand_over(&name, CALENDAR, &text).await, &name));
        });
    };
    view! {
        <li>
            <button class="row" on:click=save>
                {wording("kitchen-reminders")}
            </button>
            <p role="status">{move || said.get()}</p>
        </li>
    }
}

/// The bags that were used or thrown away last, each to be brought back.
#[component]
fn Gone() -> impl IntoView {
    let kitchen = open_kitchen();
    let gone = Derived::new(move || {
        let state = kitchen.state().read();
        let mut gone: Vec<(Moment, BagId, Ending)> = state
            .bags
            .iter()
            .filter_map(|bag| bag.ended.map(|ended| (ended.at, bag.id, ended.how)))
            .collect();
        sort_by_key(&mut gone, |(at, id, _)| (*at, *id));
        gone.into_iter().rev().take(GONE_LISTED).collect::<Vec<_>>()
    });
    let row = move |(at, bag, how): (Moment, BagId, Ending)| {
        let number = bag.count;
        let what = move || match how {
            Ending::Used => say!("done-used", number = number),
            Ending::ThrownAway => say!("done-thrown", number = number),
        };
        view! {
            <li>
                <span class="facts">
                    <span class="what">{move || what()}</span>
                    <span class="last">{move || words::day(at)}</span>
                </span>
                <button
                    class="small"
                    aria-label=move || say!("log-bring-back", what = what())
                    on:click=move |_| {
                        let ended = ending(kitchen.log().read_untracked().entries(), bag);
                        kitchen.record(ended.into_iter().collect());
                    }
                >
                    {wording("log-bring-back-short")}
                </button>
            </li>
        }
    };
    view! {
        <If holds=move || !gone.read().is_empty()>
            <h2>{wording("kitchen-gone")}</h2>
            <ol class="rows entries">
                <Each each=move || gone.get() key=|gone| (gone.0, gone.1) let:one>
                    {row(one)}
                </Each>
            </ol>
        </If>
    }
}

/// Stored entries that could not be read: kept, and shown, never dropped.
#[component]
fn SetAside() -> impl IntoView {
    let log = open_kitchen().log();
    let rows = move || {
        let set_aside = log.read().set_aside().to_vec().into_iter();
        set_aside.map(|one| view! { <SetAsideRow one=one /> }).collect_view()
    };
    view! {
        <If holds=move || !log.read().set_aside().is_empty()>
            <h2>{wording("log-set-aside-title")}</h2>
            <p>{wording("log-set-aside-lead")}</p>
            <ul class="rows set-aside">{move || rows()}</ul>
        </If>
    }
}

/// The undoing of the entry that ended a bag.
fn ending(entries: &[KitchenEntry], wanted: BagId) -> Option<KitchenWhat> {
    let ends = |what: &KitchenWhat| match what {
        KitchenWhat::BagUsed { bag } | KitchenWhat::BagThrownAway { bag } => *bag == wanted,
        _ => false,
    };
    let last = entries.iter().rfind(|entry| ends(&entry.what))?;
    Some(KitchenWhat::Undone { entry: last.id })
}
