//! Cooks kept as they are done, so that a study that was cut off goes on from there.

use std::hash::{DefaultHasher, Hasher};
use std::path::{Path, PathBuf};
use std::{env, fs, io};

use serde::{Deserialize, Serialize};

use super::{Day, Outcome, cook};
use crate::{cooks, cores};

/// How many pieces the cooks of a study have, in turns: a study cut off has them in the same shares.
const TURNS: [usize; 5] = [4, 12, 20, 12, 4];
/// So many cooks are done before they are kept.
const AT_ONCE: u64 = 10;

/// The cooks of seeds from one on that one and the same program did.
#[derive(Debug, Serialize, Deserialize)]
pub struct Kept {
    /// The sum of that program: another may do them otherwise.
    program: u64,
    /// What it was built from.
    pub commit: String,
    /// Its cooks so far, in the order of their seeds.
    pub cooks: Vec<Outcome>,
}

impl Kept {
    /// What this program kept in a file; nothing yet, with `commit`, if that is not its own.
    ///
    /// # Errors
    /// If the program cannot read itself.
    pub fn open(path: &Path, commit: String) -> io::Result<Self> {
        let mut sum = DefaultHasher::new();
        sum.write(&fs::read(env::current_exe()?)?);
        let program = sum.finish();
        let kept = fs::read(path).ok().and_then(|text| serde_json::from_slice::<Self>(&text).ok());
        let own = kept.filter(|kept| kept.program == program);
        Ok(own.unwrap_or(Self { program, commit, cooks: Vec::new() }))
    }

    /// Does the next few of `count` cooks of seeds from `first` on, and keeps them in the file; false if
    /// all were done.
    ///
    /// # Errors
    /// If the file cannot be written.
    pub fn go_on(&mut self, first: u64, count: u64, path: &Path) -> io::Result<bool> {
        let done = self.cooks.len() as u64;
        let next: Vec<u64> = (done..count.min(done + AT_ONCE)).collect();
        self.cooks.extend(cores::each(&next, |number| one(first, *number)));
        let (text, aside) = (serde_json::to_vec(self)?, path.with_extension("new"));
        fs::create_dir_all(path.parent().unwrap_or(Path::new(".")))?;
        fs::write(&aside, text)?;
        fs::rename(aside, path)?;
        Ok(!next.is_empty())
    }
}

fn one(first: u64, number: u64) -> Outcome {
    let (seed, size) = (first + number, TURNS[number as usize % TURNS.len()]);
    cook(&cooks::draw_with(seed, size), &Day::draw(seed, size))
}

/// Where the cooks of seeds from one on are kept: the build directory.
pub fn file(first: u64) -> PathBuf {
    crate::cache::directory().join(format!("conduct-{first}.json"))
}
