//! Signs in the log that its times cannot be trusted.

use std::collections::{BTreeMap, BTreeSet};

use super::{CookState, DeviceId, Entry, EntryId, Log, Stage, What};
use crate::history::{ClockJump, CoreReading, PieceHistory};
use crate::piece::PieceId;
use crate::quantity::{Moment, Span};
use crate::safety::{LONGEST_GAP, LOWEST_HELD};

/// A clock that moves by more than this against the time that went by was set. Networks correct a
/// phone's clock by less (common practice, no source).
pub const CLOCK_SET: Span = Span::seconds(30);

/// Whether the phone's clock was set back since this log was last written: its last entry says it
/// was typed later than now. To be asked when a log is opened, for nobody watched the clock
/// meanwhile; a clock set forward cannot be told from time that went by.
pub fn was_set_back(log: &Log, now: Moment) -> bool {
    log.entries().last().is_some_and(|last| last.typed - now > CLOCK_SET)
}

/// Whether so much time went by since this log was last written that a clock set forward meanwhile
/// would matter.
pub fn was_unwatched(log: &Log, now: Moment) -> bool {
    log.entries().last().is_some_and(|last| now - last.typed > CLOCK_SET)
}

/// Whether time at temperature may be counting for some piece, by the rule in force or by one chosen
/// later. Where nobody watched the phone's clock meanwhile, [`What::ClockUnwatched`] is to be written.
pub fn hold_may_be_under_way(state: &CookState, now: Moment) -> bool {
    let counts = |reading: &CoreReading| {
        reading.for_proof >= LOWEST_HELD && now - reading.typed.min(reading.at) <= LONGEST_GAP
    };
    state.each_piece().any(|(standing, history)| {
        standing.stage != Stage::Packed && history.readings.iter().any(counts)
    })
}

/// Each entry at which a phone's clock is known to have jumped: it noticed so itself, or typed an
/// entry at an earlier time than the one it had written before.
///
/// `entries` are in the order of their ids, undone ones among them: a clock that ran back stays
/// one that ran back.
pub(super) fn clock_jumps(entries: &[Entry]) -> Vec<ClockJump> {
    let mut last_typed: BTreeMap<DeviceId, Moment> = BTreeMap::new();
    let jump = |entry: &Entry| {
        let before = last_typed.insert(entry.id.device, entry.typed);
        let jumped = matches!(entry.what, What::ClockJumped) || before > Some(entry.typed);
        let before = before.unwrap_or(entry.typed);
        jumped.then_some(ClockJump { entry: entry.id, before, after: entry.typed })
    };
    entries.iter().filter_map(jump).collect()
}

/// The entries that tell of time that nobody watched, undone ones among them.
pub(super) fn clock_unwatched(entries: &[Entry]) -> Vec<EntryId> {
    let unwatched = entries.iter().filter(|entry| matches!(entry.what, What::ClockUnwatched));
    unwatched.map(|entry| entry.id).collect()
}

/// Marks the readings of different pieces that one phone holds as typed at the same instant.
pub(super) fn mark_copies(pieces: &mut [PieceHistory]) {
    let mut typed: BTreeMap<(DeviceId, Moment), BTreeSet<PieceId>> = BTreeMap::new();
    for piece in &*pieces {
        for reading in &piece.readings {
            typed.entry((reading.entry.device, reading.typed)).or_default().insert(piece.id);
        }
    }
    for reading in pieces.iter_mut().flat_map(|piece| &mut piece.readings) {
        let same = typed.get(&(reading.entry.device, reading.typed));
        reading.copied = same.is_some_and(|pieces| pieces.len() > 1);
    }
}
