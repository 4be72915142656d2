//! What a forecast must never do, whatever is read.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

#[path = "support/histories.rs"]
mod histories;

use cook_model::forecast::{Forecast, forecast};
use cook_model::history::{History, PitReading};
use cook_model::quantity::{Temperature, minutes, to_minutes};
use histories::{at, cook, first, piece, poked, pull, width};

/// Wet meat does not pass it (steam tables).
const BOILING: Temperature = Temperature::from_f(212.0);

fn pit_shows(history: &mut History, minute: f64, fahrenheit: f64) {
    let temperature = Temperature::from_f(fahrenheit);
    history.pit.readings.push(PitReading { at: at(minute), temperature });
}

/// The hottest core that is told of the first piece.
fn hottest(forecast: &Forecast) -> Temperature {
    let piece = first(forecast);
    let curves = piece.curve.iter().chain(&piece.left_on);
    let highs = curves.map(|(_, core)| core.high).chain([piece.core.high]);
    highs
        .chain(piece.peak.map(|peak| peak.temperature.high))
        .fold(piece.core.high, Temperature::max)
}

#[test]
fn a_core_passes_boiling() {
    // A pit typed as 0 and then as 700 F, one of 400 F for hours, and a piece read hotter than its pit.
    let mut typed = cook(vec![piece(1, 280.0, 40.0)]);
    pit_shows(&mut typed, 10.0, 0.0);
    pit_shows(&mut typed, 20.0, 700.0);
    let mut hot = cook(vec![piece(1, 180.0, 25.0)]);
    pit_shows(&mut hot, 5.0, 400.0);
    let mut read = cook(vec![piece(1, 180.0, 25.0)]);
    read.pieces[0].readings.push(poked(30.0, 280.0));
    for history in [typed, hot, read] {
        for now in [20.0, 40.0, 90.0, 240.0] {
            let hottest = hottest(&forecast(&history, at(now)));
            assert!(hottest <= BOILING, "{} F at minute {now}", hottest.f());
        }
    }
}

#[test]
fn one_reading_makes_certain() {
    // A single reading may be a slip: of a hundred about two are.
    for shown in [150.0, 158.0, 162.0, 170.0, 190.0, 260.0] {
        for minute in [12.0, 30.0, 45.0, 60.0] {
            let mut history = cook(vec![piece(1, 280.0, 40.0)]);
            history.pieces[0].readings.push(poked(minute, shown));
            let forecast = forecast(&history, at(minute));
            let ready = first(&forecast).ready.value();
            assert!(ready <= 0.97, "{shown} F at minute {minute}: ready {ready}");
            let narrow = first(&forecast).pull.is_none_or(|_| width(&forecast) > 1.0);
            assert!(narrow, "{shown} F at minute {minute}: a window of {} min", width(&forecast));
        }
    }
}

#[test]
fn the_middle_jumps_without_an_entry() {
    // Nor a window a minute later that has little to do with the one before; where no time to read is passed.
    for (grams, mm, set) in [(180.0, 25.0, 225.0), (280.0, 40.0, 250.0), (420.0, 50.0, 275.0)] {
        for shown in [None, Some(70.0), Some(100.0), Some(130.0)] {
            let mut history = cook(vec![piece(1, grams, mm), piece(2, 300.0, 40.0)]);
            history.pit.target = Temperature::from_f(set);
            if let Some(shown) = shown {
                history.pieces[0].readings.push(poked(30.0, shown));
            }
            let middle = |minute: i32| {
                first(&forecast(&history, at(f64::from(minute)))).pull.map(|pull| pull.middle)
            };
            for minute in (31..120).step_by(6) {
                let (Some(before), Some(after)) = (middle(minute), middle(minute + 1)) else {
                    continue;
                };
                let moved = to_minutes(after - before).abs();
                assert!(moved <= 5.0, "{mm} mm, {shown:?}: {moved} min at minute {minute}");
            }
        }
    }
}

#[test]
fn an_honest_start_a_few_degrees_off_makes_slips_of_the_first_readings() {
    // Typed 40 F, truly 48.
    let mut truly = cook(vec![piece(1, 280.0, 40.0)]);
    truly.pieces[0].piece.start = Temperature::from_f(48.0);
    let mut typed = cook(vec![piece(1, 280.0, 40.0)]);
    typed.pieces[0].piece.start = Temperature::from_f(40.0);
    for minute in [10.0, 20.0, 30.0] {
        let shown = first(&forecast(&truly, at(minute))).core.middle;
        typed.pieces[0].readings.push(poked(minute, shown.f().round()));
        let asked = forecast(&typed, at(minute)).surprises;
        assert!(asked.is_empty(), "at minute {minute}: {asked:?}");
    }
}

#[test]
fn a_lower_reading_is_left_out_of_the_window() {
    // 150 F, and ten minutes later 140: a tip can hardly read too cold, so what is told holds the lower one.
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    history.pieces[0].readings.extend([poked(45.0, 150.0), poked(55.0, 140.0)]);
    let core = first(&forecast(&history, at(55.0))).core;
    assert!(core.low <= Temperature::from_f(141.0), "{} to {} F", core.low.f(), core.high.f());
}

#[test]
fn a_surprise_borne_out_by_the_next_reading_stays_out() {
    // Thirteen minutes ahead of what was expected, and so again four minutes later.
    let mut history = cook(vec![piece(1, 280.0, 40.0)]);
    let ahead = |minute: f64| {
        let history = cook(vec![piece(1, 280.0, 40.0)]);
        first(&forecast(&history, at(0.0))).core_at(at(minute + 13.0)).middle.f()
    };
    history.pieces[0].readings.extend([poked(30.0, ahead(30.0)), poked(34.0, ahead(34.0))]);
    let unread = pull(&forecast(&cook(vec![piece(1, 280.0, 40.0)]), at(0.0)));
    let told = forecast(&history, at(34.0) + minutes(0.1));
    assert!(told.surprises.is_empty(), "{:?}", told.surprises);
    assert!((pull(&told) - (unread - 13.0)).abs() < 4.0, "{} of {unread} min", pull(&told));
}

#[test]
fn coming_off_changes_what_was_read() {
    // Well ahead of or behind what was expected, and as it: half a minute after the pull the core is about as
    // it was read, and its peak is no lower than that.
    for minute in [42.0, 46.0, 52.0, 62.0] {
        let mut history = cook(vec![piece(1, 230.0, 36.0)]);
        history.pieces[0].readings.push(poked(minute, 164.0));
        history.pieces[0].spells[0].off = Some(at(minute + 0.3));
        let told = forecast(&history, at(minute + 0.5));
        let (core, peak) = (first(&told).core, first(&told).peak.unwrap().temperature);
        let ends = (core.low.f(), core.middle.f(), core.high.f());
        assert!((core.middle.f() - 164.0).abs() <= 1.5, "minute {minute}: {ends:?}");
        assert!(core.high.f() - core.low.f() <= 8.0, "minute {minute}: {ends:?}");
        assert!(peak.middle.f() >= 163.5, "minute {minute}: a peak of {} F", peak.middle.f());
    }
}
