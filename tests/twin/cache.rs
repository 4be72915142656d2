//! Records kept in a file, so that a study need not simulate again what has not changed.

use std::fs;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use crate::cooks;
use crate::cores;
use crate::record::Record;

#[derive(Serialize, Deserialize)]
struct Stored {
    /// A small cook's record in full: if the simulator gives another, the file is out of date.
    sample: String,
    records: Vec<Record>,
}

/// The records of `count` seeds from `first` on, from the file if it holds them, else simulated (a
/// minute for 300) and stored there.
pub fn records(first: u64, count: u64, directory: &Path) -> Vec<Record> {
    let path = directory.join(format!("records-{first}.json"));
    let sample = sample();
    if let Some(records) = read(&path, &sample).filter(|records| records.len() as u64 >= count) {
        return records.into_iter().take(count as usize).collect();
    }
    let seeds: Vec<u64> = (first..first + count).collect();
    let records = cores::each(&seeds, |seed| Record::run(&cooks::draw(*seed)));
    let stored = Stored { sample, records };
    // Without the file the next study is slower, no more.
    let _ = fs::create_dir_all(directory).and_then(|()| {
        let text = serde_json::to_vec(&stored).map_err(std::io::Error::other)?;
        fs::write(&path, text)
    });
    stored.records
}

/// Where records are kept: the build directory.
pub fn directory() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../target/twin")
}

fn sample() -> String {
    let record = Record::run(&cooks::draw_with(u64::MAX, 2));
    format!("{:?} {record:?}", cooks::draw(0))
}

fn read(path: &Path, sample: &str) -> Option<Vec<Record>> {
    let stored: Stored = serde_json::from_slice(&fs::read(path).ok()?).ok()?;
    (stored.sample == sample).then_some(stored.records)
}
