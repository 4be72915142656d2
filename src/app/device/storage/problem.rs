use indexed_db_futures::error::{DomException, Error, OpenDbError, UnexpectedDataError};

/// What is wrong with the browser's storage: why an entry could not be stored, or the stored ones not
/// be read.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Trouble {
    /// The browser gives this page none.
    Denied,
    /// There is no room left.
    Full,
    /// Another window is in the way, or the phone is too busy to answer.
    Busy,
    /// The browser has lost the process that stores, and does not give another one to this page.
    Lost,
    /// Another window runs a newer version that has changed the storage.
    Replaced,
    /// Two different entries were written under one id.
    Taken,
    /// The browser failed in another way, which it told in these words.
    Failed(String),
}

impl Trouble {
    /// Whether nothing at all can be stored as long as it lasts, whatever it is.
    pub fn is_of_all(&self) -> bool {
        matches!(self, Self::Denied | Self::Busy | Self::Lost | Self::Replaced)
    }
}

impl From<Error> for Trouble {
    fn from(error: Error) -> Self {
        match error {
            // The browser ends a transaction by itself only where it cannot write it.
            Error::MissingData(UnexpectedDataError::TransactionAborted)
            | Error::DomException(DomException::AbortError(_)) => Self::Full,
            Error::DomException(DomException::ConstraintError(_)) => Self::Taken,
            Error::DomException(DomException::Other(exception)) => match &*exception.name() {
                "QuotaExceededError" => Self::Full,
                "SecurityError" | "NotAllowedError" => Self::Denied,
                // What the standard leaves for failures of the store itself (Indexed Database API 3.0).
                "UnknownError" => Self::Lost,
                _ => Self::Failed(exception.message()),
            },
            other => Self::Failed(other.to_string()),
        }
    }
}

impl From<OpenDbError> for Trouble {
    fn from(error: OpenDbError) -> Self {
        match error {
            // The last is what the library makes of an opening that the browser refuses at once.
            OpenDbError::UnsupportedEnvironment
            | OpenDbError::NullFactory
            | OpenDbError::VersionZero => Self::Denied,
            OpenDbError::Base(error) => match Self::from(error) {
                // A store that cannot be opened at all is one the browser does not give.
                Self::Failed(message) if message.is_empty() => Self::Denied,
                trouble => trouble,
            },
        }
    }
}
