//! Which reading that does not fit is asked about: one that still decides something, as long as it does.

use cook_model::cook::What;
use cook_model::forecast::{Band, Forecast, Probability, Surprise};
use cook_model::history::EntryId;
use cook_model::quantity::Temperature;

use crate::support::{Cook, at, packed, piece, pulled, read};

/// The reading of piece 1 that is asked about at a minute by a forecast that these readings surprise.
fn asked(cook: &Cook, surprising: &[EntryId], minute: f64) -> Option<EntryId> {
    let read = Temperature::from_f(120.0);
    let surprise = |entry: &EntryId| Surprise {
        piece: piece(1),
        entry: *entry,
        read,
        expected: Band { low: read, middle: read, high: read },
        slip: Probability::new(0.9),
    };
    let surprises = surprising.iter().map(surprise).collect();
    let forecast = Forecast { surprises, ..Forecast::nothing(at(minute)) };
    cook.state().heed(&forecast).question(&forecast).map(|asked| asked.entry)
}

/// A reading that would stop a clock or prove a piece decides whenever it was; a cold one says what to do now.
#[test]
fn a_cold_reading_is_asked_about_while_it_is_new() {
    for (f, later) in [(100.0, false), (166.0, true)] {
        let mut cook = Cook::two_on();
        let reading = cook.write(75.0, read(1, f, 2));
        assert_eq!(asked(&cook, &[reading], 80.0), Some(reading), "{f} F");
        assert_eq!(asked(&cook, &[reading], 95.0).is_some(), later, "{f} F");
        // The cook has looked again and says that it is right.
        cook.write(96.0, What::ReadingVouched { reading });
        assert_eq!(asked(&cook, &[reading], 96.0), None);
    }
}

/// On the pit the next reading settles what the one before was; off it the only hot one decides for good.
#[test]
fn the_only_hot_reading_of_a_piece_that_is_off_is_asked_about() {
    let cook = |before: &[f64], off: bool| {
        let mut cook = Cook::two_on();
        for f in before {
            cook.write(45.0, read(1, *f, 2));
        }
        let hot = cook.write(50.0, read(1, 166.0, 2));
        if off {
            cook.write(51.0, pulled(1));
        }
        cook.write(65.0, read(1, 150.0, 2));
        (cook, hot)
    };
    let is_asked = |before: &[f64], off| {
        let (cook, hot) = cook(before, off);
        asked(&cook, &[hot], 66.0) == Some(hot)
    };
    assert!(is_asked(&[], true) && is_asked(&[100.0], true));
    // Another that nobody doubts was as hot before it; on the pit it is read again anyway.
    assert!(!is_asked(&[150.0], true) && !is_asked(&[], false));
}

/// What was packed is asked about where nothing else proves it; nothing is asked of what is in the bin.
#[test]
fn what_was_packed_is_asked_about_for_want_of_a_proof() {
    let mut cook = Cook::two_on();
    let reading = cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(80.0, packed(1));
    assert_eq!(asked(&cook, &[reading], 81.0), Some(reading));
    cook.write(82.0, What::Discarded { piece: piece(1) });
    assert_eq!(asked(&cook, &[reading], 83.0), None);
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 168.0, 2));
    cook.write(76.0, pulled(1));
    let reading = cook.write(77.0, read(1, 167.0, 2));
    cook.write(80.0, packed(1));
    assert_eq!(asked(&cook, &[reading], 81.0), None);
}
