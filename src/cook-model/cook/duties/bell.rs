//! Which duties call, when, and under which name.

use std::collections::BTreeSet;

use super::{Act, Duty, Why, fire};
use crate::cook::alarms::{Alarm, AlarmId, AlarmKind};
use crate::cook::{Chore, CookState, Seen};
use crate::history::PieceHistory;
use crate::quantity::{Moment, Span};
use crate::safety::ClockKind;

/// Who has just tapped something looks at the screen: what that makes due calls only after this.
const LOOKS_FOR: Span = Span::minutes(1);
/// A piece whose reading has reached its pull temperature should be off within this.
const TO_PULL: Span = Span::minutes(3);

/// Gives each duty its calls. None comes when its duty is over; and what goes on with fewer pieces after
/// that calls only where it has not called already.
pub(super) fn set(seen: &Seen, all: &mut [Duty]) {
    let mut named = BTreeSet::new();
    for duty in all {
        let calls = calls(duty);
        let piece = if is_of_all(&duty.act) { None } else { duty.pieces.iter().min().copied() };
        let alarm = |(kind, at): (AlarmKind, Moment)| {
            let occasion = occasion(&seen.state, duty, kind);
            let id = AlarmId { kind, piece, occasion: u32::try_from(occasion).ok()? };
            Some(Alarm { id, at: at.max(seen.at + LOOKS_FOR), until: duty.until })
        };
        let calls = calls.into_iter().filter_map(alarm);
        let in_time = calls.filter(|alarm| !alarm.is_over(alarm.at));
        duty.bells = in_time.filter(|alarm| named.insert(alarm.id)).collect();
    }
}

/// What a duty calls for, and when.
fn calls(duty: &Duty) -> Vec<(AlarmKind, Moment)> {
    match (&duty.act, &duty.why) {
        (Act::Pull, _) => vec![(AlarmKind::LikelyPastTarget, duty.from + TO_PULL)],
        (Act::Check, Why::Forecast { past, .. }) => {
            let past =
                past.map(|past| (AlarmKind::LikelyPastTarget, past.max(duty.from + TO_PULL)));
            [(AlarmKind::CheckDue, duty.from)].into_iter().chain(past).collect()
        }
        (Act::MendFire, _) => vec![(AlarmKind::FireDue, duty.from + fire::READ_AGAIN)],
        (Act::HurryUp | Act::PutAway | Act::Chill | Act::Discard, Why::Limit(clock)) => {
            let kind = match clock.kind {
                ClockKind::WarmUp | ClockKind::RawOut => AlarmKind::WarmUpLimit,
                _ => AlarmKind::ChillLimit,
            };
            vec![(kind, duty.from)]
        }
        (Act::PutBack, _) => vec![(AlarmKind::PutBackDue, duty.from)],
        (Act::Prove, _) => vec![(AlarmKind::ProofReadingDue, duty.from)],
        (Act::Chore { chore }, _) => vec![(AlarmKind::ChoreDue(*chore), duty.from)],
        (Act::TakeOut, _) => vec![(AlarmKind::ChoreDue(Chore::OutOfFridge), duty.from)],
        (Act::PutOn, _) => vec![(AlarmKind::PutOnDue, duty.from)],
        (Act::KeepHot, _) => vec![(AlarmKind::KeepHotDue, duty.from)],
        (Act::Serve | Act::Pack, _) => vec![(AlarmKind::RestOver, duty.from)],
        _ => Vec::new(),
    }
}

/// Whether a duty stands once for all pieces that it may come to be about. Of others there may be several
/// of one kind, with calls of their own: each is named by the first of its pieces.
fn is_of_all(act: &Act) -> bool {
    matches!(act, Act::Check | Act::MendFire | Act::Chore { .. })
}

/// How often what answers a call was done before: the next time it is another call.
fn occasion(state: &CookState, duty: &Duty, kind: AlarmKind) -> usize {
    let pieces = || state.history.pieces.iter();
    let own = || pieces().filter(|piece| duty.pieces.contains(&piece.id));
    let spells = || own().map(|piece| piece.spells.len()).max().unwrap_or(0);
    match kind {
        AlarmKind::CheckDue | AlarmKind::LikelyPastTarget => {
            state.rounds.len() + pieces().map(|piece| piece.pokes().count()).sum::<usize>()
        }
        AlarmKind::FireDue => state.history.pit.readings.len(),
        AlarmKind::ProofReadingDue => {
            // The first of several pieces to be read leaves the call as it is; a second try is another.
            let tried = |piece: &PieceHistory| {
                piece.pokes().filter(|reading| Some(reading.at) > piece.off()).count()
            };
            100 * spells() + own().map(tried).max().unwrap_or(0)
        }
        AlarmKind::ChoreDue(chore) => {
            state.chores.iter().filter(|(_, done)| *done == chore).count()
        }
        AlarmKind::KeepHotDue => own().map(|piece| piece.pokes().count()).sum(),
        AlarmKind::ChillLimit | AlarmKind::WarmUpLimit => {
            // The limit itself calls again after the warning before it, and the warning of each clock.
            let raw = matches!(duty.why, Why::Limit(clock) if clock.kind == ClockKind::RawOut);
            let call = match (raw, matches!(duty.act, Act::Discard)) {
                (false, false) => 0,
                (false, true) => 1,
                (true, false) => 2,
                (true, true) => 3,
            };
            4 * spells() + call
        }
        AlarmKind::PutBackDue | AlarmKind::PutOnDue | AlarmKind::RestOver => spells(),
    }
}
