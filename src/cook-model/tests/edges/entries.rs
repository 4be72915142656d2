//! What an entry may change of a piece: told twice, or where it makes no sense, it moves no clock and
//! proves nothing.

use cook_model::cook::{Problem, Stage, What};
use cook_model::history::{EntryId, Instrument, PieceHistory};
use cook_model::quantity::{Moment, Span, TemperatureDifference, minutes};
use cook_model::safety::ClockKind;

use crate::support::{Cook, PHONE, at, breast, id, packed, piece, pulled, put_on, read, set_out};

fn history(cook: &Cook) -> PieceHistory {
    cook.state().history.piece(piece(1)).unwrap().clone()
}

fn why(cook: &Cook, entry: EntryId) -> Option<Problem> {
    cook.state().ignored.iter().find(|ignored| ignored.entry == entry).map(|own| own.why)
}

fn warm(cook: &Cook, minute: f64) -> Span {
    cook.state().life(piece(1), at(minute)).unwrap().warm
}

fn cold_by(cook: &Cook) -> Option<Moment> {
    cook.state().life(piece(1), at(160.0)).unwrap().cold_by
}

fn away() -> What {
    What::BackInFridge { pieces: vec![piece(1)] }
}

fn out() -> What {
    What::TakenOut { pieces: vec![piece(1)] }
}

/// Two hours from the pit to the refrigerator: to pull it again gives it no new two hours.
#[test]
fn a_piece_comes_off_once() {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    let again = cook.write(150.0, pulled(1));
    assert_eq!(why(&cook, again), Some(Problem::AlreadyOff));
    assert_eq!((history(&cook).off(), cold_by(&cook)), (Some(at(76.0)), Some(at(196.0))));
    assert_eq!(cook.state().run_out(piece(1), at(200.0)).unwrap().kind, ClockKind::ToFridge);
}

/// What is on the pit is not in the refrigerator, whatever was tapped: its clock runs on.
#[test]
fn what_is_on_cannot_be_put_away() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(0.0, out());
    cook.write(30.0, put_on(1));
    let entry = cook.write(60.0, away());
    assert_eq!(why(&cook, entry), Some(Problem::AlreadyOn));
    assert_eq!(warm(&cook, 100.0), minutes(100.0));
    let entry = cook.write(61.0, out());
    assert_eq!(why(&cook, entry), Some(Problem::AlreadyOn));
}

#[test]
fn to_put_it_away_twice_changes_nothing() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(0.0, out());
    cook.write(30.0, away());
    cook.write(60.0, away());
    assert_eq!(warm(&cook, 90.0), minutes(30.0));
}

/// Once it is packed nothing goes back on the pit, is read, or is packed again later.
#[test]
fn what_is_packed_stays_as_it_was() {
    let mut cook = Cook::two_on();
    let reading = cook.write(75.0, read(1, 166.0, 1));
    cook.write(76.0, pulled(1));
    cook.write(78.0, packed(1));
    let told = [What::SecondPlaceTried { reading }, put_on(1), read(1, 170.0, 2)];
    for what in told {
        let entry = cook.write(79.0, what);
        assert_eq!(why(&cook, entry), Some(Problem::AlreadyPacked));
    }
    assert_eq!(history(&cook).readings[0].places, 1);
    assert!(cook.state().pieces[0].is_packed_unproved());
    cook.write(300.0, packed(1));
    assert_eq!(history(&cook).packed_at, Some(at(78.0)));
    cook.write(310.0, What::Discarded { piece: piece(1) });
    assert_eq!(history(&cook).packed_at, Some(at(78.0)));
    // What is raw is not served.
    let mut raw = Cook::default();
    raw.write(0.0, set_out(1, 38.0));
    let entry = raw.write(1.0, packed(1));
    assert_eq!(why(&raw, entry), Some(Problem::NotOnYet));
}

/// Thrown away from the pit it is off from then; thrown away raw it lies out no more.
#[test]
fn what_is_thrown_away_has_no_clock() {
    let mut cook = Cook::two_on();
    cook.write(30.0, What::Discarded { piece: piece(1) });
    cook.write(90.0, What::Discarded { piece: piece(1) });
    assert_eq!((history(&cook).off(), history(&cook).packed_at), (Some(at(30.0)), Some(at(30.0))));
    assert!(cook.state().life(piece(1), at(600.0)).unwrap().clocks.is_empty());
    let mut raw = Cook::default();
    raw.write(0.0, set_out(1, 38.0));
    raw.write(0.0, out());
    raw.write(10.0, What::Discarded { piece: piece(1) });
    let life = raw.state().life(piece(1), at(600.0)).unwrap();
    assert_eq!((life.clocks, life.run_out, life.warm), (Vec::new(), None, minutes(10.0)));
}

/// A second place belongs to its own reading, tried within minutes, and before the piece went back on.
#[test]
fn a_second_place_is_of_its_reading() {
    let mut cook = Cook::two_on();
    cook.write(74.0, read(1, 166.0, 1));
    let second = cook.write(75.0, read(2, 166.0, 1));
    cook.write(76.0, What::SecondPlaceTried { reading: second });
    let state = cook.state();
    let places: Vec<u8> =
        state.history.pieces.iter().map(|piece| piece.readings[0].places).collect();
    assert_eq!(places, [1, 2]);
    let mut cook = Cook::two_on();
    let reading = cook.write(75.0, read(1, 166.0, 1));
    cook.write(76.0, pulled(1));
    cook.write(77.0, put_on(1));
    let entry = cook.write(78.0, What::SecondPlaceTried { reading });
    assert_eq!(why(&cook, entry), Some(Problem::TooLate));
    for (minute, in_time) in [(79.5, true), (81.0, false)] {
        let mut cook = Cook::two_on();
        let reading = cook.write(75.0, read(1, 166.0, 1));
        let entry = cook.write(minute, What::SecondPlaceTried { reading });
        assert_eq!(why(&cook, entry).is_none(), in_time, "{minute}");
    }
}

/// A piece put back is pulled at what proves it at once, whatever was chosen before: its rest failed.
#[test]
fn a_piece_put_back_is_pulled_at_what_proves_it() {
    let mut cook = Cook::two_on();
    let target = Some(cook_model::quantity::Temperature::from_f(150.0));
    cook.write(0.0, What::PullTargetSet { piece: Some(piece(1)), target });
    assert!((history(&cook).pull_at.f() - 150.0).abs() < 1e-6);
    cook.write(60.0, pulled(1));
    cook.write(70.0, put_on(1));
    assert!((history(&cook).pull_at.f() - 165.0).abs() < 1e-6);
}

/// Told anew, a raw piece is what was told last; taken away, it is gone; on the pit it stays.
#[test]
fn pieces_are_set_out_and_taken_away() {
    let mut cook = Cook::two_on();
    cook.write(1.0, set_out(1, 50.0));
    assert_eq!(history(&cook).piece, breast(50.0));
    let entry = cook.write(2.0, What::PieceTakenAway { piece: piece(1) });
    assert_eq!((why(&cook, entry), cook.stage(1)), (Some(Problem::AlreadyOn), Stage::On));
    cook.write(3.0, set_out(3, 38.0));
    assert_eq!(cook.state().pieces.len(), 3);
    cook.write(4.0, What::PieceTakenAway { piece: piece(3) });
    assert_eq!(cook.state().pieces.len(), 2);
}

/// A thermometer that shows 34 F in ice water reads 2 F high: 166 is 164. One that shows 30 reads low; the
/// forecast may know, a proof takes no credit.
#[test]
fn an_offset_is_added_to_what_is_shown() {
    for (offset, meant, proves) in [(-2.0, 164.0, 164.0), (2.0, 168.0, 166.0), (0.0, 166.0, 166.0)]
    {
        let mut cook = Cook::two_on();
        let offset = TemperatureDifference::from_f(offset);
        cook.write(1.0, What::ThermometerChecked { instrument: Instrument::InstantRead, offset });
        cook.write(75.0, read(1, 166.0, 2));
        let reading = history(&cook).readings[0];
        let told = [reading.temperature, reading.for_proof, reading.shown].map(|t| t.f().round());
        assert_eq!(told, [meant, proves, 166.0]);
    }
}

/// What is covered is not asked to be covered; and nobody lays foil over what is on the pit.
#[test]
fn a_piece_is_covered_once_it_is_off() {
    let mut cook = Cook::two_on();
    let early = cook.write(70.0, What::Covered { piece: piece(1) });
    assert_eq!(why(&cook, early), Some(Problem::AlreadyOn));
    cook.write(76.0, pulled(1));
    for minute in [78.0, 90.0] {
        cook.write(minute, What::Covered { piece: piece(1) });
    }
    assert_eq!(history(&cook).spells[0].covered, Some(at(78.0)));
}

/// A reading of the very moment at which a piece goes on is one of a piece that is on.
#[test]
fn what_is_read_as_it_goes_on_is_of_that_spell() {
    let mut cook = Cook::two_on();
    let reading = cook.write(0.0, read(1, 38.0, 1));
    cook.write(1.0, What::SecondPlaceTried { reading });
    assert_eq!(history(&cook).readings[0].places, 2);
}

/// What was written before a reading was tells nothing of it, whatever its times say.
#[test]
fn a_second_place_is_told_after_its_reading() {
    let mut cook = Cook::two_on();
    cook.write_as(PHONE, 77.0, 70.0, What::SecondPlaceTried { reading: id(6) });
    let reading = cook.write(75.0, read(1, 166.0, 1));
    assert_eq!(reading, id(6));
    assert_eq!(history(&cook).readings[0].places, 1);
}
