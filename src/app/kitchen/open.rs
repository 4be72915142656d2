//! The kitchen's log on this phone.

use cook_model::kitchen::log::{Kitchen, KitchenEntry, KitchenLog, KitchenWhat, fold};
use cook_model::kitchen::reheat::{BathPlan, BathTime, bath_time};
use leptos::prelude::*;

use super::{Draft, words};
use crate::derived::Derived;
use crate::device::storage::KITCHEN;
use crate::device::{clock, drafts};
use crate::journal::Journal;
use crate::journal::pending::texts;
use crate::open_cook::OpenCook;

/// Under which the draft is kept.
const DRAFT: &str = "kitchen";
/// As many bath times are remembered as a meal-prep day has bags.
const REMEMBERED: usize = 64;

/// The kitchen.
#[derive(Clone, Copy)]
pub struct OpenKitchen {
    journal: Journal<KitchenWhat>,
    state: Derived<Kitchen>,
    draft: RwSignal<Draft>,
    cook: OpenCook,
    bath_times: StoredValue<Vec<(BathPlan, Option<BathTime>)>>,
}

impl OpenKitchen {
    /// An empty kitchen, until [`Self::open`].
    pub fn start(cook: OpenCook) -> Self {
        let journal = Journal::new(cook.pending(), words::done);
        let log = journal.log();
        let draft = RwSignal::new(drafts::load::<Draft>(DRAFT).unwrap_or_default());
        Effect::new(move || draft.with(|draft| drafts::save(DRAFT, draft)));
        Self {
            journal,
            state: Derived::new(move || fold(&log.read())),
            draft,
            cook,
            bath_times: StoredValue::new(Vec::new()),
        }
    }

    /// Reads what is stored.
    pub async fn open(self) {
        let pending = self.cook.pending();
        let Some(texts) = pending.read(async |store| store.load(KITCHEN).await).await else {
            return;
        };
        let log = KitchenLog::from_stored(texts.iter().map(String::as_str));
        self.journal.open(Some(KITCHEN), log);
    }

    /// Whether what is stored was read, which may end after the cook is on the screen. Reactive.
    pub fn is_open(self) -> bool {
        self.journal.of().is_some()
    }

    /// What the log adds up to. Reactive.
    pub fn state(self) -> Derived<Kitchen> {
        self.state
    }

    /// The log. Reactive.
    pub fn log(self) -> ReadSignal<KitchenLog> {
        self.journal.log()
    }

    /// What is half typed. Reactive.
    pub fn draft(self) -> RwSignal<Draft> {
        self.draft
    }

    /// Its journal.
    pub fn journal(self) -> Journal<KitchenWhat> {
        self.journal
    }

    /// Tells the kitchen what happened just now. It is in the log, and on the screen, once it is
    /// stored. Several things told at once are undone together. The demo stores nothing.
    pub fn record(self, what: Vec<KitchenWhat>) {
        if untrack(|| self.cook.is_demo()) {
            return;
        }
        let now = clock::now();
        self.journal.tell(now, what.into_iter().map(|what| (now, what)).collect());
    }

    /// Takes in the entries of another copy of the log, those that are missing here.
    pub fn take_in(self, other: &KitchenLog) {
        let log = self.log().get_untracked();
        let is_new = |entry: &&KitchenEntry| !log.entries().iter().any(|own| own.id == entry.id);
        let new = other.entries().iter().filter(is_new);
        let texts = texts(new);
        let stored: Vec<String> = texts.iter().map(|(_, text)| text.clone()).collect();
        let show = move || self.journal.take_in(KITCHEN, &stored);
        self.cook.pending().add(KITCHEN, texts, show);
    }

    /// Takes back what was done last.
    pub fn undo(self) {
        self.journal.undo(clock::now());
    }

    /// Gives back what was taken back last.
    pub fn redo(self) {
        self.journal.redo(clock::now());
    }

    /// How long a bag needs in the bath; computed once for bags alike.
    pub fn bath_time(self, plan: &BathPlan) -> Option<BathTime> {
        let known = self
            .bath_times
            .with_value(|times| times.iter().find(|(known, _)| known == plan).cloned());
        if let Some((_, time)) = known {
            return time;
        }
        let time = bath_time(plan).ok();
        self.bath_times.update_value(|times| {
            times.truncate(REMEMBERED);
            times.insert(0, (*plan, time.clone()));
        });
        time
    }
}

/// The kitchen of this page.
pub fn open_kitchen() -> OpenKitchen {
    expect_context()
}
