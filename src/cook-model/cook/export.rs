//! A cook as one file: for keeping, for another phone, for analysis outside the app.
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
//! [`Entry`](super::Entry) and [`What`](super::What)); `set_aside` holds stored texts that could not
//! be read, so that not even these are lost. A reader ignores fields it does not know.

use serde::{Deserialize, Serialize};
use serde_json::Value;
use thiserror::Error;

use super::Log;
use crate::log::SetAside;

/// What the `format` field says.
pub const FORMAT: &str = "pull-order cook";
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
    #[error("this is not a cook saved by this app ({0})")]
    NotACook(String),
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
    entries: &'a [super::Entry],
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

/// The file's text.
pub fn export(log: &Log) -> String {
    let out = Out {
        format: FORMAT,
        version: FILE_VERSION,
        entries: log.entries(),
        set_aside: log.set_aside(),
    };
    // Nothing in a log can fail to be written: it has no maps with odd keys and no own writers.
    serde_json::to_string_pretty(&out).unwrap_or_default()
}

/// Reads a file's text. Entries that cannot be read are set aside, as from storage; those set aside
/// when the file was written are tried again.
///
/// # Errors
/// [`ImportProblem`] says why the whole file was refused.
pub fn import(text: &str) -> Result<Log, ImportProblem> {
    if text.len() > LONGEST {
        return Err(ImportProblem::TooLong);
    }
    let head: Value =
        serde_json::from_str(text).map_err(|error| ImportProblem::NotACook(error.to_string()))?;
    if let Some(version) = head.get("version").and_then(Value::as_u64) {
        let version = u32::try_from(version).unwrap_or(u32::MAX);
        if head.get("format").and_then(Value::as_str) == Some(FORMAT) && version > FILE_VERSION {
            return Err(ImportProblem::Later(version));
        }
    }
    let file: In =
        serde_json::from_value(head).map_err(|error| ImportProblem::NotACook(error.to_string()))?;
    if file.format != FORMAT || file.version == 0 {
        return Err(ImportProblem::NotACook(format!("its format is {:?}", file.format)));
    }
    if file.entries.len() + file.set_aside.len() > MOST_ENTRIES {
        return Err(ImportProblem::TooMany);
    }
    let entries: Vec<String> = file.entries.iter().map(Value::to_string).collect();
    let texts = entries.iter().map(String::as_str);
    Ok(Log::from_stored(texts.chain(file.set_aside.iter().map(|aside| aside.text.as_str()))))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn refuses_what_is_no_cook_and_says_why() {
        let cases = [
            ("", "not a cook"),
            ("{}", "not a cook"),
            ("[1, 2]", "not a cook"),
            (r#"{"format":"other","version":1,"entries":[]}"#, "not a cook"),
            (r#"{"format":"pull-order cook","version":2,"entries":7}"#, "later version"),
        ];
        for (text, words) in cases {
            let problem = import(text).unwrap_err().to_string();
            assert!(problem.contains(words), "{problem} for {text}");
        }
        assert_eq!(import(&" ".repeat(LONGEST + 1)), Err(ImportProblem::TooLong));
        let many = vec!["1"; MOST_ENTRIES + 1].join(",");
        let many = format!(r#"{{"format":"{FORMAT}","version":1,"entries":[{many}]}}"#);
        assert_eq!(import(&many), Err(ImportProblem::TooMany));
    }

    #[test]
    fn keeps_what_it_cannot_read() {
        let text = format!(
            r#"{{"format":"{FORMAT}","version":1,"entries":[{{"v":9}}],"set_aside":[{{"text":"ink","why":"blot"}}]}}"#
        );
        let log = import(&text).unwrap();
        let kept: Vec<&str> = log.set_aside().iter().map(|aside| aside.text.as_str()).collect();
        assert_eq!(kept, [r#"{"v":9}"#, "ink"]);
        assert_eq!(import(&export(&log)).unwrap(), log);
    }
}
