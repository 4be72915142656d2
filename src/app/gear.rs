//! What belongs to the phone's owner (thermometers, pits, the proof rule), kept on the phone beside the
//! cooks: a new cook starts from it, and what is told in a cook is remembered for the next.

use cook_model::cook::gear::{Gear, said_by};
use cook_model::cook::{What, fold};
use cook_model::log::Event;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::device::small_store;
use crate::device::storage::CookId;
use crate::open_cook::OpenCook;

const KEY: &str = "gear";

/// The gear, as a signal.
#[derive(Clone, Copy)]
pub struct Kept(RwSignal<Gear>);

impl Kept {
    /// What is kept on this phone. It learns from the open cook from now on.
    pub fn start(cook: OpenCook) -> Self {
        let kept = small_store::get(KEY).and_then(|text| serde_json::from_str(&text).ok());
        let kept = Self(RwSignal::new(kept.unwrap_or_default()));
        let state = Derived::new(move || fold(&cook.log().read()));
        let said = Derived::new(move || (cook.id(), said_by(&state.read())));
        Effect::new(move |before: Option<(Option<CookId>, Gear)>| {
            let now = said.get();
            let same_cook = before.as_ref().is_some_and(|(id, _)| *id == now.0 && id.is_some());
            if same_cook && before.as_ref() != Some(&now) && !is_start_undone(cook) {
                kept.change(|gear| gear.learn(&state.read_untracked(), cook.moment()));
            }
            now
        });
        kept
    }

    /// The gear. Reactive.
    pub fn get(self) -> Gear {
        self.0.get()
    }

    /// Changes it, and keeps it. Where the browser refuses, it lasts until the page closes.
    pub fn change(self, how: impl FnOnce(&mut Gear)) {
        self.0.update(how);
        if let Ok(text) = serde_json::to_string(&*self.0.read_untracked()) {
            small_store::set(KEY, &text);
        }
    }
}

/// Whether the cook took back what it started from: that says nothing about the gear itself.
fn is_start_undone(cook: OpenCook) -> bool {
    let log = cook.log().read_untracked();
    let undone = log.undone_by();
    log.entries().first().is_some_and(|first| {
        first.what.undoes().is_none() && is_of_gear(&first.what) && undone.contains_key(&first.id)
    })
}

/// Whether an entry tells of what belongs to the phone's owner.
pub fn is_of_gear(what: &What) -> bool {
    matches!(
        what,
        What::PitKindSet { .. }
            | What::RackSet { .. }
            | What::HabitsSet { .. }
            | What::TolerancesSet { .. }
            | What::ThermometerChecked { .. }
            | What::ThermometerReplaced { .. }
            | What::ProofRuleSet { .. }
    )
}

/// Lets the open cook use what is in use on this phone.
pub fn use_in(cook: OpenCook) {
    let entries = kept().0.read_untracked().entries_for(&fold(&cook.log().read_untracked()));
    cook.record_all(entries);
}

/// The gear of this phone.
pub fn kept() -> Kept {
    expect_context()
}
