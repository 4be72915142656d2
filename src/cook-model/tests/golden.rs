//! The stored form of every kind of entry, as people's phones hold it. A line here may never be
//! changed, only added to: what was written once must be read for ever, and mean the same.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use std::collections::BTreeSet;

use cook_model::cook::{Log, What};
use serde_json::Value;

const VERSION_1: &str = include_str!("golden/entries_v1.jsonl");

#[test]
fn every_stored_entry_is_read_and_written_as_it_was() {
    let log = Log::from_stored(VERSION_1.lines());
    assert_eq!(log.set_aside(), []);
    let written: Vec<String> =
        log.entries().iter().map(|entry| serde_json::to_string(entry).unwrap()).collect();
    for (line, again) in VERSION_1.lines().zip(&written) {
        assert_eq!(line, again);
    }
    assert_eq!(written.len(), VERSION_1.lines().count());
}

#[test]
fn there_is_a_stored_entry_of_every_kind() {
    let held: BTreeSet<String> = VERSION_1
        .lines()
        .map(|line| serde_json::from_str::<Value>(line).unwrap())
        .map(|entry| entry["what"]["kind"].as_str().unwrap().to_owned())
        .collect();
    // The reader itself names every kind that it knows when it meets one that it does not.
    let complaint = serde_json::from_str::<What>(r#"{"kind":"?"}"#).unwrap_err().to_string();
    let known: BTreeSet<String> =
        complaint.split('`').skip(3).step_by(2).map(str::to_owned).collect();
    assert!(known.len() > 20, "{complaint}");
    assert_eq!(held, known);
}
