//! Which of two readings came first, and how long after, where a clock was wrong.

use cook_model::cook::{DeviceId, What};
use cook_model::safety::Shortfall;

use crate::support::{Cook, OTHER_PHONE, PHONE, put_on, read, set_out};
use crate::why_not;

const THIRD_PHONE: DeviceId = DeviceId(9);

/// 118 F, and 166 of the same core three minutes later: no meat warms so, whatever clocks did.
fn three_minutes_later(
    by: DeviceId,
    wrong: impl Fn(&mut Cook),
    between: impl Fn(&mut Cook),
) -> Cook {
    let mut cook = Cook::two_on();
    wrong(&mut cook);
    cook.write(72.0, read(1, 118.0, 2));
    between(&mut cook);
    cook.write_as(by, 75.0, 75.0, read(1, 166.0, 2));
    cook
}

/// A phone whose clock was hours ahead, and was set right at this minute.
fn set_right(cook: &mut Cook, phone: DeviceId, minute: f64) {
    cook.write_as(phone, 300.0, 300.0, What::Noted { text: String::new() });
    cook.write_as(phone, minute, minute, What::ClockJumped);
}

#[test]
fn no_wrong_clock_gives_meat_time_to_warm() {
    let nothing = |_: &mut Cook| ();
    for by in [PHONE, OTHER_PHONE] {
        let cook = three_minutes_later(by, nothing, nothing);
        assert_eq!(why_not(&cook), Some(Shortfall::TooFast));
        // Long before; or between the two, by either phone or by one that read nothing.
        let before = |cook: &mut Cook| {
            cook.write(10.0, What::ClockJumped);
        };
        assert_eq!(why_not(&three_minutes_later(by, before, nothing)), Some(Shortfall::TooFast));
        for phone in [OTHER_PHONE, THIRD_PHONE] {
            let between = |cook: &mut Cook| set_right(cook, phone, 73.0);
            let cook = three_minutes_later(by, nothing, between);
            assert_eq!(why_not(&cook), Some(Shortfall::TooFast), "{by:?}, {phone:?}");
        }
    }
}

/// Put on at 6:00 by a clock that was then set forward an hour: five minutes later nothing is done.
#[test]
fn a_clock_set_forward_cooks_nothing() {
    let mut cook = Cook::two_on();
    cook.write(60.0, What::ClockJumped);
    cook.write(65.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook), Some(Shortfall::TooFast));
}

/// As long as no clock jumped, times tell the order, not the order of writing: 160 F at 70 min is no colder
/// spot found after 166 at 80, though it was typed after it.
#[test]
fn without_a_jump_times_tell_the_order() {
    let mut cook = Cook::two_on();
    cook.write(80.0, read(1, 166.0, 2));
    cook.write_as(PHONE, 70.0, 82.0, read(1, 160.0, 2));
    assert!(cook.is_proved(1));
}

/// Nor does the clock of the first phone, half an hour slow until it was set right.
#[test]
fn a_slow_clock_set_right_cooks_nothing() {
    let mut cook = Cook::default();
    for what in [set_out(1, 38.0), put_on(1)] {
        cook.write_as(OTHER_PHONE, 0.0, 0.0, what);
    }
    cook.write(40.0, read(1, 118.0, 2));
    cook.write(41.0, What::Noted { text: String::new() });
    cook.write(73.0, What::ClockJumped);
    cook.write_as(OTHER_PHONE, 75.0, 75.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook), Some(Shortfall::TooFast));
}

/// A clock that has nothing to do with two readings takes no time away between them, before, between or
/// after; nor does one set back half an hour make what was written first the later.
#[test]
fn a_wrong_clock_elsewhere_takes_no_time_away() {
    for jump in [10.0, 60.0, 90.0] {
        let mut cook = Cook::two_on();
        let mut readings = vec![(50.0, 118.0), (78.0, 166.0)].into_iter().peekable();
        while let Some((minute, f)) = readings.next_if(|(minute, _)| *minute < jump) {
            cook.write(minute, read(1, f, 2));
        }
        set_right(&mut cook, THIRD_PHONE, jump);
        for (minute, f) in readings {
            cook.write(minute, read(1, f, 2));
        }
        assert!(cook.is_proved(1), "jump at {jump}");
    }
    let mut cook = Cook::two_on();
    cook.write(80.0, read(1, 150.0, 2));
    cook.write(50.0, What::ClockJumped);
    cook.write(78.0, read(1, 166.0, 2));
    assert!(cook.is_proved(1));
}

/// A clock that stood hours ahead and was set right before the first of two readings: what is typed earlier
/// than what was typed before it tells so by itself, and gives the time between the two no hours.
#[test]
fn a_clock_set_right_before_a_reading_warms_nothing_after_it() {
    let mut cook = Cook::two_on();
    cook.write(300.0, What::Noted { text: String::new() });
    cook.write(72.0, read(1, 118.0, 2));
    cook.write(75.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook), Some(Shortfall::TooFast));
}
