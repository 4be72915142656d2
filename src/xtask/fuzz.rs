//! The fuzz targets in `tests/fuzz`, each given a fixed number of inputs. What they find on the way is
//! kept in `target/fuzz/found`, apart from the corpus that the project keeps.

use std::fs;

use anyhow::{Context, Result, bail};

use crate::machine::{Machine, path_with};
use crate::steps::{openly, step};
use crate::tools;

/// The targets, one file each in `tests/fuzz/targets`.
const TARGETS: [&str; 2] = ["import", "fold"];

/// How many inputs each gets unless told otherwise: about a minute's worth.
pub const USUAL_RUNS: u32 = 20_000;

/// The longest input in bytes: some fifty entries.
const LONGEST: u32 = 20_000;

/// One that takes longer than so many seconds hangs: an honest day's log takes milliseconds.
const HANGS: u32 = 60;

/// Gives each target so many inputs, always the same ones for the same code.
pub fn run(machine: &Machine, runs: u32) -> Result<()> {
    let path = path_with(&[tools::cargo_fuzz(machine)?], &machine.path)?;
    let target = machine.root.join("target/fuzz");
    let folder = machine.root.join("tests/fuzz");
    for name in TARGETS {
        let found = target.join("found").join(name);
        fs::create_dir_all(&found).context("cannot make a folder for what is found")?;
        let mut cargo = machine.command("cargo")?;
        cargo
            .env("PATH", &path)
            .env("CARGO_TARGET_DIR", &target)
            // The sanitizer is not offered to stable compilers otherwise.
            .env("RUSTC_BOOTSTRAP", "1")
            .args(["fuzz", "run", "--fuzz-dir"])
            .arg(&folder)
            .arg(name)
            .args([found, folder.join("corpus").join(name)])
            .args(["--", "-seed=1"])
            .arg(format!("-runs={runs}"))
            .arg(format!("-max_len={LONGEST}"))
            .arg(format!("-timeout={HANGS}"))
            .arg(format!("-dict={}", folder.join("words.dict").display()));
        let passed = step(&format!("fuzzing {name}, {runs} inputs"), || openly(&mut cargo))?;
        if !passed {
            bail!("the fuzz target `{name}` failed; the input is in tests/fuzz/artifacts/{name}");
        }
    }
    Ok(())
}
