//! What a forecast must do, by facts of the trade.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

#[path = "support/histories.rs"]
mod histories;

use cook_model::forecast::{Forecast, forecast};
use cook_model::history::{CoreReading, History, LidOpening, PitAim, PitReading};
use cook_model::piece::PieceId;
use cook_model::quantity::{Temperature, TemperatureDifference, seconds, to_minutes};
use histories::{at, cook, first, piece, poked, pull, width};

#[test]
fn a_usual_breast_takes_about_an_hour() {
    // Common practice, no source: 45 to 75 minutes at 250 F for 38-45 mm; sizes vary more than
    // that, so a window of 15 to 40 minutes is honest before any reading.
    let forecast = forecast(&cook(vec![piece(1, 280.0, 40.0)]), at(0.0));
    assert!((45.0..75.0).contains(&pull(&forecast)), "{} min", pull(&forecast));
    assert!((15.0..40.0).contains(&width(&forecast)), "{} min", width(&forecast));
}

#[test]
fn thinner_pieces_come_first_in_the_order() {
    let pieces = vec![piece(1, 320.0, 45.0), piece(2, 180.0, 28.0), piece(3, 250.0, 37.0)];
    let forecast = forecast(&cook(pieces), at(10.0));
    assert_eq!(forecast.order, [PieceId(2), PieceId(3), PieceId(1)]);
    assert!(forecast.order_certainty.iter().all(|chance| chance.value() > 0.6));
    assert_eq!(forecast.checks[0].pieces[0], PieceId(2));
}

#[test]
fn a_reading_moves_its_piece_and_narrows_the_window() {
    let mut pieces = vec![piece(1, 280.0, 40.0), piece(2, 280.0, 40.0)];
    let before = forecast(&cook(pieces.clone()), at(40.0));
    let expected = first(&before).core.middle;
    pieces[0].readings.push(CoreReading {
        temperature: expected + TemperatureDifference::from_f(10.0),
        ..poked(40.0, 0.0)
    });
    let after = forecast(&cook(pieces), at(40.0));
    assert!(pull(&after) < pull(&before) - 3.0, "{} to {}", pull(&before), pull(&after));
    assert!(width(&after) < 0.5 * width(&before), "{} to {}", width(&before), width(&after));
    // The other piece shares the pit: it moves the same way, by less.
    let other = |f: &Forecast| to_minutes(f.pieces[1].pull.unwrap().middle - at(0.0));
    assert!(other(&after) < other(&before) - 0.5);
    assert!(
        before.pieces[1].pull.unwrap().middle - after.pieces[1].pull.unwrap().middle
            < first(&before).pull.unwrap().middle - first(&after).pull.unwrap().middle
    );
}

#[test]
fn the_last_twenty_degrees_take_about_twenty_minutes() {
    // Common practice, no source: from 140 F about a degree a minute at 250 to 275 F.
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    history.pieces[0].readings.push(poked(45.0, 140.0));
    let left = pull(&forecast(&history, at(45.0))) - 45.0;
    assert!((12.0..25.0).contains(&left), "{left} min");
}

#[test]
fn a_wild_reading_is_asked_about_and_does_not_wreck_the_forecast() {
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    history.pieces[0].readings.push(poked(40.0, 130.0));
    // The poking itself cools the pit, whatever it shows.
    history.pit.lid = vec![LidOpening { at: at(45.0), lasted: seconds(40.0) }];
    let before = forecast(&history, at(45.0));
    history.pieces[0].readings.push(poked(45.0, 47.0));
    let after = forecast(&history, at(45.0));
    assert!((pull(&after) - pull(&before)).abs() < 2.0);
    let [surprise] = after.surprises[..] else { panic!("{:?}", after.surprises) };
    assert_eq!(surprise.entry, history.pieces[0].readings[1].entry);
    assert!((surprise.expected.middle.f() - 137.0).abs() < 4.0, "{surprise:?}");
}

#[test]
fn a_thick_piece_rises_more_after_the_pull_than_a_thin_one() {
    // Common practice, no source: 3 to 5 F for a thick breast; a thin one hardly carries over.
    let forecast = forecast(&cook(vec![piece(1, 180.0, 25.0), piece(2, 360.0, 45.0)]), at(0.0));
    let rise = |i: usize| forecast.pieces[i].peak.unwrap().temperature.middle.f() - 160.0;
    assert!((1.0..4.0).contains(&rise(0)), "{}", rise(0));
    assert!((2.5..6.5).contains(&rise(1)), "{}", rise(1));
    assert!(rise(1) > rise(0));
}

#[test]
fn an_icy_middle_takes_longer() {
    let mut pieces = vec![piece(1, 280.0, 40.0)];
    let thawed = pull(&forecast(&cook(pieces.clone()), at(0.0)));
    pieces[0].piece.icy = true;
    let icy = forecast(&cook(pieces), at(0.0));
    assert!((thawed + 2.0..thawed + 20.0).contains(&pull(&icy)), "{} {thawed}", pull(&icy));
    assert!(first(&icy).core.middle < Temperature::from_c(0.0));
}

#[test]
fn a_piece_taken_off_as_soon_as_it_went_on_has_a_peak() {
    // Its trace stood still when it was pulled, and tells no rate.
    for minute in [0.0, 0.2, 1.0] {
        let mut history = cook(vec![piece(1, 280.0, 40.0)]);
        history.pieces[0].spells[0].off = Some(at(minute));
        for now in [minute, 3.0, 12.0] {
            let forecast = forecast(&history, at(now));
            let peak = first(&forecast).peak.unwrap().temperature;
            let all = [peak.low, peak.middle, peak.high, first(&forecast).core.middle];
            assert!(
                all.iter().all(|t| (20.0..100.0).contains(&t.f())),
                "{minute}, {now}: {peak:?}"
            );
        }
    }
}

#[test]
fn what_is_read_at_the_pull_that_was_told_comes_off() {
    // Told "pull at 164" and read at 164, a cook must not be told "pull at 165", nor two minutes later. The
    // reading comes before the time it was expected at, or after, and the one before it was as expected or
    // not.
    for (grams, mm) in [(150.0, 25.0), (280.0, 38.0), (360.0, 45.0)] {
        for before in [-8.0, 0.0, 8.0] {
            for off in [-9.0, -4.0, 0.0, 4.0, 9.0] {
                let mut history = cook(vec![piece(1, grams, mm), piece(2, 300.0, 40.0)]);
                history.pieces.iter_mut().for_each(|piece| piece.pull_choice = None);
                let shown = first(&forecast(&history, at(20.0))).core.middle;
                history.pieces[0].readings.push(poked(20.0, shown.f().round() + before));
                let minute = pull(&forecast(&history, at(25.0))) + off;
                let told = first(&forecast(&history, at(minute))).pull_at;
                history.pit.lid.push(LidOpening { at: at(minute - 0.3), lasted: seconds(60.0) });
                history.pieces[0].readings.push(poked(minute, told.f()));
                for now in [minute, minute + 2.0] {
                    let after = first(&forecast(&history, at(now))).pull_at;
                    assert!(after <= told, "{mm} mm, {before}, {off}: {told:?}, then {after:?}");
                }
            }
        }
    }
}

#[test]
fn the_rise_told_before_a_pull_is_the_one_after_it() {
    // The same piece in the same pit, read at its pull temperature as it comes off: the rise that was
    // foretold is the one forecast once it is off, to a third of a degree.
    for (grams, mm) in [(180.0, 25.0), (280.0, 40.0), (360.0, 45.0)] {
        let mut history = cook(vec![piece(1, grams, mm)]);
        let off = first(&forecast(&history, at(0.0))).pull.unwrap().middle;
        history.pieces[0].readings.push(poked(to_minutes(off - at(0.0)), 160.0));
        let before = forecast(&history, off);
        let told = first(&before).peak.unwrap().temperature.middle - history.pieces[0].pull_at;
        history.pieces[0].spells[0].off = Some(off);
        history.pieces[0].spells[0].covered = Some(off);
        let after = forecast(&history, off);
        let rise = first(&after).peak.unwrap().temperature.middle - first(&after).core.middle;
        assert!((told - rise).f().abs() < 0.33, "{mm} mm: {} F told, {} F", told.f(), rise.f());
    }
}

#[test]
fn after_the_pull_the_peak_is_of_this_rest() {
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    history.pieces[0].readings.push(poked(58.0, 160.0));
    history.pieces[0].spells[0].off = Some(at(59.0));
    history.pieces[0].spells[0].covered = Some(at(60.0));
    let forecast = forecast(&history, at(62.0));
    let piece = first(&forecast);
    assert_eq!(piece.pull, None);
    let peak = piece.peak.unwrap();
    assert!((161.5..167.0).contains(&peak.temperature.middle.f()), "{peak:?}");
    assert!(peak.at > at(60.0) && peak.at < at(80.0));
    assert!(piece.curve.len() > 10);
}

#[test]
fn a_cold_pit_that_never_gets_there_says_so() {
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    history.pit.target = Temperature::from_f(180.0);
    history.pit.readings =
        vec![PitReading { at: at(1.0), temperature: Temperature::from_f(120.0) }];
    history.pieces[0].pull_choice = Some(Temperature::from_f(185.0));
    let forecast = forecast(&history, at(5.0));
    assert_eq!(first(&forecast).pull, None);
    assert_eq!(forecast.order, [PieceId(1)]);
}

#[test]
fn a_piece_not_likely_to_get_there_is_looked_at_all_the_same() {
    // Common practice, no source: nobody leaves meat unread for longer than about an hour.
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    history.pit.target = Temperature::from_f(180.0);
    history.pit.readings =
        vec![PitReading { at: at(1.0), temperature: Temperature::from_f(120.0) }];
    history.pieces[0].pull_choice = Some(Temperature::from_f(185.0));
    let look = |history: &History, minute| {
        let forecast = forecast(history, at(minute));
        assert_eq!(forecast.checks.len(), 1, "{:?}", forecast.checks);
        assert_eq!(first(&forecast).pull, None);
        (to_minutes(first(&forecast).check_by.unwrap() - at(0.0)), forecast.checks[0].at)
    };
    let (due, opening) = look(&history, 5.0);
    assert!((30.0..60.0).contains(&due), "{due} min");
    assert_eq!(opening, at(due));
    // It stays where it is until it was done, and does not run ahead of the cook.
    assert_eq!(look(&history, 70.0), (due, at(70.0)));
    history.pieces[0].readings.push(poked(71.0, 95.0));
    assert!(look(&history, 71.0).0 > 100.0);
}

#[test]
fn a_raised_pit_is_believed_before_its_thermometer_says_so() {
    // Common practice, no source: a fire takes a quarter of an hour to come up 25 F, so what was
    // read before it was told to rise says little of the next half hour.
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    let read = |minute, f| PitReading { at: at(minute), temperature: Temperature::from_f(f) };
    history.pit.readings = [5.0, 12.0, 19.0, 26.0].map(|minute| read(minute, 250.0)).to_vec();
    let aim = |minute, f| PitAim { at: at(minute), temperature: Temperature::from_f(f) };
    history.pit.aims = vec![aim(-10.0, 250.0)];
    let left_alone = pull(&forecast(&history, at(27.0)));
    history.pit.target = Temperature::from_f(300.0);
    history.pit.aims.push(aim(27.0, 300.0));
    let raised = pull(&forecast(&history, at(27.0)));
    history.pit.readings.extend([42.0, 52.0, 62.0].map(|minute| read(minute, 300.0)));
    let came_up = pull(&forecast(&history, at(27.0)));
    assert!(raised < left_alone - 3.0, "{left_alone} to {raised}");
    assert!((raised - came_up).abs() < 1.0, "{raised}, and {came_up} once it was read");
}
