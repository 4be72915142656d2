//! Where the wasm32 target comes from: it is there already, or rustup adds it, or a distribution's
//! packages bring a compiler of their own and the standard library's source.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use crate::debian;
use crate::machine::{Machine, path_with};
use crate::steps::{quietly, step};

/// The target the app is built for.
pub const TARGET: &str = "wasm32-unknown-unknown";

/// Debian's compiler for the web, its cargo, the standard library's source, and the linker.
const PACKAGES: [&str; 5] = ["rustc-web", "cargo-web", "rust-web-src", "rust-web-llvm", "lld-22"];

/// Where Debian's packages put their compiler.
const DISTRO_BIN: &str = "/usr/bin";

/// A way to the wasm32 target.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Route {
    /// The compiler on PATH has the target.
    Installed,
    /// `rustup target add`.
    Rustup,
    /// The distribution's packages, which build the standard library from source.
    Distro,
}

impl Route {
    /// In the words of the report.
    pub fn told(self) -> &'static str {
        match self {
            Self::Installed => "the target this machine's Rust already has",
            Self::Rustup => "rustup",
            Self::Distro => "the distribution's packages",
        }
    }

    /// Makes `command`, a cargo or Trunk on the way to the browser, use this route. Only this one
    /// command sees the variables: native builds must not.
    pub fn equip(self, command: &mut Command, machine: &Machine) -> Result<()> {
        command.env("CARGO_TARGET_DIR", machine.web_target());
        if self == Self::Distro {
            // Set by rustup and by the cargo that runs us, for their own compiler.
            for name in ["CARGO", "RUSTC", "RUSTUP_TOOLCHAIN", "LD_LIBRARY_PATH"] {
                command.env_remove(name);
            }
            command
                .env("PATH", path_with(&[PathBuf::from(DISTRO_BIN)], &machine.path)?)
                .env("RUSTC_BOOTSTRAP", "1")
                .env("CARGO_UNSTABLE_BUILD_STD", "std,panic_abort")
                // A phone loads it: its size counts for more than its speed.
                .env("CARGO_UNSTABLE_BUILD_STD_FEATURES", "optimize_for_size");
        }
        Ok(())
    }

    /// The cargo of this route.
    pub fn cargo(self, machine: &Machine) -> Result<Command> {
        let mut command = match self {
            Self::Distro => Command::new(Path::new(DISTRO_BIN).join("cargo")),
            Self::Installed | Self::Rustup => machine.command("cargo")?,
        };
        command.current_dir(&machine.root);
        self.equip(&mut command, machine)?;
        Ok(command)
    }
}

/// Sees to the target, by the first way that works, and says which it is.
pub fn prepare(machine: &Machine) -> Result<Route> {
    let route = choose(machine, &refusal_note(machine), || debian::install(machine, &PACKAGES))?;
    println!("    wasm32: {}", route.told());
    Ok(route)
}

/// The order is: a target already installed; what `PULL_ORDER_TOOLCHAIN` says; rustup; the
/// distribution. `note` remembers that rustup could not, lest every build wait for it again.
fn choose(machine: &Machine, note: &Path, distro: impl Fn() -> Result<()>) -> Result<Route> {
    let wish = machine.wished_toolchain.as_deref();
    if target_installed(machine) {
        return Ok(Route::Installed);
    }
    match wish {
        Some("rustup") => add_by_rustup(machine).map(|()| Route::Rustup),
        Some("distro") => distro().map(|()| Route::Distro),
        Some(other) => {
            bail!("PULL_ORDER_TOOLCHAIN is `{other}`; it can be `rustup` or `distro`, or unset")
        }
        None => {
            let by_rustup = match fs::read_to_string(note) {
                Ok(said) => Err(anyhow::anyhow!(said)),
                Err(_) => add_by_rustup(machine),
            };
            let Err(reason) = by_rustup else { return Ok(Route::Rustup) };
            println!("    {reason:#}; trying the distribution's packages");
            distro().map_err(|also| {
                anyhow::anyhow!("the wasm32 target is missing: {reason:#}; {also:#}")
            })?;
            if let Some(folder) = note.parent() {
                fs::create_dir_all(folder)?;
            }
            fs::write(note, format!("{reason:#}"))?;
            Ok(Route::Distro)
        }
    }
}

fn refusal_note(machine: &Machine) -> PathBuf {
    machine.web_target().join("rustup-could-not")
}

fn target_installed(machine: &Machine) -> bool {
    machine
        .ask("rustc", &["--print", "target-libdir", "--target", TARGET])
        .is_some_and(|folder| Path::new(folder.trim()).is_dir())
}

fn add_by_rustup(machine: &Machine) -> Result<()> {
    if machine.find("rustup").is_none() {
        bail!("rustup is not on PATH");
    }
    step("adding the wasm32 target by rustup", || {
        quietly(machine.command("rustup")?.args(["target", "add", TARGET]), &machine.log("rustup"))
    })
    .context("rustup could not add the wasm32 target")
}

#[cfg(test)]
#[path = "toolchain_tests.rs"]
mod tests;
