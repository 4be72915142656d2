//! Entries on their way into the log: stored first, then shown, in the order in which they were told.

use std::time::Duration;

use cook_model::cook::{Entry, Log, What};
use cook_model::quantity::Moment;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::{Done, OpenCook};
use crate::describe;
use crate::device::storage::CookId;

/// How long the last tap is shown with its undo; later on it is undone in the cook's log.
const OFFER_UNDO: Duration = Duration::from_secs(30);

/// Things told but not yet stored. They wait in order, for each entry's id depends on the one before.
#[derive(Clone, PartialEq)]
pub(super) struct Told {
    at: Moment,
    what: Vec<What>,
}

impl OpenCook {
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

    /// Whether something told is not in the log yet.
    pub fn has_unwritten(self) -> bool {
        self.writing.get_value()
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
        let unasked = told.what.iter().all(What::is_noted_unasked);
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
        // What was tapped last can still be undone when the app notes something by itself.
        if !unasked {
            self.offer_undo(done);
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

    async fn write_one(self, id: Option<CookId>, log: &mut Log, at: Moment, what: What) -> Entry {
        let entry = log.next(self.writer, at, at, what);
        if let (Some(id), Some(store)) = (id, self.store()) {
            // Not stored, the cook goes on in memory, and the person is told.
            self.trouble.set(store.append(id, &entry).await.err());
        }
        log.insert(entry.clone());
        entry
    }
}
