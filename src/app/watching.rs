//! What the phone does by itself while a cook is open: it rings, keeps the screen on, follows other
//! windows, and looks for a new version.

use cook_model::cook::alarms::{AlarmId, AlarmKind, alarms_of};
use cook_model::cook::duties::{Duty, of_alarm};
use cook_model::cook::ringing::Ring;
use cook_model::cook::{Seen, Stage, What};
use cook_model::quantity::Span;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::beside::{Beside, Other};
use crate::derived::Derived;
use crate::device::alarms::{Alarms, Elsewhere, Waiting};
use crate::device::clock::{ClockWatch, Jump};
use crate::device::notify::{Buttons, Notice};
use crate::device::storage::{CookId, Store};
use crate::device::{sound, speech, update, visibility, wake_lock};
use crate::open_cook::OpenCook;
use crate::{describe, preferences, say, show};

/// What rang, and whether a new version waits.
#[derive(Clone, Copy)]
pub struct Watching {
    alarms: StoredValue<Option<Alarms>, LocalStorage>,
    waiting: RwSignal<Vec<Waiting>>,
    elsewhere: RwSignal<Vec<Elsewhere>>,
    new_version: RwSignal<bool>,
}

impl Watching {
    /// Nothing is watched yet.
    pub fn new() -> Self {
        Self {
            alarms: StoredValue::new_local(None),
            waiting: RwSignal::new(Vec::new()),
            elsewhere: RwSignal::new(Vec::new()),
            new_version: RwSignal::new(false),
        }
    }

    /// Begins to watch over a cook and its store.
    pub fn start(self, cook: OpenCook, beside: Beside, store: Store) {
        sound::unlock_with_each_tap();
        speech::get_ready();
        update::watch(move || self.new_version.set(true));
        self.ring(cook, beside, store);
        stay_awake(cook);
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

    /// The same of cooks that are not on the screen. Reactive.
    pub fn elsewhere(self) -> Vec<Elsewhere> {
        self.elsewhere.get()
    }

    /// Takes an alarm of such a cook for heard.
    pub fn heard_elsewhere(self, (of, (alarm, _)): Elsewhere) {
        self.alarms.with_value(|alarms| {
            alarms.iter().for_each(|alarms| alarms.done_of(of, alarm.id));
        });
    }

    /// Calls again in a while.
    pub fn snooze(self, (alarm, _): Waiting) {
        self.alarms.with_value(|alarms| alarms.iter().for_each(|alarms| alarms.snooze(alarm.id)));
    }

    /// Takes an alarm for heard.
    pub fn heard(self, (alarm, _): Waiting) {
        self.alarms.with_value(|alarms| alarms.iter().for_each(|alarms| alarms.done(alarm.id)));
    }

    fn ring(self, cook: OpenCook, beside: Beside, store: Store) {
        let ringing = Alarms::new(store, move |of, ring| notice(cook, beside, of, ring));
        let (waiting, elsewhere) = (ringing.waiting(), ringing.elsewhere());
        self.alarms.set_value(Some(ringing));
        Effect::new(move || self.waiting.set(waiting.get()));
        Effect::new(move || self.elsewhere.set(elsewhere.get()));
        Effect::new(move || {
            let alarms = |other: &Other| other.alarms.iter().map(|(alarm, _)| *alarm).collect();
            let others = beside.others().read();
            let others = others.iter().map(|other| (other.id, alarms(other))).collect();
            self.alarms.with_value(|ringing| {
                if let Some(ringing) = ringing {
                    ringing.follow_beside(others);
                }
            });
        });
        Effect::new(move || {
            let known = cook.seen().read().forecast.is_some();
            let duties = cook.duties().read();
            self.alarms.with_value(|ringing| match (ringing, cook.id()) {
                // Before the first forecast nobody knows what is due: nothing rings, and nothing that
                // rang is taken away.
                (Some(ringing), Some(id)) if known => ringing.follow(id, alarms_of(&duties)),
                (Some(_), Some(_)) => {}
                (Some(ringing), None) => ringing.stop(),
                (None, _) => {}
            });
        });
    }
}

/// What an alarm is about: the words of its duty, with what makes it worse.
pub fn alarm_words(cook: OpenCook, alarm: AlarmId) -> String {
    in_words(&cook.seen().read_untracked(), &cook.duties().read_untracked(), alarm)
}

/// What an alarm of a cook so seen is about, in words.
pub fn in_words(seen: &Seen, duties: &[Duty], alarm: AlarmId) -> String {
    let Some(duty) = of_alarm(duties, alarm) else { return say!("alarm-other") };
    let what = describe::duty(seen, duty).what;
    match alarm.kind {
        AlarmKind::LikelyPastTarget => say!("alarm-past", what = what),
        _ => what,
    }
}

fn notice(cook: OpenCook, beside: Beside, of: CookId, ring: &Ring) -> Notice {
    let id = ring.alarm.id;
    let body = if ring.late > Span::minutes(1) {
        say!("alarm-late", span = show::span(ring.late))
    } else {
        say!("live-due-now")
    };
    Notice {
        title: if cook.journal().of_untracked() == Some(of) {
            alarm_words(cook, id)
        } else {
            beside.words(of, id)
        },
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
