//! A reading that does not fit, however often and in whatever unit it was typed.

use cook_model::cook::{Seen, What};
use cook_model::quantity::Temperature;
use cook_model::safety::Shortfall;

use crate::support::{Cook, at, piece, pulled, put_on, read};
use crate::{shown, why_not};

fn set_to(f: f64) -> Cook {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(f) });
    cook
}

/// Whether the person is asked about a reading of piece 1.
fn is_asked(cook: &Cook, minute: f64) -> bool {
    let seen = Seen::of(&cook.log, at(minute));
    let asked = seen.state.question(seen.forecast.as_ref().unwrap());
    asked.is_some_and(|surprise| surprise.piece == piece(1))
}

/// Another piece's 166 F, and a thermometer's 74 F taken for 74 C (165.2 F), where 133 F is expected.
/// The probe goes into the same piece again and shows the same: that is no second witness.
#[test]
fn the_wrong_piece_or_unit_read_again_and_again() {
    for f in [165.2, 166.0] {
        for minute in [30.0, 36.0, 42.0, 46.0, 48.0, 49.0, 50.0] {
            for times in 1..=4 {
                let mut cook = set_to(250.0);
                for again in 0..times {
                    cook.write(minute + f64::from(again) * 0.5, read(1, f, 2));
                }
                let last = minute + 2.0;
                assert!(is_asked(&cook, last), "{f} F, {times} times from minute {minute}");
                assert!(shown(&cook, last).pieces[0].proof.is_none());
                cook.write(last, pulled(1));
                for later in [last, last + 10.0, last + 60.0] {
                    let proof = shown(&cook, later).pieces[0].proof;
                    assert!(proof.is_none(), "{f} F, {times} times from minute {minute}: {later}");
                }
            }
        }
    }
}

/// A whole round typed in the wrong unit: no piece speaks for another.
#[test]
fn every_piece_is_read_as_if_it_were_done() {
    for (minute, f) in [(30.0, 200.0), (30.0, 165.2), (36.0, 165.2), (42.0, 165.2), (46.0, 165.2)] {
        let mut cook = set_to(250.0);
        let first = cook.write(minute, read(1, f, 2));
        let second = cook.write(minute + 0.3, read(2, f + 0.5, 2));
        let seen = Seen::of(&cook.log, at(minute + 1.0));
        for reading in [first, second] {
            assert!(seen.state.doubted().contains(&reading), "{reading:?} at minute {minute}");
        }
        assert!(seen.state.pieces.iter().all(|piece| piece.proof.is_none()));
    }
}

/// One who says that it is right is believed, of every reading of that go.
#[test]
fn what_is_vouched_for_speaks_for_what_is_read_after_it() {
    let mut cook = set_to(250.0);
    let reading = cook.write(46.0, read(1, 166.0, 2));
    cook.write(46.5, What::ReadingVouched { reading });
    cook.write(47.0, read(1, 166.5, 2));
    assert!(!is_asked(&cook, 47.0));
    assert!(shown(&cook, 47.0).pieces[0].proof.is_some());
}

/// A core is no hotter than the air about it can have made it: 190 F in a pit that was read at 160 F is
/// another piece's, or another unit's. No tap makes it proof.
#[test]
fn hotter_than_the_pit_was_ever_read() {
    for (pit, core) in [(160.0, 190.0), (175.0, 205.0)] {
        let mut cook = set_to(f64::max(pit, 180.0));
        for minute in [5.0, 20.0, 35.0, 50.0, 65.0] {
            cook.write(minute, What::PitRead { temperature: Temperature::from_f(pit) });
        }
        let reading = cook.write(70.0, read(1, core, 2));
        assert!(is_asked(&cook, 70.0), "{core} F in a pit of {pit} F");
        cook.write(70.5, What::ReadingVouched { reading });
        assert_eq!(why_not(&cook, 1), Some(Shortfall::TooFast));
        cook.write(71.0, pulled(1));
        assert!(shown(&cook, 71.0).pieces[0].proof.is_none());
        // Put back and read so again, in the same pit.
        cook.write(75.0, put_on(1));
        cook.write(76.0, What::PitRead { temperature: Temperature::from_f(pit) });
        let again = cook.write(85.0, read(1, core, 2));
        cook.write(85.5, What::ReadingVouched { reading: again });
        assert!(shown(&cook, 86.0).pieces[0].proof.is_none());
    }
}

/// Whoever is asked about a reading and takes another instead, again and again, is still asked: by itself
/// the same figure some minutes later might be a fast piece's.
#[test]
fn a_doubted_reading_is_not_poked_away() {
    let alone = |minute: f64| {
        let mut cook = set_to(250.0);
        cook.write(minute, read(1, 165.2, 2));
        is_asked(&cook, minute)
    };
    let passes =
        (92..130).map(|half| f64::from(half) * 0.5).find(|minute| !alone(*minute)).unwrap();
    let mut cook = set_to(250.0);
    let first = cook.write(passes - 2.0, read(1, 165.2, 2));
    let second = cook.write(passes + 2.5, read(1, 165.2, 2));
    let seen = Seen::of(&cook.log, at(passes + 2.5));
    assert!(alone(passes - 2.0) && !alone(passes + 2.5));
    for reading in [first, second] {
        assert!(seen.state.doubted().contains(&reading), "{reading:?} at minute {passes}");
    }
    assert!(seen.state.pieces[0].proof.is_none());
}
