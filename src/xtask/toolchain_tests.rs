//! Which way to the wasm32 target is taken, with stand-ins for rustc, rustup and the distribution.

use std::cell::Cell;
use std::ffi::OsStr;

use super::*;
use crate::machine::stand_in;

const RUSTC_WITH: (&str, &str) = ("rustc", "echo \"$(dirname \"$0\")\"");
const RUSTC_WITHOUT: (&str, &str) = ("rustc", "echo \"$(dirname \"$0\")/not-there\"");
const RUSTUP: (&str, &str) = ("rustup", "echo \"$@\" >> \"$(dirname \"$0\")/asked\"");
const RUSTUP_OFFLINE: (&str, &str) =
    ("rustup", "echo x >> \"$(dirname \"$0\")/asked\"; echo 'error: no network' >&2; exit 1");

/// What came of it: the route or the one line; what rustup was asked; whether the distribution was.
struct Outcome {
    route: Result<Route, String>,
    rustup_asked: String,
    distro_asked: bool,
}

fn outcome(programs: &[(&str, &str)], wish: Option<&str>, distro: Result<(), &str>) -> Outcome {
    let folder = tempfile::tempdir().unwrap();
    outcome_in(folder.path(), programs, wish, distro)
}

fn outcome_in(
    folder: &Path,
    programs: &[(&str, &str)],
    wish: Option<&str>,
    distro: Result<(), &str>,
) -> Outcome {
    let mut machine = stand_in::machine(folder, programs);
    machine.wished_toolchain = wish.map(str::to_owned);
    let distro_asked = Cell::new(false);
    let route = choose(&machine, &refusal_note(&machine), || {
        distro_asked.set(true);
        distro.map_err(|reason| anyhow::anyhow!(reason.to_owned()))
    });
    Outcome {
        route: route.map_err(|reason| format!("{reason:#}")),
        rustup_asked: stand_in::read(folder, "asked"),
        distro_asked: distro_asked.get(),
    }
}

#[test]
fn a_target_already_there_comes_before_any_wish() {
    for wish in [None, Some("rustup"), Some("distro")] {
        let outcome = outcome(&[RUSTC_WITH, RUSTUP], wish, Ok(()));
        assert_eq!(outcome.route, Ok(Route::Installed));
        assert_eq!((outcome.rustup_asked.as_str(), outcome.distro_asked), ("", false));
    }
}

#[test]
fn the_wish_comes_before_rustup() {
    let distro = outcome(&[RUSTC_WITHOUT, RUSTUP], Some("distro"), Ok(()));
    assert_eq!(distro.route, Ok(Route::Distro));
    assert_eq!(distro.rustup_asked, "");
    let rustup = outcome(&[RUSTC_WITHOUT, RUSTUP], Some("rustup"), Ok(()));
    assert_eq!(rustup.route, Ok(Route::Rustup));
    assert!(!rustup.distro_asked);
}

#[test]
fn a_wish_that_fails_is_not_replaced_by_another_way() {
    let rustup = outcome(&[RUSTC_WITHOUT, RUSTUP_OFFLINE], Some("rustup"), Ok(()));
    let told = rustup.route.unwrap_err();
    assert!(told.starts_with("rustup could not add the wasm32 target"), "{told}");
    assert!(told.contains("no network") && !rustup.distro_asked);
    let distro = outcome(&[RUSTC_WITHOUT, RUSTUP], Some("distro"), Err("no packages"));
    assert_eq!(distro.route, Err("no packages".to_owned()));
    assert_eq!(distro.rustup_asked, "");
}

#[test]
fn an_unknown_wish_is_told_what_it_can_be() {
    let told = outcome(&[RUSTC_WITHOUT], Some("nix"), Ok(())).route.unwrap_err();
    assert!(told.contains("`nix`") && told.contains("`rustup` or `distro`"), "{told}");
}

#[test]
fn without_a_wish_rustup_comes_before_the_distribution() {
    let outcome = outcome(&[RUSTC_WITHOUT, RUSTUP], None, Ok(()));
    assert_eq!(outcome.route, Ok(Route::Rustup));
    assert_eq!(outcome.rustup_asked, "target add wasm32-unknown-unknown\n");
    assert!(!outcome.distro_asked);
}

#[test]
fn without_rustup_or_network_the_distribution_is_taken() {
    assert_eq!(outcome(&[RUSTC_WITHOUT], None, Ok(())).route, Ok(Route::Distro));
    assert_eq!(outcome(&[], None, Ok(())).route, Ok(Route::Distro));
    assert_eq!(outcome(&[RUSTC_WITHOUT, RUSTUP_OFFLINE], None, Ok(())).route, Ok(Route::Distro));
}

#[test]
fn a_rustup_that_could_not_is_asked_once_only() {
    let folder = tempfile::tempdir().unwrap();
    for _ in 0..2 {
        let programs = [RUSTC_WITHOUT, RUSTUP_OFFLINE];
        let outcome = outcome_in(folder.path(), &programs, None, Ok(()));
        assert_eq!(outcome.route, Ok(Route::Distro));
        assert_eq!(outcome.rustup_asked, "x\n");
    }
}

#[test]
fn with_no_way_left_both_reasons_are_told() {
    let told = outcome(&[RUSTC_WITHOUT], None, Err("no packages")).route.unwrap_err();
    assert_eq!(told, "the wasm32 target is missing: rustup is not on PATH; no packages");
    assert_eq!(told.lines().count(), 1);
}

#[test]
fn only_the_distribution_gets_its_variables() {
    let folder = tempfile::tempdir().unwrap();
    let machine = stand_in::machine(folder.path(), &[("cargo", "exit 0")]);
    let variable = |command: &Command, name: &str| {
        let found = command.get_envs().find(|(key, _)| *key == OsStr::new(name));
        found.and_then(|(_, value)| value).map(|value| value.to_string_lossy().into_owned())
    };
    for route in [Route::Installed, Route::Rustup, Route::Distro] {
        let command = route.cargo(&machine).unwrap();
        let distro = route == Route::Distro;
        assert_eq!(variable(&command, "RUSTC_BOOTSTRAP").is_some(), distro);
        assert_eq!(variable(&command, "CARGO_UNSTABLE_BUILD_STD").is_some(), distro);
        assert_eq!(variable(&command, "PATH").unwrap().starts_with("/usr/bin:"), distro);
        assert!(variable(&command, "CARGO_TARGET_DIR").unwrap().ends_with("target/web"));
    }
    let native = machine.command("cargo").unwrap();
    assert_eq!(variable(&native, "RUSTC_BOOTSTRAP"), None);
    assert_eq!(variable(&native, "CARGO_TARGET_DIR"), None);
}
