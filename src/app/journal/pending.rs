//! What was told and is not stored yet, of all logs: stored in the order in which it was told, tried
//! again until it is stored, and in sight as long as that takes longer than it should.

use std::cell::Cell;
use std::collections::VecDeque;
use std::rc::Rc;
use std::time::Duration;

use cook_model::cook::EntryId;
use cook_model::log::{Entry, Event};
use futures::future::{Either, select};
use gloo_timers::future::TimeoutFuture;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::lost;
use crate::device::storage::{CookId, KITCHEN, Store, Trouble};
use crate::device::visibility;

/// A tap that is not stored by then is shown all the same, and that it is not stored yet is said.
const PATIENCE: Duration = Duration::from_secs(2);
/// A storage that has not stored by then has forgotten what it was asked, and is asked again.
const GIVEN_UP_MS: u32 = 30_000;
/// What has not been read by then is read from the second copy: the person sees nothing until then.
const READ_BY_MS: u32 = 5_000;
/// The pauses between tries, the last of them again and again.
const PAUSES: [Duration; 5] = [
    Duration::from_secs(1),
    Duration::from_secs(2),
    Duration::from_secs(5),
    Duration::from_secs(10),
    Duration::from_secs(20),
];

/// The texts of one tap, each under its entry's id.
pub type Texts = Vec<(EntryId, String)>;

/// Entries as they are stored.
pub fn texts<'a, E: Event + 'a>(entries: impl IntoIterator<Item = &'a Entry<E>>) -> Texts {
    entries.into_iter().filter_map(|entry| Some((entry.id, entry.stored()?))).collect()
}

/// One tap.
#[derive(Clone)]
struct Tap {
    number: u32,
    of: CookId,
    texts: Rc<Texts>,
    /// Whether the second copy took it.
    kept: bool,
    /// Whether it was not stored at once.
    late: bool,
    show: Rc<dyn Fn()>,
}

/// What is to be said of entries that are not stored yet.
#[derive(Clone, Debug, PartialEq)]
pub struct Unstored {
    /// How many.
    pub entries: usize,
    /// Whether each is at least in the second copy.
    pub kept: bool,
    /// What went wrong with the last try, if one has failed.
    pub trouble: Option<Trouble>,
}

/// What is not stored yet.
#[derive(Clone, Copy)]
pub struct Pending {
    store: StoredValue<Option<Store>, LocalStorage>,
    taps: StoredValue<VecDeque<Tap>, LocalStorage>,
    last: StoredValue<u32>,
    storing: StoredValue<bool>,
    tries: StoredValue<usize>,
    /// Whether the next try has its time already.
    waits: StoredValue<bool>,
    unstored: RwSignal<Option<Unstored>>,
    trouble: RwSignal<Option<Trouble>>,
}

impl Pending {
    /// Nothing is pending.
    pub fn new() -> Self {
        Self {
            store: StoredValue::new_local(None),
            taps: StoredValue::new_local(VecDeque::new()),
            last: StoredValue::new(0),
            storing: StoredValue::new(false),
            tries: StoredValue::new(0),
            waits: StoredValue::new(false),
            unstored: RwSignal::new(None),
            trouble: RwSignal::new(None),
        }
    }

    /// Stores into this from now on, what a reload took along first.
    pub fn use_store(self, store: Store) {
        self.store.set_value(Some(store));
        for (of, texts) in lost::taken_along() {
            self.add(of, texts, || {});
        }
        visibility::on_return(move || self.store_all());
    }

    /// The storage.
    pub fn store(self) -> Option<Store> {
        self.store.get_value()
    }

    /// What `reading` finds in the storage; none if there is no storage. What the database does not give
    /// soon the second copy does, and what went wrong is said: a log opened as if nothing were in it would be
    /// written over what happened.
    pub async fn read<T>(self, reading: impl AsyncFn(&Store) -> Result<T, Trouble>) -> Option<T> {
        let store = self.store()?;
        match within(READ_BY_MS, reading(&store)).await {
            Ok(found) => Some(found),
            Err(trouble) => {
                self.trouble.set(Some(trouble));
                reading(&Store::without_database()).await.ok()
            }
        }
    }

    /// All that was told of one cook, stored or not, the stored copies left as they are.
    pub async fn peek(self, of: CookId) -> Vec<String> {
        let mut texts = self.read(async |store| store.peek(of).await).await.unwrap_or_default();
        texts.extend(self.texts_of(of));
        texts
    }

    /// What is to be said of entries that are not stored yet; none while all goes well. Reactive.
    pub fn unstored(self) -> Option<Unstored> {
        self.unstored.get()
    }

    /// What went wrong with reading what is stored, if anything did. Reactive.
    pub fn trouble(self) -> RwSignal<Option<Trouble>> {
        self.trouble
    }

    /// The latest cook of which something is not stored yet.
    pub fn last_cook(self) -> Option<CookId> {
        self.taps.with_value(|taps| taps.iter().map(|tap| tap.of).max()).filter(|of| *of != KITCHEN)
    }

    /// The texts of one log that are not stored yet.
    pub fn texts_of(self, of: CookId) -> Vec<String> {
        self.taps.with_value(|taps| {
            let ours = taps.iter().filter(|tap| tap.of == of);
            ours.flat_map(|tap| tap.texts.iter().map(|(_, text)| text.clone())).collect()
        })
    }

    /// Takes the entries of one tap, and stores them after those before. `show` is called once they
    /// are stored, or once that has failed or takes too long.
    pub fn add(self, of: CookId, texts: Texts, show: impl FnOnce() + 'static) {
        let number = self.last.get_value() + 1;
        self.last.set_value(number);
        let kept = Store::keep_second(of, &texts);
        let show = Cell::new(Some(show));
        // At most once, whatever comes first.
        let show = Rc::new(move || show.take().into_iter().for_each(|show| show()));
        let tap = Tap { number, of, texts: Rc::new(texts), kept, late: false, show };
        self.taps.update_value(|taps| taps.push_back(tap));
        let slow = move || {
            let trouble = self.unstored.get_untracked().and_then(|said| said.trouble);
            self.be_late(|tap| tap.number == number, trouble);
        };
        set_timeout(slow, PATIENCE);
        self.store_all();
    }

    /// Tries to store all of it now.
    pub fn store_all(self) {
        let nothing = self.store().is_none() || self.taps.with_value(VecDeque::is_empty);
        if nothing || self.storing.get_value() {
            return;
        }
        self.storing.set_value(true);
        spawn_local(async move {
            let trouble = self.round().await;
            self.storing.set_value(false);
            match trouble {
                None => {
                    self.tries.set_value(0);
                    // Whatever was told while the last was being stored.
                    self.store_all();
                }
                Some(trouble) => self.try_later(trouble),
            }
        });
    }

    /// Stores one tap after the other; what went wrong, if anything did.
    async fn round(self) -> Option<Trouble> {
        let store = self.store()?;
        let mut done = 0;
        let mut trouble = None;
        while let Some(tap) = self.next_after(done) {
            done = tap.number;
            match within(GIVEN_UP_MS, store.append(tap.of, &tap.texts)).await {
                Ok(()) => self.is_stored(&tap),
                Err(found) => {
                    let of_all = found.is_of_all();
                    trouble = Some(found);
                    if of_all {
                        break;
                    }
                }
            }
        }
        if trouble.is_some() {
            self.be_late(|_| true, trouble.clone());
        }
        trouble
    }

    fn next_after(self, number: u32) -> Option<Tap> {
        self.taps.with_value(|taps| taps.iter().find(|tap| tap.number > number).cloned())
    }

    fn is_stored(self, stored: &Tap) {
        self.taps.update_value(|taps| taps.retain(|tap| tap.number != stored.number));
        (stored.show)();
        self.trouble.set(None);
        if self.taps.with_value(VecDeque::is_empty) {
            lost::take_along(Vec::new());
        }
        if let Some(said) = self.unstored.get_untracked() {
            self.say(said.trouble);
        }
    }

    fn try_later(self, trouble: Trouble) {
        if trouble == Trouble::Lost {
            lost::reload_if_idle(&self.carried());
        }
        if self.waits.get_value() {
            return;
        }
        let tries = self.tries.get_value();
        self.tries.set_value(tries + 1);
        self.waits.set_value(true);
        let again = move || {
            self.waits.set_value(false);
            self.store_all();
        };
        set_timeout(again, PAUSES[tries.min(PAUSES.len() - 1)]);
    }

    /// Reloads the page, taking along what is not stored.
    pub fn reload(self) {
        lost::reload(&self.carried());
    }

    fn carried(self) -> Vec<(CookId, Texts)> {
        self.taps.with_value(|taps| taps.iter().map(|tap| (tap.of, tap.texts.to_vec())).collect())
    }

    /// These were not stored at once, for this reason if it is known.
    fn be_late(self, which: impl Fn(&Tap) -> bool, trouble: Option<Trouble>) {
        self.taps.update_value(|taps| {
            taps.iter_mut().filter(|tap| which(tap)).for_each(|tap| tap.late = true);
        });
        if self.taps.with_value(|taps| taps.iter().any(which)) {
            self.say(trouble);
        }
    }

    /// Says how many are late, and shows what they tell.
    fn say(self, trouble: Option<Trouble>) {
        let late: Vec<Tap> =
            self.taps.with_value(|taps| taps.iter().filter(|tap| tap.late).cloned().collect());
        let entries = late.iter().map(|tap| tap.texts.len()).sum();
        let kept = late.iter().all(|tap| tap.kept);
        self.unstored.set((entries > 0).then_some(Unstored { entries, kept, trouble }));
        if entries > 0 {
            lost::take_along(self.carried());
        }
        late.iter().for_each(|tap| (tap.show)());
    }
}

/// What a storage that may never answer says in so many milliseconds.
async fn within<T>(
    millis: u32,
    answer: impl Future<Output = Result<T, Trouble>>,
) -> Result<T, Trouble> {
    match select(Box::pin(answer), TimeoutFuture::new(millis)).await {
        Either::Left((answer, _)) => answer,
        Either::Right(_) => Err(Trouble::Busy),
    }
}
