//! The cooks that are followed: the alarms of each, and what is remembered of them.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use cook_model::cook::alarms::{Alarm, AlarmId};
use cook_model::cook::ringing::{Mark, Marks};

use crate::device::storage::CookId;

/// The alarms of one cook, and what is remembered of them.
#[derive(Default)]
pub struct Followed {
    /// The alarms.
    pub alarms: Vec<Alarm>,
    /// What rang.
    pub marks: Marks,
}

/// All of them.
#[derive(Default)]
pub struct Cooks {
    /// The cook on the screen.
    pub open: Cell<Option<CookId>>,
    all: RefCell<BTreeMap<CookId, Followed>>,
}

impl Cooks {
    /// Whether this is the cook on the screen.
    pub fn is_open(&self, cook: CookId) -> bool {
        self.open.get() == Some(cook)
    }

    /// Sets the alarms of a cook; whether it was followed before.
    pub fn set(&self, cook: CookId, alarms: Vec<Alarm>) -> bool {
        let mut all = self.all.borrow_mut();
        let known = all.contains_key(&cook);
        all.entry(cook).or_default().alarms = alarms;
        known
    }

    /// Follows these no longer.
    pub fn drop_where(&self, dropped: impl Fn(CookId) -> bool) {
        self.all.borrow_mut().retain(|cook, _| !dropped(*cook));
    }

    /// Every cook followed.
    pub fn ids(&self) -> Vec<CookId> {
        self.all.borrow().keys().copied().collect()
    }

    /// Something of each cook, the one on the screen first.
    pub fn of_each<T>(&self, what: impl Fn(&Followed) -> T) -> Vec<(CookId, T)> {
        let all = self.all.borrow();
        let of = |open: bool| all.iter().filter(move |(cook, _)| self.is_open(**cook) == open);
        of(true).chain(of(false)).map(|(cook, followed)| (*cook, what(followed))).collect()
    }

    /// What is remembered of a cook's alarms.
    pub fn remember(&self, cook: CookId, marks: Marks) {
        if let Some(followed) = self.all.borrow_mut().get_mut(&cook) {
            followed.marks = marks;
        }
    }

    /// What is remembered of one alarm.
    pub fn mark(&self, cook: CookId, id: AlarmId) -> Option<Mark> {
        self.all.borrow().get(&cook)?.marks.get(&id).copied()
    }

    /// Remembers one alarm so.
    pub fn set_mark(&self, cook: CookId, id: AlarmId, mark: Mark) {
        if let Some(followed) = self.all.borrow_mut().get_mut(&cook) {
            followed.marks.insert(id, mark);
        }
    }
}
