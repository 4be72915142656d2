//! The kitchen's log on this phone. The one place that writes its entries.

use std::collections::VecDeque;
use std::time::Duration;

use cook_model::cook::DeviceId;
use cook_model::history::EntryId;
use cook_model::kitchen::log::{Kitchen, KitchenLog, KitchenWhat, fold};
use cook_model::kitchen::reheat::{BathPlan, BathTime, bath_time};
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::{Draft, words};
use crate::derived::Derived;
use crate::device::storage::KITCHEN;
use crate::device::{clock, drafts, identity, visibility};
use crate::open_cook::{Done, OpenCook};

/// How long the last tap is shown with its undo; later on it is undone at the bag.
const OFFER_UNDO: Duration = Duration::from_secs(30);
/// Under which the draft is kept.
const DRAFT: &str = "kitchen";
/// As many bath times are remembered as a meal-prep day has bags.
const REMEMBERED: usize = 64;

/// The kitchen.
#[derive(Clone, Copy)]
pub struct OpenKitchen {
    log: RwSignal<KitchenLog>,
    state: Derived<Kitchen>,
    draft: RwSignal<Draft>,
    done: RwSignal<Option<Done>>,
    cook: OpenCook,
    told: StoredValue<VecDeque<Vec<KitchenWhat>>>,
    writing: StoredValue<bool>,
    bath_times: StoredValue<Vec<(BathPlan, Option<BathTime>)>>,
    writer: DeviceId,
}

impl OpenKitchen {
    /// An empty kitchen, until [`Self::open`].
    pub fn start(cook: OpenCook) -> Self {
        let log = RwSignal::new(KitchenLog::default());
        let draft = RwSignal::new(drafts::load::<Draft>(DRAFT).unwrap_or_default());
        Effect::new(move || draft.with(|draft| drafts::save(DRAFT, draft)));
        Self {
            log,
            state: Derived::new(move || fold(&log.read())),
            draft,
            done: RwSignal::new(None),
            cook,
            told: StoredValue::new(VecDeque::new()),
            writing: StoredValue::new(false),
            bath_times: StoredValue::new(Vec::new()),
            writer: identity::writer(),
        }
    }

    /// Reads what is stored, and again whenever the person comes back to this window.
    pub async fn open(self) {
        self.read().await;
        visibility::on_return(move || spawn_local(self.read()));
    }

    async fn read(self) {
        let Some(store) = self.cook.store() else { return };
        match store.load(KITCHEN).await {
            Ok(texts) => {
                let stored = KitchenLog::from_stored(texts.iter().map(String::as_str));
                let mut grown = stored;
                for entry in self.log.get_untracked().entries() {
                    grown.insert(entry.clone());
                }
                self.log.set(grown);
            }
            Err(problem) => self.cook.trouble().set(Some(problem)),
        }
    }

    /// What the log adds up to. Reactive.
    pub fn state(self) -> Derived<Kitchen> {
        self.state
    }

    /// The log. Reactive.
    pub fn log(self) -> ReadSignal<KitchenLog> {
        self.log.read_only()
    }

    /// What is half typed. Reactive.
    pub fn draft(self) -> RwSignal<Draft> {
        self.draft
    }

    /// What was done last. Reactive.
    pub fn done(self) -> RwSignal<Option<Done>> {
        self.done
    }

    /// Tells the kitchen what happened just now. It is in the log, and on the screen, once it is
    /// stored. Several things told at once are undone together. The demo stores nothing.
    pub fn record(self, what: Vec<KitchenWhat>) {
        let again = self.told.with_value(|told| told.back() == Some(&what));
        if again || what.is_empty() || untrack(|| self.cook.is_demo()) {
            return;
        }
        self.told.update_value(|told| told.push_back(what));
        if !self.writing.get_value() {
            self.writing.set_value(true);
            spawn_local(self.write_all());
        }
    }

    /// Undoes what was done last.
    pub fn undo_last(self) {
        if let Some(done) = self.done.get_untracked() {
            let undone = done.entries.into_iter().map(|entry| KitchenWhat::Undone { entry });
            self.record(undone.collect());
        }
    }

    async fn write_all(self) {
        // What is being written stays at the front until it is stored, so that `record` sees it.
        while let Some(told) = self.told.with_value(|told| told.front().cloned()) {
            self.write(&told).await;
            self.told.update_value(|told| drop(told.pop_front()));
        }
        self.writing.set_value(false);
    }

    async fn write(self, told: &[KitchenWhat]) {
        let at = clock::now();
        let mut grown = self.log.get_untracked();
        let mut entries: Vec<EntryId> = Vec::with_capacity(told.len());
        for what in told {
            let entry = grown.next(self.writer, at, at, what.clone());
            if let Some(store) = self.cook.store() {
                // Not stored, the kitchen goes on in memory, and the person is told.
                self.cook.trouble().set(store.append_to_kitchen(&entry).await.err());
            }
            entries.push(entry.id);
            grown.insert(entry.clone());
            self.log.update(|log| log.insert(entry));
        }
        let done = Done { words: words::done(&grown, &entries), entries };
        self.done.set(Some(done.clone()));
        let fade = move || {
            if self.done.read_untracked().as_ref() == Some(&done) {
                self.done.set(None);
            }
        };
        set_timeout(fade, OFFER_UNDO);
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
