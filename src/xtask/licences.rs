//! The licences of everything Cargo.lock brings in: each package must allow what the project's own
//! MIT licence promises to others.

use anyhow::{Context, Result, bail};
use serde_json::Value;
use spdx::{Expression, ParseMode};

use crate::machine::Machine;

/// Licences that ask for no more than to be named (SPDX identifiers).
const ALLOWED: [&str; 12] = [
    "0BSD",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "ISC",
    "MIT",
    "MIT-0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Fails with the names of the packages whose licence is not among the allowed.
pub fn check(machine: &Machine) -> Result<()> {
    let metadata = machine
        .ask("cargo", &["metadata", "--format-version", "1", "--locked"])
        .context("cargo could not list the packages")?;
    let metadata: Value = serde_json::from_str(&metadata)?;
    let packages = metadata["packages"].as_array().context("cargo listed no packages")?;
    let refused = refused(packages);
    if !refused.is_empty() {
        bail!("licences that are not allowed: {}", refused.join(", "));
    }
    Ok(())
}

fn refused(packages: &[Value]) -> Vec<String> {
    let text = |package: &Value, part: &str| package[part].as_str().map(str::to_owned);
    let told = |package: &Value| {
        let licence = text(package, "license").unwrap_or_else(|| "no licence named".to_owned());
        let name = text(package, "name").unwrap_or_default();
        (!allows(&licence)).then(|| format!("{name} ({licence})"))
    };
    packages.iter().filter_map(told).collect()
}

/// True if the SPDX expression can be met with allowed licences alone. Older packages write `/`
/// for "or".
fn allows(licence: &str) -> bool {
    let allowed =
        |one: &spdx::LicenseReq| one.license.id().is_some_and(|id| ALLOWED.contains(&id.name));
    Expression::parse_mode(licence, ParseMode::LAX)
        .is_ok_and(|expression| expression.evaluate(allowed))
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn an_expression_is_met_by_allowed_licences_alone() {
        for licence in [
            "MIT",
            "MIT/Apache-2.0",
            "MIT OR LGPL-2.1-or-later",
            "(MIT OR Apache-2.0) AND Unicode-3.0",
            "Apache-2.0 WITH LLVM-exception OR MIT",
        ] {
            assert!(allows(licence), "{licence}");
        }
        for licence in ["GPL-3.0-only", "MIT AND GPL-3.0-only", "no licence named", ""] {
            assert!(!allows(licence), "{licence}");
        }
    }

    #[test]
    fn a_package_that_is_refused_is_named() {
        let packages = [
            json!({ "name": "fine", "license": "MIT" }),
            json!({ "name": "closed", "license": null }),
            json!({ "name": "copyleft", "license": "AGPL-3.0-only" }),
        ];
        assert_eq!(refused(&packages), ["closed (no licence named)", "copyleft (AGPL-3.0-only)"]);
    }
}
