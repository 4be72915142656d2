//! A log as one file: for keeping, for another phone, for analysis outside the app.
//!
//! The file is JSON text in UTF-8:
//!
//! ```json
//! {
//!   "format": "pull-order cook",
//!   "version": 1,
//!   "entries": [{ "v": 1, "id": {}, "happened": "...", "typed": "...", "what": {} }],
//!   "set_aside": [{ "text": "...", "why": "..." }]
//! }
//! ```
//!
//! `entries` holds every entry of the log in the order of the ids, each as it is stored (see
//! [`Entry`](crate::log::Entry)); `set_aside` holds stored texts that could not be read, so that not
//! even these are lost. A reader ignores fields it does not know.

use serde::{Deserialize, Serialize};
use serde_json::Value;
use thiserror::Error;

use crate::log::{Event, Log, SetAside};

/// The version of the file's form that this crate writes, and the highest it reads.
pub const FILE_VERSION: u32 = 1;
/// The longest file read, bytes. A long cook is some 100 kB.
pub const LONGEST: usize = 8 << 20;
/// The most entries read from one file.
pub const MOST_ENTRIES: usize = 20_000;

/// Why a file was not taken in.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum ImportProblem {
    /// Longer than [`LONGEST`].
    #[error("the file is too long; up to 8 MB is accepted")]
    TooLong,
    /// Not JSON, or without what every such file has. Holds the reader's own words.
    #[error("this is no such file saved by this app ({0})")]
    NotOurs(String),
    /// Written by a later version.
    #[error("a later version of the app wrote this file (form {0}); update the app to read it")]
    Later(u32),
    /// More than [`MOST_ENTRIES`].
    #[error("the file has too many entries; up to 20,000 are accepted")]
    TooMany,
}

#[derive(Serialize)]
struct Out<'a> {
    format: &'a str,
    version: u32,
    entries: Vec<Value>,
    set_aside: &'a [SetAside],
}

#[derive(Deserialize)]
struct In {
    format: String,
    version: u32,
    entries: Vec<Value>,
    #[serde(default)]
    set_aside: Vec<SetAside>,
}

/// The file's text; `format` says what it is a log of.
pub fn export<E: Event>(format: &str, log: &Log<E>) -> String {
    let stored = log.entries().iter().filter_map(|entry| serde_json::to_string(entry).ok());
    write(format, stored.collect(), log.set_aside())
}

fn write(format: &str, stored: Vec<String>, set_aside: &[SetAside]) -> String {
    let entries = stored.iter().filter_map(|text| serde_json::from_str(text).ok()).collect();
    let out = Out { format, version: FILE_VERSION, entries, set_aside };
    // Nothing in it can fail to be written: it has no maps with odd keys and no own writers.
    serde_json::to_string_pretty(&out).unwrap_or_default()
}

/// Reads a file's text. Entries that cannot be read are set aside, as from storage; those set aside
/// when the file was written are tried again.
///
/// # Errors
/// [`ImportProblem`] says why the whole file was refused.
pub fn import<E: Event>(format: &str, text: &str) -> Result<Log<E>, ImportProblem> {
    Ok(Log::from_stored(stored_in(format, text)?.iter().map(String::as_str)))
}

/// The stored texts that a file holds.
fn stored_in(format: &str, text: &str) -> Result<Vec<String>, ImportProblem> {
    if text.len() > LONGEST {
        return Err(ImportProblem::TooLong);
    }
    let not_ours = |error: serde_json::Error| ImportProblem::NotOurs(error.to_string());
    let head: Value = serde_json::from_str(text).map_err(not_ours)?;
    if let Some(version) = head.get("version").and_then(Value::as_u64) {
        let version = u32::try_from(version).unwrap_or(u32::MAX);
        if head.get("format").and_then(Value::as_str) == Some(format) && version > FILE_VERSION {
            return Err(ImportProblem::Later(version));
        }
    }
    let file: In = serde_json::from_value(head).map_err(not_ours)?;
    if file.format != format || file.version == 0 {
        return Err(ImportProblem::NotOurs(format!("its format is {:?}", file.format)));
    }
    if file.entries.len() + file.set_aside.len() > MOST_ENTRIES {
        return Err(ImportProblem::TooMany);
    }
    let entries = file.entries.iter().map(Value::to_string);
    Ok(entries.chain(file.set_aside.into_iter().map(|aside| aside.text)).collect())
}
