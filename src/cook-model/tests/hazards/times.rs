//! When it was read: clocks that jump, zones that change, files with false times.

use cook_model::cook::{
    DeviceId, Log, What, fold, hold_may_be_under_way, was_set_back, was_unwatched,
};
use cook_model::safety::Shortfall;

use crate::support::{Cook, PHONE, at, held_rule, leave_in, pulled, put_on, read};
use crate::why_not;

#[test]
fn the_phone_clock_jumped() {
    // Ahead by 50 minutes before the reading, back before the piece goes on again: by the times
    // alone the reading comes after it.
    let mut cook = Cook::two_on();
    cook.write(76.0, pulled(1));
    cook.write(130.0, read(1, 166.0, 2));
    cook.write(85.0, put_on(1));
    cook.write(95.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Ahead by 10 minutes between two readings: the phone noticed, ...
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(75.0, read(1, 153.0, 2));
    let mut noticed = cook.clone();
    noticed.write(85.5, What::ClockJumped);
    noticed.write(86.0, read(1, 153.0, 2));
    assert!(!noticed.is_proved(1));
    // ... or it was set right again afterwards, ...
    let mut put_right = cook.clone();
    put_right.write(86.0, read(1, 153.0, 2));
    assert!(put_right.is_proved(1), "without a sign of the jump");
    put_right.write(77.0, pulled(1));
    assert!(!put_right.is_proved(1));
    // ... or it jumped by an hour.
    cook.write(135.5, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn the_phone_clock_was_set_back_while_the_app_was_closed() {
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(75.0, read(1, 153.0, 2));
    assert!(!was_set_back(&cook.log, at(75.0)) && !was_set_back(&cook.log, at(90.0)));
    // Opened again with the clock ten minutes back. By the times alone the two readings are ten
    // minutes apart; nobody knows how long it was.
    assert!(was_set_back(&cook.log, at(65.0)));
    cook.write(65.0, What::ClockJumped);
    cook.write(85.0, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
    // Written down once, it is not asked about again.
    assert!(!was_set_back(&cook.log, at(86.0)));
}

#[test]
fn the_phone_slept_or_its_clock_was_set_forward_unseen() {
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(70.0, read(1, 120.0, 2));
    assert!(!hold_may_be_under_way(&fold(&cook.log), at(71.0)), "nothing counts that cold");
    cook.write(75.0, read(1, 153.0, 2));
    assert!(hold_may_be_under_way(&fold(&cook.log), at(85.0)));
    assert!(
        !hold_may_be_under_way(&fold(&cook.log), at(91.0)),
        "too long ago to count in any case"
    );
    assert!(!was_unwatched(&cook.log, at(75.4)) && was_unwatched(&cook.log, at(85.0)));
    // Ten minutes by the clock: slept through, or made by setting it forward.
    cook.write(85.0, What::ClockUnwatched);
    cook.write(85.5, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
    // From there on time counts again.
    cook.write(95.5, read(1, 153.0, 2));
    assert!(cook.is_proved(1));
    // What was proved by time that was watched stays proved.
    cook.write(97.0, What::ClockUnwatched);
    assert!(cook.is_proved(1));
}

#[test]
fn too_little_was_read_in_a_hold() {
    // Twenty minutes between two readings: nobody knows what was in between.
    for (gap, held) in [(14.0, true), (15.0, true), (15.1, false), (20.0, false)] {
        let mut cook = Cook::two_on();
        cook.write(0.0, held_rule());
        cook.write(70.0, read(1, 153.0, 2));
        cook.write(70.0 + gap, read(1, 153.0, 2));
        assert_eq!(cook.is_proved(1), held, "{gap} minutes");
    }
    // Some spot was colder in between, whatever it was read with.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(70.0, read(1, 153.0, 2));
    cook.write(73.0, leave_in(1, 148.5, 1));
    cook.write(75.0, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
    // The core took more than six hours to get there.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(361.0, read(1, 153.0, 2));
    cook.write(367.0, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn a_time_or_a_count_out_of_all_reason_is_set_aside() {
    let entry = |count: &str, happened: &str, typed: &str, what: &str| {
        format!(
            r#"{{"v":1,"id":{{"count":{count},"device":7}},"happened":"{happened}","typed":"{typed}","what":{what}}}"#
        )
    };
    let (now, far) = ("2026-06-01T18:00:00Z", "+262142-01-01T00:00:00Z");
    let on = r#"{"kind":"put_on","piece":1}"#;
    let dinner = format!(r#"{{"kind":"dinner_set","at":"{far}"}}"#);
    let odd = [
        entry("2", far, now, on),
        entry("3", now, far, on),
        entry("4", "-262142-01-01T00:00:00Z", now, on),
        entry("5", now, now, &dinner),
        entry("18446744073709551615", now, now, on),
    ];
    let whole = entry("1", now, now, on);
    let log = Log::from_stored(odd.iter().chain([&whole]).map(String::as_str));
    assert_eq!((log.entries().len(), log.set_aside().len()), (1, 5));
    assert!(log.set_aside().iter().all(|aside| aside.why.contains("not possible")));
    // There is room for the next entry.
    let next = log.next(DeviceId(7), at(0.0), at(0.0), What::ClockJumped);
    assert_eq!(next.id.count, 2);
    fold(&log);
}

/// A stored cook under the rule of time at temperature, with two readings at these local times.
fn stored_hold(first: &str, second: &str) -> Log {
    let entry = |count: u32, at: &str, what: &str| {
        format!(
            r#"{{"v":1,"id":{{"count":{count},"device":7}},"happened":"{at}","typed":"{at}","what":{what}}}"#
        )
    };
    let on = "2026-11-01T00:20:00-05:00";
    let facts = r#"{"weight_g":240,"thickest_mm":38,"start_c":3}"#;
    let reading = r#"{"kind":"core_read","piece":1,"temperature_c":67.3,"instrument":"instant_read","places":2}"#;
    let rule = r#"{"kind":"proof_rule_set","rule":{"kind":"held","fat":"twelve"}}"#;
    let texts = [
        entry(1, on, &format!(r#"{{"kind":"piece_set_out","piece":1,"facts":{facts}}}"#)),
        entry(2, on, rule),
        entry(3, on, r#"{"kind":"put_on","piece":1}"#),
        entry(4, first, reading),
        entry(5, second, reading),
    ];
    let log = Log::from_stored(texts.iter().map(String::as_str));
    assert_eq!(log.set_aside(), []);
    log
}

#[test]
fn the_time_zone_or_daylight_saving_changed() {
    let is_proved = |log: Log| fold(&log).pieces[0].proof.is_some();
    // Five minutes on the wall: in the hour that comes twice the clock shows 01:58 and 01:03.
    let honest = stored_hold("2026-11-01T01:58:00-05:00", "2026-11-01T01:03:00-06:00");
    assert!(is_proved(honest));
    // The clock shows ten minutes, but one of them is in the other zone: an hour and ten.
    let hour_more = stored_hold("2026-11-01T01:40:00-05:00", "2026-11-01T01:50:00-06:00");
    assert!(!is_proved(hour_more));
    // The traveller's phone shows 55 minutes back; it was one minute of heat, and one is too few.
    let minute = stored_hold("2026-11-01T01:59:30-05:00", "2026-11-01T01:00:30-06:00");
    assert!(!is_proved(minute));
}

#[test]
fn an_imported_file_has_false_times() {
    // Taken after it was typed.
    let mut cook = Cook::two_on();
    cook.write_as(PHONE, 75.0, 60.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::FromTheFuture));
    assert!(!cook.is_proved(1));
    // Typed the next day.
    let mut cook = Cook::two_on();
    cook.write_as(PHONE, 75.0, 1440.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::TypedLate));
    assert!(!cook.is_proved(1));
    // Times stretched so that two readings seem five minutes apart; they were typed within two.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write_as(PHONE, 70.0, 71.9, read(1, 153.0, 2));
    cook.write_as(PHONE, 74.9, 74.0, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
    // An impossible value.
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 500.0, 2));
    assert!(!cook.is_proved(1));
}
