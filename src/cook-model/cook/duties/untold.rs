//! What of an older look's duties is still to be done: a look takes the heat model a moment, and what was
//! told meanwhile must not be asked for again.

use super::{Act, Duty};
use crate::cook::{Entry, EntryId, Log, Seen, What};
use crate::piece::PieceId;

/// Those of the duties of a look that stand beside a log that may have grown since: without what was
/// told, or taken back, meanwhile. What that makes to be done a look at the whole log must say.
pub fn untold(seen: &Seen, duties: Vec<Duty>, log: &Log) -> Vec<Duty> {
    let new = log.entries().get(seen.version..).unwrap_or_default();
    let told: Vec<Told> = new.iter().filter_map(|entry| told(log, entry)).collect();
    let left = |duty| told.iter().try_fold(duty, |duty, told| told.leaves_of(duty));
    duties.into_iter().filter_map(left).collect()
}

/// What an entry is about, as far as duties go.
enum Told<'a> {
    /// These pieces.
    Of(Vec<PieceId>),
    /// The pit, or a chore: something of the whole cook.
    OfAll(&'a What),
    /// The lid is down: nothing is read, and nothing re-seated, any more.
    LidDown,
}

fn told<'a>(log: &'a Log, entry: &'a Entry) -> Option<Told<'a>> {
    let of = |id: &EntryId| {
        let target = log.entries().iter().find(|entry| entry.id == *id)?;
        // Nothing can be about what came after it; so this ends.
        (target.id < entry.id).then(|| told(log, target)).flatten()
    };
    match &entry.what {
        What::RoundEnded => Some(Told::LidDown),
        What::RoundBegan { pieces } | What::TakenOut { pieces } | What::BackInFridge { pieces } => {
            Some(Told::Of(pieces.clone()))
        }
        What::PitRead { .. } | What::ChoreDone { .. } => Some(Told::OfAll(&entry.what)),
        What::SecondPlaceTried { reading: id }
        | What::ReadingVouched { reading: id }
        | What::Undone { entry: id } => of(id),
        what => what.piece().map(|piece| Told::Of(vec![piece])),
    }
}

impl Told<'_> {
    /// What it leaves to do of a duty.
    fn leaves_of(&self, mut duty: Duty) -> Option<Duty> {
        let answers = match self {
            Self::Of(pieces) if pieces.iter().any(|piece| duty.pieces.contains(piece)) => {
                duty.pieces.retain(|piece| !pieces.contains(piece));
                duty.bells.retain(|bell| bell.id.piece.is_none_or(|of| duty.pieces.contains(&of)));
                duty.pieces.is_empty()
            }
            Self::Of(_) => duty.act == Act::AddPieces,
            Self::OfAll(What::ChoreDone { chore }) => duty.act == Act::Chore { chore: *chore },
            Self::OfAll(_) => matches!(duty.act, Act::ReadPit | Act::MendFire),
            Self::LidDown => matches!(duty.act, Act::Read | Act::ReadPit | Act::Reseat),
        };
        (!answers).then_some(duty)
    }
}
