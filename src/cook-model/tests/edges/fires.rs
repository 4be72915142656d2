//! What is asked while the fire is down, and while it comes back.

use cook_model::cook::duties::{Act, Duty, Why, duties};
use cook_model::cook::{Chore, Seen, What};
use cook_model::forecast::{Check, Forecast};
use cook_model::plan::{Drift, Habits};
use cook_model::quantity::{Moment, Span, Temperature, minutes};

use crate::support::{Cook, at, leave_in, piece, read, set_out};

/// Two on since the start at 250 F, the pit read so at these minutes.
fn pit_read(readings: &[(f64, f64)]) -> Cook {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(250.0) });
    cook.write(1.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    for (minute, f) in readings {
        cook.write(*minute, What::PitRead { temperature: Temperature::from_f(*f) });
    }
    cook
}

fn asked(cook: &Cook, minute: f64, act: &Act) -> Vec<Duty> {
    let all = duties(&Seen::of(&cook.log, at(minute)));
    all.into_iter().filter(|duty| duty.act == *act).collect()
}

/// What is to be done to a fire that is down, and when the pit is next read where it is not. Common
/// practice, no source: one that was off is looked at again in ten minutes, one that is well in half an hour.
#[test]
fn a_fire_is_mended_or_looked_at_again() {
    let down = pit_read(&[(30.0, 150.0), (40.0, 140.0)]);
    let mend = &asked(&down, 40.0, &Act::MendFire)[..];
    let [mend] = mend else { panic!("{mend:?}") };
    assert!(matches!(&mend.why, Why::Pit(off) if off.drift == Drift::Low));
    assert_eq!(mend.from, at(40.0));
    // What was read long ago says nothing any more: it ends, and to read the pit is asked instead.
    let ends = mend.until.unwrap() - mend.from;
    assert!((minutes(20.0)..=minutes(60.0)).contains(&ends), "{ends}");
    let back = pit_read(&[(30.0, 150.0), (40.0, 190.0)]);
    assert!(asked(&back, 40.0, &Act::MendFire).is_empty());
    let again = |cook: &Cook| -> Moment { asked(cook, 40.0, &Act::ReadPit)[0].from };
    assert_eq!(again(&back), at(50.0));
    assert_eq!(again(&pit_read(&[(30.0, 250.0), (40.0, 252.0)])), at(70.0));
}

/// Poked twice, a core reads a few degrees lower on the best of fires; by ten, the fire is worth a look, but
/// not where it was looked at just before.
#[test]
fn a_core_that_cools_asks_for_a_look_at_the_fire() {
    let look = |second: f64, pit: f64| {
        let mut cook = pit_read(&[(pit, 250.0)]);
        cook.write(50.0, read(1, 140.0, 2));
        let reading = cook.write(60.0, read(1, second, 2));
        cook.write(60.5, What::ReadingVouched { reading });
        asked(&cook, 60.5, &Act::ReadPit)[0].from
    };
    assert_eq!(look(128.0, 40.0), at(60.0));
    assert!(look(138.0, 40.0) > at(65.0) && look(150.0, 40.0) > at(65.0));
    assert!(look(128.0, 58.0) > at(80.0));
}

/// A look at a cook whose forecast would have the lid opened at a minute.
fn opening(cook: &Cook, now: f64, check: f64) -> Duty {
    let seen = Seen::of(&cook.log, at(now));
    let mut forecast = seen.forecast.clone().unwrap();
    forecast.checks = vec![Check { at: at(check), pieces: vec![piece(1)] }];
    let all = duties(&seen.with(forecast, None));
    all.into_iter().find(|duty| duty.act == Act::Check).unwrap()
}

/// No lid is opened over a dead fire for what cannot be ready; a hot one, or one that comes back, is no
/// reason to wait, nor is a dead one for what is done all the same.
#[test]
fn a_dead_fire_is_mended_before_the_lid_goes_up() {
    let down = [(20.0, 140.0), (30.0, 120.0)];
    assert!(opening(&pit_read(&down), 30.0, 32.0).from >= at(50.0));
    for others in [[(8.0, 310.0), (10.0, 320.0)], [(5.0, 140.0), (10.0, 200.0)]] {
        assert_eq!(opening(&pit_read(&others), 10.0, 12.0).from, at(12.0), "{others:?}");
    }
    let done = pit_read(&[(150.0, 250.0), (160.0, 140.0), (170.0, 120.0)]);
    assert_eq!(opening(&done, 170.0, 172.0).from, at(172.0));
}

/// In a round a piece that comes due while the lid is up is read too, but not over a dead fire.
#[test]
fn what_comes_due_while_the_lid_is_up_is_read_too() {
    let next = |pit: &[(f64, f64)], check: f64| {
        let mut cook = pit_read(pit);
        cook.write(40.0, What::RoundBegan { pieces: vec![piece(2)] });
        cook.write(40.5, read(2, 120.0, 2));
        let seen = Seen::of(&cook.log, at(40.5));
        let mut forecast = seen.forecast.clone().unwrap();
        forecast.checks = vec![Check { at: at(check), pieces: vec![piece(1)] }];
        let all = duties(&seen.with(forecast, None));
        all.into_iter().any(|duty| duty.act == Act::Read && duty.pieces == [piece(1)])
    };
    let well = [(38.0, 250.0)];
    assert!(next(&well, 40.0) && next(&well, 42.5) && !next(&well, 48.0));
    assert!(!next(&[(28.0, 140.0), (38.0, 120.0)], 42.5));
}

/// Before the lid goes up the pit is read, if it is to be read about then.
#[test]
fn a_round_begins_with_a_look_at_a_pit_not_read_for_long() {
    let first = |pit: f64| {
        let mut cook = pit_read(&[(pit, 250.0)]);
        cook.write(40.0, What::RoundBegan { pieces: vec![piece(1)] });
        let all = duties(&Seen::of(&cook.log, at(40.0)));
        all.into_iter().find(|duty| duty.is_due(at(40.1))).unwrap().act
    };
    assert_eq!([first(5.0), first(13.0), first(30.0)], [Act::ReadPit, Act::ReadPit, Act::Read]);
}

/// While a round is under way, and a piece is to come off in it, nothing else is asked, though the fire is to
/// be fed.
#[test]
fn what_comes_off_in_a_round_comes_off_first() {
    let mut cook = pit_read(&[(60.0, 250.0)]);
    let due = |cook: &Cook, minute: f64| -> Vec<Act> {
        let seen = Seen::of(&cook.log, at(minute));
        let forecast = Forecast { checks: Vec::new(), ..seen.forecast.clone().unwrap() };
        let all = duties(&seen.with(forecast, None));
        all.into_iter().filter(|duty| duty.is_due(at(minute))).map(|duty| duty.act).collect()
    };
    let feed = Act::Chore { chore: Chore::FeedFire };
    assert!(due(&cook, 69.0).contains(&feed));
    cook.write(70.0, What::RoundBegan { pieces: vec![piece(1)] });
    cook.write(70.5, read(1, 167.0, 2));
    assert_eq!(due(&cook, 70.6), [Act::Pull]);
}

/// A piece that is to come off is no longer one to be read.
#[test]
fn what_was_called_off_is_not_read_again() {
    let mut cook = pit_read(&[(60.0, 250.0)]);
    cook.write(70.0, read(1, 167.0, 2));
    let seen = Seen::of(&cook.log, at(70.0));
    let mut forecast = seen.forecast.clone().unwrap();
    forecast.checks = vec![Check { at: at(71.0), pieces: vec![piece(1), piece(2)] }];
    let all = duties(&seen.with(forecast, None));
    let check = all.iter().find(|duty| duty.act == Act::Check).unwrap();
    assert_eq!(check.pieces, [piece(2)]);
}

/// 170 typed of the wrong piece takes no piece off, until the cook says that it is right.
#[test]
fn a_doubted_reading_takes_nothing_off() {
    let mut cook = pit_read(&[(40.0, 250.0)]);
    let reading = cook.write(42.0, read(1, 170.0, 2));
    assert_eq!(asked(&cook, 42.0, &Act::Answer { reading }).len(), 1);
    assert!(asked(&cook, 42.0, &Act::Pull).is_empty());
    cook.write(43.0, What::ReadingVouched { reading });
    assert_eq!(asked(&cook, 43.0, &Act::Pull).len(), 1);
}

/// A leave-in is re-seated with the lid up, in the round in which its piece was poked: not before it is poked.
#[test]
fn a_leave_in_is_reseated_in_the_round_that_pokes() {
    let mut cook = pit_read(&[]);
    cook.write(2.0, What::LeaveInSeated { piece: piece(1) });
    for (minute, shown) in [(20.0, 105.0), (30.0, 135.0), (40.0, 160.0)] {
        cook.write(minute, leave_in(1, shown, 1));
    }
    let poked = cook.write(44.0, read(1, 130.0, 2));
    cook.write(44.1, What::ReadingVouched { reading: poked });
    cook.write(44.2, What::RoundEnded);
    cook.write(45.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    cook.write(46.0, What::RoundBegan { pieces: vec![piece(1)] });
    assert!(asked(&cook, 46.0, &Act::Reseat).is_empty());
    let poked = cook.write(46.4, read(1, 133.0, 2));
    cook.write(46.5, What::ReadingVouched { reading: poked });
    assert_eq!(asked(&cook, 46.5, &Act::Reseat).len(), 1);
}

/// Who seasons nothing and puts meat on straight from the refrigerator is not told to take it out.
#[test]
fn straight_from_the_refrigerator_it_is_not_taken_out() {
    let out = |minutes: i64| {
        let mut cook = Cook::default();
        let out_of_fridge = Span::minutes(minutes);
        let habits = Habits { out_of_fridge, seasoning: Span::zero(), ..Habits::default() };
        cook.write(0.0, What::HabitsSet { habits });
        cook.write(0.0, set_out(1, 38.0));
        cook.write(0.0, What::DinnerSet { at: Some(at(300.0)) });
        asked(&cook, 0.0, &Act::TakeOut).len()
    };
    assert_eq!((out(0), out(20)), (0, 1));
}
