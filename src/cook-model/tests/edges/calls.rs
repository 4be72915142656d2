//! What calls a person, and what is asked of a piece whose limit runs out while another's does not.

use cook_model::cook::alarms::{AlarmKind, alarms};
use cook_model::cook::duties::{Act, Duty, Why, duties, in_order};
use cook_model::cook::{Chore, Seen, What};
use cook_model::quantity::{Moment, Span, Temperature, minutes};

use crate::support::{Cook, at, piece, pulled, read, set_out};

fn seen(cook: &Cook, minute: f64) -> Seen {
    Seen::of(&cook.log, at(minute))
}

fn calls(cook: &Cook, minute: f64, kind: AlarmKind) -> Vec<Moment> {
    let all = alarms(&seen(cook, minute));
    all.iter().filter(|alarm| alarm.id.kind == kind).map(|alarm| alarm.at).collect()
}

/// A piece that was read done, and is still on, calls within minutes.
#[test]
fn a_piece_left_on_calls() {
    let mut cook = Cook::two_on();
    cook.write(70.0, read(1, 166.0, 2));
    let told = calls(&cook, 70.0, AlarmKind::LikelyPastTarget);
    assert!(told.iter().any(|call| (minutes(1.0)..minutes(6.0)).contains(&(*call - at(70.0)))));
}

/// What rests and will not be proved goes back on, and that calls too.
#[test]
fn a_piece_that_goes_back_calls() {
    let mut cook = Cook::two_on();
    cook.write(40.0, read(1, 120.0, 2));
    cook.write(41.0, pulled(1));
    let all = duties(&seen(&cook, 41.0));
    let back = all.iter().find(|duty| duty.act == Act::PutBack).unwrap();
    assert_eq!(back.pieces, [piece(1)]);
    // What goes back at once is not asked to be covered first.
    assert!(all.iter().all(|duty| duty.act != Act::Cover));
    assert_eq!(calls(&cook, 41.0, AlarmKind::PutBackDue).len(), 1);
}

/// Meat is taken out when the plan has it, and that calls: nobody watches a refrigerator.
#[test]
fn to_take_the_meat_out_calls() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(0.0, What::DinnerSet { at: Some(at(300.0)) });
    let plan = seen(&cook, 0.0).plan.unwrap();
    let told = calls(&cook, 0.0, AlarmKind::ChoreDue(Chore::OutOfFridge));
    assert_eq!(told, [plan.out_of_fridge]);
}

/// What is kept hot for a dinner hours away is read again before that: it calls.
#[test]
fn what_is_kept_hot_calls() {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::DinnerSet { at: Some(at(240.0)) });
    for number in [1, 2] {
        cook.write(80.0 + f64::from(number), read(number, 168.0, 2));
        cook.write(80.5 + f64::from(number), pulled(number));
    }
    assert_eq!(calls(&cook, 83.0, AlarmKind::KeepHotDue).len(), 1);
}

fn of_piece(all: &[Duty], number: u32, minute: f64) -> Vec<Act> {
    let due = in_order(all, at(minute)).into_iter().filter(|duty| duty.is_due(at(minute)));
    due.filter(|duty| duty.pieces.contains(&piece(number))).map(|duty| duty.act.clone()).collect()
}

/// Two pieces that were to be served together: from the moment at which the limit of one runs out it is
/// thrown away and nothing else, and the other is still served.
#[test]
fn what_is_asked_of_several_goes_on_with_those_that_are_food() {
    let mut cook = Cook::two_on();
    for (number, minute) in [(1, 70.0), (2, 100.0)] {
        let reading = cook.write(minute, read(number, 168.0, 2));
        cook.write(minute + 0.5, What::ReadingVouched { reading });
        cook.write(minute + 1.0, pulled(number));
    }
    let all = duties(&seen(&cook, 101.0));
    assert!(of_piece(&all, 1, 180.0).contains(&Act::Serve));
    // Two hours in the shade (USDA).
    for minute in [192.0, 210.0] {
        assert_eq!(of_piece(&all, 1, minute), [Act::Discard], "{minute}");
        let other = of_piece(&all, 2, minute);
        assert!(other.contains(&Act::Serve) && !other.contains(&Act::Discard), "{other:?}");
    }
    assert_eq!(of_piece(&all, 2, 222.0), [Act::Discard]);
    // Each limit calls before it ends and as it does, for each piece.
    let told = calls(&cook, 101.0, AlarmKind::ChillLimit);
    let before = |end: f64| {
        told.iter().any(|call| {
            let left = at(end) - *call;
            (minutes(10.0)..minutes(40.0)).contains(&left)
        })
    };
    for end in [191.0, 221.0] {
        assert!(before(end) && told.contains(&at(end)), "{end}: {told:?}");
    }
}

/// Two limits of one piece: the one that ends first decides, and it is thrown away once.
#[test]
fn a_piece_is_thrown_away_once() {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(70.0) });
    cook.write(200.0, pulled(1));
    let all = duties(&seen(&cook, 200.0));
    let thrown: Vec<&Duty> = all
        .iter()
        .filter(|duty| duty.act == Act::Discard && duty.pieces.contains(&piece(1)))
        .collect();
    assert_eq!(thrown.len(), 1);
    assert_eq!(thrown[0].from, at(240.0));
    assert!(thrown[0].from - at(0.0) <= Span::hours(4));
}

/// At the very moment at which something falls due, when it calls, it stands among what is due by its urgency.
#[test]
fn what_falls_due_now_is_due() {
    let duty = |act, minute: f64| Duty {
        act,
        pieces: vec![piece(1)],
        from: at(minute),
        until: None,
        why: Why::Usual,
        bells: Vec::new(),
    };
    let all = [duty(Act::KeepHot, 60.0), duty(Act::Pull, 70.0)];
    assert_eq!(in_order(&all, at(70.0))[0].act, Act::Pull);
    assert_eq!(in_order(&all, at(69.9))[0].act, Act::KeepHot);
}

/// Food Code 2022, 3-501.19(B), from memory: four hours. Over a fire that never got hot a piece is to be got
/// hot some other way while there is time, and that calls.
#[test]
fn a_piece_that_warms_too_slowly_is_hurried_up() {
    let mut cook = Cook::two_on();
    for minute in [1.0, 60.0, 120.0, 180.0] {
        cook.write(minute, What::PitRead { temperature: Temperature::from_f(110.0) });
    }
    let all = duties(&seen(&cook, 180.0));
    assert_eq!(of_piece(&all, 1, 230.0)[0], Act::HurryUp);
    assert_eq!(of_piece(&all, 1, 241.0), [Act::Discard]);
    let told = calls(&cook, 180.0, AlarmKind::WarmUpLimit);
    assert!(told.iter().any(|call| *call < at(240.0)) && told.contains(&at(240.0)), "{told:?}");
}
