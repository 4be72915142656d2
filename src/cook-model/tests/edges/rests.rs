//! What is asked of a piece at rest: to be proved with few pokes, to go back, to be kept and served.

use cook_model::cook::duties::{Act, Duty, duties};
use cook_model::cook::{Seen, What};
use cook_model::plan::Habits;
use cook_model::quantity::{Moment, Span, Temperature, minutes, to_minutes};

use crate::support::{Cook, at, packed, piece, pulled, put_on, read, set_out};

fn all(cook: &Cook, minute: f64) -> Vec<Duty> {
    duties(&Seen::of(&cook.log, at(minute)))
}

/// When each act is asked of a piece.
fn asked(cook: &Cook, minute: f64, number: u32, act: &Act) -> Option<Moment> {
    let of = |duty: &&Duty| duty.act == *act && duty.pieces.contains(&piece(number));
    all(cook, minute).iter().find(of).map(|duty| duty.from)
}

/// One piece so thick, on since the start, to be pulled at this.
fn to_be_pulled_at(f: f64, mm: f64) -> Cook {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, mm));
    cook.write(0.0, put_on(1));
    let target = Some(Temperature::from_f(f));
    cook.write(0.0, What::PullTargetSet { piece: None, target });
    cook
}

/// One piece of 38 mm pulled at minute 66 where it was read at this, its pull temperature.
fn pulled_at(f: f64) -> Cook {
    let mut cook = to_be_pulled_at(f, 38.0);
    cook.write(1.0, What::PitRead { temperature: Temperature::from_f(250.0) });
    cook.write(66.0, read(1, f, 2));
    cook.write(66.5, pulled(1));
    cook
}

/// Carryover takes minutes: poked too early it is poked once more near its peak, and then no more. Each poke
/// lets heat and juice out (common practice, no source).
#[test]
fn a_piece_poked_too_early_is_poked_once_more_at_its_peak() {
    let peak = |cook: &Cook, minute: f64| {
        let seen = Seen::of(&cook.log, at(minute));
        seen.piece_forecast(piece(1)).unwrap().peak.unwrap().at
    };
    let mut cook = pulled_at(162.0);
    cook.write(67.0, read(1, 162.2, 2));
    assert_eq!(asked(&cook, 67.0, 1, &Act::PutBack), None);
    let again = asked(&cook, 67.0, 1, &Act::Prove).unwrap();
    assert_eq!(again, peak(&cook, 67.0));
    assert!(again >= at(70.0));
    // Twice is enough.
    cook.write(67.8, read(1, 162.4, 2));
    assert_eq!(asked(&cook, 67.8, 1, &Act::PutBack), Some(at(67.8)));
    // Read as its peak goes by, it will not get hotter.
    let mut cook = pulled_at(162.0);
    cook.write(80.0, read(1, 162.5, 2));
    assert_eq!(asked(&cook, 80.0, 1, &Act::PutBack), Some(at(80.0)));
    let (mut cook, peak) = (pulled_at(162.0), peak(&pulled_at(162.0), 66.5));
    let minute = to_minutes(peak - at(0.0)) + 1.0;
    cook.write(minute, read(1, 164.5, 2));
    assert_eq!(asked(&cook, minute, 1, &Act::PutBack), Some(at(minute)));
    // What no carryover brings to 165 F goes back after one poke.
    let mut cook = pulled_at(150.0);
    cook.write(67.0, read(1, 150.0, 2));
    assert_eq!(asked(&cook, 67.0, 1, &Act::PutBack), Some(at(67.0)));
}

/// A reading hot enough that another of the same look speaks against is taken again minutes later: the
/// piece may be done.
#[test]
fn a_reading_that_was_spoken_against_is_taken_again() {
    let mut cook = pulled_at(163.0);
    cook.write(73.0, read(1, 163.2, 2));
    let hot = cook.write(75.0, read(1, 165.8, 2));
    cook.write(75.2, What::ReadingVouched { reading: hot });
    assert!(!cook.is_proved(1));
    assert_eq!(asked(&cook, 75.2, 1, &Act::PutBack), None);
    assert_eq!(asked(&cook, 75.2, 1, &Act::Prove), Some(at(78.0)));
}

/// A reading that does not fit is asked about before anything else is asked of its piece.
#[test]
fn a_doubted_reading_at_rest_is_asked_about_first() {
    let mut cook = pulled_at(163.0);
    let reading = cook.write(72.0, read(1, 106.0, 2));
    assert_eq!(asked(&cook, 72.0, 1, &Act::Answer { reading }), Some(at(72.0)));
    assert_eq!(asked(&cook, 72.0, 1, &Act::PutBack), None);
    assert_eq!(asked(&cook, 72.0, 1, &Act::Prove), None);
}

/// A thin piece is at its peak as it comes off; called off by the app's word, it still rests a moment before
/// it is read again.
#[test]
fn a_thin_piece_is_not_poked_as_it_comes_off() {
    let mut cook = to_be_pulled_at(160.0, 16.0);
    cook.write(25.0, read(1, 160.0, 2));
    cook.write(25.2, pulled(1));
    assert!(asked(&cook, 25.2, 1, &Act::Prove).unwrap() >= at(27.0));
}

/// What is covered is not to be covered again.
#[test]
fn a_piece_is_covered_once() {
    let mut cook = pulled_at(166.0);
    assert_eq!(asked(&cook, 67.0, 1, &Act::Cover), Some(at(66.5)));
    cook.write(67.0, What::Covered { piece: piece(1) });
    assert_eq!(asked(&cook, 67.0, 1, &Act::Cover), None);
    let mut cook = pulled_at(162.0);
    cook.write(67.0, What::Covered { piece: piece(1) });
    assert_eq!(asked(&cook, 67.0, 1, &Act::Cover), None);
}

/// Two that come to their peaks within one trip are read in it, when the later is at its own; what else two
/// need within one trip is done when the first needs it.
#[test]
fn what_is_done_in_one_trip() {
    let mut cook = Cook::two_on();
    let target = Some(Temperature::from_f(162.0));
    cook.write(0.0, What::PullTargetSet { piece: None, target });
    for (number, minute) in [(1, 66.0), (2, 68.0)] {
        cook.write(minute, read(number, 162.0, 2));
        cook.write(minute + 0.3, pulled(number));
    }
    let seen = Seen::of(&cook.log, at(68.5));
    let peaks = [1, 2].map(|n| seen.piece_forecast(piece(n)).unwrap().peak.unwrap().at);
    let apart = peaks[1] - peaks[0];
    assert!((minutes(0.5)..minutes(4.0)).contains(&apart), "{apart}");
    for number in [1, 2] {
        assert_eq!(asked(&cook, 68.5, number, &Act::Prove), Some(peaks[1]));
        assert_eq!(asked(&cook, 68.5, number, &Act::Cover), Some(at(66.3)));
    }
}

/// Two proved and kept hot for a dinner hours away; the second came off three minutes after the first.
fn kept() -> Cook {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::DinnerSet { at: Some(at(185.0)) });
    for (number, minute) in [(1, 80.0), (2, 83.0)] {
        cook.write(minute, read(number, 168.0, 2));
        cook.write(minute + 0.5, pulled(number));
    }
    cook
}

/// One of the pieces kept tells of all, warm or too cold; what is too cold is read sooner again.
#[test]
fn one_reading_of_what_is_kept_tells_of_all() {
    let first = asked(&kept(), 84.0, 1, &Act::KeepHot).unwrap();
    let rested = first - at(0.0);
    assert!((minutes(84.0)..minutes(110.0)).contains(&rested), "{rested}");
    for (after, f, again) in [(10.0, 150.0, 45.0), (50.0, 130.0, 20.0), (1.0, 164.0, 45.0)] {
        let mut cook = kept();
        let minute = to_minutes(rested) + after;
        let reading = cook.write(minute, read(1, f, 2));
        cook.write(minute + 0.1, What::ReadingVouched { reading });
        for number in [1, 2] {
            let then = asked(&cook, minute + 0.1, number, &Act::KeepHot).unwrap();
            assert_eq!(then, at(minute + again), "{f} F, {after} min, piece {number}");
        }
    }
}

/// A rest lasts as long as the cook lets it.
#[test]
fn a_rest_is_as_long_as_was_told() {
    let served = |rest: i64| {
        let mut cook = pulled_at(166.0);
        let habits = Habits { rest: Span::minutes(rest), ..Habits::default() };
        cook.write(67.0, What::HabitsSet { habits });
        asked(&cook, 67.0, 1, &Act::Serve).unwrap()
    };
    assert_eq!((served(30), served(45)), (at(96.5), at(111.5)));
}

/// Dinner waits for what is eaten at it: neither for what is for another day nor for what was packed.
#[test]
fn dinner_waits_for_what_is_eaten_at_it() {
    let mut cook = kept();
    cook.write(84.0, set_out(3, 38.0));
    cook.write(84.0, put_on(3));
    assert_eq!(asked(&cook, 85.0, 1, &Act::Serve), None);
    let mut later = cook.clone();
    later.write(85.0, What::TonightSet { piece: piece(3), tonight: false });
    assert!(asked(&later, 86.0, 1, &Act::Serve).is_some());
    cook.write(86.0, pulled(3));
    cook.write(87.0, packed(3));
    assert!(asked(&cook, 88.0, 1, &Act::Serve).is_some());
}

/// What was read and pulled in one minute, both typed in afterwards to the minute, was called off all the same.
#[test]
fn what_was_read_and_pulled_in_one_minute_was_called_off() {
    let mut cook = to_be_pulled_at(156.0, 38.0);
    cook.write(62.0, read(1, 156.0, 2));
    cook.write(62.0, pulled(1));
    assert_eq!(asked(&cook, 62.0, 1, &Act::PutBack), None);
    assert!(asked(&cook, 62.0, 1, &Act::Prove).is_some());
}
