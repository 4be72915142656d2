//! The names of calls: what rang is not rung again, and what is another call has another name.

use std::collections::BTreeSet;

use cook_model::cook::alarms::{Alarm, AlarmId, AlarmKind, alarms};
use cook_model::cook::{Seen, What};
use cook_model::quantity::{Temperature, minutes};

use crate::support::{Cook, at, piece, pulled, put_on, read, set_out};

fn of_kind(cook: &Cook, minute: f64, kind: AlarmKind) -> Vec<Alarm> {
    let all = alarms(&Seen::of(&cook.log, at(minute)));
    all.into_iter().filter(|alarm| alarm.id.kind == kind).collect()
}

fn names(cook: &Cook, minute: f64, kind: AlarmKind) -> Vec<AlarmId> {
    of_kind(cook, minute, kind).iter().map(|alarm| alarm.id).collect()
}

fn on_the_pit(pieces: u32) -> Cook {
    let mut cook = Cook::default();
    for number in 1..=pieces {
        cook.write(0.0, set_out(number, 38.0));
        cook.write(0.0, put_on(number));
    }
    cook.write(1.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    cook
}

/// One opening of the lid is one call, whichever pieces it comes to be about; after each look it is another.
#[test]
fn an_opening_of_the_lid_is_called_for_by_one_name() {
    let mut cook = on_the_pit(2);
    let check = |cook: &Cook, minute| names(cook, minute, AlarmKind::CheckDue);
    let first = check(&cook, 1.0);
    assert_eq!(first.len(), 1);
    cook.write(20.0, pulled(1));
    assert_eq!(check(&cook, 20.0), first);
    cook.write(30.0, read(2, 110.0, 2));
    let second = check(&cook, 30.0);
    assert_ne!(second, first);
    cook.write(40.0, What::RoundBegan { pieces: vec![piece(2)] });
    assert!(check(&cook, 50.0).iter().all(|name| !first.contains(name) && !second.contains(name)));
}

/// Each rest has its own calls, and within one rest each reading that fell short.
#[test]
fn each_try_at_rest_is_called_for_by_its_own_name() {
    let mut cook = on_the_pit(1);
    cook.write(0.0, What::PullTargetSet { piece: None, target: Some(Temperature::from_f(161.0)) });
    let mut seen: BTreeSet<AlarmId> = BTreeSet::new();
    let mut told = |cook: &Cook, minute: f64| {
        let new = names(cook, minute, AlarmKind::ProofReadingDue);
        assert_eq!(new.len(), 1, "minute {minute}");
        assert!(seen.insert(new[0]), "minute {minute}: called by the same name before");
    };
    cook.write(66.0, read(1, 161.0, 2));
    cook.write(67.0, pulled(1));
    told(&cook, 67.0);
    // One place, and the other was not tried in time.
    cook.write(73.0, read(1, 166.0, 1));
    told(&cook, 73.0);
    cook.write(80.0, put_on(1));
    cook.write(86.0, read(1, 165.5, 1));
    cook.write(87.0, pulled(1));
    told(&cook, 87.0);
}

/// A limit calls before it ends and as it does; that of the next rest is another.
#[test]
fn each_call_of_a_limit_has_its_own_name() {
    let mut cook = on_the_pit(1);
    let mut seen: BTreeSet<AlarmId> = BTreeSet::new();
    for minute in [75.0, 95.0] {
        cook.write(minute, read(1, 168.0, 2));
        cook.write(minute + 1.0, pulled(1));
        let told = names(&cook, minute + 1.0, AlarmKind::ChillLimit);
        assert_eq!(told.len(), 2);
        for name in told {
            assert!(seen.insert(name), "minute {minute}: {name:?} called before");
        }
        cook.write(minute + 10.0, put_on(1));
    }
}

/// Two calls at one moment are one call: that a piece is likely past its pull is told minutes after that
/// it is to be read, however long ago both were so.
#[test]
fn what_is_long_past_its_pull_calls_a_second_time() {
    let mut cook = on_the_pit(1);
    cook.write(150.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    let only = |kind| {
        let [call] = of_kind(&cook, 150.0, kind)[..] else { panic!("{kind:?}") };
        call.at
    };
    let (check, past) = (only(AlarmKind::CheckDue), only(AlarmKind::LikelyPastTarget));
    assert!(past - check >= minutes(1.5), "{check} {past}");
}

/// One who has read a piece done and then does not take it off is called.
#[test]
fn the_only_piece_left_on_calls() {
    let mut cook = on_the_pit(1);
    cook.write(75.0, read(1, 166.0, 2));
    let calls = of_kind(&cook, 75.0, AlarmKind::LikelyPastTarget);
    assert_eq!(calls.len(), 1);
    assert!((minutes(1.0)..minutes(6.0)).contains(&(calls[0].at - at(75.0))));
}
