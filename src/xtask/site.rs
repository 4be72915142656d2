//! The finished site in `dist/`: what it needs, Trunk's build, and the finishing touches.

use std::fs;
use std::path::{Path, PathBuf};
use std::thread;

use anyhow::{Context, Result, anyhow};

use crate::machine::{Machine, path_with};
use crate::steps::{quietly, step};
use crate::toolchain::{self, Route};
use crate::{fingerprint, finish, tools};

/// Brings `dist/` up to date. It is replaced in one move, and only by a complete site.
pub fn build(machine: &Machine) -> Result<()> {
    let dist = machine.root.join("dist");
    let note = machine.web_target().join("built-from");
    let sources = fingerprint::sources(&machine.root)?;
    if let Ok(built) = fingerprint::folder(&dist)
        && fs::read_to_string(&note).is_ok_and(|noted| noted == format!("{sources} {built}"))
    {
        println!("    dist/ is up to date");
        return Ok(());
    }
    let (route, tools) = prepare(machine)?;
    let staging = machine.web_target().join("staging");
    step("building the site by Trunk", || {
        let equipped = Machine { path: path_with(&tools, &machine.path)?, ..machine.clone() };
        let mut trunk = equipped.command("trunk")?;
        route.equip(&mut trunk, &equipped)?;
        quietly(trunk.args(["build", "--dist"]).arg(&staging), &machine.log("trunk"))
    })?;
    finish::finish(&machine.root.join("public"), &staging)?;
    replace(&dist, &staging)?;
    fs::write(&note, format!("{sources} {}", fingerprint::folder(&dist)?))?;
    println!("    the site is in {}", dist.display());
    Ok(())
}

/// Gets what the build needs. What can be missing for good comes first, so that it is told at once;
/// then the tools are built beside the app's own compilation, since each takes minutes the first time.
fn prepare(machine: &Machine) -> Result<(Route, Vec<PathBuf>)> {
    let wasm_opt = tools::wasm_opt(machine)?;
    let route = toolchain::prepare(machine)?;
    let mut folders = thread::scope(|scope| {
        let cargo_tools = scope.spawn(|| tools::cargo_tools(machine));
        let compiled = compile(machine, route);
        let folders = cargo_tools.join().map_err(|_| anyhow!("the tools' set-up broke off"))?;
        compiled.and(folders)
    })?;
    folders.push(wasm_opt);
    Ok((route, folders))
}

/// Compiles the app as Trunk will, which then finds it done.
fn compile(machine: &Machine, route: Route) -> Result<()> {
    step("compiling the app (minutes the first time)", || {
        let mut cargo = route.cargo(machine)?;
        cargo.args(["build", "--release", "--locked", "--package", "pull-order"]);
        cargo.args(["--target", toolchain::TARGET]);
        quietly(&mut cargo, &machine.log("compile"))
    })
}

/// Puts the folder `new` in the place of `old`.
fn replace(old: &Path, new: &Path) -> Result<()> {
    if old.exists() {
        fs::remove_dir_all(old).with_context(|| format!("cannot empty {}", old.display()))?;
    }
    fs::rename(new, old).with_context(|| format!("cannot write {}", old.display()))
}
