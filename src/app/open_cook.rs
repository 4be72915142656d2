//! The cook that is open: its log, and one look at it, from which all else on the screen follows.
//! `writing` tells its journal what happens; `thinking` takes a new look after each entry.

mod thinking;
mod writing;

use cook_model::cook::duties::{Duty, duties, in_order, untold};
use cook_model::cook::{
    CookState, Log, Seen, What, fold, hold_may_be_under_way, was_set_back, was_unwatched,
};
use cook_model::forecast::{Forecast, PieceForecast};
use cook_model::piece::PieceId;
use cook_model::plan::{Outlook, Plan};
use cook_model::quantity::Moment;
use leptos::prelude::*;

use crate::asking::Asking;
use crate::derived::Derived;
use crate::device::clock;
use crate::device::storage::{CookId, Store};
use crate::journal::Journal;
use crate::journal::pending::Pending;
use crate::tap_words;
use crate::ticking::Ticking;

/// The open cook.
#[derive(Clone, Copy)]
pub struct OpenCook {
    journal: Journal<What>,
    pending: Pending,
    seen: RwSignal<Seen>,
    facts: Derived<CookState>,
    state: Derived<CookState>,
    forecast: Derived<Forecast>,
    plan: Derived<Option<Plan>>,
    asking: Asking,
    thinking: RwSignal<bool>,
    slow: RwSignal<bool>,
    of_look: Derived<Vec<Duty>>,
    duties: Derived<Vec<Duty>>,
    ticking: Ticking,
}

impl OpenCook {
    /// No cook yet.
    pub fn start(pending: Pending) -> Self {
        let ticking = Ticking::start();
        let journal = Journal::new(pending, tap_words::done);
        let log = journal.log();
        let seen = RwSignal::new(Seen::facts(&Log::default(), clock::now()));
        let facts = Derived::new(move || fold(&log.read()));
        let state = Derived::new(move || seen.read().state_at(ticking.now()));
        let forecast = Derived::new(move || {
            let seen = seen.read();
            seen.forecast.clone().unwrap_or_else(|| Forecast::nothing(seen.at))
        });
        let plan = Derived::new(move || seen.read().plan.clone());
        let of_look = Derived::new(move || duties(&seen.read()));
        let duties = Derived::new(move || untold(&seen.read(), of_look.get(), &log.read()));
        let cook = Self {
            journal,
            pending,
            seen,
            facts,
            state,
            forecast,
            plan,
            asking: Asking::new(),
            thinking: RwSignal::new(false),
            slow: RwSignal::new(false),
            of_look,
            duties,
            ticking,
        };
        cook.look_after_each_entry();
        Effect::new(move || ticking.turn_at(duties.read().iter().flat_map(turns).collect()));
        // What was told is looked at by the clock of its moment.
        Effect::new(move || {
            log.track();
            ticking.look();
        });
        cook
    }

    /// The latest look at the cook, whole; a moment behind the log after an entry. Reactive.
    pub fn seen(self) -> ReadSignal<Seen> {
        self.seen.read_only()
    }

    /// What the log says by itself, with nothing foreseen: what a form shows that changes it. Unlike
    /// [`Self::state`] it waits for no look. Reactive.
    pub fn facts(self) -> Derived<CookState> {
        self.facts
    }

    /// The same with what is still being stored: what a tap changes, which must build on the tap before.
    pub fn facts_as_tapped(self) -> CookState {
        fold(&self.journal.with_told())
    }

    /// What the log adds up to, as last seen. Reactive.
    pub fn state(self) -> Derived<CookState> {
        self.state
    }

    /// The log. Reactive.
    pub fn log(self) -> ReadSignal<Log> {
        self.journal.log()
    }

    /// The questions about this cook and others.
    pub fn asking(self) -> Asking {
        self.asking
    }

    /// Whether a new look is being taken. Reactive.
    pub fn is_thinking(self) -> bool {
        self.thinking.get()
    }

    /// Whether that takes so long that the screen must say so. Reactive.
    pub fn is_slow(self) -> bool {
        self.slow.get()
    }

    /// The plan back from dinner, once dinner has a time. Reactive.
    pub fn plan(self) -> Derived<Option<Plan>> {
        self.plan
    }

    /// Where dinner stands, if it has a time and something is for tonight. Reactive.
    pub fn outlook(self) -> Option<Outlook> {
        self.seen.read().outlook(self.now())
    }

    /// What is likely to happen; of no piece while a cook was only just opened. Reactive; it follows a
    /// new entry within a moment.
    pub fn forecast(self) -> Derived<Forecast> {
        self.forecast
    }

    /// What is likely to happen to one piece, if that is known. Reactive.
    pub fn piece_forecast(self, piece: PieceId) -> Option<PieceForecast> {
        self.seen.read().piece_forecast(piece).cloned()
    }

    /// Everything there is to do, without what was told since the last look. Reactive.
    pub fn duties(self) -> Derived<Vec<Duty>> {
        self.duties
    }

    /// The one thing to do now or next; none once it was told, until a new look says what follows.
    /// Reactive.
    pub fn duty(self) -> Option<Duty> {
        self.first_of_look().filter(|duty| self.duties.read().contains(duty))
    }

    /// The same by the last look, whatever was told since. Reactive.
    pub fn first_of_look(self) -> Option<Duty> {
        in_order(&self.of_look.read(), self.now()).first().map(|duty| (*duty).clone())
    }

    /// What comes after it. Reactive.
    pub fn duty_after(self) -> Option<Duty> {
        in_order(&self.duties.read(), self.now()).get(1).map(|duty| (*duty).clone())
    }

    /// Whether what the card said was told, and what follows is not known yet. Reactive.
    pub fn is_next_unknown(self) -> bool {
        self.duty().is_none() && self.first_of_look().is_some()
    }

    /// The present moment, as fine as the screen needs it. Reactive.
    pub fn now(self) -> Moment {
        self.ticking.now()
    }

    /// The present moment, for use outside of what is drawn.
    pub fn now_untracked(self) -> Moment {
        self.ticking.read()
    }

    /// Lets [`Self::now`] move every second for as long as the caller's part of the screen lives
    /// and asks for it.
    pub fn each_second_while(self, wanted: impl Fn() -> bool + Send + Sync + 'static) {
        self.ticking.each_second_while(wanted);
    }

    /// Its journal.
    pub fn journal(self) -> Journal<What> {
        self.journal
    }

    /// What is not stored yet, of this cook and of others.
    pub fn pending(self) -> Pending {
        self.pending
    }

    /// Whether a cook is open, the demo among them. Reactive.
    pub fn is_open(self) -> bool {
        self.id().is_some() || self.is_demo()
    }

    /// The storage, if the browser gave one.
    pub fn store(self) -> Option<Store> {
        self.pending.store()
    }

    /// Opens a cook: a stored one, or a new one with nothing in it. If the phone's clock was set
    /// back since it was last written, that is written down first.
    pub fn open(self, id: CookId, log: Log) {
        self.ticking.run(1);
        let now = clock::now();
        let (set_back, unwatched) = (was_set_back(&log, now), was_unwatched(&log, now));
        self.show(Some(id), log);
        if set_back {
            self.record(What::ClockJumped);
        } else if unwatched {
            self.note_unwatched_clock();
        }
    }

    /// Writes down that nobody watched the phone's clock until now, if a proof could rest on it.
    pub fn note_unwatched_clock(self) {
        if hold_may_be_under_way(&self.state().read_untracked(), clock::now()) {
            self.record(What::ClockUnwatched);
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
        self.journal.open(id, log);
        self.ticking.look();
        // No reader may hold this cook beside the forecast of another.
        self.seen.set(Seen::facts(&self.log().read_untracked(), self.ticking.read()));
    }

    /// Which cook is open; none while none is, or in the demo. Reactive.
    pub fn id(self) -> Option<CookId> {
        self.journal.of()
    }
}

/// The moments at which a duty says something else than before.
fn turns(duty: &Duty) -> Vec<Moment> {
    let calls = duty.bells.iter().map(|bell| bell.at);
    calls.chain([duty.from]).chain(duty.until).collect()
}

/// The open cook of this page.
pub fn open_cook() -> OpenCook {
    expect_context()
}
