//! Correcting an entry after it was written: its value, its time, its piece. In the log that is an
//! undoing of the old one and another one in its place, written by one tap; and what was forgotten is
//! told afterwards, at the time at which it happened.

use core::ops::RangeInclusive;
use std::collections::BTreeSet;

use super::{Entry, EntryId, Log, Problem, What, fold, limits};
use crate::log::Event;
use crate::piece::PieceId;
use crate::quantity::{Moment, Temperature};

/// What is to be different about an entry; what is left out stays.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Mending {
    /// The temperature read or set.
    pub temperature: Option<Temperature>,
    /// When it happened.
    pub at: Option<Moment>,
    /// Which piece it was about.
    pub piece: Option<PieceId>,
}

/// What is to be written, and what else comes of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Mended {
    /// What happened, each at its own moment, to be written by one tap. Empty if nothing differs.
    pub happened: Vec<(Moment, What)>,
    /// Entries that count now and then no longer make sense.
    pub lost: Vec<EntryId>,
}

impl What {
    /// The temperature that can be corrected, if it has one, and what is accepted for it.
    pub fn temperature(&self) -> Option<(Temperature, RangeInclusive<Temperature>)> {
        match self {
            Self::CoreRead { temperature, .. } => Some((*temperature, limits::CORE)),
            Self::PitRead { temperature } => Some((*temperature, limits::PIT)),
            Self::PitTargetSet { target } => Some((*target, limits::PIT_TARGET)),
            Self::PullTargetSet { target: Some(target), .. } => {
                Some((*target, limits::PULL_TARGET))
            }
            Self::AmbientSet { ambient } => Some((*ambient, limits::AMBIENT)),
            _ => None,
        }
    }

    /// Whether it can be of another piece than was told. A piece's facts are its own.
    pub fn can_change_piece(&self) -> bool {
        let own = matches!(self, Self::PieceSetOut { .. } | Self::PieceTakenAway { .. });
        self.piece().is_some() && !own
    }

    /// Whether it can be corrected at all.
    pub fn can_be_mended(&self) -> bool {
        self.undoes().is_none() && !self.is_noted_unasked()
    }

    fn mend(&mut self, mending: &Mending) {
        if let Some(to) = mending.temperature {
            match self {
                Self::CoreRead { temperature: it, .. }
                | Self::PitRead { temperature: it }
                | Self::PitTargetSet { target: it }
                | Self::PullTargetSet { target: Some(it), .. }
                | Self::AmbientSet { ambient: it } => *it = to,
                _ => {}
            }
        }
        if let Some(to) = mending.piece {
            match self {
                Self::PullTargetSet { piece: Some(it), .. }
                | Self::TonightSet { piece: it, .. }
                | Self::PutOn { piece: it }
                | Self::PieceSkipped { piece: it }
                | Self::Discarded { piece: it }
                | Self::CoreRead { piece: it, .. }
                | Self::LeaveInSeated { piece: it }
                | Self::Pulled { piece: it }
                | Self::Covered { piece: it }
                | Self::Packed { piece: it } => *it = to,
                _ => {}
            }
        }
    }
}

/// What corrects an entry, told at `now`.
///
/// # Errors
/// Why the entry would make no sense so: then it is better left as it is.
pub fn mend(log: &Log, id: EntryId, mending: &Mending, now: Moment) -> Result<Mended, Problem> {
    let old = log.entries().iter().find(|entry| entry.id == id).ok_or(Problem::UnknownReading)?;
    let at = mending.at.unwrap_or(old.happened);
    let mut what = old.what.clone();
    what.mend(mending);
    if what == old.what && at == old.happened {
        return Ok(Mended { happened: Vec::new(), lost: Vec::new() });
    }
    keep_second_place(&mut what, old, log);
    let undoing = (!log.undone_by().contains_key(&id)).then_some((now, What::undoing(id)));
    told(log, undoing.into_iter().chain([(at, what)]).collect(), now)
}

/// What tells of something that was forgotten, and happened earlier.
///
/// # Errors
/// Why it would make no sense so.
pub fn tell_late(log: &Log, at: Moment, what: What, now: Moment) -> Result<Mended, Problem> {
    told(log, vec![(at, what)], now)
}

/// A second place tried after a reading is told by an entry of its own, which names the reading. Where
/// the temperature stays the same, it is still the lowest of two.
fn keep_second_place(what: &mut What, old: &Entry, log: &Log) {
    let (What::CoreRead { temperature, places, .. }, Some((before, _))) =
        (what, old.what.temperature())
    else {
        return;
    };
    let state = fold(log);
    let mut readings = state.history.pieces.iter().flat_map(|piece| &piece.readings);
    let known = readings.find(|reading| reading.entry == old.id).map(|reading| reading.places);
    if *temperature == before {
        *places = known.unwrap_or(*places).max(*places);
    }
}

/// Tries it on a copy of the log.
fn told(log: &Log, happened: Vec<(Moment, What)>, now: Moment) -> Result<Mended, Problem> {
    if happened.iter().any(|(at, _)| *at > now) {
        return Err(Problem::InTheFuture);
    }
    let happened = set_out_before(log, happened);
    let ignored = |log: &Log| fold(log).ignored;
    let before: BTreeSet<EntryId> = ignored(log).iter().map(|one| one.entry).collect();
    let known: BTreeSet<EntryId> = log.entries().iter().map(|entry| entry.id).collect();
    let mut grown = log.clone();
    for (at, what) in &happened {
        let writer = grown.entries().last().map_or(super::DeviceId(0), |last| last.id.device);
        grown.insert(grown.next(writer, *at, now, what.clone()));
    }
    let after = ignored(&grown);
    if let Some(new) = after.iter().find(|one| !known.contains(&one.entry)) {
        return Err(new.why);
    }
    let lost = after.iter().map(|one| one.entry).filter(|id| !before.contains(id));
    Ok(Mended { lost: lost.collect(), happened })
}

/// A piece that was typed in after it went on was there all the same: it is set out again before the
/// first thing that happened to it.
fn set_out_before(log: &Log, happened: Vec<(Moment, What)>) -> Vec<(Moment, What)> {
    let standing = log.standing();
    let set_out_late = |at: Moment, piece: PieceId| {
        let is_its = |entry: &&&Entry| matches!(entry.what, What::PieceSetOut { piece: of, .. } if of == piece);
        let first = standing.iter().find(is_its)?;
        (first.happened > at).then(|| (at, first.what.clone()))
    };
    let mut with_set_out = Vec::with_capacity(happened.len());
    for (at, what) in happened {
        with_set_out.extend(what.piece().and_then(|piece| set_out_late(at, piece)));
        with_set_out.push((at, what));
    }
    with_set_out
}
