//! The cooks beside the one on the screen that still have meat on or resting: their alarms ring too.

use cook_model::cook::alarms::{Alarm, AlarmId, alarms};
use cook_model::cook::duties::duties;
use cook_model::cook::thinking::{Answer, Question};
use cook_model::cook::{CookState, Log, Seen, Stage, fold};
use cook_model::quantity::{Moment, Span};
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::OVER_AFTER;
use crate::asking::Asking;
use crate::device::storage::CookId;
use crate::device::{clock, visibility};
use crate::open_cook::OpenCook;
use crate::watching::in_words;
use crate::{say, show};

/// A cook set up longer ago is not looked into.
const LOOKED_INTO: Span = Span::hours(48);

/// Another cook.
#[derive(Clone, Debug, PartialEq)]
pub struct Other {
    /// Which.
    pub id: CookId,
    /// How many entries are stored of it.
    entries: usize,
    /// What its log adds up to.
    pub state: CookState,
    /// Its alarms, each in words.
    pub alarms: Vec<(Alarm, String)>,
}

/// The cooks beside the one on the screen.
#[derive(Clone, Copy)]
pub struct Beside {
    cook: OpenCook,
    others: RwSignal<Vec<Other>>,
    turn: StoredValue<u32>,
    opened: RwSignal<()>,
}

impl Beside {
    /// None is known yet.
    pub fn new(cook: OpenCook) -> Self {
        let opened = RwSignal::new(());
        let beside =
            Self { cook, others: RwSignal::new(Vec::new()), turn: StoredValue::new(0), opened };
        Effect::new(move || {
            opened.track();
            cook.id();
            beside.look();
        });
        beside
    }

    /// Looks for them now that there is a storage, whenever another cook is opened, and on coming back.
    pub fn watch(self) {
        self.opened.set(());
        visibility::on_return(move || self.look());
    }

    /// Those with meat on, resting, or proved and not packed. Reactive.
    pub fn others(self) -> ReadSignal<Vec<Other>> {
        self.others.read_only()
    }

    /// Looks into what is stored.
    pub fn look(self) {
        let turn = self.turn.get_value() + 1;
        self.turn.set_value(turn);
        spawn_local(async move {
            let found = self.find().await;
            // A later look knows better.
            if self.turn.get_value() == turn && *self.others.read_untracked() != found {
                self.others.set(found);
            }
        });
    }

    async fn find(self) -> Vec<Other> {
        let pending = self.cook.pending();
        let (now, open) = (clock::now(), self.cook.journal().of_untracked());
        let mut found = Vec::new();
        for summary in pending.read(async |store| store.cooks().await).await.unwrap_or_default() {
            if Some(summary.id) == open || now - summary.id.set_up() > LOOKED_INTO {
                continue;
            }
            let texts = pending.peek(summary.id).await;
            let same = |known: &&Other| known.id == summary.id && known.entries == texts.len();
            let known = self.others.read_untracked().iter().find(same).cloned();
            found.extend(match known {
                Some(known) => Some(known),
                None => look_at(summary.id, &texts, now, self.cook.asking()).await,
            });
        }
        found
    }

    /// What an alarm of another cook is about, and of which cook it is.
    pub fn words(self, id: CookId, alarm: AlarmId) -> String {
        let others = self.others.read_untracked();
        let alarms = others.iter().filter(|other| other.id == id).flat_map(|other| &other.alarms);
        let mut told =
            alarms.filter(|(known, _)| known.id == alarm).map(|(_, words)| words.clone());
        let what = told.next().unwrap_or_else(|| say!("alarm-other"));
        say!("alarm-elsewhere", cook = show::the_time(id.set_up()), what = what)
    }
}

/// A stored cook, if it is still under way.
async fn look_at(id: CookId, texts: &[String], now: Moment, asking: Asking) -> Option<Other> {
    let log = Log::from_stored(texts.iter().map(String::as_str));
    let fresh = log.entries().last().is_some_and(|last| now - last.typed < OVER_AFTER);
    let under_way = fold(&log).pieces.iter().any(|piece| has_meat_out(piece.stage));
    if !(fresh && under_way) {
        return None;
    }
    let answer = asking.answer((&log, now), Question::Look).await?;
    let Answer::Look { forecast, plan } = answer else { return None };
    let seen = Seen::facts(&log, now).with(forecast, plan);
    let duties = duties(&seen);
    let told = |alarm: Alarm| (alarm, in_words(&seen, &duties, alarm.id));
    let alarms = alarms(&seen).into_iter().map(told).collect();
    Some(Other { id, entries: texts.len(), state: seen.state, alarms })
}

/// Whether a piece at this stage still needs somebody.
const fn has_meat_out(stage: Stage) -> bool {
    matches!(stage, Stage::On | Stage::Resting | Stage::Proved)
}

/// The cooks beside the one on the screen.
pub fn beside() -> Beside {
    expect_context()
}
