//! What a forecast must do, whatever was read.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

#[path = "support/histories.rs"]
mod histories;

use cook_model::forecast::forecast;
use cook_model::history::{CoreReading, Instrument, PitReading};
use cook_model::quantity::Temperature;
use histories::{at, cook, first, piece, poked, pull, reading, width};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn a_higher_reading_never_moves_the_pull_later(
        mm in 26.0..48.0_f64, minute in 15.0..50.0_f64, off in -12.0..8.0_f64, more in 0.5..4.0_f64
    ) {
        let mut history = cook(vec![piece(1, 280.0, mm), piece(2, 240.0, 35.0)]);
        let expected = first(&forecast(&history, at(minute))).core.middle.f();
        history.pieces[0].readings.push(poked(minute, expected + off));
        let low = forecast(&history, at(minute));
        history.pieces[0].readings[0].temperature = Temperature::from_f(expected + off + more);
        let high = forecast(&history, at(minute));
        prop_assert!(pull(&high) <= pull(&low) + 0.02, "{} {}", pull(&low), pull(&high));
    }

    #[test]
    fn a_second_reading_that_agrees_does_not_widen_the_window(
        mm in 26.0..48.0_f64, minute in 15.0..40.0_f64
    ) {
        let mut history = cook(vec![piece(1, 280.0, mm)]);
        let expected = first(&forecast(&history, at(minute))).core.middle.f();
        history.pieces[0].readings.push(poked(minute, expected));
        let one = forecast(&history, at(minute + 6.0));
        let expected = first(&one).core.middle.f();
        history.pieces[0].readings.push(poked(minute + 6.0, expected));
        let two = forecast(&history, at(minute + 6.0));
        prop_assert!(width(&two) <= width(&one) * 1.02, "{} {}", width(&one), width(&two));
    }

    #[test]
    fn no_history_crashes_it(
        readings in prop::collection::vec((-30.0..200.0_f64, 28.0..215.0_f64, any::<bool>(), any::<bool>()), 0..8),
        mm in 8.0..90.0_f64, pit in 0.0..700.0_f64, off in prop::option::of(0.0..200.0_f64),
        now in -60.0..600.0_f64,
    ) {
        let mut history = cook(vec![piece(1, 280.0, mm), piece(2, 200.0, 30.0)]);
        history.pit.readings = vec![PitReading { at: at(3.0), temperature: Temperature::from_f(pit) }];
        history.pieces[0].spells[0].off = off.map(at);
        history.pieces[0].readings = readings.iter().map(|(minute, f, leave_in, vouched)| {
            let instrument = if *leave_in { Instrument::LeaveIn } else { Instrument::InstantRead };
            CoreReading { vouched: *vouched, ..reading(*minute, *f, instrument) }
        }).collect();
        let forecast = forecast(&history, at(now));
        for piece in &forecast.pieces {
            prop_assert!(piece.core.low.c().is_finite() && piece.core.low <= piece.core.high, "{:?}", piece.core);
            if let Some(pull) = piece.pull {
                prop_assert!(pull.low <= pull.middle && pull.middle <= pull.high);
            }
            for (_, band) in &piece.curve {
                prop_assert!(band.low <= band.middle && band.middle <= band.high);
            }
        }
    }
}
