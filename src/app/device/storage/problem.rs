use indexed_db_futures::error::{DomException, Error, OpenDbError, UnexpectedDataError};
use thiserror::Error as ThisError;

/// Why an entry could not be stored, or the stored ones not be read.
#[derive(Clone, Debug, PartialEq, Eq, ThisError)]
#[error("{what}{}", kept_text(*.kept))]
pub struct StorageProblem {
    /// What is wrong.
    pub what: Trouble,
    /// Whether the entry at least went into the second copy, from which it is put back later.
    pub kept: bool,
}

/// What is wrong with the browser's storage.
#[derive(Clone, Debug, PartialEq, Eq, ThisError)]
#[non_exhaustive]
pub enum Trouble {
    /// The browser gives this page none.
    #[error("This browser stores nothing for this page (a private window, or storage is off)")]
    Denied,
    /// There is no room left.
    #[error("The phone has no room left to store this")]
    Full,
    /// Another window is in the way, or the phone is too busy to answer.
    #[error("The storage does not answer; close other windows of Pull Order")]
    Busy,
    /// Another window runs a newer version that has changed the storage.
    #[error("A newer version of Pull Order is open in another window; close this one")]
    Replaced,
    /// Two different entries were written under one id.
    #[error("Another window stored something else in this place")]
    Taken,
    /// The browser failed in another way, which it told in these words.
    #[error("The storage failed: {0}")]
    Failed(String),
}

fn kept_text(kept: bool) -> &'static str {
    if kept {
        ". It is kept in the browser's small store for now; export the cook to be sure."
    } else {
        ". The cook goes on, but export it before you close the page, or it is lost."
    }
}

impl From<Trouble> for StorageProblem {
    fn from(what: Trouble) -> Self {
        Self { what, kept: false }
    }
}

impl From<Error> for Trouble {
    fn from(error: Error) -> Self {
        match error {
            // The browser ends a transaction by itself only where it cannot write it.
            Error::MissingData(UnexpectedDataError::TransactionAborted) => Self::Full,
            Error::DomException(DomException::ConstraintError(_)) => Self::Taken,
            Error::DomException(DomException::Other(exception)) => match &*exception.name() {
                "QuotaExceededError" => Self::Full,
                "SecurityError" | "NotAllowedError" => Self::Denied,
                _ => Self::Failed(exception.message()),
            },
            other => Self::Failed(other.to_string()),
        }
    }
}

impl From<OpenDbError> for Trouble {
    fn from(error: OpenDbError) -> Self {
        match error {
            OpenDbError::UnsupportedEnvironment | OpenDbError::NullFactory => Self::Denied,
            OpenDbError::Base(error) => match Self::from(error) {
                // A store that cannot be opened at all is one the browser does not give.
                Self::Failed(message) if message.is_empty() => Self::Denied,
                trouble => trouble,
            },
            OpenDbError::VersionZero => Self::Failed(error.to_string()),
        }
    }
}
