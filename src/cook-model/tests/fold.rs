//! Laws of the log and its fold, over entries in any order.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use chrono::{DateTime, Utc};
use cook_model::cook::export::{export, import};
use cook_model::cook::{CookState, DeviceId, Entry, EntryId, Log, Problem, Stage, What, fold};
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Length, Mass, Moment, Temperature, minutes, seconds};
use proptest::prelude::*;

const PHONE: DeviceId = DeviceId(7);

fn start() -> Moment {
    DateTime::<Utc>::from_timestamp(1_780_000_000, 0).unwrap()
}

fn breast(grams: f64) -> Piece {
    Piece {
        weight: Mass::from_g(grams),
        thickest: Some(Length::from_mm(38.0)),
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    }
}

/// Entries written one after another, four minutes apart.
fn log_of(whats: &[What]) -> Log {
    let mut log = Log::default();
    for (place, what) in whats.iter().enumerate() {
        let at = start() + minutes(4.0 * place as f64);
        log.insert(log.next(PHONE, at, at, what.clone()));
    }
    log
}

fn id(count: u64) -> EntryId {
    EntryId { count, device: PHONE }
}

fn read(piece: u32, fahrenheit: f64, places: u8) -> What {
    What::CoreRead {
        piece: PieceId(piece),
        temperature: Temperature::from_f(fahrenheit),
        instrument: Instrument::InstantRead,
        places,
    }
}

fn set_out(piece: u32) -> What {
    What::PieceSetOut { piece: PieceId(piece), facts: breast(240.0), name: String::new() }
}

fn stage(state: &CookState, piece: u32) -> Stage {
    state.piece(PieceId(piece)).unwrap().0.stage
}

/// Anything a person could tap, sensible or not.
fn any_what() -> impl Strategy<Value = What> {
    let piece = (1..4_u32).prop_map(PieceId);
    let target = (1..30_u64).prop_map(id);
    prop_oneof![
        (1..4_u32).prop_map(set_out),
        piece.clone().prop_map(|piece| What::PutOn { piece }),
        piece.clone().prop_map(|piece| What::Pulled { piece }),
        piece.clone().prop_map(|piece| What::Covered { piece }),
        piece.clone().prop_map(|piece| What::Packed { piece }),
        piece.clone().prop_map(|piece| What::PieceTakenAway { piece }),
        piece.prop_map(|piece| What::LeaveInSeated { piece }),
        (1..4_u32, -50.0..1000.0_f64, 0..4_u8)
            .prop_map(|(piece, f, places)| read(piece, f, places)),
        (0.0..900.0_f64)
            .prop_map(|f| What::PitRead { temperature: Temperature::from_f(f.round()) }),
        target.clone().prop_map(|reading| What::SecondPlaceTried { reading }),
        target.clone().prop_map(|reading| What::ReadingVouched { reading }),
        target.prop_map(|entry| What::Undone { entry }),
        (0..600_u32).prop_map(|seconds| What::LidOpened { seconds }),
    ]
}

/// Entries by two phones, whose clocks and counts need not agree.
fn any_entries() -> impl Strategy<Value = Vec<Entry>> {
    prop::collection::vec((any_what(), 1..30_u64, 0..2_u32, 0..7200_i64), 0..40).prop_map(|rows| {
        let entries = rows.into_iter().map(|(what, count, device, second)| {
            let at = start() + seconds(second as f64);
            let id = EntryId { count, device: DeviceId(device) };
            Entry { v: 1, id, happened: at, typed: at, what }
        });
        Log::from_entries(entries).entries().to_vec()
    })
}

proptest! {
    #[test]
    fn the_order_of_arrival_does_not_matter(
        (entries, shuffled) in any_entries().prop_flat_map(|e| (Just(e.clone()), Just(e).prop_shuffle()))
    ) {
        prop_assert_eq!(
            fold(&Log::from_entries(entries)),
            fold(&Log::from_entries(shuffled))
        );
    }

    #[test]
    fn an_entry_met_twice_counts_once(entries in any_entries()) {
        let once = Log::from_entries(entries.clone());
        let twice = Log::from_entries(entries.iter().cloned().chain(entries.iter().cloned()));
        prop_assert_eq!(once, twice);
    }

    #[test]
    fn undoing_an_entry_is_as_if_it_had_never_been(
        entries in any_entries(), pick in any::<prop::sample::Index>()
    ) {
        prop_assume!(!entries.is_empty());
        let gone = pick.get(&entries).clone();
        let mut undone = Log::from_entries(entries.clone());
        let at = start() + minutes(500.0);
        undone.insert(undone.next(PHONE, at, at, What::Undone { entry: gone.id }));
        let without = Log::from_entries(entries.into_iter().filter(|entry| entry.id != gone.id));
        // A clock that ran back stays one that ran back (and then proves less); one unwatched stays
        // that.
        let state = |log: &Log| {
            let mut state = fold(log);
            state.history.clock_unwatched.clear();
            state
        };
        let jumps = |log: &Log| fold(log).history.clock_jumps;
        prop_assume!(jumps(&undone) == jumps(&without));
        prop_assert_eq!(state(&undone), state(&without));
    }

    #[test]
    fn undoing_an_undoing_brings_back_the_same_state(
        entries in any_entries(), pick in any::<prop::sample::Index>()
    ) {
        prop_assume!(!entries.is_empty());
        let gone = pick.get(&entries).id;
        let before = Log::from_entries(entries);
        let mut after = before.clone();
        let at = start() + minutes(500.0);
        let undo = after.next(PHONE, at, at, What::Undone { entry: gone });
        after.insert(undo.clone());
        after.insert(after.next(PHONE, at, at, What::Undone { entry: undo.id }));
        prop_assert_eq!(fold(&before), fold(&after));
    }

    #[test]
    fn stored_and_read_back_it_is_the_same_log(entries in any_entries()) {
        let log = Log::from_entries(entries);
        let stored: Vec<String> =
            log.entries().iter().map(|entry| serde_json::to_string(entry).unwrap()).collect();
        let read_back = Log::from_stored(stored.iter().map(String::as_str));
        prop_assert!(read_back.set_aside().is_empty());
        let again: Vec<String> =
            read_back.entries().iter().map(|entry| serde_json::to_string(entry).unwrap()).collect();
        prop_assert_eq!(stored, again);
        prop_assert_eq!(import(&export(&log)).unwrap(), log);
    }

    #[test]
    fn no_stored_text_crashes_or_is_lost(texts in prop::collection::vec(".*", 0..10)) {
        let log = Log::from_stored(texts.iter().map(String::as_str));
        prop_assert_eq!(log.entries().len() + log.set_aside().len(), texts.len());
        fold(&log);
    }
}

#[test]
fn all_is_packed_once_there_is_something_and_nothing_of_it_is_left() {
    // A cook just begun has nothing on the table.
    let pulled = |piece| [What::PutOn { piece }, What::Pulled { piece }, What::Packed { piece }];
    let (one, two) = (pulled(PieceId(1)), pulled(PieceId(2)));
    let all = |whats: &[&[What]]| fold(&log_of(&whats.concat())).is_all_packed();
    assert!(!all(&[]));
    assert!(!all(&[&[set_out(1)], &one[..2]]));
    assert!(all(&[&[set_out(1)], &one]));
    assert!(!all(&[&[set_out(1), set_out(2)], &one]));
    assert!(all(&[&[set_out(1), set_out(2)], &one, &two]));
}

#[test]
fn a_piece_goes_from_raw_to_packed() {
    let mut whats = vec![set_out(1)];
    let steps = [
        (What::PutOn { piece: PieceId(1) }, Stage::On),
        (read(1, 161.0, 1), Stage::On),
        (What::Pulled { piece: PieceId(1) }, Stage::Resting),
        (What::Covered { piece: PieceId(1) }, Stage::Resting),
        (read(1, 165.0, 1), Stage::Resting),
        (What::SecondPlaceTried { reading: id(6) }, Stage::Proved),
        (What::Packed { piece: PieceId(1) }, Stage::Packed),
    ];
    assert_eq!(stage(&fold(&log_of(&whats)), 1), Stage::Raw);
    for (what, expected) in steps {
        whats.push(what);
        let state = fold(&log_of(&whats));
        assert_eq!(stage(&state, 1), expected, "after {:?}", whats.last());
        assert_eq!(state.ignored, []);
    }
}

#[test]
fn what_makes_no_sense_is_ignored_with_its_reason() {
    let cases = [
        (vec![read(1, 150.0, 2)], Problem::UnknownPiece),
        (vec![set_out(1), read(1, 150.0, 2)], Problem::NotOnYet),
        (vec![set_out(1), What::Pulled { piece: PieceId(1) }], Problem::NotOnYet),
        (
            vec![set_out(1), What::PutOn { piece: PieceId(1) }, What::PutOn { piece: PieceId(1) }],
            Problem::AlreadyOn,
        ),
        (
            vec![set_out(1), What::PutOn { piece: PieceId(1) }, read(1, 999.0, 2)],
            Problem::ImpossibleValue,
        ),
        (vec![What::SecondPlaceTried { reading: id(9) }], Problem::UnknownReading),
    ];
    for (whats, why) in cases {
        let ignored = fold(&log_of(&whats)).ignored;
        assert_eq!(ignored.iter().map(|i| i.why).collect::<Vec<_>>(), [why], "for {whats:?}");
    }
}

#[test]
fn a_later_version_and_an_unknown_kind_are_set_aside() {
    let entry = |v: u16, kind: &str| {
        format!(
            r#"{{"v":{v},"id":{{"count":1,"device":7}},"happened":"2026-06-01T10:00:00Z","typed":"2026-06-01T10:00:00Z","what":{{"kind":"{kind}","piece":1}}}}"#
        )
    };
    let texts = [entry(1, "put_on"), entry(2, "put_on"), entry(1, "juggled"), "{".to_owned()];
    let log = Log::from_stored(texts.iter().map(String::as_str));
    assert_eq!(log.entries().len(), 1);
    let kept: Vec<&str> = log.set_aside().iter().map(|aside| aside.text.as_str()).collect();
    assert_eq!(kept, [&texts[1], &texts[2], &texts[3]]);
}
