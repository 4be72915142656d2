//! What the phone does by itself while a cook is open: it rings, keeps the screen on, follows other
//! windows, and looks for a new version.

use cook_model::cook::alarms::{AlarmKind, alarms};
use cook_model::cook::ringing::Ring;
use cook_model::cook::{Stage, What};
use cook_model::piece::PieceId;
use cook_model::quantity::Span;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::derived::Derived;
use crate::device::alarms::{Alarms, Waiting};
use crate::device::clock::{ClockWatch, Jump};
use crate::device::notify::{Buttons, Notice};
use crate::device::storage::Store;
use crate::device::{sound, update, visibility, wake_lock};
use crate::open_cook::OpenCook;
use crate::{describe, preferences, say, show};

/// What rang, and whether a new version waits.
#[derive(Clone, Copy)]
pub struct Watching {
    alarms: StoredValue<Option<Alarms>, LocalStorage>,
    waiting: RwSignal<Vec<Waiting>>,
    new_version: RwSignal<bool>,
}

impl Watching {
    /// Nothing is watched yet.
    pub fn new() -> Self {
        Self {
            alarms: StoredValue::new_local(None),
            waiting: RwSignal::new(Vec::new()),
            new_version: RwSignal::new(false),
        }
    }

    /// Begins to watch over a cook and its store.
    pub fn start(self, cook: OpenCook, store: Store) {
        sound::unlock_with_each_tap();
        update::watch(move || self.new_version.set(true));
        self.ring(cook, store.clone());
        stay_awake(cook);
        follow_other_windows(cook, store);
        notice_clock_jumps(cook);
    }

    /// The alarms that rang and were not answered. Reactive.
    pub fn waiting(self) -> Vec<Waiting> {
        self.waiting.get()
    }

    /// Whether a new version of the app waits. Reactive.
    pub fn new_version(self) -> RwSignal<bool> {
        self.new_version
    }

    /// Calls again in a while.
    pub fn snooze(self, (alarm, _): Waiting) {
        self.alarms.with_value(|alarms| alarms.iter().for_each(|alarms| alarms.snooze(alarm.id)));
    }

    /// Takes an alarm for heard.
    pub fn heard(self, (alarm, _): Waiting) {
        self.alarms.with_value(|alarms| alarms.iter().for_each(|alarms| alarms.done(alarm.id)));
    }

    fn ring(self, cook: OpenCook, store: Store) {
        let ringing = Alarms::new(store, move |ring| notice(cook, ring));
        let waiting = ringing.waiting();
        self.alarms.set_value(Some(ringing));
        Effect::new(move || self.waiting.set(waiting.get()));
        Effect::new(move || {
            let (state, forecast) = (cook.state().read(), cook.forecast().read());
            let plan = cook.plan().read();
            self.alarms.with_value(|ringing| match (ringing, cook.id()) {
                (Some(ringing), Some(id)) => {
                    ringing.follow(id, alarms(&state, &forecast, plan.as_ref()))
                }
                (Some(ringing), None) => ringing.stop(),
                (None, _) => {}
            });
        });
    }
}

/// What an alarm is about, in words.
pub fn alarm_words(cook: OpenCook, kind: AlarmKind, piece: Option<PieceId>) -> String {
    let named = |id| show::piece(&cook.state().read_untracked(), id);
    let piece = piece.map(named).unwrap_or_default();
    match kind {
        AlarmKind::CheckDue => say!("alarm-check", piece = piece),
        AlarmKind::PullWindowOpening => say!("alarm-window", piece = piece),
        AlarmKind::LikelyPastTarget => say!("alarm-past", piece = piece),
        AlarmKind::ProofReadingDue => say!("alarm-prove", piece = piece),
        AlarmKind::WarmUpLimit => say!("alarm-warm-up", piece = piece),
        AlarmKind::PutOnDue => say!("pad-put-on", piece = piece),
        AlarmKind::ChoreDue(chore) => describe::chore_to_do(chore),
        AlarmKind::RestOver => say!("alarm-rested", piece = piece),
        AlarmKind::ChillLimit => say!("alarm-chill", piece = piece),
        _ => say!("alarm-other"),
    }
}

fn notice(cook: OpenCook, ring: &Ring) -> Notice {
    let id = ring.alarm.id;
    let body = if ring.late > Span::minutes(1) {
        say!("alarm-late", span = show::span(ring.late))
    } else {
        say!("live-due-now")
    };
    Notice {
        title: alarm_words(cook, id.kind, id.piece),
        body,
        tag: String::new(),
        buttons: Buttons { snooze: say!("alarm-snooze"), done: say!("alarm-done") },
    }
}

/// Keeps the screen on while a piece is on the pit, if the person wants it.
fn stay_awake(cook: OpenCook) {
    wake_lock::renew_on_return();
    let wanted = Derived::new(move || {
        let on = cook.state().read().pieces.iter().any(|piece| piece.stage == Stage::On);
        on && preferences::current().stay_awake
    });
    Effect::new(move || {
        let wanted = wanted.get();
        spawn_local(async move {
            wake_lock::keep_awake(wanted).await;
        });
    });
}

/// Takes in what other windows store for the same cook, at once or on coming back.
fn follow_other_windows(cook: OpenCook, store: Store) {
    store.follow(move |of, text| {
        if untrack(|| cook.id()) == Some(of) {
            cook.take_in(&[text]);
        }
    });
    visibility::on_return(move || {
        let Some(id) = untrack(|| cook.id()) else { return };
        let store = store.clone();
        spawn_local(async move {
            if let Ok(texts) = store.load(id).await
                && untrack(|| cook.id()) == Some(id)
            {
                cook.take_in(&texts);
            }
        });
    });
}

/// Writes down that the phone's clock was set: the readings on both sides of it can be put in no
/// order, and no time between them counts any more.
fn notice_clock_jumps(cook: OpenCook) {
    let watch = StoredValue::new_local(ClockWatch::new());
    let was_hidden = StoredValue::new(!visibility::is_visible());
    visibility::on_hidden(move || was_hidden.set_value(true));
    Effect::new(move || {
        cook.now();
        let jumped = watch.with_value(ClockWatch::jump);
        let may_have_slept = was_hidden.get_value();
        was_hidden.set_value(!visibility::is_visible());
        if untrack(|| cook.id()).is_none() {
            return;
        }
        match jumped {
            Some(Jump::ForwardOrSlept(_)) if may_have_slept => cook.note_unwatched_clock(),
            Some(_) => {
                cook.record(What::ClockJumped);
            }
            None => {}
        }
    });
}
