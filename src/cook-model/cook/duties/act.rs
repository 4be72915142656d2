//! What a duty asks for, and how it is done.

use serde::Serialize;

use super::Duty;
use crate::cook::{Chore, What};
use crate::history::{EntryId, Instrument};
use crate::piece::PieceId;
use crate::safety::SecondPlace;

/// What is to be done. The order is the order of urgency among what is due.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(tag = "do", rename_all = "snake_case")]
pub enum Act {
    /// Say whether a surprising reading is right.
    Answer {
        /// The reading.
        reading: EntryId,
    },
    /// Take off the piece whose reading reached its pull temperature.
    Pull,
    /// In a round: re-seat the leave-in, which is probably not in the coldest spot.
    Reseat,
    /// In a round: read the core of this piece.
    Read,
    /// See to a pit that is off its setting and not coming back, and read it again.
    MendFire,
    /// Get these pieces hot some other way: they warm too slowly to be kept.
    HurryUp,
    /// Put these back in the refrigerator, or on: they have lain raw almost as long as they may.
    PutAway,
    /// Put these in the refrigerator before their time out of it is over.
    Chill,
    /// The peak has passed and no reading proves the piece: it goes back on the pit.
    PutBack,
    /// The reading named is enough, but of one place: try a second one.
    TrySecondPlace {
        /// The reading.
        reading: EntryId,
        /// How it is told.
        told: SecondPlace,
    },
    /// Open the lid and read these pieces, one after another.
    Check,
    /// Read resting pieces near their peak, in two places, to prove them.
    Prove,
    /// Lay loose foil over what has come off.
    Cover,
    /// Read the pit thermometer.
    ReadPit,
    /// A chore around the cook.
    Chore {
        /// Which.
        chore: Chore,
    },
    /// Take these from the refrigerator: those that go on together.
    TakeOut,
    /// Put the pieces on.
    PutOn,
    /// Throw these away: a limit ran out.
    Discard,
    /// Keep these hot until people eat, and read one of them again.
    KeepHot,
    /// Serve them.
    Serve,
    /// Portion and bag them.
    Pack,
    /// Tell what is to be cooked.
    AddPieces,
}

/// How a duty is done.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "by", rename_all = "snake_case")]
pub enum Doing {
    /// These entries are written with one tap.
    Write {
        /// The entries.
        entries: Vec<What>,
    },
    /// A core temperature is typed, once for each piece.
    TypeCore {
        /// The pieces, in order.
        pieces: Vec<PieceId>,
        /// With which thermometer.
        instrument: Instrument,
    },
    /// A pit temperature is typed.
    TypePit,
    /// The pieces are typed in.
    TypePieces,
}

impl Duty {
    /// How it is done; where there is more than one way, the usual one first.
    pub fn doing(&self) -> Vec<Doing> {
        let each = |what: fn(PieceId) -> What| {
            let entries = self.pieces.iter().copied().map(what).collect();
            vec![Doing::Write { entries }]
        };
        let write = |what: What| vec![Doing::Write { entries: vec![what] }];
        let read =
            Doing::TypeCore { pieces: self.pieces.clone(), instrument: Instrument::InstantRead };
        match &self.act {
            Act::Answer { reading } => vec![
                Doing::Write { entries: vec![What::ReadingVouched { reading: *reading }] },
                Doing::Write { entries: vec![What::Undone { entry: *reading }] },
            ],
            Act::Pull => each(|piece| What::Pulled { piece }),
            Act::Reseat => each(|piece| What::LeaveInSeated { piece }),
            Act::Read => {
                let skip = self.pieces.iter().map(|piece| What::PieceSkipped { piece: *piece });
                vec![read, Doing::Write { entries: skip.collect() }]
            }
            Act::MendFire | Act::ReadPit => vec![Doing::TypePit],
            Act::PutAway => write(What::BackInFridge { pieces: self.pieces.clone() }),
            Act::TakeOut => write(What::TakenOut { pieces: self.pieces.clone() }),
            Act::PutBack | Act::PutOn => each(|piece| What::PutOn { piece }),
            Act::TrySecondPlace { told: SecondPlace::Figure, .. } => vec![read],
            Act::TrySecondPlace { reading, told: SecondPlace::NoLower } => vec![
                Doing::Write { entries: vec![What::SecondPlaceTried { reading: *reading }] },
                read,
            ],
            Act::Check => write(What::RoundBegan { pieces: self.pieces.clone() }),
            Act::Prove | Act::KeepHot | Act::HurryUp => vec![read],
            Act::Cover => each(|piece| What::Covered { piece }),
            Act::Chore { chore } => write(What::ChoreDone { chore: *chore }),
            Act::Chill | Act::Serve | Act::Pack => each(|piece| What::Packed { piece }),
            Act::Discard => each(|piece| What::Discarded { piece }),
            Act::AddPieces => vec![Doing::TypePieces],
        }
    }
}
