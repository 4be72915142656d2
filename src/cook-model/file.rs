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
//! [`Entry`]); `set_aside` holds stored texts that could not be read, so that not
//! even these are lost. A reader ignores fields it does not know.

use serde_json::Value;
use thiserror::Error;

use crate::log::{Entry, Event, Log, SetAside};

/// The version of the file's form that this crate writes, and the highest it reads.
const FILE_VERSION: u64 = 1;
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
    Later(u64),
    /// More than [`MOST_ENTRIES`].
    #[error("the file has too many entries; up to 20,000 are accepted")]
    TooMany,
}

/// The file's text; `format` says what it is a log of.
pub fn export<E: Event>(format: &str, log: &Log<E>) -> String {
    let stored = log.entries().iter().filter_map(Entry::stored);
    write(format, &stored.collect::<Vec<_>>(), log.set_aside())
}

/// Written by hand, an entry a line: what is stored is JSON already.
fn write(format: &str, stored: &[String], set_aside: &[SetAside]) -> String {
    let entries = stored.join(",\n");
    // Nothing in it can fail to be written: it holds texts alone.
    let set_aside = serde_json::to_string(set_aside).unwrap_or_default();
    let head = format!("\"format\":\"{format}\",\"version\":{FILE_VERSION}");
    format!("{{{head},\"entries\":[\n{entries}\n],\"set_aside\":{set_aside}}}\n")
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
    let head: Value =
        serde_json::from_str(text).map_err(|error| ImportProblem::NotOurs(error.to_string()))?;
    let lacks = |what: &str| ImportProblem::NotOurs(format!("it has no {what}"));
    if head.get("format").and_then(Value::as_str) != Some(format) {
        return Err(lacks("such format"));
    }
    match head.get("version").and_then(Value::as_u64) {
        None | Some(0) => return Err(lacks("version")),
        Some(later) if later > FILE_VERSION => return Err(ImportProblem::Later(later)),
        Some(_) => {}
    }
    let rows = |name: &str| head.get(name).and_then(Value::as_array);
    let entries = rows("entries").ok_or_else(|| lacks("entries"))?;
    let set_aside = rows("set_aside").map(Vec::as_slice).unwrap_or_default();
    if entries.len() + set_aside.len() > MOST_ENTRIES {
        return Err(ImportProblem::TooMany);
    }
    let of_aside = |aside: &Value| match aside.get("text").and_then(Value::as_str) {
        Some(text) => text.to_owned(),
        None => aside.to_string(),
    };
    Ok(entries.iter().map(Value::to_string).chain(set_aside.iter().map(of_aside)).collect())
}
