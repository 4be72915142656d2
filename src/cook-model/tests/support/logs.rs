//! Logs of anything at all, for what must hold of every cook.

use cook_model::cook::{Chore, EntryId, Log, What};
use cook_model::quantity::Temperature;
use proptest::prelude::*;

use super::{PHONE, at, packed, piece, pulled, put_on, read, set_out};

/// The pieces set out; the last of them never goes on.
pub const PIECES: u32 = 4;

fn any_piece() -> impl Strategy<Value = u32> {
    // Now and then one that nobody set out.
    prop_oneof![20 => 1..PIECES, 1 => Just(9)]
}

fn any_what() -> impl Strategy<Value = What> {
    let degrees = prop::sample::select(vec![60.0, 120.0, 140.0, 158.0, 162.0, 165.0, 168.0, 180.0]);
    let target = (1..40_u64).prop_map(|count| EntryId { count, device: PHONE });
    let pieces = prop::collection::vec((1..PIECES).prop_map(piece), 1..4);
    let on_pit = prop_oneof![
        2 => any_piece().prop_map(put_on),
        3 => any_piece().prop_map(pulled),
        8 => (any_piece(), degrees).prop_map(|(number, f)| read(number, f, 2)),
        2 => (80.0..320.0_f64)
            .prop_map(|f| What::PitRead { temperature: Temperature::from_f(f) }),
        4 => pieces.prop_map(|pieces| What::RoundBegan { pieces }),
        1 => any_piece().prop_map(|number| What::PieceSkipped { piece: piece(number) }),
        1 => Just(What::RoundEnded),
    ];
    let rest = prop_oneof![
        1 => any_piece().prop_map(packed),
        1 => any_piece().prop_map(|number| What::Discarded { piece: piece(number) }),
        2 => any_piece().prop_map(|number| What::Covered { piece: piece(number) }),
        1 => target.clone().prop_map(|reading| What::ReadingVouched { reading }),
        1 => target.prop_map(|entry| What::Undone { entry }),
        1 => Just(What::ChoreDone { chore: Chore::FeedFire }),
        1 => (60.0..400.0_f64).prop_map(|minute| What::DinnerSet { at: Some(at(minute)) }),
        1 => (any_piece(), any::<bool>())
            .prop_map(|(number, tonight)| What::TonightSet { piece: piece(number), tonight }),
    ];
    prop_oneof![3 => on_pit, 1 => rest]
}

/// Four pieces, two of them on since the start; then anything, minutes or seconds apart.
pub fn any_log() -> impl Strategy<Value = Log> {
    let step = prop_oneof![3 => 0.1..1.0_f64, 2 => 1.0..30.0_f64];
    prop::collection::vec((any_what(), step), 0..25).prop_map(|rows| {
        let mut log = Log::default();
        let mut write = |minute: f64, what: What| {
            log.insert(log.next(PHONE, at(minute), at(minute), what));
        };
        (1..=PIECES).for_each(|number| write(0.0, set_out(number, 30.0 + 4.0 * f64::from(number))));
        (1..3).for_each(|number| write(0.0, put_on(number)));
        let mut minute = 20.0;
        for (what, step) in rows {
            minute += step;
            write(minute, what);
        }
        log
    })
}
