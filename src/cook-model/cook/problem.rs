use thiserror::Error;

use crate::history::EntryId;

/// Why an entry in the log changed nothing. It stays in the log, and is shown with this reason.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum Problem {
    /// It names a piece that was never set out.
    #[error("it names a piece that is not set out")]
    UnknownPiece,
    /// It needs the piece to have been on the pit by then.
    #[error("the piece was not on the pit yet")]
    NotOnYet,
    /// The piece was on the pit already.
    #[error("the piece was on the pit already")]
    AlreadyOn,
    /// The piece was not on the pit.
    #[error("the piece was off the pit already")]
    AlreadyOff,
    /// The piece had been served or packed.
    #[error("the piece was served or packed already")]
    AlreadyPacked,
    /// It names a reading that is not in the log, or was undone.
    #[error("it names a reading that is not there")]
    UnknownReading,
    /// It came too late, or before the reading it speaks of, to say anything about it.
    #[error("it is too far from the reading it speaks of")]
    TooLate,
    /// Its value is outside what this thing can have.
    #[error("its value is not possible")]
    ImpossibleValue,
    /// It is said to have happened later than it was told.
    #[error("it has not happened yet")]
    InTheFuture,
}

/// An entry and why it changed nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ignored {
    /// Which entry.
    pub entry: EntryId,
    /// Why.
    pub why: Problem,
}
