//! When the cook is called, and that each call is heard once.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use std::collections::BTreeMap;

use cook_model::cook::alarms::{Alarm, AlarmId, AlarmKind, alarms};
use cook_model::cook::duties::{Act, duties, of_alarm};
use cook_model::cook::ringing::{Mark, Marks, SNOOZE, due, next, unanswered};
use cook_model::cook::{Chore, Seen, What};
use cook_model::plan::Style;
use cook_model::quantity::{Moment, Temperature, minutes, seconds, to_minutes};
use proptest::prelude::*;
use support::{Cook, at, piece, pulled, put_on, read, set_out};

fn calls_of(cook: &Cook) -> Vec<Alarm> {
    alarms(&Seen::of(&cook.log, at(600.0)))
}

/// The calls of one kind, in minutes.
fn minutes_of(cook: &Cook, kind: AlarmKind) -> Vec<f64> {
    let of_kind = calls_of(cook).into_iter().filter(|alarm| alarm.id.kind == kind);
    of_kind.map(|alarm| to_minutes(alarm.at - at(0.0))).collect()
}

fn on_the_pit(pieces: u32) -> Cook {
    let mut cook = Cook::default();
    for number in 1..=pieces {
        cook.write(0.0, set_out(number, 36.0 + f64::from(number)));
        cook.write(0.0, put_on(number));
    }
    cook.write(1.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    cook
}

#[test]
fn pieces_near_their_pull_call_once_and_again_when_likely_past_it() {
    let cook = on_the_pit(4);
    let [check] = minutes_of(&cook, AlarmKind::CheckDue)[..] else {
        panic!("one opening, one call")
    };
    let [past] = minutes_of(&cook, AlarmKind::LikelyPastTarget)[..] else { panic!("and one more") };
    assert!(check < past && past < 120.0, "{check} {past}");
}

#[test]
fn every_call_names_a_duty_that_is_on_the_list() {
    let mut cook = on_the_pit(3);
    cook.write(40.0, read(1, 120.0, 2));
    let all = duties(&Seen::of(&cook.log, at(600.0)));
    for alarm in calls_of(&cook) {
        let duty = of_alarm(&all, alarm.id).unwrap();
        assert!(duty.from <= alarm.at, "{alarm:?} before its duty");
    }
}

#[test]
fn who_has_just_tapped_is_not_called_at_once() {
    let mut cook = on_the_pit(1);
    cook.write(150.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    for alarm in calls_of(&cook) {
        assert!(alarm.at >= at(151.0), "{alarm:?}");
    }
}

#[test]
fn a_piece_off_the_pit_calls_for_proof_rest_and_the_refrigerator() {
    let mut cook = on_the_pit(1);
    cook.write(0.0, What::PullTargetSet { piece: None, target: Some(Temperature::from_f(161.0)) });
    cook.write(66.0, read(1, 161.0, 2));
    cook.write(67.0, pulled(1));
    cook.write(68.0, What::Covered { piece: piece(1) });
    let [proof] = minutes_of(&cook, AlarmKind::ProofReadingDue)[..] else { panic!("one") };
    assert!((68.0..85.0).contains(&proof), "{proof}");
    // USDA: in the refrigerator within two hours, one above 90 F. Unproved, it has no other call.
    assert_eq!(minutes_of(&cook, AlarmKind::ChillLimit), [187.0]);
    cook.write(75.0, read(1, 166.0, 2));
    assert_eq!(minutes_of(&cook, AlarmKind::ProofReadingDue), [0.0; 0]);
    assert_eq!(minutes_of(&cook, AlarmKind::RestOver).len(), 1);
    // The call comes twenty minutes before the limit, and again at it.
    assert_eq!(minutes_of(&cook, AlarmKind::ChillLimit), [175.0, 195.0]);
    let ids: Vec<AlarmId> = calls_of(&cook).into_iter().map(|alarm| alarm.id).collect();
    let unlike: std::collections::BTreeSet<_> = ids.iter().collect();
    assert_eq!(ids.len(), unlike.len(), "each call has its own name");
}

/// The minutes at which something of one kind is heard by a phone that plays every call as it falls due
/// and answers none, from one minute to another.
fn heard(cook: &Cook, kind: AlarmKind, from: u32, to: u32) -> Vec<u32> {
    let (calls, mut marks) = (calls_of(cook), Marks::new());
    let rings = |minute: &u32| {
        let now = at(f64::from(*minute));
        let rings = due(&calls, &marks, now);
        marks.extend(rings.iter().map(|ring| (ring.alarm.id, Mark::rung(ring, now))));
        rings.iter().any(|ring| ring.alarm.id.kind == kind)
    };
    (from..to).filter(rings).collect()
}

/// USDA consumer advice: in the refrigerator within two hours, one above 90 F. Who answered the warning
/// and then forgot is called again when the time is over.
#[test]
fn a_chill_call_that_was_answered_rings_again_at_the_limit_itself() {
    for (ambient, limit) in [(75.0, 195), (95.0, 135)] {
        let mut cook = on_the_pit(2);
        cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(ambient) });
        for (number, minute) in [(1, 74.0), (2, 74.3)] {
            cook.write(minute, read(number, 166.0, 2));
            cook.write(75.0, pulled(number));
        }
        let (calls, mut marks) = (calls_of(&cook), Marks::new());
        let mut heard = Vec::new();
        for minute in 76..300 {
            let now = at(f64::from(minute));
            for ring in due(&calls, &marks, now) {
                if ring.alarm.id.kind == AlarmKind::ChillLimit {
                    heard.push(minute);
                }
                marks.insert(ring.alarm.id, Mark::rung(&ring, now).answer());
            }
        }
        assert_eq!(heard, [limit - 20, limit], "at {ambient} F");
    }
}

#[test]
fn what_falls_due_of_several_pieces_one_after_another_is_heard_of_each() {
    // A person who waits for a call hears one whenever there is something new to do, though the last
    // was only some minutes ago. To come off together, pieces of
    // unlike size go on one after another.
    let mut cook = Cook::default();
    for (number, mm) in [(1, 30.0), (2, 37.0), (3, 44.0)] {
        cook.write(0.0, set_out(number, mm));
    }
    cook.write(0.0, What::StyleSet { style: Style::OffTogether });
    cook.write(0.0, What::DinnerSet { at: Some(at(240.0)) });
    let all = duties(&Seen::of(&cook.log, at(600.0)));
    let times: std::collections::BTreeSet<_> =
        all.iter().filter(|duty| duty.act == Act::PutOn).map(|duty| duty.from).collect();
    assert!(times.len() > 1, "{all:?}");
    assert_eq!(heard(&cook, AlarmKind::PutOnDue, 1, 240).len(), times.len());
}

#[test]
fn each_rest_calls_for_its_own_proof() {
    let mut cook = on_the_pit(2);
    cook.write(0.0, What::PullTargetSet { piece: None, target: Some(Temperature::from_f(161.0)) });
    for (number, minute) in [(1, 66.0), (2, 72.0)] {
        cook.write(minute, read(number, 161.0, 2));
        cook.write(minute + 0.5, pulled(number));
        cook.write(minute + 0.7, What::Covered { piece: piece(number) });
    }
    // Six minutes apart: too far for one trip, and too near for one call to be taken for both.
    assert_eq!(heard(&cook, AlarmKind::ProofReadingDue, 73, 120).len(), 2);
}

#[test]
fn the_fire_calls_as_often_as_the_cook_feeds_it() {
    let feed = |cook: &Cook| {
        let kind = AlarmKind::ChoreDue(Chore::FeedFire);
        calls_of(cook).into_iter().find(|alarm| alarm.id.kind == kind)
    };
    let mut cook = on_the_pit(1);
    // Every 45 minutes unless the cook told otherwise, whether or not lighting was told.
    let first = feed(&cook).unwrap();
    cook.write(48.0, What::ChoreDone { chore: Chore::FeedFire });
    let second = feed(&cook).unwrap();
    assert_eq!((first.at, second.at), (at(45.0), at(93.0)));
    assert_ne!(first.id, second.id, "each feeding is called for anew");
}

/// Calls at these minutes, the earlier first.
fn calls_at(minutes: &[f64]) -> Vec<Alarm> {
    let kinds = [
        AlarmKind::CheckDue,
        AlarmKind::LikelyPastTarget,
        AlarmKind::ProofReadingDue,
        AlarmKind::ChillLimit,
    ];
    let alarm = |(kind, minute): (&AlarmKind, &f64)| Alarm {
        id: AlarmId { kind: *kind, piece: None, occasion: 0 },
        at: at(*minute),
        until: None,
    };
    kinds.iter().zip(minutes).map(alarm).collect()
}

/// Lets due alarms ring, and counts each.
struct Listener {
    marks: Marks,
    heard: BTreeMap<AlarmId, u32>,
}

impl Listener {
    fn new() -> Self {
        Self { marks: Marks::new(), heard: BTreeMap::new() }
    }

    fn listen(&mut self, alarms: &[Alarm], now: Moment) -> usize {
        let rings = due(alarms, &self.marks, now);
        for ring in &rings {
            self.marks.insert(ring.alarm.id, Mark::rung(ring, now));
            *self.heard.entry(ring.alarm.id).or_default() += 1;
        }
        rings.len()
    }
}

#[test]
fn a_late_alarm_says_how_late_and_is_silent_after() {
    let alarms = calls_at(&[40.0, 50.0]);
    let late = due(&alarms, &Marks::new(), at(44.0));
    assert_eq!((late.len(), late[0].late), (1, minutes(4.0)));
    let mut listener = Listener::new();
    assert_eq!(listener.listen(&alarms, at(44.0)), 1);
    assert_eq!(listener.listen(&alarms, at(44.0)), 0);
    assert_eq!(next(&alarms, &listener.marks, at(44.0)), Some(at(50.0)));
    // The phone's clock set back an hour does not ring it again.
    assert_eq!(listener.listen(&alarms, at(-16.0)) + listener.listen(&alarms, at(45.0)), 0);
}

#[test]
fn an_alarm_moved_far_into_the_future_rings_again() {
    let moved = |minute: f64| calls_at(&[minute - 10.0]);
    let mut listener = Listener::new();
    assert_eq!(listener.listen(&moved(50.0), at(40.0)), 1);
    assert_eq!(listener.listen(&moved(59.0), at(49.0)), 0, "moved by nine minutes");
    assert_eq!(listener.listen(&moved(75.0), at(64.0)), 0, "not yet");
    assert_eq!(listener.listen(&moved(75.0), at(65.0)), 1, "moved by twenty-five minutes");
    let mut asleep = Listener::new();
    assert_eq!(asleep.listen(&moved(50.0), at(48.0)), 1);
    assert_eq!(asleep.listen(&moved(57.5), at(57.4)), 0, "moved to before it rang");
}

#[test]
fn snooze_and_done() {
    let alarms = calls_at(&[40.0, 50.0]);
    let check = alarms[0].id;
    let mut listener = Listener::new();
    listener.listen(&alarms, at(40.0));
    assert_eq!(unanswered(&alarms, &listener.marks, at(40.0)).len(), 1);
    let snoozed = listener.marks[&check].snooze(at(41.0));
    listener.marks.insert(check, snoozed);
    assert_eq!(unanswered(&alarms, &listener.marks, at(41.0)).len(), 0);
    assert_eq!(next(&alarms, &listener.marks, at(41.0)), Some(at(41.0) + SNOOZE));
    assert_eq!(listener.listen(&alarms, at(41.0) + SNOOZE), 1);
    assert_eq!(listener.listen(&alarms, at(41.0) + SNOOZE), 0);
    let answered = listener.marks[&check].answer();
    listener.marks.insert(check, answered);
    assert_eq!(unanswered(&alarms, &listener.marks, at(46.0)).len(), 0);
}

proptest! {
    /// Six hours in which the page runs at random moments only, while the forecast wobbles.
    #[test]
    fn each_alarm_is_heard_once_whenever_the_page_may_run(
        sleeps in proptest::collection::vec(0.1_f64..1500.0, 40),
        wobbles in proptest::collection::vec(0.0_f64..4.9, 40),
    ) {
        let mut listener = Listener::new();
        let mut now = at(0.0);
        for (sleep, wobble) in sleeps.iter().zip(&wobbles) {
            now += seconds(*sleep);
            listener.listen(&calls_at(&[90.0 + wobble, 100.0 + wobble, 109.0, 220.0]), now);
        }
        let last = calls_at(&[94.9, 104.9, 109.0, 220.0]);
        listener.listen(&last, at(360.0));
        prop_assert_eq!(listener.heard.len(), 4);
        prop_assert!(listener.heard.values().all(|count| *count == 1), "{:?}", listener.heard);
    }

    /// Whoever looks when `next` says hears every alarm at its very time.
    #[test]
    fn following_next_from_one_to_the_next_hears_each_on_time(shift in -20.0_f64..20.0) {
        let mut listener = Listener::new();
        listener.listen(&calls_at(&[40.0, 50.0]), at(45.0));
        let moved = calls_at(&[40.0 + shift, 50.0 + shift]);
        let mut now = at(45.0);
        listener.listen(&moved, now);
        while let Some(then) = next(&moved, &listener.marks, now) {
            now = then;
            let rings = due(&moved, &listener.marks, now);
            prop_assert!(rings.iter().all(|ring| ring.late.is_zero()));
            prop_assert!(!rings.is_empty());
            listener.listen(&moved, now);
        }
        prop_assert!(due(&moved, &listener.marks, at(600.0)).is_empty());
    }
}
