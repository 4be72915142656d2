//! The cook that is open: its log, and what follows from the log and the present moment. The one
//! place that writes entries.

use std::collections::VecDeque;
use std::time::Duration;

use cook_model::cook::{
    CookState, DeviceId, Entry, EntryId, Log, Step, What, fold, steps, was_set_back,
};
use cook_model::forecast::{Forecast, forecast};
use cook_model::plan::{Outlook, Plan, outlook, plan};
use cook_model::quantity::Moment;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::describe;
use crate::device::storage::{CookId, StorageProblem, Store};
use crate::device::{clock, identity};
use crate::ticking::Ticking;

/// How long the last tap is shown with its undo; later on it is undone in the cook's log.
const OFFER_UNDO: Duration = Duration::from_secs(30);

/// What was done last, and the entries to undo if it was a slip.
#[derive(Clone, Debug, PartialEq)]
pub struct Done {
    /// In words.
    pub words: String,
    /// The entries it wrote.
    pub entries: Vec<EntryId>,
}

/// Things told but not yet stored. They wait in order, for each entry's id depends on the one before.
#[derive(Clone, PartialEq)]
struct Told {
    at: Moment,
    what: Vec<What>,
}

/// The open cook.
#[derive(Clone, Copy)]
pub struct OpenCook {
    id: RwSignal<Option<CookId>>,
    log: RwSignal<Log>,
    folded: Memo<CookState>,
    state: Memo<CookState>,
    forecast: RwSignal<Forecast>,
    plan: RwSignal<Option<Plan>>,
    thinking: RwSignal<bool>,
    steps: Memo<Vec<Step>>,
    done: RwSignal<Option<Done>>,
    trouble: RwSignal<Option<StorageProblem>>,
    ticking: Ticking,
    store: StoredValue<Option<Store>, LocalStorage>,
    told: StoredValue<VecDeque<Told>, LocalStorage>,
    writing: StoredValue<bool>,
    writer: DeviceId,
}

impl OpenCook {
    /// No cook yet.
    pub fn start() -> Self {
        let ticking = Ticking::start();
        let log = RwSignal::new(Log::default());
        let forecast = RwSignal::new(nothing_forecast());
        let plan = RwSignal::new(None);
        let folded = Memo::new(move |_| fold(&log.read()));
        let state = Memo::new(move |_| folded.get().heed_forecast(&forecast.read()));
        let steps = Memo::new(move |_| {
            let plan = plan.read();
            steps(&state.read(), &forecast.read(), plan.as_ref(), ticking.now())
        });
        let cook = Self {
            id: RwSignal::new(None),
            log,
            folded,
            state,
            forecast,
            plan,
            thinking: RwSignal::new(false),
            steps,
            done: RwSignal::new(None),
            trouble: RwSignal::new(None),
            ticking,
            store: StoredValue::new_local(None),
            told: StoredValue::new_local(VecDeque::new()),
            writing: StoredValue::new(false),
            writer: identity::writer(),
        };
        cook.keep_forecast_fresh();
        cook
    }

    /// What the log adds up to. Reactive.
    pub fn state(self) -> Memo<CookState> {
        self.state
    }

    /// The log. Reactive.
    pub fn log(self) -> ReadSignal<Log> {
        self.log.read_only()
    }

    /// Whether a new forecast is being made. Reactive.
    pub fn is_thinking(self) -> bool {
        self.thinking.get()
    }

    /// The plan back from dinner, once dinner has a time. Reactive.
    pub fn plan(self) -> ReadSignal<Option<Plan>> {
        self.plan.read_only()
    }

    /// Where dinner stands, if it has a time and something is for tonight. Reactive.
    pub fn outlook(self) -> Option<Outlook> {
        let state = self.state.read();
        let dinner = state.settings.dinner?;
        let (forecast, plan) = (self.forecast.read(), self.plan.read());
        outlook(&state.history, &forecast, plan.as_ref(), &state.settings.habits, dinner)
    }

    /// What is likely to happen. Reactive; it follows a new entry within a moment.
    pub fn forecast(self) -> ReadSignal<Forecast> {
        self.forecast.read_only()
    }

    /// The one next thing to do. Reactive.
    pub fn step(self) -> Option<Step> {
        self.steps.read().first().cloned()
    }

    /// What comes after it. Reactive.
    pub fn step_after(self) -> Option<Step> {
        self.steps.read().get(1).cloned()
    }

    /// The present moment, as fine as the screen needs it. Reactive.
    pub fn now(self) -> Moment {
        self.ticking.now()
    }

    /// Lets [`Self::now`] move every second for as long as the caller's part of the screen lives
    /// and asks for it.
    pub fn each_second_while(self, wanted: impl Fn() -> bool + Send + Sync + 'static) {
        self.ticking.each_second_while(wanted);
    }

    /// What was done last. Reactive.
    pub fn done(self) -> RwSignal<Option<Done>> {
        self.done
    }

    /// What went wrong with storing the last entry, if anything did. Reactive.
    pub fn trouble(self) -> RwSignal<Option<StorageProblem>> {
        self.trouble
    }

    /// Whether a cook is open, the demo among them. Reactive.
    pub fn is_open(self) -> bool {
        self.id.read().is_some() || self.is_demo()
    }

    /// Uses this storage from now on.
    pub fn use_store(self, store: Store) {
        self.store.set_value(Some(store));
    }

    /// The storage, if the browser gave one.
    pub fn store(self) -> Option<Store> {
        self.store.get_value()
    }

    /// Opens a cook: a stored one, or a new one with nothing in it. If the phone's clock was set
    /// back since it was last written, that is written down first.
    pub fn open(self, id: CookId, log: Log) {
        self.ticking.run(1);
        let set_back = was_set_back(&log, clock::now());
        self.show(Some(id), log);
        if set_back {
            self.record(What::ClockJumped);
        }
    }

    /// Opens a cook that only shows what the app does: nothing of it is stored, and time runs fast.
    pub fn open_demo(self, times: i32) {
        self.ticking.run(times);
        self.show(None, Log::default());
    }

    /// Leaves the demo.
    pub fn close_demo(self) {
        self.ticking.run(1);
        self.show(None, Log::default());
    }

    /// Whether the demo runs. Reactive.
    pub fn is_demo(self) -> bool {
        self.ticking.is_demo()
    }

    fn show(self, id: Option<CookId>, log: Log) {
        self.done.set(None);
        self.id.set(id);
        self.log.set(log);
        self.ticking.look();
    }

    /// Which cook is open; none while none is, or in the demo. Reactive.
    pub fn id(self) -> Option<CookId> {
        self.id.get()
    }

    /// Takes in entries that another window has stored.
    pub fn take_in(self, stored: &[String]) {
        let mut grown = self.log.get_untracked();
        for entry in Log::from_stored(stored.iter().map(String::as_str)).entries() {
            grown.insert(entry.clone());
        }
        if grown != *self.log.read_untracked() {
            self.log.set(grown);
        }
    }

    /// Tells the cook what happened just now. It is in the log, and on the screen, once it is stored.
    pub fn record(self, what: What) {
        self.record_all(vec![what]);
    }

    /// Tells the cook several things that happened at one moment, undone together.
    pub fn record_all(self, what: Vec<What>) {
        // A second touch of the same button while the first is being stored means the same thing.
        let again = self.told.with_value(|told| told.back().is_some_and(|last| last.what == what));
        if again || what.is_empty() {
            return;
        }
        let told = Told { at: self.ticking.read(), what };
        self.told.update_value(|waiting| waiting.push_back(told));
        if !self.writing.get_value() {
            self.writing.set_value(true);
            spawn_local(self.write_all());
        }
    }

    /// Undoes what was done last.
    pub fn undo_last(self) {
        if let Some(done) = self.done.get_untracked() {
            self.record_all(done.entries.into_iter().map(|entry| What::Undone { entry }).collect());
        }
    }

    async fn write_all(self) {
        // What is being written stays at the front until it is stored, so that `record_all` sees it.
        while let Some(told) = self.told.with_value(|told| told.front().cloned()) {
            self.write(told).await;
            self.told.update_value(|told| drop(told.pop_front()));
        }
        self.writing.set_value(false);
    }

    async fn write(self, told: Told) {
        let id = self.id.get_untracked();
        let mut grown = self.log.get_untracked();
        let mut written = Vec::with_capacity(told.what.len());
        for what in told.what {
            written.push(self.write_one(id, &mut grown, told.at, what).await);
        }
        let done = Done {
            words: describe::done(&grown, &written),
            entries: written.iter().map(|entry| entry.id).collect(),
        };
        // Another window's entries may have come in meanwhile: they stay.
        self.log.update(|log| written.into_iter().for_each(|entry| log.insert(entry)));
        self.ticking.look();
        self.done.set(Some(done.clone()));
        let fade = move || {
            if self.done.read_untracked().as_ref() == Some(&done) {
                self.done.set(None);
            }
        };
        set_timeout(fade, OFFER_UNDO);
    }

    async fn write_one(self, id: Option<CookId>, log: &mut Log, at: Moment, what: What) -> Entry {
        let entry = log.next(self.writer, at, at, what);
        if let (Some(id), Some(store)) = (id, self.store()) {
            // Not stored, the cook goes on in memory, and the person is told.
            self.trouble.set(store.append(id, &entry).await.err());
        }
        log.insert(entry.clone());
        entry
    }

    /// Makes a new forecast when an entry came and when a minute has gone; after the screen has
    /// shown what was tapped, for it takes longer than a tap may.
    fn keep_forecast_fresh(self) {
        let minute = Memo::new(move |_| self.now().timestamp().div_euclid(60));
        Effect::new(move || {
            minute.track();
            self.folded.track();
            if self.thinking.get_untracked() {
                return;
            }
            self.thinking.set(true);
            let think = move || {
                self.think();
                self.thinking.set(false);
            };
            set_timeout(think, Duration::ZERO);
        });
    }

    fn think(self) {
        let now = self.ticking.read();
        let state = self.folded.get_untracked();
        self.forecast.set(forecast(&state.history, now));
        let planned = state.plan_request(now).and_then(|request| plan(&request).ok());
        self.plan.set(planned);
    }
}

/// The open cook of this page.
pub fn open_cook() -> OpenCook {
    expect_context()
}

fn nothing_forecast() -> Forecast {
    Forecast {
        at: clock::now(),
        pieces: Vec::new(),
        order: Vec::new(),
        order_certainty: Vec::new(),
        checks: Vec::new(),
        surprises: Vec::new(),
    }
}
