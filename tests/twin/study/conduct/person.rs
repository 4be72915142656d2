//! The person: hears bells, comes late, looks at the card, does what it says, and goes away again.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use cook_model::cook::duties::{Act, Duty, in_order, of_alarm};
use cook_model::cook::ringing::{self, Mark, Marks};
use cook_model::cook::{EntryId, Stage, What};
use cook_model::piece::PieceId;
use cook_model::quantity::{Moment, to_seconds};
use rand::RngExt;
use rand_chacha::ChaCha8Rng;

use crate::cook::stream;
use crate::diary::{self, Diary, moment};

use super::day::Day;
use super::look::{Look, Looker};
use super::outcome::{OfPiece, Outcome};
use super::typing::Slip;
use super::world::World;

/// From a bell to being there, s, and up to how much later.
const TO_GET_THERE: f64 = 30.0;
const LATE: core::ops::Range<f64> = 0.0..180.0;
/// Who has just done something looks at the card for so long, s.
const LOOKS_FOR: f64 = 60.0;
/// A person who waits looks about this often, s.
const GLANCE: f64 = 10.0;
/// A day this long has gone wrong, s.
const TOO_LONG: f64 = 14.0 * 3600.0;
/// So many acts in one visit are none of a person's: the list does not change by what is done.
const TOO_MANY: usize = 400;

/// A person at work.
pub(super) struct Person<W> {
    pub(super) world: W,
    pub(super) day: Day,
    pub(super) luck: ChaCha8Rng,
    pub(super) diary: Diary,
    /// s since all was set out.
    pub(super) now: f64,
    pub(super) lid_is_up: bool,
    pub(super) openings: Vec<f64>,
    pub(super) first_on: Option<f64>,
    /// When the fire was last mended.
    pub(super) mended: Option<f64>,
    /// When pieces were last hurried up.
    pub(super) hurried: BTreeMap<PieceId, f64>,
    /// Readings typed wrongly, and how.
    pub(super) slips: BTreeMap<EntryId, Slip>,
    /// Readings that the person was asked about.
    pub(super) asked: BTreeSet<EntryId>,
    pub(super) outcome: Outcome,
    stepped: f64,
    looker: Looker,
    looked: Option<Rc<Look>>,
    marks: Marks,
}

impl<W: World> Person<W> {
    pub(super) fn new(world: W, mut diary: Diary, day: &Day) -> Self {
        if day.pull_choice.is_some() {
            diary.write(-590.0, What::PullTargetSet { piece: None, target: day.pull_choice });
        }
        for (piece, tonight) in day.tonight.iter().enumerate().filter(|(_, tonight)| !**tonight) {
            diary.write(-580.0, What::TonightSet { piece: diary::id(piece), tonight: *tonight });
        }
        diary.write(0.0, What::DinnerSet { at: Some(moment(day.dinner)) });
        let pieces = vec![OfPiece::default(); world.pieces()];
        Self {
            world,
            luck: stream(day.seed, 6),
            diary,
            now: 0.0,
            lid_is_up: false,
            openings: Vec::new(),
            first_on: None,
            mended: None,
            hurried: BTreeMap::new(),
            slips: BTreeMap::new(),
            asked: BTreeSet::new(),
            outcome: Outcome { seed: day.seed, pieces, ..Outcome::default() },
            stepped: 0.0,
            looker: Looker::default(),
            looked: None,
            marks: Marks::new(),
            day: day.clone(),
        }
    }

    /// The whole day.
    pub(super) fn cook(mut self) -> Outcome {
        self.outcome.told_in_time = self.look().seen.plan.as_ref().map(|plan| plan.in_time.value());
        let mut comes: Option<f64> = None;
        while !self.outcome.is_finished() && self.now < TOO_LONG {
            let was = self.now;
            self.spend(GLANCE);
            if self.chance_happens() {
                comes = Some(self.now + TO_GET_THERE);
            }
            self.note_what_ran_out(was);
            if self.hear() {
                let late = self.luck.random_range(LATE);
                let there = self.now + TO_GET_THERE + late;
                comes = Some(comes.map_or(there, |at| at.min(there)));
            }
            if comes.is_some_and(|at| at <= self.now) {
                comes = None;
                self.visit();
            }
        }
        self.finish()
    }

    /// What the app shows now.
    pub(super) fn look(&mut self) -> Rc<Look> {
        let version = self.diary.log().entries().len();
        if let Some(look) = self.looked.as_ref().filter(|look| look.seen.version == version) {
            return Rc::clone(look);
        }
        let look = Rc::new(self.looker.look(self.diary.log(), moment(self.now)));
        self.looked = Some(Rc::clone(&look));
        self.note_proofs(&look);
        look
    }

    pub(super) fn moment(&self) -> Moment {
        moment(self.now)
    }

    /// Lets time pass.
    pub(super) fn spend(&mut self, seconds: f64) {
        if self.lid_is_up {
            self.world.hold_lid_up(seconds);
        }
        self.now += seconds;
        while self.stepped + self.world.step_takes() <= self.now {
            self.world.step();
            self.stepped += self.world.step_takes();
            for (piece, outcome) in self.outcome.pieces.iter_mut().enumerate() {
                outcome.is_at(self.world.core(piece));
            }
        }
    }

    pub(super) fn write(&mut self, what: What) -> Option<EntryId> {
        self.diary.write(self.now, what);
        self.diary.log().entries().last().map(|entry| entry.id)
    }

    /// Taps count from the first piece put on.
    pub(super) fn tap(&mut self, taps: usize) {
        if self.first_on.is_some() {
            self.outcome.taps += taps;
        }
    }

    /// What the day brings; true if it was told to the app.
    fn chance_happens(&mut self) -> bool {
        let Some(first_on) = self.first_on else { return false };
        let since = self.now - first_on;
        if self.day.fire_dies.take_if(|at| *at <= since).is_some() {
            self.world.let_fire_die();
            self.mended = None;
            self.outcome.fire_died = true;
        }
        let Some((_, by)) = self.day.dinner_moves.take_if(|(at, _)| *at <= since) else {
            return false;
        };
        self.day.dinner = (self.day.dinner + by).max(self.now + LOOKS_FOR);
        self.outcome.dinner_moved = true;
        self.tap(2);
        self.write(What::DinnerSet { at: Some(moment(self.day.dinner)) });
        true
    }

    /// Whether a bell rings.
    fn hear(&mut self) -> bool {
        let look = self.look();
        let rings = ringing::due(&look.alarms, &self.marks, self.moment());
        for ring in &rings {
            let called = of_alarm(&look.duties, ring.alarm.id);
            let is_due = called.is_some_and(|duty| duty.is_due(self.moment()));
            self.outcome.off_card += usize::from(!is_due);
            self.marks.insert(ring.alarm.id, Mark::rung(ring, self.moment()));
            self.outcome.rings.push(self.now);
            self.outcome.tell(self.now, || format!("bell {:?}", ring.alarm.id.kind));
        }
        !rings.is_empty()
    }

    /// Looks at the card and does what it says, one thing after another, until for a minute there is
    /// nothing to do.
    fn visit(&mut self) {
        let fresh = self.looker.look(self.diary.log(), self.moment());
        self.note_what_vanished(&fresh);
        let (mut acted, mut acts) = (self.now, 0);
        while self.now - acted < LOOKS_FOR && !self.outcome.is_finished() {
            if self.act() {
                (acted, acts) = (self.now, acts + 1);
            } else {
                self.lid_is_up = false;
                self.spend(GLANCE);
            }
            // Whoever is still there hears it, and looks again.
            if self.hear() {
                acted = self.now;
            }
            if acts > TOO_MANY {
                self.outcome.stuck += 1;
                break;
            }
        }
        self.outcome.in_vain += usize::from(acts == 0);
        self.lid_is_up = false;
    }

    /// Does the first thing on the card that is due and not under way; false if there is none.
    fn act(&mut self) -> bool {
        let look = self.look();
        let now = self.moment();
        let due = in_order(&look.duties, now).into_iter().filter(|duty| duty.is_due(now));
        let is_open = |duty: &&Duty| match duty.act {
            Act::MendFire => self.sees_to_fire(),
            Act::HurryUp => self.hurries(&duty.pieces),
            _ => true,
        };
        let Some(duty) = due.into_iter().find(is_open).cloned() else { return false };
        self.outcome.tell(self.now, || {
            let pieces: Vec<u32> = duty.pieces.iter().map(|piece| piece.0).collect();
            format!("{:?} {pieces:?}", duty.act)
        });
        self.do_it(&duty);
        true
    }

    /// No duty goes away without an entry before the end that it tells.
    fn note_what_vanished(&mut self, fresh: &Look) {
        let now = self.moment();
        let Some(kept) = self.looked.as_ref() else { return };
        let due = kept.duties.iter().filter(|duty| duty.is_due(now));
        let is_there = |duty: &&Duty| {
            fresh.duties.iter().any(|other| other.act == duty.act && other.pieces == duty.pieces)
        };
        self.outcome.vanished += due.filter(|duty| !is_there(duty)).count();
    }

    /// Those that ended by themselves since a moment, and were due until then.
    fn note_what_ran_out(&mut self, since: f64) {
        let (was, now) = (moment(since), self.moment());
        let look = self.look();
        let ran_out = look.duties.iter().filter(|duty| duty.is_due(was) && duty.is_over(now));
        for duty in ran_out {
            self.outcome.ran_out += 1;
            let act = duty.act.clone();
            self.outcome.tell(self.now, || format!("ran out: {act:?}"));
        }
    }

    fn note_proofs(&mut self, look: &Look) {
        for (standing, history) in look.seen.state.each_piece() {
            let outcome = &mut self.outcome.pieces[diary::place(history.id)];
            if standing.stage == Stage::Proved && outcome.proved.is_none() {
                outcome.proved = Some(self.now);
            }
        }
    }

    fn finish(mut self) -> Outcome {
        let look = self.look();
        let habits = &look.seen.state.settings.habits;
        let (rest, carving) = (to_seconds(habits.rest), to_seconds(habits.carving));
        let last_off = self.outcome.pieces.iter().filter_map(|piece| piece.off).fold(0.0, f64::max);
        let needless = self.asked.iter().filter(|asked| !self.slips.contains_key(asked));
        self.outcome.needless_questions = needless.count();
        self.outcome.openings = self.openings.iter().filter(|at| **at <= last_off).count();
        let ready = |(piece, tonight): (&OfPiece, &bool)| {
            let served = !piece.discarded && piece.done.is_some();
            let ready = piece.proved.zip(piece.off).map(|(at, off)| at.max(off + rest));
            if *tonight { ready.filter(|_| served).unwrap_or(f64::INFINITY) } else { 0.0 }
        };
        let all = self.outcome.pieces.iter().zip(&self.day.tonight).map(ready).fold(0.0, f64::max);
        self.outcome.early = Some(self.day.dinner - all - carving);
        self.outcome
    }
}
