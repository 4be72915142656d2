//! Records kept in a file, so that a study need not simulate again what has not changed.

use std::fs;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use crate::draw::{Setup, draw};
use crate::kinds::KINDS;
use crate::record::Record;

#[derive(Serialize, Deserialize)]
struct Stored {
    /// The first cook in full: if it comes out otherwise now, the file is out of date.
    sample: String,
    records: Vec<Record>,
}

/// The first so many cooks of every world, each with its record; `first` numbers are left out.
pub fn cooks(first: u64, each: u64, directory: &Path) -> Vec<(Setup, Record)> {
    let cooks = (0..KINDS.len()).flat_map(|world| of_world(world, first, each, directory));
    cooks.collect()
}

fn of_world(world: usize, first: u64, each: u64, directory: &Path) -> Vec<(Setup, Record)> {
    let setups: Vec<Setup> = (first..first + each).map(|number| draw(world, number)).collect();
    let Some(begin) = setups.first() else { return Vec::new() };
    let sample = format!("{begin:?} {:?}", Record::play(begin));
    let path = directory.join(format!("world-{world}-{first}.json"));
    let stored = fs::read(&path).ok().and_then(|text| serde_json::from_slice(&text).ok());
    let fits = |stored: &Stored| stored.sample == sample && stored.records.len() >= setups.len();
    let records = match stored.filter(fits) {
        Some(stored) => stored.records,
        None => {
            let records = twin::cores::each(&setups, Record::play);
            let stored = Stored { sample, records };
            // Without the file the next study is slower, no more.
            let _ = fs::create_dir_all(directory).and_then(|()| {
                let text = serde_json::to_vec(&stored).map_err(std::io::Error::other)?;
                fs::write(&path, text)
            });
            stored.records
        }
    };
    setups.into_iter().zip(records).collect()
}

/// Where they are kept: the build directory.
pub fn directory() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../target/worlds")
}
