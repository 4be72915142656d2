//! Shows what rang and waits for an answer: on the screen, on the icon and in the title.

use cook_model::cook::ringing::{self, Ring};
use leptos::prelude::{ReadUntracked, Set};
use wasm_bindgen_futures::spawn_local;

use super::{Alarms, Elsewhere, Waiting, tag};
use crate::device::{badge, clock, notify, speech};

impl Alarms {
    /// Shows what waits, and takes away the notifications of what no longer does.
    pub(super) fn show_waiting(&self) {
        let open = self.0.open.get();
        let now = clock::now();
        let each = self.of_each(|one| ringing::unanswered(&one.alarms, &one.marks, now));
        let all: Vec<Elsewhere> = each
            .into_iter()
            .flat_map(|(cook, waiting)| waiting.into_iter().map(move |one| (cook, one)))
            .collect();
        let (here, elsewhere): (Vec<Elsewhere>, Vec<Elsewhere>) =
            all.iter().copied().partition(|(cook, _)| Some(*cook) == open);
        let here: Vec<Waiting> = here.into_iter().map(|(_, waiting)| waiting).collect();
        let before = self.0.shown.replace(all.clone());
        if before == all && here == *self.0.waiting.read_untracked() {
            return;
        }
        for (cook, (alarm, _)) in before {
            if !all.iter().any(|(of, (still, _))| *of == cook && still.id == alarm.id) {
                speech::hush();
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
