//! Rings the alarms of every cook with meat on, whichever is on the screen.
//!
//! An alarm is an absolute moment. One timer waits for the next; and whenever the page may have
//! slept (it was hidden, frozen, thrown out or started again) the clock is looked at, so that what
//! came due meanwhile rings at once, and says how late it is. A page that is not allowed to run
//! cannot ring: see the table in README.md.
//!
//! Here they are followed and answered; `ringing` rings them, `shown` shows those that wait.

mod ringing;
mod shown;

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use cook_model::cook::alarms::{Alarm, AlarmId};
use cook_model::cook::ringing::{Mark, Marks, Ring};
use cook_model::quantity::Moment;
use gloo_timers::callback::Timeout;
use leptos::prelude::{ReadSignal, RwSignal};
use wasm_bindgen_futures::spawn_local;
use web_sys::BroadcastChannel;

use super::notify::{Answer, Notice};
use super::storage::{CookId, Store};
use super::{clock, notify, visibility, windows};

/// The windows tell each other here that an alarm rang or was answered.
const CHANNEL: &str = "pull-order-alarms";

/// An alarm that rang and was not answered yet.
pub type Waiting = (Alarm, Mark);

/// The same of a cook that is not on the screen.
pub type Elsewhere = (CookId, Waiting);

/// The alarms of every cook with meat on.
#[derive(Clone)]
pub struct Alarms(Rc<Inner>);

/// What a ring of a cook is about.
type InWords = Box<dyn Fn(CookId, &Ring) -> Notice>;

/// The alarms of one cook, and what is remembered of them.
#[derive(Default)]
struct Followed {
    alarms: Vec<Alarm>,
    marks: Marks,
}

struct Inner {
    store: Store,
    words: InWords,
    /// The cook on the screen.
    open: Cell<Option<CookId>>,
    cooks: RefCell<BTreeMap<CookId, Followed>>,
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
            open: Cell::new(None),
            cooks: RefCell::default(),
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
        let changed = self.0.open.replace(Some(cook)) != Some(cook);
        self.set(cook, alarms, changed);
        self.listen();
    }

    /// Follows these besides the one on the screen, and no others.
    pub fn follow_beside(&self, cooks: Vec<(CookId, Vec<Alarm>)>) {
        let open = self.0.open.get();
        let wanted =
            |cook: &CookId| Some(*cook) == open || cooks.iter().any(|(other, _)| other == cook);
        self.0.cooks.borrow_mut().retain(|cook, _| wanted(cook));
        for (cook, alarms) in cooks {
            if Some(cook) != open {
                self.set(cook, alarms, false);
                self.listen();
            }
        }
        self.look();
    }

    /// No cook is on the screen any more. Others are still followed.
    pub fn stop(&self) {
        if let Some(cook) = self.0.open.take() {
            self.0.cooks.borrow_mut().remove(&cook);
        }
        self.look();
    }

    fn set(&self, cook: CookId, alarms: Vec<Alarm>, anew: bool) {
        let mut cooks = self.0.cooks.borrow_mut();
        let known = cooks.contains_key(&cook);
        cooks.entry(cook).or_default().alarms = alarms;
        drop(cooks);
        if known && !anew {
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
        if let Some(cook) = self.0.open.get() {
            self.change(cook, id, |mark| mark.snooze(clock::now()));
        }
    }

    /// Takes an alarm of the cook on the screen for answered.
    pub fn done(&self, id: AlarmId) {
        if let Some(cook) = self.0.open.get() {
            self.done_of(cook, id);
        }
    }

    /// Takes an alarm of any cook for answered.
    pub fn done_of(&self, cook: CookId, id: AlarmId) {
        self.change(cook, id, Mark::answer);
    }

    fn remember_all(&self) {
        let cooks: Vec<CookId> = self.0.cooks.borrow().keys().copied().collect();
        cooks.into_iter().for_each(|cook| self.remember(cook));
    }

    /// Reads what is remembered, and looks at the clock.
    fn remember(&self, cook: CookId) {
        let this = self.clone();
        spawn_local(async move {
            if let Ok(marks) = this.0.store.marks(cook).await
                && let Some(followed) = this.0.cooks.borrow_mut().get_mut(&cook)
            {
                followed.marks = marks;
            }
            this.look();
        });
    }

    /// Something of each cook, the one on the screen first.
    fn of_each<T>(&self, what: impl Fn(&Followed) -> T) -> Vec<(CookId, T)> {
        let open = self.0.open.get();
        let cooks = self.0.cooks.borrow();
        let of =
            |is_open: bool| cooks.iter().filter(move |(cook, _)| (Some(**cook) == open) == is_open);
        of(true).chain(of(false)).map(|(cook, followed)| (*cook, what(followed))).collect()
    }

    fn mark(&self, cook: CookId, id: AlarmId) -> Option<Mark> {
        self.0.cooks.borrow().get(&cook)?.marks.get(&id).copied()
    }

    fn set_mark(&self, cook: CookId, id: AlarmId, mark: Mark) {
        if let Some(followed) = self.0.cooks.borrow_mut().get_mut(&cook) {
            followed.marks.insert(id, mark);
        }
    }

    fn change(&self, cook: CookId, id: AlarmId, change: impl Fn(Mark) -> Mark + 'static) {
        let this = self.clone();
        spawn_local(async move {
            let known = this.mark(cook, id);
            let changed = |mark: Option<Mark>| mark.or(known).map(&change);
            let stored = this.0.store.change_mark(cook, id, changed).await;
            let mark = stored.map_or_else(|_| changed(None), |(mark, _)| mark);
            if let Some(mark) = mark {
                this.set_mark(cook, id, mark);
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
}

/// The name of an alarm's notification.
fn tag(cook: CookId, id: AlarmId) -> String {
    format!("{}/{}", cook.0, serde_json::to_string(&id).unwrap_or_default())
}

fn read_tag(tag: &str) -> Option<(CookId, AlarmId)> {
    let (cook, id) = tag.split_once('/')?;
    Some((CookId(cook.parse().ok()?), serde_json::from_str(id).ok()?))
}
