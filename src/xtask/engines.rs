//! The engines beside Chromium that people hold in their hands: Firefox's, and WebKit, which is every
//! iPhone's. Where one cannot be had its journeys are skipped, and that is said aloud.

use std::env;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result};

use crate::debian;
use crate::machine::Machine;

/// What the tests take for "there is none here".
const NONE: &str = "none";

/// Debian's packages for WebKit: GTK's view, the Python that steers it, a screen that nobody sees, hands
/// on it, and the bus that GTK talks on.
const WEBKIT: [&str; 5] = ["gir1.2-webkit2-4.1", "python3-gi", "xvfb", "xdotool", "dbus"];
/// What of them is on PATH, beside a Python.
const WEBKIT_PROGRAMS: [&str; 3] = ["Xvfb", "xdotool", "dbus-run-session"];
/// Says nothing and succeeds if GTK's view of WebKit is there.
const WEBKIT_IS_THERE: &str = "import gi; gi.require_version('WebKit2', '4.1')";

/// Firefox's names on PATH, and its place on macOS.
const FIREFOX: [&str; 2] = ["firefox-esr", "firefox"];
const FIREFOX_ON_MACOS: &str = "/Applications/Firefox.app/Contents/MacOS/firefox";

/// Tells the tests which engines there are, and the person which are left out and why.
pub fn equip(machine: &Machine, tests: &mut Command) {
    let engines = [
        ("Firefox", "PULL_ORDER_FIREFOX", firefox as fn(&Machine) -> Result<PathBuf>),
        ("WebKit", "PULL_ORDER_WEBKIT", webkit),
    ];
    for (name, variable, find) in engines {
        let named = env::var_os(variable).filter(|file| !file.is_empty()).map(PathBuf::from);
        match named.map_or_else(|| find(machine), Ok) {
            Ok(program) => {
                println!("    {name}: {}", program.display());
                tests.env(variable, program);
            }
            Err(reason) => {
                println!("    {name} is SKIPPED: {reason:#}");
                tests.env(variable, NONE);
            }
        }
    }
    let drawn = has_or_gets(machine, &["pdftoppm"], &["poppler-utils"]);
    if let Err(reason) = drawn {
        println!("    the ink of printed labels is SKIPPED: {reason:#}");
    }
}

fn firefox(machine: &Machine) -> Result<PathBuf> {
    let found = || FIREFOX.iter().find_map(|name| machine.find(name));
    let on_macos = || Some(Path::new(FIREFOX_ON_MACOS)).filter(|file| file.exists());
    if let Some(file) = found().or_else(|| on_macos().map(Path::to_owned)) {
        return Ok(file);
    }
    debian::install(machine, &["firefox-esr"])?;
    found().context("Debian's firefox-esr is not on PATH")
}

/// The Python that steers GTK's view: the system's own, which need not be the first on PATH. On macOS
/// Safari's own driver keeps no profile, which most journeys need.
fn webkit(machine: &Machine) -> Result<PathBuf> {
    let found = || {
        let others = WEBKIT_PROGRAMS.iter().all(|program| machine.find(program).is_some());
        machine.each("python3").find(|python| others && finds_webkit(python))
    };
    if let Some(python) = found() {
        return Ok(python);
    }
    debian::install(machine, &WEBKIT)?;
    found().context("no python3 on PATH finds GTK's WebKit")
}

fn finds_webkit(python: &Path) -> bool {
    let answer = Command::new(python).args(["-c", WEBKIT_IS_THERE]).output();
    answer.is_ok_and(|answer| answer.status.success())
}

fn has_or_gets(machine: &Machine, programs: &[&str], packages: &[&str]) -> Result<()> {
    if programs.iter().all(|program| machine.find(program).is_some()) {
        return Ok(());
    }
    debian::install(machine, packages)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::machine::stand_in;

    /// What the tests are told of an engine: a program, or that there is none.
    fn told(machine: &Machine, variable: &str) -> Option<String> {
        let mut tests = Command::new("true");
        equip(machine, &mut tests);
        let set = tests.get_envs().find(|(name, _)| *name == variable)?.1?;
        Some(set.to_string_lossy().into_owned())
    }

    #[test]
    fn what_is_there_is_used() {
        let folder = tempfile::tempdir().unwrap();
        let programs = ["firefox", "python3", "Xvfb", "xdotool", "dbus-run-session", "pdftoppm"];
        let machine = stand_in::machine(folder.path(), &programs.map(|name| (name, "exit 0")));
        let place = |name: &str| Some(folder.path().join(name).to_string_lossy().into_owned());
        assert_eq!(told(&machine, "PULL_ORDER_FIREFOX"), place("firefox"));
        assert_eq!(told(&machine, "PULL_ORDER_WEBKIT"), place("python3"));
    }

    #[test]
    fn the_python_that_has_webkit_is_used_wherever_it_is_on_the_path() {
        let [bare, whole] = [(); 2].map(|()| tempfile::tempdir().unwrap());
        stand_in::machine(bare.path(), &[("python3", "exit 1")]);
        let programs = ["firefox", "python3", "Xvfb", "xdotool", "dbus-run-session", "pdftoppm"];
        let mut machine = stand_in::machine(whole.path(), &programs.map(|name| (name, "exit 0")));
        machine.path = env::join_paths([bare.path(), whole.path()]).unwrap();
        let python = whole.path().join("python3").to_string_lossy().into_owned();
        assert_eq!(told(&machine, "PULL_ORDER_WEBKIT"), Some(python));
    }

    #[test]
    fn a_machine_without_them_has_a_whole_run_without_them() {
        let folder = tempfile::tempdir().unwrap();
        let machine = stand_in::machine(folder.path(), &[("python3", "exit 1")]);
        assert_eq!(told(&machine, "PULL_ORDER_FIREFOX").as_deref(), Some(NONE));
        assert_eq!(told(&machine, "PULL_ORDER_WEBKIT").as_deref(), Some(NONE));
    }

    #[test]
    fn what_is_missing_is_installed_from_debian() {
        let folder = tempfile::tempdir().unwrap();
        let apt = "here=$(dirname \"$0\"); echo \"$@\" >> \"$here/asked\"; for package; do :; done
            case $package in firefox-esr) cp \"$here/id\" \"$here/firefox-esr\";; esac";
        let machine = stand_in::machine(
            folder.path(),
            &[("dpkg-query", "exit 1"), ("id", "echo 0"), ("apt-get", apt), ("python3", "exit 1")],
        );
        assert!(told(&machine, "PULL_ORDER_FIREFOX").unwrap().ends_with("firefox-esr"));
        let asked = stand_in::read(folder.path(), "asked");
        assert!(asked.contains(&WEBKIT.join(" ")) && asked.contains("poppler-utils"), "{asked}");
    }
}
