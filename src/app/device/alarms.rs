//! Rings the alarms of every cook with meat on, whichever is on the screen.
//!
//! An alarm is an absolute moment. One timer waits for the next; and whenever the page may have
//! slept (it was hidden, frozen, thrown out or started again) the clock is looked at, so that what
//! came due meanwhile rings at once, and says how late it is. A page that is not allowed to run
//! cannot ring: see the table in README.md.

mod cooks;

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use cook_model::cook::alarms::{Alarm, AlarmId};
use cook_model::cook::ringing::{self, Mark, Ring};
use cook_model::quantity::{Moment, Span};
use gloo_timers::callback::Timeout;
use leptos::prelude::{ReadSignal, ReadUntracked, RwSignal, Set};
use wasm_bindgen_futures::spawn_local;
use web_sys::BroadcastChannel;

use cooks::Cooks;

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

/// The same of a cook that is not on the screen.
pub type Elsewhere = (CookId, Waiting);

/// The alarms of every cook with meat on.
#[derive(Clone)]
pub struct Alarms(Rc<Inner>);

/// What a ring of a cook is about.
type InWords = Box<dyn Fn(CookId, &Ring) -> Notice>;

struct Inner {
    store: Store,
    words: InWords,
    cooks: Cooks,
    waiting: RwSignal<Vec<Waiting>>,
    elsewhere: RwSignal<Vec<Elsewhere>>,
    timer: RefCell<Option<Timeout>>,
    asking: RefCell<BTreeMap<(CookId, AlarmId), Moment>>,
    /// What the badge and the notifications show.
    shown: RefCell<Vec<Elsewhere>>,
    listening: Cell<bool>,
    others: Option<BroadcastChannel>,
}

impl Alarms {
    /// Ready to ring. `words` says what a ring is about; its tag is filled in here.
    pub fn new(store: Store, words: impl Fn(CookId, &Ring) -> Notice + 'static) -> Self {
        let this = Self(Rc::new(Inner {
            store,
            words: Box::new(words),
            cooks: Cooks::default(),
            waiting: RwSignal::new(Vec::new()),
            elsewhere: RwSignal::new(Vec::new()),
            timer: RefCell::default(),
            asking: RefCell::default(),
            shown: RefCell::default(),
            listening: Cell::new(false),
            others: windows::channel(CHANNEL),
        }));
        let returned = this.clone();
        visibility::on_return(move || returned.look());
        let told = this.clone();
        windows::on_message(this.0.others.as_ref(), move |_| told.remember_all());
        this
    }

    /// The alarms of the cook on the screen that rang and were not answered yet. Reactive.
    pub fn waiting(&self) -> ReadSignal<Vec<Waiting>> {
        self.0.waiting.read_only()
    }

    /// Those of other cooks. Reactive.
    pub fn elsewhere(&self) -> ReadSignal<Vec<Elsewhere>> {
        self.0.elsewhere.read_only()
    }

    /// Follows the cook on the screen, whose alarms are now these. To be called whenever they may have
    /// changed. One that was on the screen before is followed until [`Self::follow_beside`].
    pub fn follow(&self, cook: CookId, alarms: Vec<Alarm>) {
        let changed = self.0.cooks.open.replace(Some(cook)) != Some(cook);
        self.set(cook, alarms, changed);
        self.listen();
    }

    /// Follows these besides the one on the screen, and no others.
    pub fn follow_beside(&self, cooks: Vec<(CookId, Vec<Alarm>)>) {
        let beside = |of: CookId| cooks.iter().any(|(other, _)| *other == of);
        self.0.cooks.drop_where(|of| !self.0.cooks.is_open(of) && !beside(of));
        for (cook, alarms) in cooks {
            if !self.0.cooks.is_open(cook) {
                self.set(cook, alarms, false);
                self.listen();
            }
        }
        self.look();
    }

    /// No cook is on the screen any more. Others are still followed.
    pub fn stop(&self) {
        if let Some(cook) = self.0.cooks.open.take() {
            self.0.cooks.drop_where(|of| of == cook);
        }
        self.look();
    }

    fn set(&self, cook: CookId, alarms: Vec<Alarm>, anew: bool) {
        if self.0.cooks.set(cook, alarms) && !anew {
            self.look();
        } else {
            self.remember(cook);
        }
    }

    /// Not before a cook is followed: what was tapped while no page was is told at once.
    fn listen(&self) {
        if !self.0.listening.replace(true) {
            let answered = self.clone();
            notify::on_answer(move |tag, answer| answered.hear(&tag, answer));
        }
    }

    /// Calls again a while later, for the cook on the screen.
    pub fn snooze(&self, id: AlarmId) {
        if let Some(cook) = self.0.cooks.open.get() {
            self.change(cook, id, |mark| mark.snooze(clock::now()));
        }
    }

    /// Takes an alarm of the cook on the screen for answered.
    pub fn done(&self, id: AlarmId) {
        if let Some(cook) = self.0.cooks.open.get() {
            self.done_of(cook, id);
        }
    }

    /// Takes an alarm of any cook for answered.
    pub fn done_of(&self, cook: CookId, id: AlarmId) {
        self.change(cook, id, Mark::answer);
    }

    fn remember_all(&self) {
        self.0.cooks.ids().into_iter().for_each(|cook| self.remember(cook));
    }

    /// Reads what is remembered, and looks at the clock.
    fn remember(&self, cook: CookId) {
        let this = self.clone();
        spawn_local(async move {
            if let Ok(marks) = this.0.store.marks(cook).await {
                this.0.cooks.remember(cook, marks);
            }
            this.look();
        });
    }

    /// Rings what is due, and waits for the next.
    fn look(&self) {
        let now = clock::now();
        self.wait(now);
        self.show_waiting();
        for (cook, due) in self.0.cooks.of_each(|one| ringing::due(&one.alarms, &one.marks, now)) {
            if due.is_empty() {
                continue;
            }
            let this = self.clone();
            spawn_local(async move {
                this.ring(cook, due, now).await;
                this.show_waiting();
                this.wait(clock::now());
            });
        }
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
            let notice = Notice { tag: tag(cook, ring.alarm.id), ..(self.0.words)(cook, ring) };
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
        let in_memory = || rung(self.0.cooks.mark(cook, alarm.id));
        let key = (cook, alarm.id);
        let asked = self.0.asking.borrow().get(&key).copied();
        let (mark, new) = match asked {
            Some(since) if now - since < PATIENCE => (None, false),
            // The storage does not answer: what is remembered here must do.
            Some(_) => (in_memory(), true),
            None => {
                self.0.asking.borrow_mut().insert(key, now);
                let changed = self.0.store.change_mark(cook, alarm.id, rung).await;
                self.0.asking.borrow_mut().remove(&key);
                // Without storage the alarm rings all the same.
                changed.unwrap_or_else(|_| (in_memory(), true))
            }
        };
        if let Some(mark) = mark {
            self.0.cooks.set_mark(cook, alarm.id, mark);
        }
        new && mark.is_some()
    }

    /// Sets the timer for the next alarm to come.
    fn wait(&self, now: Moment) {
        let next = self.0.cooks.of_each(|one| ringing::next(&one.alarms, &one.marks, now));
        let next = next.into_iter().filter_map(|(_, next)| next).min();
        let timer = next.map(|next| {
            // A millisecond more, lest the timer comes just before the moment.
            let span = (next - now).num_milliseconds() + 1;
            let this = self.clone();
            Timeout::new(span.clamp(0, LONGEST_TIMER_MS) as u32, move || this.look())
        });
        self.0.timer.replace(timer);
    }

    fn change(&self, cook: CookId, id: AlarmId, change: impl Fn(Mark) -> Mark + 'static) {
        let this = self.clone();
        spawn_local(async move {
            let known = this.0.cooks.mark(cook, id);
            let changed = |mark: Option<Mark>| mark.or(known).map(&change);
            let stored = this.0.store.change_mark(cook, id, changed).await;
            let mark = stored.map_or_else(|_| changed(None), |(mark, _)| mark);
            if let Some(mark) = mark {
                this.0.cooks.set_mark(cook, id, mark);
            }
            this.tell_others();
            this.look();
        });
    }

    /// A notification was tapped.
    fn hear(&self, tag: &str, answer: Answer) {
        let Some((cook, id)) = read_tag(tag) else { return };
        match answer {
            Answer::Snooze => self.change(cook, id, |mark| mark.snooze(clock::now())),
            Answer::Done => self.done_of(cook, id),
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
        let each = self.0.cooks.of_each(|one| ringing::unanswered(&one.alarms, &one.marks));
        let all: Vec<Elsewhere> = each
            .into_iter()
            .flat_map(|(cook, waiting)| waiting.into_iter().map(move |one| (cook, one)))
            .collect();
        let (here, elsewhere): (Vec<Elsewhere>, Vec<Elsewhere>) =
            all.iter().copied().partition(|(cook, _)| self.0.cooks.is_open(*cook));
        let here: Vec<Waiting> = here.into_iter().map(|(_, waiting)| waiting).collect();
        let before = self.0.shown.replace(all.clone());
        if before == all && here == *self.0.waiting.read_untracked() {
            return;
        }
        for (cook, (alarm, _)) in before {
            if !all.iter().any(|(of, (still, _))| *of == cook && still.id == alarm.id) {
                spawn_local(async move { notify::close(&tag(cook, alarm.id)).await });
            }
        }
        let first = all.first().map(|(cook, (alarm, mark))| {
            let late = mark.rang - mark.due;
            (self.0.words)(*cook, &Ring { alarm: *alarm, late }).title
        });
        badge::show(all.len(), first.as_deref());
        self.0.waiting.set(here);
        self.0.elsewhere.set(elsewhere);
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
