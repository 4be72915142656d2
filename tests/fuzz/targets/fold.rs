//! Any lines as stored entries: the fold never fails, does not depend on the order in which they
//! were stored, and every entry either counts, is undone, or is told to change nothing.
#![no_main]

use cook_model::cook::heal::{Stored, heal};
use cook_model::cook::{Log, fold};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let log = Log::from_stored(text.lines());
    let state = fold(&log);
    assert!(state.ignored.len() <= log.entries().len());
    let ids = || log.entries().iter().map(|entry| entry.id);
    assert!(ids().zip(ids().skip(1)).all(|(a, b)| a < b), "ids are unique and in order");

    let backwards = Log::from_entries(log.entries().iter().rev().cloned());
    assert_eq!(format!("{:?}", fold(&backwards)), format!("{state:?}"));

    let stored: Stored = log
        .entries()
        .iter()
        .map(|entry| (entry.id, serde_json::to_string(entry).expect("an entry can be written")))
        .collect();
    let healed = heal(&Stored::new(), &stored);
    let read = Log::from_stored(healed.texts.iter().map(String::as_str));
    assert_eq!(read.entries(), log.entries(), "stored and read back, it is the same");
});
