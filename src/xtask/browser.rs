//! What the browser tests need besides the site: Node.js, their npm packages, and a Chromium.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use crate::debian;
use crate::fingerprint::of_bytes;
use crate::machine::Machine;
use crate::steps::{quietly, step};

/// The oldest Node.js whose test runner has what we use.
const NODE: u32 = 20;

/// Names a Chromium goes by on PATH, and its place on macOS.
const NAMES: [&str; 3] = ["chromium", "chromium-browser", "google-chrome"];
const MACOS: [&str; 2] = [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/// A `node` ready to run files of the browser tests.
pub fn node(machine: &Machine) -> Result<Command> {
    node_is_new_enough(machine)?;
    packages(machine)?;
    let chromium = chromium(machine)?;
    println!("    browser: {}", chromium.display());
    let mut node = machine.command("node")?;
    node.current_dir(folder(machine)).env("PULL_ORDER_CHROMIUM", chromium);
    Ok(node)
}

/// The browser tests' folder.
pub fn folder(machine: &Machine) -> PathBuf {
    machine.root.join("tests/browser")
}

fn node_is_new_enough(machine: &Machine) -> Result<()> {
    let Some(version) = machine.ask("node", &["--version"]) else {
        bail!("the browser tests need Node.js {NODE} or later, and `node` is not on PATH");
    };
    let version = version.trim();
    let major = version.trim_start_matches('v').split('.').next().and_then(|n| n.parse().ok());
    if major.is_none_or(|major: u32| major < NODE) {
        bail!("the browser tests need Node.js {NODE} or later; this is {version}");
    }
    Ok(())
}

/// Installs the packages of the lock file, unless exactly these are there.
fn packages(machine: &Machine) -> Result<()> {
    let folder = folder(machine);
    let lock = fs::read(folder.join("package-lock.json")).context("no package-lock.json")?;
    let (note, sum) = (folder.join("node_modules/.installed-from"), of_bytes(&lock));
    if fs::read_to_string(&note).is_ok_and(|noted| noted == sum) {
        return Ok(());
    }
    step("installing the browser tests' npm packages", || {
        let mut npm = machine.command("npm").context("the browser tests need npm")?;
        npm.current_dir(&folder).args(["ci", "--no-audit", "--no-fund", "--ignore-scripts"]);
        quietly(&mut npm, &machine.log("npm"))?;
        fs::create_dir_all(folder.join("node_modules"))?;
        Ok(fs::write(note, sum)?)
    })
}

fn chromium(machine: &Machine) -> Result<PathBuf> {
    if let Some(file) = env::var_os("PULL_ORDER_CHROMIUM").filter(|file| !file.is_empty()) {
        return Ok(file.into());
    }
    let found = || NAMES.iter().find_map(|name| machine.find(name));
    let on_macos = || MACOS.iter().map(Path::new).find(|file| file.exists());
    if let Some(file) = found().or_else(|| on_macos().map(Path::to_owned)) {
        return Ok(file);
    }
    debian::install(machine, &["chromium"])
        .context("the browser tests need a Chromium; PULL_ORDER_CHROMIUM can name one")?;
    found().context("Debian's chromium is not on PATH")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::machine::stand_in;

    #[test]
    fn an_old_or_missing_node_is_told() {
        let folder = tempfile::tempdir().unwrap();
        let told = node(&stand_in::machine(folder.path(), &[])).unwrap_err();
        assert!(told.to_string().contains("not on PATH"));
        let old = stand_in::machine(folder.path(), &[("node", "echo v18.20.4")]);
        assert!(node(&old).unwrap_err().to_string().contains("this is v18.20.4"));
    }

    #[test]
    fn packages_are_installed_once_for_each_lock_file() {
        let folder = tempfile::tempdir().unwrap();
        let npm = "echo \"$@\" >> ../../asked";
        let machine = stand_in::machine(folder.path(), &[("npm", npm)]);
        let lock = folder.path().join("tests/browser/package-lock.json");
        fs::create_dir_all(lock.parent().unwrap()).unwrap();
        for text in ["{}", "{}", "{ }"] {
            fs::write(&lock, text).unwrap();
            packages(&machine).unwrap();
        }
        assert_eq!(stand_in::read(folder.path(), "asked").lines().count(), 2);
    }
}
