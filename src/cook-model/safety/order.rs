//! The order of two entries and the least time between them, where a clock may have jumped.

use crate::history::{DeviceId, EntryId, History};
use crate::quantity::{Moment, Span};

/// A moment and the entry that tells of it.
pub(super) type Told = (Moment, EntryId);

/// How long after `first` the other was, at the least; none where it was before it.
///
/// As long as no clock jumped between the two entries, their times say so. Across a jump only the
/// order of writing holds, and only the time that a clock showed before the jump and after it.
pub(super) fn waited(history: &History, first: Told, then: Told) -> Option<Span> {
    let (low, high) = if first.1 <= then.1 { (first, then) } else { (then, first) };
    let mut jumps = history
        .clock_jumps
        .iter()
        .filter(|jump| {
            let device = jump.entry.device;
            let between = low.1 < jump.entry && jump.entry <= high.1;
            between && (device == low.1.device || device == high.1.device)
        })
        .peekable();
    if jumps.peek().is_none() {
        return (then >= first).then(|| then.0 - first.0);
    }
    // What two phones showed says nothing of the time between.
    let between = |from: (DeviceId, Moment), to: (DeviceId, Moment)| {
        if from.0 == to.0 { (to.1 - from.1).max(Span::zero()) } else { Span::zero() }
    };
    let begin = (Span::zero(), (low.1.device, low.0));
    let (until_last, from) = jumps.fold(begin, |(sum, from), jump| {
        let device = jump.entry.device;
        (sum + between(from, (device, jump.before)), (device, jump.after))
    });
    (first.1 <= then.1).then(|| until_last + between(from, (high.1.device, high.0)))
}
