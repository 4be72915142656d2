//! The stage machine over hours, with a pit that can fail: every sequence to a length of seven.
//!
//! Steps are four minutes, or three hours where the sequence waits. What each comes to is judged by the
//! sources' own sentences, written here without the fold: past a limit nothing is proved or offered;
//! where no limit can have run out, what is proved is told exactly. Between the two (time that may
//! or may not have been spent below 140 F) only the readings are asked for.
//!
//! Left out, as they add nothing: what follows a packing but for the moment after it (the shorter
//! sequences of `stage_machine` go on from there), and a wait at the end (each sequence is
//! judged at its end and three hours later).
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::{Entry, Stage, What};
use cook_model::quantity::{Temperature, to_minutes};
use support::{Cook, at, packed, piece, pulled, put_on, read, set_out};

const LENGTH: usize = 7;
const STEP: f64 = 4.0;
const WAIT: f64 = 180.0;
/// "Never leave food out of refrigeration over 2 hours." USDA FSIS, Danger Zone (40 to 140 F).
const OUT: f64 = 120.0;
/// Without temperature control, discarded within four hours. FDA Food Code 2022, 3-501.19(B), from
/// memory.
const WARM: f64 = 240.0;
/// Two readings of one core by good thermometers differ by no more, F (makers, from memory).
const SCATTER: f64 = 3.0;

/// What the sentences say of one piece at a moment.
#[derive(Debug, Default)]
struct Told {
    stage: Stage0,
    /// A limit has run out, whatever else may be so.
    past: bool,
    /// No limit can have run out, and nothing but the readings decides.
    within: bool,
    /// Of this spell, a reading of 165 F in two places that nothing colder on the pit speaks against.
    shown: bool,
}

#[derive(Clone, Copy, Debug, Default, PartialEq)]
enum Stage0 {
    #[default]
    Raw,
    On,
    Off,
    Packed,
}

/// A reading of this spell.
#[derive(Clone, Copy, Debug)]
struct Reading {
    minute: f64,
    f: f64,
    on: bool,
}

/// Follows the log by the clock on the wall.
#[derive(Debug, Default)]
struct Walk {
    told: Told,
    /// When it first went on; when it was first shown to be at 140 F or above.
    first_on: Option<f64>,
    first_hot: Option<f64>,
    /// Off the heat and not shown to be hot since.
    out_since: Option<f64>,
    /// On the pit, read hot before and the pit read at 100 F since.
    failed_since: Option<f64>,
    /// Whether this spell on the pit was shown to be hot.
    is_hot: bool,
    any_failure: bool,
    /// It was put on while it was on: what was read before may be of another piece, so that the clocks
    /// may count more than this walk does.
    put_on_twice: bool,
    /// The most that it can have been below 140 F so far.
    at_most: f64,
    longest_out: f64,
    last: f64,
    readings: Vec<Reading>,
}

impl Walk {
    fn until(&mut self, minute: f64) {
        if self.told.stage == Stage0::Packed {
            return;
        }
        let on_and_hot = self.told.stage == Stage0::On && self.is_hot;
        if self.told.stage != Stage0::Raw && !on_and_hot {
            self.at_most += minute - self.last;
        }
        self.last = minute;
        let longer = |since: Option<f64>, limit: f64| since.is_some_and(|at| minute - at > limit);
        let never_hot = self.first_on.filter(|_| self.first_hot.is_none());
        self.told.past |= longer(self.out_since, OUT)
            || longer(never_hot, WARM)
            || longer(self.failed_since, WARM);
        if let Some(since) = self.out_since {
            self.longest_out = self.longest_out.max(minute - since);
        }
    }

    fn hear(&mut self, minute: f64, what: &What) {
        self.until(minute);
        let stage = self.told.stage;
        match what {
            What::PutOn { .. } if stage != Stage0::Packed => {
                self.put_on_twice |= stage == Stage0::On;
                self.told.stage = Stage0::On;
                self.first_on.get_or_insert(minute);
                (self.out_since, self.failed_since, self.is_hot) = (None, None, false);
                self.readings.clear();
            }
            What::Pulled { .. } if stage == Stage0::On => {
                self.told.stage = Stage0::Off;
                (self.out_since, self.failed_since) = (Some(minute), None);
            }
            What::Packed { .. } if stage == Stage0::Off => self.told.stage = Stage0::Packed,
            What::PitRead { .. } => {
                self.any_failure = true;
                if stage == Stage0::On && self.is_hot {
                    self.failed_since.get_or_insert(minute);
                }
            }
            What::CoreRead { temperature, .. } if matches!(stage, Stage0::On | Stage0::Off) => {
                let on = stage == Stage0::On;
                self.readings.push(Reading { minute, f: temperature.f(), on });
                self.first_hot.get_or_insert(minute);
                self.is_hot = true;
                self.failed_since = None;
                self.out_since = self.out_since.map(|_| minute);
            }
            _ => {}
        }
    }

    fn told(mut self, now: f64) -> Told {
        self.until(now);
        let readings = &self.readings;
        // On the pit nothing cools while it burns; and of one look at rest, less than five minutes, the
        // lower counts.
        let speaks_against = |this: &Reading, other: &Reading| {
            let one_look = !this.on && !other.on && (this.minute - other.minute).abs() < 5.0;
            let later_on = other.on && other.minute >= this.minute;
            other.f < this.f - SCATTER && (one_look || later_on)
        };
        self.told.shown = readings.iter().any(|this| {
            let stands = !readings.iter().any(|other| speaks_against(this, other));
            this.f >= 165.0 - 1e-9 && (self.any_failure || stands)
        });
        let sure = !self.any_failure && !self.put_on_twice;
        self.told.within = sure && self.at_most <= WARM && self.longest_out <= OUT;
        self.told
    }
}

fn told(cook: &Cook, now: f64) -> Told {
    let mut walk = Walk::default();
    for entry in cook.log.entries() {
        walk.hear(to_minutes(entry.happened - at(0.0)), &entry.what);
    }
    walk.told(now)
}

/// How often each of the cases came up.
#[derive(Debug, Default)]
struct Seen {
    all: u64,
    past: u64,
    proved: u64,
}

fn check(cook: &Cook, now: f64, seen: &mut Seen) {
    let told = told(cook, now);
    let state = cook.state().at(None, at(now));
    let own = &state.pieces[0];
    let log = || -> Vec<String> {
        let told = |entry: &Entry| {
            let minute = to_minutes(entry.happened - at(0.0));
            format!("{minute}: {:?}", entry.what)
        };
        cook.log.entries().iter().skip(2).map(told).collect()
    };
    let is_proved = own.stage == Stage::Proved || own.proof.is_some();
    seen.all += 1;
    seen.past += u64::from(told.past);
    seen.proved += u64::from(is_proved);
    let run_out = state.run_out(piece(1), at(now)).is_some();
    assert!(!told.past || run_out && !is_proved, "{now} {told:?} {:#?}", log());
    assert!(!is_proved || told.shown && !run_out, "{now} {told:?} {:#?}", log());
    let stage = match told.stage {
        Stage0::Raw => Stage::Raw,
        Stage0::On => Stage::On,
        Stage0::Packed => Stage::Packed,
        Stage0::Off if told.within && told.shown => Stage::Proved,
        Stage0::Off if told.within => Stage::Resting,
        Stage0::Off if is_proved => Stage::Proved,
        Stage0::Off => Stage::Resting,
    };
    assert_eq!(own.stage, stage, "{now} {told:?} {:#?}", log());
}

/// Every longer sequence; none of the words is a wait.
fn follow(cook: &Cook, now: f64, words: &[Option<What>], left: usize, seen: &mut Seen) {
    for word in words {
        let Some(what) = word else {
            if left > 1 {
                follow(cook, now + WAIT, words, left - 1, seen);
            }
            continue;
        };
        let mut longer = cook.clone();
        longer.write(now, what.clone());
        check(&longer, now, seen);
        check(&longer, now + WAIT, seen);
        if left > 1 && longer.stage(1) != Stage::Packed {
            follow(&longer, now + STEP, words, left - 1, seen);
        }
    }
}

#[test]
fn one_piece_through_hours_and_a_failing_pit() {
    let words = [
        Some(put_on(1)),
        Some(pulled(1)),
        Some(packed(1)),
        Some(read(1, 166.0, 2)),
        Some(read(1, 150.0, 2)),
        Some(What::PitRead { temperature: Temperature::from_f(100.0) }),
        None,
    ];
    let mut cook = Cook::default();
    cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(450.0) });
    cook.write(0.0, set_out(1, 8.0));
    let mut seen = Seen::default();
    follow(&cook, STEP, &words, LENGTH, &mut seen);
    assert!(seen.past > seen.all / 10 && seen.proved > seen.all / 1000, "{seen:?}");
}
