//! Debian packages, for what neither crates.io nor npm has.

use std::fs;
use std::thread;
use std::time::Duration;

use anyhow::{Context, Result, bail};

use crate::machine::Machine;
use crate::steps::{quietly, step};

/// Ten minutes for the lock that apt itself waits for.
const LOCK_PATIENCE: &str = "DPkg::Lock::Timeout=600";
/// What it says of a lock that it could not have.
const LOCKED: [&str; 2] = ["Could not get lock", "Unable to lock"];
/// How often to try for such a lock, and the pause between, ten minutes in all.
const MOST_TRIES: u32 = 120;
const PAUSE: Duration = Duration::from_secs(5);

/// Installs those of `packages` that are missing. Without the rights for it, says what to run.
pub fn install(machine: &Machine, packages: &[&str]) -> Result<()> {
    let missing = missing(machine, packages)?;
    if missing.is_empty() {
        return Ok(());
    }
    let names = missing.join(" ");
    if machine.ask("id", &["-u"]).is_none_or(|user| user.trim() != "0") {
        bail!("these Debian packages are missing; run: sudo apt-get install {names}");
    }
    step(&format!("installing Debian's {names}"), || {
        apt(machine, &["update"], "apt-update", PAUSE)?;
        let options = ["install", "--yes", "--no-install-recommends"];
        apt(machine, &[&options[..], &missing[..]].concat(), "apt-install", PAUSE)
    })
    .with_context(|| format!("could not install the Debian packages {names}"))
}

/// Runs apt, and waits where another one is at work: it waits for one lock by itself, and says of the
/// others that it could not have them.
fn apt(machine: &Machine, arguments: &[&str], log: &str, pause: Duration) -> Result<()> {
    let mut tries = 0;
    loop {
        let mut command = machine.command("apt-get")?;
        command.env("DEBIAN_FRONTEND", "noninteractive").args(["-o", LOCK_PATIENCE]);
        let Err(reason) = quietly(command.args(arguments), &machine.log(log)) else {
            return Ok(());
        };
        let told = fs::read_to_string(machine.log(log)).unwrap_or_default();
        tries += 1;
        if tries == MOST_TRIES || !LOCKED.iter().any(|words| told.contains(words)) {
            return Err(reason);
        }
        thread::sleep(pause);
    }
}

fn missing<'a>(machine: &Machine, packages: &[&'a str]) -> Result<Vec<&'a str>> {
    if machine.find("dpkg-query").is_none() || machine.find("apt-get").is_none() {
        bail!("this is not a Debian machine, which has the packages {}", packages.join(" "));
    }
    let installed = |package: &str| {
        machine
            .ask("dpkg-query", &["--show", "--showformat=${db:Status-Status}", package])
            .is_some_and(|status| status == "installed")
    };
    Ok(packages.iter().copied().filter(|package| !installed(package)).collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::machine::stand_in;

    const ASKED: &str =
        "for last; do :; done; case $last in have) printf installed;; *) exit 1;; esac";

    #[test]
    fn only_what_is_missing_is_installed() {
        let folder = tempfile::tempdir().unwrap();
        let machine = stand_in::machine(
            folder.path(),
            &[
                ("dpkg-query", ASKED),
                ("id", "echo 0"),
                ("apt-get", "echo \"$@\" >> \"$(dirname \"$0\")/asked\""),
            ],
        );
        install(&machine, &["have", "lack"]).unwrap();
        assert_eq!(
            stand_in::read(folder.path(), "asked"),
            "-o DPkg::Lock::Timeout=600 update\n\
             -o DPkg::Lock::Timeout=600 install --yes --no-install-recommends lack\n"
        );
    }

    #[test]
    fn a_busy_apt_is_waited_for_and_any_other_failure_is_told_at_once() {
        let folder = tempfile::tempdir().unwrap();
        let busy = "here=$(dirname \"$0\"); echo tried >> \"$here/asked\"
            [ $(wc -l < \"$here/asked\") -gt 2 ] && exit 0
            echo 'E: Could not get lock /var/lib/apt/lists/lock.'; exit 100";
        let machine = stand_in::machine(folder.path(), &[("apt-get", busy)]);
        apt(&machine, &["update"], "apt", Duration::ZERO).unwrap();
        assert_eq!(stand_in::read(folder.path(), "asked").lines().count(), 3);
        let broken =
            stand_in::machine(folder.path(), &[("apt-get", "echo 'E: no such package'; exit 100")]);
        let told = apt(&broken, &["install"], "apt", Duration::ZERO).unwrap_err();
        assert!(told.to_string().contains("no such package"), "{told}");
    }

    #[test]
    fn nothing_is_run_when_nothing_is_missing() {
        let folder = tempfile::tempdir().unwrap();
        let machine =
            stand_in::machine(folder.path(), &[("dpkg-query", ASKED), ("apt-get", "exit 1")]);
        install(&machine, &["have"]).unwrap();
    }

    #[test]
    fn an_ordinary_user_is_told_what_to_run() {
        let folder = tempfile::tempdir().unwrap();
        let machine = stand_in::machine(
            folder.path(),
            &[("dpkg-query", ASKED), ("id", "echo 1000"), ("apt-get", "exit 1")],
        );
        let told = format!("{:#}", install(&machine, &["lack"]).unwrap_err());
        assert!(told.ends_with("run: sudo apt-get install lack"), "{told}");
    }

    #[test]
    fn another_system_is_told_which_packages_these_are() {
        let folder = tempfile::tempdir().unwrap();
        let told = install(&stand_in::machine(folder.path(), &[]), &["lack"]).unwrap_err();
        assert!(format!("{told:#}").contains("not a Debian machine"));
    }
}
