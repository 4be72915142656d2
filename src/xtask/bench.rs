//! What is timed: `tests/bench`, built for the browser as the app is (in `target/web/bench`) and for this
//! machine; and `tests/solvers`, for this machine only.

use std::fs;
use std::path::PathBuf;

use anyhow::{Context, Result, bail};

use crate::machine::{Machine, path_with};
use crate::steps::{openly, quietly, step};
use crate::{browser, toolchain, tools};

/// Where the module for the browser, its page and the native results are.
fn folder(machine: &Machine) -> PathBuf {
    machine.web_target().join("bench")
}

/// The same calls in the browser beside native ones, then the heat model beside general solvers.
pub fn run(machine: &Machine) -> Result<()> {
    for_browser(machine)?;
    let native = native(machine)?;
    let mut node = browser::node(machine)?;
    node.arg("bench.mjs").env("PULL_ORDER_NATIVE", native);
    if !openly(&mut node)? {
        bail!("the browser's part of the bench failed");
    }
    solvers(machine)
}

/// General solvers on the heat model's equations: first that they are equally exact, then the times.
fn solvers(machine: &Machine) -> Result<()> {
    let folder = machine.root.join("tests/solvers");
    for command in ["test", "bench"] {
        let mut cargo = machine.command("cargo")?;
        cargo.current_dir(&folder).args([command, "--locked", "--quiet"]);
        if !step(&format!("general solvers: cargo {command}"), || openly(&mut cargo))? {
            bail!("`cargo {command}` failed in tests/solvers");
        }
    }
    Ok(())
}

/// Builds the module as the app is built: the same profile, wasm-bindgen and wasm-opt.
fn for_browser(machine: &Machine) -> Result<()> {
    let wasm_opt = tools::wasm_opt(machine)?;
    let route = toolchain::prepare(machine)?;
    let mut folders = tools::cargo_tools(machine)?;
    folders.push(wasm_opt);
    let equipped = Machine { path: path_with(&folders, &machine.path)?, ..machine.clone() };
    let built = machine.web_target().join(toolchain::TARGET).join("release/bench.wasm");
    let out = folder(machine);
    step("building the bench for the browser", || {
        let mut cargo = route.cargo(machine)?;
        cargo.args(["build", "--release", "--locked", "--package", "bench", "--lib"]);
        quietly(cargo.args(["--target", toolchain::TARGET]), &machine.log("bench"))?;
        let mut bindgen = equipped.command("wasm-bindgen")?;
        bindgen.arg(&built).args(["--target", "web", "--no-typescript", "--out-dir"]).arg(&out);
        quietly(&mut bindgen, &machine.log("bench-bindgen"))?;
        let module = out.join("bench_bg.wasm");
        let mut opt = equipped.command("wasm-opt")?;
        quietly(opt.arg("-Oz").arg(&module).arg("-o").arg(&module), &machine.log("bench-opt"))?;
        Ok(fs::write(out.join("index.html"), "<!doctype html><title>bench</title>")?)
    })
}

/// Builds the program `native` and says where it is.
fn native(machine: &Machine) -> Result<PathBuf> {
    step("building the bench for this machine", || {
        let mut cargo = machine.command("cargo")?;
        cargo.args(["build", "--release", "--locked", "--package", "bench", "--example", "native"]);
        quietly(&mut cargo, &machine.log("native"))
    })?;
    let target = std::env::var_os("CARGO_TARGET_DIR").map(PathBuf::from);
    let target = target.unwrap_or_else(|| machine.root.join("target"));
    let program = target.join("release/examples");
    let program = program.join(format!("native{}", std::env::consts::EXE_SUFFIX));
    program.is_file().then_some(program).context("cargo built no program `native`")
}
