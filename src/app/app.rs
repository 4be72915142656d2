//! The whole page: the screen that shows, and below it what is always in reach of the thumb.

use cook_model::cook::{CookState, Log, Stage, fold};
use cook_model::quantity::Span;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::beside::Beside;
use crate::demo;
use crate::device::storage::{CookId, Store, Trouble as Found};
use crate::device::{clock, finger};
use crate::journal::pending::Pending;
use crate::kitchen::OpenKitchen;
use crate::navigate::{Navigation, Screen};
use crate::open_cook::OpenCook;
use crate::parts::{DemoBanner, Dock, If, NewVersion, Trouble};
use crate::preferences;
use crate::screens;
use crate::watching::Watching;
use crate::{gear, journal};

/// A cook in which nothing happened for this long is over: the app then starts at its first screen.
pub const OVER_AFTER: Span = Span::hours(18);

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    preferences::start();
    finger::watch();
    let navigation = Navigation::start();
    let pending = Pending::new();
    let cook = OpenCook::start(pending);
    provide_context(navigation);
    let watching = Watching::new();
    provide_context(cook);
    let kitchen = OpenKitchen::start(cook);
    provide_context(kitchen);
    provide_context(watching);
    let beside = Beside::new(cook);
    provide_context(beside);
    provide_context(gear::Kept::start(cook));
    demo::follow_duties(cook);
    let ready = RwSignal::new(false);
    spawn_local(async move {
        open_stored(cook, beside, watching, navigation).await;
        ready.set(true);
        kitchen.open().await;
        journal::follow_other_windows(cook, kitchen, beside);
    });
    view! {
        <If holds=move || ready.get()>
            <main>
                <DemoBanner />
                <NewVersion />
                <Trouble />
                {move || screen_view(navigation.screen(), kitchen)}
            </main>
            <Dock />
        </If>
    }
}

fn screen_view(screen: Screen, kitchen: OpenKitchen) -> AnyView {
    match screen {
        Screen::Start => screens::Start().into_any(),
        Screen::SetOut => screens::SetOut().into_any(),
        Screen::Live => screens::Live().into_any(),
        Screen::Piece(piece) => view! { <screens::Reading piece=piece /> }.into_any(),
        Screen::Curves => screens::Curves().into_any(),
        Screen::Pit => screens::PitReading().into_any(),
        Screen::Round => screens::RoundScreen().into_any(),
        Screen::Plan => screens::PlanScreen().into_any(),
        Screen::Habits => screens::HabitsScreen().into_any(),
        Screen::Rest => screens::Rest().into_any(),
        Screen::Log => screens::CookLog().into_any(),
        Screen::More => screens::More().into_any(),
        Screen::Settings => screens::Settings().into_any(),
        Screen::Safety => screens::Safety().into_any(),
        Screen::ThermometerCheck => screens::ThermometerCheck().into_any(),
        Screen::Cautions => screens::Cautions().into_any(),
        Screen::AlarmsHere => screens::AlarmsHere().into_any(),
        other => view! {
            <If holds=move || kitchen.is_open()>{screens::kitchen::view_of(other)}</If>
        }
        .into_any(),
    }
}

/// Opens the storage, and the last cook if it is not over, on the screen it belongs to.
async fn open_stored(cook: OpenCook, beside: Beside, watching: Watching, navigation: Navigation) {
    let store = match Store::open().await {
        Ok(store) => store,
        Err(trouble) => {
            cook.pending().trouble().set(Some(trouble));
            Store::without_database()
        }
    };
    cook.pending().use_store(store.clone());
    watching.start(cook, beside, store.clone());
    let screen = navigation.screen_now();
    if let Some((id, log)) = last_cook(cook.pending()).await {
        let state = fold(&log);
        cook.open(id, log);
        if screen == Screen::Start && !navigation.came_by_address() {
            navigation.replace(home(&state));
        }
    } else if screen == Screen::SetOut {
        cook.open(CookId::fresh(), Log::default());
    } else if screen.needs_a_cook() {
        navigation.replace(Screen::Start);
    }
    // Not before: what is open is none of the others.
    beside.watch();
}

/// The last cook, if it is not over.
async fn last_cook(pending: Pending) -> Option<(CookId, Log)> {
    let (id, mut texts) = pending.read(async |store| last_stored(store, pending).await).await??;
    texts.extend(pending.texts_of(id));
    let log = Log::from_stored(texts.iter().map(String::as_str));
    let typed = log.entries().last().map(|entry| entry.typed);
    let fresh = typed.is_none_or(|typed| clock::now() - typed < OVER_AFTER);
    fresh.then_some((id, log))
}

/// The last cook of which anything is stored or pending, and what is stored of it.
async fn last_stored(
    store: &Store,
    pending: Pending,
) -> Result<Option<(CookId, Vec<String>)>, Found> {
    let stored = store.cooks().await?;
    let Some(last) = stored.first().map(|cook| cook.id).max(pending.last_cook()) else {
        return Ok(None);
    };
    Ok(Some((last, store.load(last).await?)))
}

/// The screen on which a cook goes on.
pub fn home(state: &CookState) -> Screen {
    let raw = state.pieces.iter().all(|piece| piece.stage == Stage::Raw);
    if raw { Screen::SetOut } else { Screen::Live }
}
