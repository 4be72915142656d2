//! Mutation testing of the rules of safety: each is changed a little, and some test must fail.

use anyhow::{Context, Result, bail};

use crate::machine::{Machine, path_with};
use crate::steps::{openly, step};
use crate::tools;

/// Where a mistake could hurt somebody, below `src/cook-model`.
const FILES: [&str; 13] = [
    "safety/*.rs",
    "cook/state.rs",
    "cook/draft.rs",
    "cook/duties/*.rs",
    "cook/clock.rs",
    "cook/watch.rs",
    "cook/heed.rs",
    "cook/limits.rs",
    "cook/offset.rs",
    "kitchen/chill.rs",
    "kitchen/storage.rs",
    "kitchen/reheat.rs",
    "kitchen/log/*.rs",
];

/// Changes the files, or the one told, in every way the tool knows, one at a time, and runs the tests
/// after each. It takes hours; what survived is listed in `target/mutants/mutants.out/missed.txt`.
pub fn run(machine: &Machine, file: Option<&str>) -> Result<()> {
    let path = path_with(&[tools::cargo_mutants(machine)?], &machine.path)?;
    let output = machine.root.join("target/mutants");
    std::fs::create_dir_all(&output).context("cannot make a folder for what is found")?;
    let mut cargo = machine.unhurried("cargo")?;
    cargo.env("PATH", &path).args(["mutants", "--package", "cook-model", "--jobs", "1"]);
    cargo.args(["--test-package", "cook-model,published", "--baseline", "run"]);
    let files = file.map_or_else(|| FILES.to_vec(), |file| vec![file]);
    for file in files {
        cargo.arg("--file").arg(format!("src/cook-model/{file}"));
    }
    cargo.arg("--output").arg(&output);
    if !step("changing the rules of safety", || openly(&mut cargo))? {
        bail!("some changes were not noticed; tests/mutants.md tells which are known, and why");
    }
    Ok(())
}
