//! Rings the alarms of the open cook.
//!
//! An alarm is an absolute moment. One timer waits for the next; and whenever the page may have
//! slept (it was hidden, frozen, thrown out or started again) the clock is looked at, so that what
//! came due meanwhile rings at once, and says how late it is. A page that is not allowed to run
//! cannot ring: see the table in README.md.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use cook_model::cook::alarms::{Alarm, AlarmId};
use cook_model::cook::ringing::{self, Mark, Marks, Ring};
use cook_model::quantity::{Moment, Span};
use gloo_timers::callback::Timeout;
use leptos::prelude::{GetUntracked, ReadSignal, RwSignal, Set};
use wasm_bindgen_futures::spawn_local;
use web_sys::BroadcastChannel;

use super::notify::{Answer, Notice};
use super::sound::Tune;
use super::storage::{CookId, Store};
use super::{badge, clock, notify, prefs, sound, vibrate, visibility, windows};

/// The windows tell each other here that an alarm rang or was answered.
const CHANNEL: &str = "pull-order-alarms";

/// Browsers keep a timer's span in 31 bits of milliseconds.
const LONGEST_TIMER_MS: i64 = i32::MAX as i64;

/// How long the storage may take to say whether another window has rung an alarm. It answers in
/// milliseconds unless the browser hangs.
const PATIENCE: Span = Span::seconds(25);

/// Vibrations in milliseconds, with the pauses between.
const VIBRATION: [u32; 5] = [400, 150, 400, 150, 400];

/// An alarm that rang and was not answered yet.
pub type Waiting = (Alarm, Mark);

/// The alarms of the open cook.
#[derive(Clone)]
pub struct Alarms(Rc<Inner>);

struct Inner {
    store: Store,
    words: Box<dyn Fn(&Ring) -> Notice>,
    cook: Cell<Option<CookId>>,
    alarms: RefCell<Vec<Alarm>>,
    marks: RefCell<Marks>,
    waiting: RwSignal<Vec<Waiting>>,
    timer: RefCell<Option<Timeout>>,
    asking: RefCell<BTreeMap<AlarmId, Moment>>,
    listening: Cell<bool>,
    others: Option<BroadcastChannel>,
}

impl Alarms {
    /// Ready to ring. `words` says what a ring is about; its tag is filled in here.
    pub fn new(store: Store, words: impl Fn(&Ring) -> Notice + 'static) -> Self {
        let this = Self(Rc::new(Inner {
            store,
            words: Box::new(words),
            cook: Cell::new(None),
            alarms: RefCell::default(),
            marks: RefCell::default(),
            waiting: RwSignal::new(Vec::new()),
            timer: RefCell::default(),
            asking: RefCell::default(),
            listening: Cell::new(false),
            others: windows::channel(CHANNEL),
        }));
        let returned = this.clone();
        visibility::on_return(move || returned.look());
        let told = this.clone();
        windows::on_message(this.0.others.as_ref(), move |_| told.remember());
        this
    }

    /// The alarms that rang and were not answered yet. Reactive.
    pub fn waiting(&self) -> ReadSignal<Vec<Waiting>> {
        self.0.waiting.read_only()
    }

    /// Follows this cook, whose alarms are now these. To be called whenever they may have changed.
    pub fn follow(&self, cook: CookId, alarms: Vec<Alarm>) {
        self.0.alarms.replace(alarms);
        let before = self.0.cook.replace(Some(cook));
        if before == Some(cook) {
            self.look();
            return;
        }
        self.0.marks.replace(Marks::new());
        self.remember();
        if !self.0.listening.replace(true) {
            // Not before a cook is open: what was tapped while no page was is told at once.
            let answered = self.clone();
            notify::on_answer(move |tag, answer| answered.hear(&tag, answer));
        }
    }

    /// No cook is open any more.
    pub fn stop(&self) {
        self.0.cook.set(None);
        self.0.alarms.take();
        self.0.timer.take();
        self.show_waiting();
    }

    /// Calls again a while later.
    pub fn snooze(&self, id: AlarmId) {
        self.change(id, |mark| mark.snooze(clock::now()));
    }

    /// Takes the alarm for answered.
    pub fn done(&self, id: AlarmId) {
        self.change(id, Mark::answer);
    }

    /// Reads what is remembered, and looks at the clock.
    fn remember(&self) {
        let this = self.clone();
        spawn_local(async move {
            let Some(cook) = this.0.cook.get() else { return };
            if let Ok(marks) = this.0.store.marks(cook).await {
                this.0.marks.replace(marks);
            }
            this.look();
        });
    }

    /// Rings what is due, and waits for the next.
    fn look(&self) {
        let now = clock::now();
        self.wait(now);
        self.show_waiting();
        let Some(cook) = self.0.cook.get() else { return };
        let due = ringing::due(&self.0.alarms.borrow(), &self.0.marks.borrow(), now);
        if due.is_empty() {
            return;
        }
        let this = self.clone();
        spawn_local(async move {
            this.ring(cook, due, now).await;
            this.show_waiting();
            this.wait(clock::now());
        });
    }

    async fn ring(&self, cook: CookId, due: Vec<Ring>, now: Moment) {
        let mut rings = Vec::new();
        for ring in due {
            if self.claim(cook, ring.alarm, now).await {
                rings.push(ring);
            }
        }
        if rings.is_empty() {
            return;
        }
        self.tell_others();
        let urgent = |ring: &Ring| ring.alarm.id.kind.is_urgent();
        if prefs::load().sound {
            sound::play(if rings.iter().any(urgent) { Tune::Urgent } else { Tune::Call });
        }
        vibrate::vibrate(&VIBRATION);
        for ring in &rings {
            let notice = Notice { tag: tag(cook, ring.alarm.id), ..(self.0.words)(ring) };
            // Not waited for: a phone that is slow to show it must not hold up the next alarm.
            spawn_local(async move {
                notify::show(&notice).await;
            });
        }
    }

    /// Remembers that the alarm rings now. False if it has rung already, here or in another window.
    async fn claim(&self, cook: CookId, alarm: Alarm, now: Moment) -> bool {
        let rung = move |mark: Option<Mark>| {
            ringing::ring(&alarm, mark.as_ref(), now).map(|ring| Mark::rung(&ring, now))
        };
        let in_memory = || rung(self.0.marks.borrow().get(&alarm.id).copied());
        let asked = self.0.asking.borrow().get(&alarm.id).copied();
        let (mark, new) = match asked {
            Some(since) if now - since < PATIENCE => (None, false),
            // The storage does not answer: what is remembered here must do.
            Some(_) => (in_memory(), true),
            None => {
                self.0.asking.borrow_mut().insert(alarm.id, now);
                let changed = self.0.store.change_mark(cook, alarm.id, rung).await;
                self.0.asking.borrow_mut().remove(&alarm.id);
                // Without storage the alarm rings all the same.
                changed.unwrap_or_else(|_| (in_memory(), true))
            }
        };
        if let Some(mark) = mark {
            self.0.marks.borrow_mut().insert(alarm.id, mark);
        }
        new && mark.is_some()
    }

    /// Sets the timer for the next alarm to come.
    fn wait(&self, now: Moment) {
        let next = ringing::next(&self.0.alarms.borrow(), &self.0.marks.borrow(), now);
        let timer = next.map(|next| {
            // A millisecond more, lest the timer comes just before the moment.
            let span = (next - now).num_milliseconds() + 1;
            let this = self.clone();
            Timeout::new(span.clamp(0, LONGEST_TIMER_MS) as u32, move || this.look())
        });
        self.0.timer.replace(timer);
    }

    fn change(&self, id: AlarmId, change: impl Fn(Mark) -> Mark + 'static) {
        let this = self.clone();
        spawn_local(async move {
            let Some(cook) = this.0.cook.get() else { return };
            let known = this.0.marks.borrow().get(&id).copied();
            let changed = |mark: Option<Mark>| mark.or(known).map(&change);
            let stored = this.0.store.change_mark(cook, id, changed).await;
            let mark = stored.map_or_else(|_| changed(None), |(mark, _)| mark);
            if let Some(mark) = mark {
                this.0.marks.borrow_mut().insert(id, mark);
            }
            this.tell_others();
            this.look();
        });
    }

    /// A notification was tapped.
    fn hear(&self, tag: &str, answer: Answer) {
        let Some((cook, id)) = read_tag(tag) else { return };
        if self.0.cook.get() != Some(cook) {
            return;
        }
        match answer {
            Answer::Snooze => self.snooze(id),
            Answer::Done => self.done(id),
            // The page has come to the front, and shows what waits.
            Answer::Opened => self.look(),
        }
    }

    fn tell_others(&self) {
        if let Some(others) = &self.0.others {
            // Another window that misses it asks the store before it rings.
            let _ = others.post_message(&true.into());
        }
    }

    /// Shows what waits, and takes away the notifications of what no longer does.
    fn show_waiting(&self) {
        let waiting = ringing::unanswered(&self.0.alarms.borrow(), &self.0.marks.borrow());
        let before = self.0.waiting.get_untracked();
        if waiting == before {
            return;
        }
        if let Some(cook) = self.0.cook.get() {
            for (alarm, _) in before {
                if !waiting.iter().any(|(still, _)| still.id == alarm.id) {
                    spawn_local(async move { notify::close(&tag(cook, alarm.id)).await });
                }
            }
        }
        let first = waiting.first().map(|(alarm, mark)| {
            let late = mark.rang - mark.due;
            (self.0.words)(&Ring { alarm: *alarm, late }).title
        });
        badge::show(waiting.len(), first.as_deref());
        self.0.waiting.set(waiting);
    }
}

/// The name of an alarm's notification.
fn tag(cook: CookId, id: AlarmId) -> String {
    format!("{}/{}", cook.0, serde_json::to_string(&id).unwrap_or_default())
}

fn read_tag(tag: &str) -> Option<(CookId, AlarmId)> {
    let (cook, id) = tag.split_once('/')?;
    Some((CookId(cook.parse().ok()?), serde_json::from_str(id).ok()?))
}
