//! The stage machine, checked over every sequence of entries to a length of six.
//!
//! What each sequence ought to come to is told by a second account of the rules, written here
//! from the rules themselves and sharing no code with the fold. Entries are four minutes apart
//! (five under the rule of time at temperature), and the breast is so thin (8 mm, over a hot
//! fire) that it could warm or cool to any of the temperatures between two entries.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::{Stage, What};
use cook_model::history::Instrument;
use cook_model::quantity::Temperature;
use support::{Cook, held_rule, id, leave_in, packed, piece, pulled, put_on, read, set_out, undo};

/// The longest sequence.
const LENGTH: usize = 6;

/// What a sequence may be made of.
#[derive(Clone, Debug)]
enum Symbol {
    /// This entry.
    Plain(What),
    /// A second place for the entry so many before.
    SecondPlace(u64),
    /// Undoing the entry so many before.
    Undo(u64),
}

impl Symbol {
    fn entry(&self, count: u64) -> What {
        match self {
            Self::Plain(what) => what.clone(),
            Self::SecondPlace(back) => {
                What::SecondPlaceTried { reading: id(count.saturating_sub(*back)) }
            }
            Self::Undo(back) => undo(count.saturating_sub(*back)),
        }
    }
}

/// Follows every sequence to its end; `check` sees each log on the way.
fn every_sequence(
    cook: &Cook,
    minute: f64,
    step: f64,
    alphabet: &[Symbol],
    left: usize,
    check: &mut dyn FnMut(&Cook),
) {
    check(cook);
    if left == 0 {
        return;
    }
    for symbol in alphabet {
        let mut longer = cook.clone();
        let count = cook.log.entries().len() as u64 + 1;
        longer.write(minute, symbol.entry(count));
        every_sequence(&longer, minute + step, step, alphabet, left - 1, check);
    }
}

/// Checks all sequences after a beginning, and that proof came up at all.
fn check_all(beginning: &[What], first: f64, step: f64, alphabet: &[Symbol], oracle: Oracle) {
    let mut cook = Cook::default();
    cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(450.0) });
    for what in beginning {
        cook.write(0.0, what.clone());
    }
    let (mut seen, mut proved) = (0_u64, 0_u64);
    every_sequence(&cook, first, step, alphabet, LENGTH, &mut |cook| {
        seen += 1;
        let story = Story::of(cook);
        let state = cook.state();
        for (standing, history) in state.each_piece() {
            let told = story.stage(history.id.0, oracle, step);
            assert_eq!(standing.stage, told, "piece {:?} after {:#?}", history.id, story.what);
            proved += u64::from(told == Stage::Proved);
        }
    });
    let all: u64 = (0..=LENGTH as u32).map(|length| (alphabet.len() as u64).pow(length)).sum();
    assert_eq!(seen, all);
    assert!(proved > 0, "no sequence proves anything: the alphabet is too poor");
}

/// The readings of one spell that would prove the piece, by one rule: their places in the story.
type Oracle = fn(&[Reading], f64) -> bool;

/// What is left of a log once undoing is done, in order.
struct Story {
    /// Place in the log, and what.
    what: Vec<(usize, What)>,
}

/// A reading of the last spell.
#[derive(Clone, Copy, Debug)]
struct Reading {
    place: usize,
    fahrenheit: f64,
    /// Instant-read, in two places or more.
    sound: bool,
    /// The piece was on the pit.
    on: bool,
    /// A clock jumped after it.
    before_jump: bool,
}

impl Story {
    fn of(cook: &Cook) -> Self {
        let log: Vec<What> = cook.log.entries().iter().map(|entry| entry.what.clone()).collect();
        let what = (0..log.len())
            // A clock that jumped stays one that jumped.
            .filter(|place| counts(&log, *place) || matches!(log[*place], What::ClockJumped))
            .map(|place| (place, log[place].clone()))
            .collect();
        Self { what }
    }

    fn stage(&self, number: u32, proves: Oracle, step: f64) -> Stage {
        let mut is_there = false;
        let mut stage = Stage::Raw;
        let mut readings: Vec<Reading> = Vec::new();
        for (place, what) in &self.what {
            match what {
                What::ClockJumped => {
                    readings.iter_mut().for_each(|reading| reading.before_jump = true);
                }
                What::SecondPlaceTried { reading } if stage != Stage::Packed => {
                    let named = reading.count as usize - 1;
                    let instant = self.is_instant_read(named);
                    let hot = readings.iter_mut().find(|reading| reading.place == named);
                    // Five minutes is one step; a leave-in stays where it is.
                    if let Some(hot) = hot.filter(|hot| place - hot.place == 1) {
                        hot.sound |= instant;
                    }
                }
                _ if what.piece() != Some(piece(number)) => {}
                What::PieceSetOut { .. } => is_there = true,
                _ if !is_there => {}
                What::PutOn { .. } => {
                    readings.clear();
                    if stage != Stage::Packed {
                        stage = Stage::On;
                    }
                }
                What::Pulled { .. } if stage == Stage::On => stage = Stage::Resting,
                What::Packed { .. } if stage == Stage::Resting => stage = Stage::Packed,
                What::CoreRead { temperature, instrument, places, .. }
                    if matches!(stage, Stage::On | Stage::Resting) =>
                {
                    readings.push(Reading {
                        place: *place,
                        fahrenheit: temperature.f(),
                        sound: *instrument == Instrument::InstantRead && *places >= 2,
                        on: stage == Stage::On,
                        before_jump: false,
                    });
                }
                _ => {}
            }
        }
        if stage == Stage::Resting && proves(&readings, step) { Stage::Proved } else { stage }
    }

    fn is_instant_read(&self, place: usize) -> bool {
        self.what.iter().any(|(at, what)| {
            let instant =
                matches!(what, What::CoreRead { instrument: Instrument::InstantRead, .. });
            *at == place && instant
        })
    }
}

/// Whether an entry counts: no later one that itself counts undoes it.
fn counts(log: &[What], place: usize) -> bool {
    let target = id(place as u64 + 1);
    let undoes = |later: usize| matches!(log[later], What::Undone { entry } if entry == target);
    !(place + 1..log.len()).any(|later| undoes(later) && counts(log, later))
}

/// Whether the reading shows that the whole core was this hot: no later reading, taken on the
/// pit where no core cools, was colder by more than thermometers differ; nor, at rest, was one less
/// than five minutes from it colder by more than a thermometer's readings scatter (each by 1 F).
fn shows(readings: &[Reading], this: Reading, fahrenheit: f64, step: f64) -> bool {
    let colder = |other: &Reading| {
        let later_on = other.place > this.place && other.on;
        let one_look =
            !other.on && !this.on && { (other.place.abs_diff(this.place) as f64) * step < 5.0 };
        other.fahrenheit < fahrenheit - 1e-9
            && (later_on && other.fahrenheit < this.fahrenheit - 3.0
                || one_look && other.fahrenheit < this.fahrenheit - 2.0)
    };
    this.sound && this.fahrenheit >= fahrenheit - 1e-9 && !readings.iter().any(colder)
}

/// 165 F in two places, at once.
fn at_once(readings: &[Reading], step: f64) -> bool {
    readings.iter().any(|reading| shows(readings, *reading, 165.0, step))
}

/// At once, or held: for some temperature of the table, two readings that show it, nothing read
/// below it in between, no step longer than 15 minutes, and long enough. Minutes from the
/// agency's table, 12 % fat, read with a thermometer that may show 2 F too much (FDA Food Code 2022,
/// 4-203.11, from memory); the rest of its rows lie between the temperatures used here.
fn held(readings: &[Reading], step: f64) -> bool {
    const TABLE: [(f64, f64); 3] = [(152.0, 4.2), (151.0, 5.4), (146.0, 16.6)];
    let between = |from: usize, to: usize, fahrenheit: f64| {
        let run = &readings[from..=to];
        let shown: Vec<usize> = run
            .iter()
            .filter(|reading| shows(readings, **reading, fahrenheit, step) && !reading.before_jump)
            .map(|reading| reading.place)
            .collect();
        let ends = shown.first() == Some(&run[0].place)
            && shown.last() == run.last().map(|reading| &reading.place);
        let gaps = shown.windows(2).all(|pair| (pair[1] - pair[0]) as f64 * step <= 15.0);
        ends && gaps && run.iter().all(|reading| reading.fahrenheit >= fahrenheit - 1e-9)
    };
    let long_enough = |from: usize, to: usize| {
        let time = (readings[to].place - readings[from].place) as f64 * step;
        TABLE.iter().any(|(fahrenheit, needed)| time >= *needed && between(from, to, *fahrenheit))
    };
    let count = readings.len();
    at_once(readings, step)
        || (0..count).any(|from| (from + 1..count).any(|to| long_enough(from, to)))
}

#[test]
fn one_piece_through_every_stage() {
    let alphabet = [
        Symbol::Plain(put_on(1)),
        Symbol::Plain(pulled(1)),
        Symbol::Plain(packed(1)),
        Symbol::Plain(read(1, 165.0, 2)),
        Symbol::Plain(read(1, 165.0, 1)),
        Symbol::Plain(read(1, 150.0, 2)),
        Symbol::Plain(leave_in(1, 170.0, 2)),
        Symbol::SecondPlace(1),
        Symbol::Undo(1),
        Symbol::Undo(2),
    ];
    check_all(&[set_out(1, 8.0)], 4.0, 4.0, &alphabet, at_once);
}

#[test]
fn two_pieces_are_never_mixed_up() {
    let alphabet = [
        Symbol::Plain(put_on(1)),
        Symbol::Plain(pulled(1)),
        Symbol::Plain(pulled(2)),
        Symbol::Plain(read(1, 165.0, 2)),
        Symbol::Plain(read(2, 165.0, 1)),
        Symbol::Plain(set_out(1, 8.0)),
        Symbol::SecondPlace(1),
        Symbol::Undo(3),
    ];
    check_all(&[set_out(1, 8.0), set_out(2, 8.0), put_on(2)], 4.0, 4.0, &alphabet, at_once);
}

#[test]
fn time_at_temperature_is_credited_only_between_sound_readings() {
    let alphabet = [
        Symbol::Plain(read(1, 152.0, 2)),
        Symbol::Plain(read(1, 151.0, 2)),
        Symbol::Plain(read(1, 146.0, 2)),
        Symbol::Plain(read(1, 152.0, 1)),
        Symbol::Plain(leave_in(1, 150.0, 1)),
        Symbol::Plain(put_on(1)),
        Symbol::Plain(pulled(1)),
        Symbol::Plain(What::ClockJumped),
        Symbol::Undo(1),
    ];
    let beginning = [held_rule(), set_out(1, 8.0), put_on(1)];
    check_all(&beginning, 60.0, 5.0, &alphabet, held);
}
