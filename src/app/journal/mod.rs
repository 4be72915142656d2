//! A log of the cook's or of the kitchen's as this page writes it. Each tap becomes entries at once,
//! dated at the tap and bound for the log that is open then; they are shown once they are stored, or
//! once it is clear that this takes longer. `pending` keeps them until they are stored.

pub mod lost;
pub mod pending;
mod windows;

use std::collections::VecDeque;
use std::time::Duration;

use cook_model::cook::{DeviceId, EntryId};
use cook_model::log::{Entry, Event, Log};
use cook_model::quantity::{Moment, Span};
use cook_model::taps::{Taps, undoings};
use leptos::prelude::*;

use self::pending::{Pending, texts};
use crate::derived::Derived;
use crate::device::identity;
use crate::device::storage::CookId;
pub use windows::follow_other_windows;

/// How long the last tap is shown with its undo; later on it is undone in the log.
const OFFER_UNDO: Duration = Duration::from_secs(30);

/// What was done last.
#[derive(Clone, Debug, PartialEq)]
pub struct Done {
    /// In words.
    pub words: String,
    /// The entries it wrote.
    pub entries: Vec<EntryId>,
}

/// Entries of one tap that are not in the log yet, and which log they are of; none is the demo's.
type Told<E> = (Option<CookId>, Vec<Entry<E>>);

/// What tells of entries in words.
type InWords<E> = fn(&Log<E>, &[Entry<E>]) -> String;

/// A log, and the one way to write in it.
pub struct Journal<E: Event + Send + Sync + 'static> {
    of: RwSignal<Option<CookId>>,
    log: RwSignal<Log<E>>,
    taps: Derived<Taps>,
    told: StoredValue<VecDeque<Told<E>>>,
    done: RwSignal<Option<Done>>,
    pending: Pending,
    in_words: StoredValue<InWords<E>>,
    writer: DeviceId,
}

impl<E: Event + Send + Sync + 'static> Clone for Journal<E> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<E: Event + Send + Sync + 'static> Copy for Journal<E> {}

impl<E: Event + Send + Sync + 'static> Journal<E> {
    /// A journal with no log open.
    pub fn new(pending: Pending, in_words: InWords<E>) -> Self {
        let log = RwSignal::new(Log::default());
        Self {
            of: RwSignal::new(None),
            log,
            taps: Derived::new(move || Taps::of(&log.read())),
            told: StoredValue::new(VecDeque::new()),
            done: RwSignal::new(None),
            pending,
            in_words: StoredValue::new(in_words),
            writer: identity::writer(),
        }
    }

    /// Which log is open; none while none is, or in the demo. Reactive.
    pub fn of(self) -> Option<CookId> {
        self.of.get()
    }

    /// Which log is open, for use outside of what is drawn.
    pub fn of_untracked(self) -> Option<CookId> {
        self.of.get_untracked()
    }

    /// The log. Reactive.
    pub fn log(self) -> ReadSignal<Log<E>> {
        self.log.read_only()
    }

    /// What was done last, while it is shown. Reactive.
    pub fn done(self) -> RwSignal<Option<Done>> {
        self.done
    }

    /// Opens a log, with those of its entries that are not stored yet. One of none is not stored.
    pub fn open(self, of: Option<CookId>, mut log: Log<E>) {
        if let Some(of) = of {
            let texts = self.pending.texts_of(of);
            add(&mut log, Log::from_stored(texts.iter().map(String::as_str)));
        }
        self.done.set(None);
        self.of.set(of);
        self.log.set(log);
    }

    /// Takes in entries of a log that were stored by another window.
    pub fn take_in(self, of: CookId, stored: &[String]) {
        if self.of.get_untracked() != Some(of) {
            return;
        }
        let mut grown = self.log.get_untracked();
        add(&mut grown, Log::from_stored(stored.iter().map(String::as_str)));
        if grown != *self.log.read_untracked() {
            self.log.set(grown);
        }
    }

    /// Tells of what happened, each at its own moment, typed at one. All of it is undone together.
    pub fn tell(self, typed: Moment, happened: Vec<(Moment, E)>) {
        // A second touch of the same button while the first is being stored means the same thing.
        let same = |(_, entries): &Told<E>| {
            entries.iter().map(|entry| &entry.what).eq(happened.iter().map(|(_, what)| what))
        };
        if happened.is_empty() || self.told.with_value(|told| told.back().is_some_and(same)) {
            return;
        }
        let of = self.of.get_untracked();
        let entries = self.number(typed, happened);
        self.told.update_value(|told| told.push_back((of, entries.clone())));
        let texts = texts(&entries);
        let show = move || self.show(of, entries);
        match of {
            Some(of) => self.pending.add(of, texts, show),
            None => set_timeout(show, Duration::ZERO),
        }
    }

    /// Takes back the last tap that still counts, at this moment.
    pub fn undo(self, now: Moment) {
        let log = self.with_told();
        let taken = Taps::of(&log).back().map(<[_]>::to_vec).unwrap_or_default();
        self.tell(now, taken.into_iter().map(|id| (now, E::undoing(id))).collect());
    }

    /// Gives back what was taken back last, at this moment.
    pub fn redo(self, now: Moment) {
        let log = self.with_told();
        let taps = Taps::of(&log);
        let given = taps.forward().map(|tap| undoings(&log, tap)).unwrap_or_default();
        self.tell(now, given.into_iter().map(|id| (now, E::undoing(id))).collect());
    }

    /// Whether something told is not in the log yet.
    pub fn has_untold(self) -> bool {
        self.told.with_value(|told| !told.is_empty())
    }

    /// What the next step back would take, in words. Reactive.
    pub fn before(self) -> Option<String> {
        self.taps.read().back().map(|tap| self.words_of(tap))
    }

    /// What the next step forward would bring, in words. Reactive.
    pub fn after(self) -> Option<String> {
        self.taps.read().forward().map(|tap| self.words_of(tap))
    }

    fn words_of(self, tap: &[EntryId]) -> String {
        let log = self.log.read();
        let entries = log.entries().iter().filter(|entry| tap.contains(&entry.id));
        let entries: Vec<Entry<E>> = entries.cloned().collect();
        (self.in_words.get_value())(&log, &entries)
    }

    /// The log with what is not shown yet.
    pub fn with_told(self) -> Log<E> {
        let mut log = self.log.get_untracked();
        let of = self.of.get_untracked();
        self.told.with_value(|told| {
            let ours = told.iter().filter(|(told_of, _)| *told_of == of);
            ours.flat_map(|(_, entries)| entries).for_each(|entry| log.insert(entry.clone()));
        });
        log
    }

    /// Makes entries of it. Every tap has a moment of its own, by which its entries are known.
    fn number(self, typed: Moment, happened: Vec<(Moment, E)>) -> Vec<Entry<E>> {
        let mut log = self.with_told();
        let last = log.entries().iter().rfind(|entry| entry.id.device == self.writer);
        let typed = match last {
            Some(last) if last.typed == typed => typed + Span::milliseconds(1),
            _ => typed,
        };
        let number = |(at, what)| {
            let entry = log.next(self.writer, at, typed, what);
            log.insert(entry.clone());
            entry
        };
        happened.into_iter().map(number).collect()
    }

    fn show(self, of: Option<CookId>, entries: Vec<Entry<E>>) {
        self.told.update_value(|told| told.retain(|(_, waiting)| *waiting != entries));
        if self.of.get_untracked() != of {
            return;
        }
        // Another window's entries may have come in meanwhile: they stay.
        self.log.update(|log| entries.iter().for_each(|entry| log.insert(entry.clone())));
        // What was tapped last can still be undone when the app notes something by itself.
        if !entries.iter().all(|entry| entry.what.is_noted_unasked()) {
            let words = (self.in_words.get_value())(&self.log.read_untracked(), &entries);
            let entries = entries.iter().map(|entry| entry.id).collect();
            self.offer_undo(Done { words, entries });
        }
    }

    fn offer_undo(self, done: Done) {
        self.done.set(Some(done.clone()));
        let fade = move || {
            if self.done.read_untracked().as_ref() == Some(&done) {
                self.done.set(None);
            }
        };
        set_timeout(fade, OFFER_UNDO);
    }
}

/// Adds the entries of another copy of a log.
fn add<E: Event>(log: &mut Log<E>, other: Log<E>) {
    other.entries().iter().for_each(|entry| log.insert(entry.clone()));
}
