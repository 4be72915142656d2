//! Known security advisories: none may meet a locked version, and every locked package must have
//! been looked up. What is known is pinned in advisories.toml, for the database itself cannot be
//! fetched from the package registries.

use std::collections::BTreeSet;
use std::fs;

use anyhow::{Context, Result, bail};
use semver::{Version, VersionReq};
use serde::Deserialize;

use crate::machine::Machine;

const PINNED: &str = include_str!("advisories.toml");

/// What was built and tested was built from these.
const LOCKS: [&str; 3] = ["Cargo.lock", "tests/fuzz/Cargo.lock", "tests/solvers/Cargo.lock"];

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Pinned {
    looked_up: BTreeSet<String>,
    accepted: Vec<Accepted>,
    advisory: Vec<Advisory>,
}

/// An advisory that is borne although it meets a locked version.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Accepted {
    id: String,
    reason: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Advisory {
    id: String,
    package: String,
    date: String,
    about: String,
    #[serde(default, rename = "informational")]
    kind: Kind,
    patched: Vec<VersionReq>,
    #[serde(default)]
    unaffected: Vec<VersionReq>,
}

#[derive(Default, PartialEq, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Kind {
    #[default]
    Vulnerability,
    Unsound,
    Unmaintained,
    Notice,
}

#[derive(Deserialize)]
struct Lock {
    package: Vec<Locked>,
}

#[derive(Deserialize)]
struct Locked {
    name: String,
    version: Version,
    /// The registry; the project's own packages have none.
    source: Option<String>,
}

/// Fails with what has to be updated, looked up or given a reason.
pub fn check(machine: &Machine) -> Result<()> {
    let pinned: Pinned = toml::from_str(PINNED).context("advisories.toml cannot be read")?;
    let mut locked = Vec::new();
    for file in LOCKS {
        let text = fs::read_to_string(machine.root.join(file)).context(file)?;
        locked.extend(packages(&text).context(file)?);
    }
    let complaints = pinned.complaints(&locked);
    if !complaints.is_empty() {
        bail!("{}", complaints.join("; "));
    }
    Ok(())
}

/// The packages of a lock file that come from elsewhere.
fn packages(lock: &str) -> Result<Vec<Locked>> {
    let lock: Lock = toml::from_str(lock)?;
    Ok(lock.package.into_iter().filter(|package| package.source.is_some()).collect())
}

impl Pinned {
    fn complaints(&self, locked: &[Locked]) -> Vec<String> {
        let hits = || self.advisory.iter().filter(|one| locked.iter().any(|at| one.meets(at)));
        let mut complaints: Vec<_> =
            hits().filter(|one| !self.bears(one)).map(|one| one.told(locked)).collect();
        complaints.extend(self.never_looked_up(locked));
        for accepted in &self.accepted {
            if accepted.reason.trim().is_empty() {
                complaints.push(format!("{} is accepted without a reason", accepted.id));
            }
            if !hits().any(|one| one.id == accepted.id) {
                complaints.push(format!("{} is accepted but meets nothing", accepted.id));
            }
        }
        complaints
    }

    /// A vulnerability is never borne: it has to be mended.
    fn bears(&self, advisory: &Advisory) -> bool {
        advisory.kind != Kind::Vulnerability && self.accepted.iter().any(|at| at.id == advisory.id)
    }

    fn never_looked_up(&self, locked: &[Locked]) -> Option<String> {
        let names: BTreeSet<_> = locked.iter().map(|package| package.name.as_str()).collect();
        let unknown: Vec<_> =
            names.into_iter().filter(|name| !self.looked_up.contains(*name)).collect();
        (!unknown.is_empty()).then(|| {
            format!(
                "never looked up: {} (look in the RustSec advisory database under crates/NAME, then \
                 add the name and its advisories to src/xtask/advisories.toml)",
                unknown.join(", ")
            )
        })
    }
}

impl Advisory {
    fn meets(&self, package: &Locked) -> bool {
        let mut safe = self.patched.iter().chain(&self.unaffected);
        package.name == self.package && !safe.any(|range| range.matches(&package.version))
    }

    fn told(&self, locked: &[Locked]) -> String {
        let versions: Vec<_> = locked
            .iter()
            .filter(|package| self.meets(package))
            .map(|package| package.version.to_string())
            .collect();
        let Self { id, package, date, about, .. } = self;
        format!(
            "{package} {}: {about} ({id} of {date}; try `cargo update -p {package}`)",
            versions.join(", ")
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const KNOWN: &str = r#"
        looked_up = ["holed", "left"]
        accepted = [{ id = "A-2", reason = "only compiles" }]
        [[advisory]]
        id = "A-1"
        package = "holed"
        date = "2026-01-02"
        about = "a hole"
        patched = [">=1.2.3"]
        unaffected = ["<1.1.0"]
        [[advisory]]
        id = "A-2"
        package = "left"
        date = "2026-01-03"
        about = "nobody looks after it"
        informational = "unmaintained"
        patched = []
    "#;

    fn pinned(text: &str) -> Pinned {
        toml::from_str(text).unwrap()
    }

    fn locked(packages: &[(&str, &str)]) -> Vec<Locked> {
        let one = |(name, version): &(&str, &str)| Locked {
            name: (*name).to_owned(),
            version: version.parse().unwrap(),
            source: Some("registry".to_owned()),
        };
        packages.iter().map(one).collect()
    }

    #[test]
    fn a_hit_is_named_and_a_patched_or_unaffected_version_is_not() {
        let complaints = |version| {
            pinned(KNOWN).complaints(&locked(&[("holed", version), ("left", "1.0.0")])).join("; ")
        };
        let told = "holed 1.2.2: a hole (A-1 of 2026-01-02; try `cargo update -p holed`)";
        assert_eq!(complaints("1.2.2"), told);
        assert_eq!(complaints("1.2.3"), "");
        assert_eq!(complaints("1.0.9"), "");
    }

    #[test]
    fn a_package_that_was_never_looked_up_is_named() {
        let complaints = pinned(KNOWN).complaints(&locked(&[("left", "1.0.0"), ("new", "0.1.0")]));
        let [complaint] = &complaints[..] else { panic!("{complaints:?}") };
        assert!(complaint.starts_with("never looked up: new (look in"), "{complaint}");
    }

    #[test]
    fn what_is_accepted_needs_a_reason_and_a_hit() {
        let left = locked(&[("left", "1.0.0")]);
        let told = |text: &str, packages: &[Locked]| pinned(text).complaints(packages).join("; ");
        assert_eq!(told(KNOWN, &left), "");
        assert_eq!(
            told(&KNOWN.replace("only compiles", " "), &left),
            "A-2 is accepted without a reason"
        );
        assert_eq!(told(KNOWN, &[]), "A-2 is accepted but meets nothing");
        let unnamed = KNOWN.replace(r#", reason = "only compiles""#, "");
        assert!(toml::from_str::<Pinned>(&unnamed).is_err());
    }

    #[test]
    fn a_vulnerability_cannot_be_accepted() {
        let text = KNOWN.replace("A-2\", reason", "A-1\", reason");
        let complaints = pinned(&text).complaints(&locked(&[("holed", "1.2.2")]));
        assert_eq!(complaints.len(), 1, "{complaints:?}");
        assert!(complaints[0].starts_with("holed 1.2.2"), "{complaints:?}");
    }

    #[test]
    fn the_projects_own_packages_are_left_out() {
        let lock = "[[package]]\nname = \"own\"\nversion = \"0.1.0\"\n\
                    [[package]]\nname = \"foreign\"\nversion = \"1.0.0+spec\"\nsource = \"registry\"";
        let names: Vec<_> = packages(lock).unwrap().into_iter().map(|one| one.name).collect();
        assert_eq!(names, ["foreign"]);
    }

    /// RUSTSEC-2021-0003 lists the affected versions besides the patched: from 0.6.3 to before
    /// 0.6.14, and from 1.0.0 to before 1.6.1.
    #[test]
    fn the_pinned_ranges_say_what_the_advisory_says() {
        let pinned = pinned(PINNED);
        let met = |version| {
            let package = &locked(&[("smallvec", version)])[0];
            pinned.advisory.iter().any(|one| one.id == "RUSTSEC-2021-0003" && one.meets(package))
        };
        for version in ["0.6.3", "0.6.13", "1.0.0", "1.6.0"] {
            assert!(met(version), "{version}");
        }
        for version in ["0.6.2", "0.6.14", "1.6.1", "1.16.6"] {
            assert!(!met(version), "{version}");
        }
    }

    #[test]
    fn every_pinned_advisory_is_of_a_package_that_was_looked_up_and_stands_once() {
        let pinned = pinned(PINNED);
        let mut ids = BTreeSet::new();
        for Advisory { id, package, .. } in &pinned.advisory {
            assert!(pinned.looked_up.contains(package), "{package}");
            assert!(id.starts_with("RUSTSEC-20") && ids.insert(id), "{id}");
        }
    }
}
