//! The build tools: Trunk, wasm-bindgen and wasm-opt, each built once by the registry's ordinary
//! client into a folder named by its version. A folder that is there is complete: it gets its name
//! only when the install has ended, so being cut off does no harm.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};

use crate::machine::Machine;
use crate::steps::{quietly, step};
use crate::versions;

/// Where each tool's programs are, for PATH.
pub fn cargo_tools(machine: &Machine) -> Result<Vec<PathBuf>> {
    let lock = fs::read_to_string(machine.root.join("Cargo.lock")).context("no Cargo.lock")?;
    let bindgen = versions::wasm_bindgen(&lock)?;
    Ok(vec![
        by_cargo(machine, "wasm-bindgen-cli", &bindgen, "wasm-bindgen")?,
        by_cargo(machine, "trunk", versions::TRUNK, "trunk")?,
    ])
}

/// cargo-fuzz, for the fuzz targets only.
pub fn cargo_fuzz(machine: &Machine) -> Result<PathBuf> {
    by_cargo(machine, "cargo-fuzz", versions::CARGO_FUZZ, "cargo-fuzz")
}

/// cargo-mutants, for mutation testing only.
pub fn cargo_mutants(machine: &Machine) -> Result<PathBuf> {
    by_cargo(machine, "cargo-mutants", versions::CARGO_MUTANTS, "cargo-mutants")
}

/// wasm-opt, from npm's `binaryen`.
pub fn wasm_opt(machine: &Machine) -> Result<PathBuf> {
    let name = format!("binaryen-{}", versions::BINARYEN);
    let folder = installed(machine, &name, |folder| {
        let package = format!("binaryen@{}", versions::BINARYEN);
        let mut npm = machine.command("npm").context("wasm-opt needs Node.js 20 and npm")?;
        npm.current_dir(folder).arg("install").arg("--prefix").arg(folder).args([
            "--no-save",
            "--no-audit",
            "--no-fund",
            "--ignore-scripts",
            &package,
        ]);
        quietly(&mut npm, &machine.log("binaryen"))
    })?;
    Ok(folder.join("node_modules/.bin"))
}

/// Builds `program` of `package` with the cheapest profile: these tools run for a second, and an
/// optimised build of them takes ten times that of a plain one. Their network features (Trunk's
/// downloads, wasm-bindgen's test runner) are left out: nothing here may download a program.
fn by_cargo(machine: &Machine, package: &str, version: &str, program: &str) -> Result<PathBuf> {
    let folder = installed(machine, &format!("{package}-{version}"), |folder| {
        let built = machine.tools.join(format!("building-{package}"));
        let install = |locked: &[&str]| {
            // The app's last step takes minutes on one core: it must not start last.
            let mut cargo = machine.unhurried("cargo")?;
            cargo
                .current_dir(folder)
                .env("CARGO_TARGET_DIR", &built)
                .env("CARGO_PROFILE_DEV_DEBUG", "0")
                .env("CARGO_PROFILE_DEV_STRIP", "debuginfo")
                .env("CARGO_INCREMENTAL", "0")
                .args(["install", package, "--version", &format!("={version}"), "--bin", program])
                .args(["--no-default-features", "--profile", "dev", "--force", "--root"])
                .arg(folder)
                .args(locked);
            quietly(&mut cargo, &machine.log(package))
        };
        // A registry mirror may lack the newest version that the tool's own lock file names.
        install(&["--locked"]).or_else(|_| install(&[]))?;
        fs::remove_dir_all(&built).context("cannot tidy up after the build")
    })?;
    Ok(folder.join("bin"))
}

/// The folder of the tool `name`, filled by `install` if it is not there yet.
fn installed(
    machine: &Machine,
    name: &str,
    install: impl FnOnce(&Path) -> Result<()>,
) -> Result<PathBuf> {
    let finished = machine.tools.join(name);
    if finished.is_dir() {
        return Ok(finished);
    }
    step(&format!("installing {name}"), || {
        let unfinished = machine.tools.join(format!("{name}.unfinished"));
        fs::create_dir_all(&unfinished)
            .with_context(|| format!("cannot make {}", unfinished.display()))?;
        install(&unfinished)?;
        fs::rename(&unfinished, &finished).context("cannot put the tool in its place")
    })
    .with_context(|| format!("{name} could not be installed"))?;
    Ok(finished)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::machine::stand_in;

    const NOTE: &str = "echo \"$@\" >> \"$(dirname \"$0\")/asked\"";

    fn lock(folder: &Path) {
        let text = "[[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.99\"\n";
        fs::write(folder.join("Cargo.lock"), text).unwrap();
    }

    #[test]
    fn each_tool_is_installed_once_at_its_version() {
        let folder = tempfile::tempdir().unwrap();
        lock(folder.path());
        let cargo = format!("{NOTE}; mkdir -p \"$CARGO_TARGET_DIR\"");
        let machine = stand_in::machine(folder.path(), &[("cargo", &cargo), ("npm", NOTE)]);
        for _ in 0..2 {
            let folders = cargo_tools(&machine).unwrap();
            assert!(folders[0].ends_with("wasm-bindgen-cli-0.2.99/bin"), "{folders:?}");
            assert!(folders[1].ends_with(format!("trunk-{}/bin", versions::TRUNK)));
            wasm_opt(&machine).unwrap();
        }
        let asked = stand_in::read(folder.path(), "asked");
        assert_eq!(asked.lines().count(), 3, "{asked}");
        assert!(asked.contains("install wasm-bindgen-cli --version =0.2.99 "));
        assert!(asked.contains(&format!("install trunk --version ={} ", versions::TRUNK)));
        assert!(asked.contains(&format!("binaryen@{}", versions::BINARYEN)));
    }

    #[test]
    fn an_install_cut_off_is_taken_up_again() {
        let folder = tempfile::tempdir().unwrap();
        let machine = stand_in::machine(folder.path(), &[("npm", "exit 1")]);
        let told = format!("{:#}", wasm_opt(&machine).unwrap_err());
        assert!(told.starts_with("binaryen-"), "{told}");
        assert_eq!(told.lines().count(), 1);
        let machine = stand_in::machine(folder.path(), &[("npm", NOTE)]);
        assert!(wasm_opt(&machine).is_ok());
    }

    #[test]
    fn a_registry_without_a_locked_version_is_asked_for_the_nearest() {
        let folder = tempfile::tempdir().unwrap();
        lock(folder.path());
        let cargo = format!(
            "{NOTE}; case \"$*\" in *--locked*) exit 1;; esac; mkdir -p \"$CARGO_TARGET_DIR\""
        );
        let machine = stand_in::machine(folder.path(), &[("cargo", &cargo)]);
        assert!(cargo_tools(&machine).is_ok());
        assert_eq!(stand_in::read(folder.path(), "asked").lines().count(), 4);
    }

    #[test]
    fn without_npm_the_remedy_is_told() {
        let folder = tempfile::tempdir().unwrap();
        let told = wasm_opt(&stand_in::machine(folder.path(), &[])).unwrap_err();
        assert!(format!("{told:#}").contains("Node.js 20"));
    }
}
