//! Correcting entries. The expectations are what a person who mistyped, or told it late, means
//! (common practice, no source), and that safety is only ever lost by it, never won.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::mend::{Mending, mend, tell_late};
use cook_model::cook::{Entry, EntryId, Problem, What};
use cook_model::quantity::Temperature;
use support::{Cook, at, packed, piece, pulled, put_on, read, set_out};

fn f(fahrenheit: f64) -> Option<Temperature> {
    Some(Temperature::from_f(fahrenheit))
}

/// Corrects an entry at a minute and returns the entries written.
fn correct(cook: &mut Cook, id: EntryId, mending: Mending, minute: f64) -> Vec<Entry> {
    let mended = mend(&cook.log, id, &mending, at(minute)).unwrap();
    let write = |(happened, what): (_, What)| {
        let entry = cook.log.next(support::PHONE, happened, at(minute), what);
        cook.log.insert(entry.clone());
        entry
    };
    mended.happened.into_iter().map(write).collect()
}

/// The readings of a piece in whole degrees Fahrenheit, with their minutes.
fn readings(cook: &Cook, number: u32) -> Vec<(f64, i64)> {
    let state = cook.state();
    let (_, history) = state.piece(piece(number)).unwrap();
    let told = |r: &cook_model::history::CoreReading| {
        (r.shown.f().round(), (r.at - at(0.0)).num_minutes())
    };
    history.readings.iter().map(told).collect()
}

#[test]
fn a_mistyped_value_is_put_right_at_the_time_of_the_reading() {
    let mut cook = Cook::two_on();
    let id = cook.write(40.0, read(1, 160.0, 2));
    let written =
        correct(&mut cook, id, Mending { temperature: f(106.0), ..Mending::default() }, 43.0);
    assert_eq!(readings(&cook, 1), [(106.0, 40)]);
    let (happened, typed) = (written[1].happened, written[1].typed);
    assert_eq!((happened, typed), (at(40.0), at(43.0)), "its own time, and when it was typed");
    assert_eq!(written[0].what, What::Undone { entry: id });
}

#[test]
fn a_reading_of_the_wrong_piece_is_moved_to_the_right_one() {
    let mut cook = Cook::two_on();
    let id = cook.write(40.0, read(1, 130.0, 1));
    correct(&mut cook, id, Mending { piece: Some(piece(2)), ..Mending::default() }, 41.0);
    assert!(readings(&cook, 1).is_empty());
    assert_eq!(readings(&cook, 2), [(130.0, 40)]);
}

#[test]
fn a_pull_told_too_late_is_moved_to_when_it_was() {
    let mut cook = Cook::two_on();
    let id = cook.write(60.0, pulled(1));
    correct(&mut cook, id, Mending { at: Some(at(52.0)), ..Mending::default() }, 61.0);
    let state = cook.state();
    assert_eq!(state.piece(piece(1)).unwrap().1.off(), Some(at(52.0)));
}

#[test]
fn a_put_on_that_was_forgotten_is_told_afterwards_and_readings_then_count() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    let reading = cook.write(40.0, read(1, 120.0, 1));
    assert_eq!(cook.state().ignored.len(), 1, "it was not on");
    let told = tell_late(&cook.log, at(2.0), put_on(1), at(41.0)).unwrap();
    for (happened, what) in told.happened {
        let entry = cook.log.next(support::PHONE, happened, at(41.0), what);
        cook.log.insert(entry);
    }
    assert!(cook.state().ignored.is_empty());
    assert_eq!(cook.state().history.pieces[0].readings[0].entry, reading);
}

#[test]
fn what_makes_no_sense_is_refused_with_the_reason() {
    let mut cook = Cook::two_on();
    let id = cook.write(40.0, read(1, 130.0, 1));
    cook.write(20.0, set_out(3, 38.0));
    let raw = Mending { piece: Some(piece(3)), ..Mending::default() };
    assert_eq!(mend(&cook.log, id, &raw, at(42.0)), Err(Problem::NotOnYet));
    let too_soon = Mending { at: Some(at(-5.0)), ..Mending::default() };
    assert_eq!(mend(&cook.log, id, &too_soon, at(42.0)), Err(Problem::NotOnYet));
    let unknown = Mending { piece: Some(piece(9)), ..Mending::default() };
    assert_eq!(mend(&cook.log, id, &unknown, at(42.0)), Err(Problem::UnknownPiece));
    let to_come = Mending { at: Some(at(43.0)), ..Mending::default() };
    assert_eq!(mend(&cook.log, id, &to_come, at(42.0)), Err(Problem::InTheFuture));
    let impossible = Mending { temperature: f(400.0), ..Mending::default() };
    assert_eq!(mend(&cook.log, id, &impossible, at(42.0)), Err(Problem::ImpossibleValue));
    assert_eq!(tell_late(&cook.log, at(41.5), pulled(3), at(42.0)), Err(Problem::NotOnYet));
}

#[test]
fn what_would_no_longer_count_is_told() {
    let mut cook = Cook::two_on();
    let reading = cook.write(40.0, read(1, 130.0, 1));
    let on = cook.log.entries()[2].id;
    let later = Mending { at: Some(at(45.0)), ..Mending::default() };
    assert_eq!(mend(&cook.log, on, &later, at(50.0)).unwrap().lost, [reading]);
}

#[test]
fn nothing_different_writes_nothing() {
    let mut cook = Cook::two_on();
    let id = cook.write(40.0, read(1, 130.0, 1));
    let same = Mending { temperature: f(130.0), at: Some(at(40.0)), piece: Some(piece(1)) };
    assert!(mend(&cook.log, id, &same, at(42.0)).unwrap().happened.is_empty());
}

#[test]
fn the_second_place_stays_with_a_reading_whose_piece_is_corrected_but_not_with_another_value() {
    let second = |cook: &mut Cook| {
        let id = cook.write(60.0, read(1, 166.0, 1));
        cook.write(61.0, What::SecondPlaceTried { reading: id });
        id
    };
    let places =
        |cook: &Cook, number: usize| cook.state().history.pieces[number].readings[0].places;
    let mut cook = Cook::two_on();
    let id = second(&mut cook);
    correct(&mut cook, id, Mending { piece: Some(piece(2)), ..Mending::default() }, 62.0);
    assert_eq!(places(&cook, 1), 2);
    let mut cook = Cook::two_on();
    let id = second(&mut cook);
    correct(&mut cook, id, Mending { temperature: f(168.0), ..Mending::default() }, 62.0);
    assert_eq!(places(&cook, 0), 1, "no lower than 166 says nothing of 168");
}

#[test]
fn a_reading_moved_back_by_more_than_half_an_hour_proves_nothing() {
    let mut cook = Cook::two_on();
    let id = cook.write(90.0, read(1, 167.0, 2));
    assert!(cook.is_proved(1));
    correct(&mut cook, id, Mending { at: Some(at(55.0)), ..Mending::default() }, 91.0);
    assert!(!cook.is_proved(1), "that is a memory and not a reading");
}

#[test]
fn a_piece_packed_by_mistake_can_be_another_one() {
    let mut cook = Cook::two_on();
    cook.write(60.0, pulled(1));
    cook.write(60.0, pulled(2));
    let id = cook.write(70.0, packed(1));
    correct(&mut cook, id, Mending { piece: Some(piece(2)), ..Mending::default() }, 71.0);
    assert_eq!(cook.stage(2), cook_model::cook::Stage::Packed);
    assert_ne!(cook.stage(1), cook_model::cook::Stage::Packed);
}

#[test]
fn a_piece_typed_in_after_it_went_on_was_there_all_the_same() {
    let mut cook = Cook::default();
    cook.write(10.0, set_out(1, 38.0));
    let on = cook.write(11.0, put_on(1));
    correct(&mut cook, on, Mending { at: Some(at(2.0)), ..Mending::default() }, 12.0);
    assert!(cook.state().ignored.is_empty());
    assert_eq!(cook.state().history.pieces[0].on(), Some(at(2.0)));
}
