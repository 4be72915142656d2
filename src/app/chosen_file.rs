//! A file of this app's own that the person chooses: what it holds, or why it cannot be taken in.

use cook_model::file::{ImportProblem, MOST_ENTRIES};

use crate::device::files::{self, FileProblem};
use crate::words::Words;
use crate::{region, say};

/// Lets the person choose a file, and reads it. None where they thought better of it; an error in their
/// own language, `not_ours` where it is none of these.
pub async fn chosen_file<L>(
    read: fn(&str) -> Result<L, ImportProblem>,
    not_ours: Words,
) -> Result<Option<L>, String> {
    let text = match files::choose(".json,application/json").await {
        Ok(None) => return Ok(None),
        Ok(Some(text)) => text,
        Err(FileProblem::TooLong) => return Err(say!("file-too-long")),
        Err(FileProblem::Unreadable) => return Err(say!("file-unreadable")),
    };
    read(&text).map(Some).map_err(|problem| match problem {
        ImportProblem::TooLong => say!("file-too-long"),
        ImportProblem::Later(_) => say!("file-later"),
        ImportProblem::TooMany => say!("file-too-many", most = region::grouped(MOST_ENTRIES)),
        _ => not_ours.get(),
    })
}
