//! Debian packages, for what neither crates.io nor npm has.

use anyhow::{Context, Result, bail};

use crate::machine::Machine;
use crate::steps::{quietly, step};

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
        let apt = |arguments: &[&str], log: &str| {
            let mut command = machine.command("apt-get")?;
            command.env("DEBIAN_FRONTEND", "noninteractive").args(arguments);
            quietly(&mut command, &machine.log(log))
        };
        apt(&["update"], "apt-update")?;
        let options = ["install", "--yes", "--no-install-recommends"];
        apt(&[&options[..], &missing[..]].concat(), "apt-install")
    })
    .with_context(|| format!("could not install the Debian packages {names}"))
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
            "update\ninstall --yes --no-install-recommends lack\n"
        );
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
