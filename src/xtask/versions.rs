//! The pinned versions of the tools, in one place. Libraries are pinned by Cargo.lock, the browser
//! tests' packages by tests/browser/package-lock.json.

use anyhow::{Context, Result};

/// Trunk, which calls cargo, wasm-bindgen and wasm-opt and puts the site together (crates.io).
pub const TRUNK: &str = "0.21.14";

/// Binaryen, for its `wasm-opt` (npm).
pub const BINARYEN: &str = "132.0.0";

/// cargo-fuzz, which builds and runs the fuzz targets (crates.io).
pub const CARGO_FUZZ: &str = "0.13.2";

/// cargo-mutants, which changes the rules of safety to see a test fail (crates.io).
pub const CARGO_MUTANTS: &str = "27.1.0";

/// The version of wasm-bindgen in Cargo.lock. The tool writes code for one version of the library
/// only, so it is not pinned a second time here.
pub fn wasm_bindgen(cargo_lock: &str) -> Result<String> {
    locked(cargo_lock, "wasm-bindgen").context("Cargo.lock names no wasm-bindgen")
}

fn locked(cargo_lock: &str, package: &str) -> Option<String> {
    let mut lines = cargo_lock.lines();
    lines.find(|line| *line == format!("name = \"{package}\""))?;
    let version = lines.next()?.strip_prefix("version = \"")?.strip_suffix('"')?;
    Some(version.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    const LOCK: &str = "version = 4\n\n[[package]]\nname = \"wasm-bindgen-futures\"\n\
        version = \"0.4.80\"\n\n[[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\n";

    #[test]
    fn takes_the_package_of_exactly_that_name() {
        assert_eq!(wasm_bindgen(LOCK).unwrap(), "0.2.130");
    }

    #[test]
    fn says_when_the_lock_has_none() {
        assert!(wasm_bindgen("version = 4\n").is_err());
    }

    #[test]
    fn reads_the_projects_own_lock() {
        let lock = include_str!("../../Cargo.lock");
        assert_eq!(wasm_bindgen(lock).unwrap().split('.').count(), 3);
    }
}
