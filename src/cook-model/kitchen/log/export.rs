//! The kitchen's log as one file ([`mod@crate::file`]): freezer bags outlast a phone.

use super::KitchenLog;
use crate::file::{self, ImportProblem};

/// What the `format` field says.
const FORMAT: &str = "pull-order kitchen";

/// The file's text.
pub fn export(log: &KitchenLog) -> String {
    file::export(FORMAT, log)
}

/// Reads a file's text.
///
/// # Errors
/// [`ImportProblem`] says why the whole file was refused.
pub fn import(text: &str) -> Result<KitchenLog, ImportProblem> {
    file::import(FORMAT, text)
}
