//! Every test in one command, in three layers, with one total at the end.

use std::fs;
use std::io::{BufRead, BufReader};
use std::ops::AddAssign;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::str::FromStr;

use anyhow::{Context, Result, bail};

use crate::machine::Machine;
use crate::steps::{openly, step};
use crate::{advisories, browser, engines, licences, site, size};

/// A layer of tests that can be run by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layer {
    /// Formatting, clippy, the documentation's build, the licences and the known advisories; each
    /// counts as one test.
    Tidy,
    /// The crates' own tests, the published checks and the examples in the documentation.
    Native,
    /// What the built site weighs, which counts as one test, and the site in a real browser.
    Browser,
}

impl FromStr for Layer {
    type Err = anyhow::Error;

    fn from_str(word: &str) -> Result<Self> {
        Ok(match word {
            "tidy" => Self::Tidy,
            "native" => Self::Native,
            "browser" => Self::Browser,
            other => bail!("there is no layer `{other}`; it can be tidy, native or browser"),
        })
    }
}

/// How many tests passed and failed.
#[derive(Debug, Default, Clone, Copy, PartialEq)]
struct Tally {
    passed: u64,
    failed: u64,
}

impl Tally {
    fn of_one(passed: bool) -> Self {
        Self { passed: passed.into(), failed: (!passed).into() }
    }

    /// A runner that failed although no test of its did (it did not compile, say) is one failure.
    fn with_runner(self, succeeded: bool) -> Self {
        if succeeded || self.failed > 0 { self } else { Self { failed: 1, ..self } }
    }
}

impl AddAssign for Tally {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
    }
}

/// Runs all layers, or only one, and prints the total. A failed layer does not stop the next.
pub fn run(machine: &Machine, only: Option<Layer>) -> Result<()> {
    let mut total = Tally::default();
    for layer in [Layer::Tidy, Layer::Native, Layer::Browser] {
        if only.is_none_or(|only| only == layer) {
            let outcome = step(&format!("{layer:?} tests").to_lowercase(), || match layer {
                Layer::Tidy => tidy(machine),
                Layer::Native => native(machine),
                Layer::Browser => in_browser(machine),
            });
            total += outcome.unwrap_or_else(|reason| {
                eprintln!("xtask: {reason:#}");
                Tally::of_one(false)
            });
        }
    }
    println!("{} passed, {} failed", total.passed, total.failed);
    if total.failed > 0 {
        bail!("not every test passed");
    }
    if total.passed == 0 {
        bail!("no test was run");
    }
    Ok(())
}

fn tidy(machine: &Machine) -> Result<Tally> {
    let checks: [&[&str]; 3] = [
        &["fmt", "--all", "--check"],
        &["clippy", "--workspace", "--all-targets", "--locked", "--quiet", "--", "-Dwarnings"],
        &["doc", "--workspace", "--no-deps", "--locked", "--quiet"],
    ];
    let mut tally = Tally::default();
    for arguments in checks {
        let mut cargo = machine.command("cargo")?;
        cargo.args(arguments).env("RUSTDOCFLAGS", "-Dwarnings");
        let passed = openly(&mut cargo)?;
        println!("    cargo {}: {}", arguments[0], if passed { "ok" } else { "FAILED" });
        tally += Tally::of_one(passed);
    }
    let dependencies =
        [("licences", licences::check(machine)), ("advisories", advisories::check(machine))];
    for (what, outcome) in dependencies {
        let told = outcome.as_ref().map_or_else(|reason| format!("{reason:#}"), |()| "ok".into());
        println!("    {what}: {told}");
        tally += Tally::of_one(outcome.is_ok());
    }
    Ok(tally)
}

fn native(machine: &Machine) -> Result<Tally> {
    let mut cargo = machine.command("cargo")?;
    cargo.args(["test", "--workspace", "--locked", "--no-fail-fast"]);
    counted(&mut cargo, from_cargo)
}

fn in_browser(machine: &Machine) -> Result<Tally> {
    site::build(machine)?;
    let light = size::report(&machine.root.join("dist"));
    if let Err(reason) = &light {
        println!("    {reason:#}");
    }
    let mut node = browser::node(machine)?;
    engines::equip(machine, &mut node);
    let tap = machine.log("browser-tests");
    fs::create_dir_all(machine.web_target().join("log"))?;
    node.args(["--test", "--test-concurrency=1", "--test-timeout=600000"])
        .args(["--test-reporter=spec", "--test-reporter-destination=stdout"])
        .arg("--test-reporter=tap")
        .arg(format!("--test-reporter-destination={}", tap.display()));
    let folder = browser::folder(machine);
    let mut files = test_files(&folder)?;
    files.extend(test_files(&folder.join("engines"))?);
    let succeeded = openly(node.args(files))?;
    let report = fs::read_to_string(&tap).context("the browser tests left no report")?;
    let mut tally = Tally::default();
    for line in report.lines() {
        tally += from_node(line);
    }
    let mut all = tally.with_runner(succeeded);
    all += Tally::of_one(light.is_ok());
    Ok(all)
}

/// The files of tests in a folder, by name.
fn test_files(folder: &Path) -> Result<Vec<PathBuf>> {
    let files = fs::read_dir(folder)?.filter_map(|entry| Some(entry.ok()?.path()));
    let mut tests: Vec<_> =
        files.filter(|file| file.to_string_lossy().ends_with(".test.mjs")).collect();
    tests.sort();
    Ok(tests)
}

/// Runs `command`, shows its output as it comes, and adds up what `count` finds in its lines.
fn counted(command: &mut Command, count: fn(&str) -> Tally) -> Result<Tally> {
    let mut child = command.stdout(Stdio::piped()).spawn()?;
    let mut tally = Tally::default();
    for line in BufReader::new(child.stdout.take().context("no output")?).lines() {
        let line = line?;
        tally += count(&line);
        println!("{line}");
    }
    Ok(tally.with_runner(child.wait()?.success()))
}

/// Cargo's test runner ends each crate with "test result: ok. 3 passed; 0 failed; ...".
fn from_cargo(line: &str) -> Tally {
    let Some(numbers) = line.strip_prefix("test result: ") else { return Tally::default() };
    let number = |word: &str| {
        let (before, _) = numbers.split_once(word)?;
        before.trim_end().rsplit(' ').next()?.parse().ok()
    };
    Tally { passed: number("passed").unwrap_or(0), failed: number("failed").unwrap_or(0) }
}

/// Node's test runner ends its TAP report with "# pass 3", "# fail 0" and "# cancelled 0".
fn from_node(line: &str) -> Tally {
    let number = |word: &str| line.strip_prefix(word).and_then(|n| n.trim().parse().ok());
    Tally {
        passed: number("# pass ").unwrap_or(0),
        failed: number("# fail ").or_else(|| number("# cancelled ")).unwrap_or(0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cargo_s_closing_lines_are_counted() {
        let ok = "test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured; finished in 0.1s";
        assert_eq!(from_cargo(ok), Tally { passed: 12, failed: 0 });
        let bad = "test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 measured";
        assert_eq!(from_cargo(bad), Tally { passed: 3, failed: 2 });
        assert_eq!(from_cargo("test a_test_that_passed ... ok"), Tally::default());
    }

    #[test]
    fn node_s_closing_lines_are_counted() {
        let report = "# tests 8\n# suites 1\n# pass 5\n# fail 2\n# cancelled 1\n# skipped 0\n";
        let mut tally = Tally::default();
        for line in report.lines() {
            tally += from_node(line);
        }
        assert_eq!(tally, Tally { passed: 5, failed: 3 });
    }

    #[test]
    fn a_runner_that_fails_without_a_failed_test_is_a_failure() {
        let two = Tally { passed: 2, failed: 0 };
        assert_eq!(two.with_runner(true), two);
        assert_eq!(two.with_runner(false), Tally { passed: 2, failed: 1 });
        let one_failed = Tally { passed: 2, failed: 1 };
        assert_eq!(one_failed.with_runner(false), one_failed);
    }

    #[test]
    fn the_output_of_a_command_is_counted_as_it_comes() {
        let mut command = Command::new("sh");
        command.args(["-c", "echo 'test result: ok. 4 passed; 0 failed;'; exit 1"]);
        assert_eq!(counted(&mut command, from_cargo).unwrap(), Tally { passed: 4, failed: 1 });
    }
}
