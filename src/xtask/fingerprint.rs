//! SHA-256 sums of files and folders: to see what changed, and to name a version of the site.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use sha2::{Digest, Sha256};

/// What the site is built from, but for the tools, whose versions are in xtask's own source.
const SOURCES: [&str; 8] = [
    ".cargo",
    "Cargo.lock",
    "Cargo.toml",
    "Trunk.toml",
    "public",
    "src/app",
    "src/cook-model",
    "src/xtask",
];

/// One sum over everything the site is built from.
pub fn sources(root: &Path) -> Result<String> {
    let mut files = Vec::new();
    for source in SOURCES {
        let path = root.join(source);
        if path.is_dir() {
            files.extend(files_in(&path)?);
        } else {
            files.push(path);
        }
    }
    of_files(root, &files)
}

/// One sum over all files of a folder, by name and content.
pub fn folder(folder: &Path) -> Result<String> {
    of_files(folder, &files_in(folder)?)
}

/// The sum of some bytes, in hexadecimal.
pub fn of_bytes(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Every file in `folder` and below, sorted by path.
pub fn files_in(folder: &Path) -> Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    let entries = fs::read_dir(folder).with_context(|| format!("no {}", folder.display()))?;
    for entry in entries {
        let path = entry?.path();
        if path.is_dir() {
            files.extend(files_in(&path)?);
        } else {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

/// The path of `file` inside `folder`, with `/` between its parts.
pub fn relative(file: &Path, folder: &Path) -> String {
    let inside = file.strip_prefix(folder).unwrap_or(file);
    let parts: Vec<_> = inside.iter().map(|part| part.to_string_lossy()).collect();
    parts.join("/")
}

fn of_files(root: &Path, files: &[PathBuf]) -> Result<String> {
    let mut list = String::new();
    for file in files {
        let bytes = fs::read(file).with_context(|| format!("cannot read {}", file.display()))?;
        list.push_str(&format!("{} {}\n", of_bytes(&bytes), relative(file, root)));
    }
    Ok(of_bytes(list.as_bytes()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_sum_is_sha_256() {
        // FIPS 180-4's example for the message "abc" (NIST, Secure Hash Standard examples).
        let expected = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assert_eq!(of_bytes(b"abc"), expected);
    }

    #[test]
    fn a_folder_s_sum_follows_names_and_contents() {
        let one = tempfile::tempdir().unwrap();
        let write = |name: &str, text: &str| {
            let file = one.path().join(name);
            fs::create_dir_all(file.parent().unwrap()).unwrap();
            fs::write(file, text).unwrap();
        };
        write("a", "1");
        write("deep/b", "2");
        let first = folder(one.path()).unwrap();
        assert_eq!(folder(one.path()).unwrap(), first);
        write("deep/b", "3");
        let changed = folder(one.path()).unwrap();
        assert_ne!(changed, first);
        fs::rename(one.path().join("a"), one.path().join("c")).unwrap();
        assert_ne!(folder(one.path()).unwrap(), changed);
    }

    #[test]
    fn files_are_listed_in_the_same_order_on_every_machine() {
        let folder = tempfile::tempdir().unwrap();
        fs::create_dir(folder.path().join("b")).unwrap();
        for name in ["c", "a", "b/z", "b/y"] {
            fs::write(folder.path().join(name), name).unwrap();
        }
        let files = files_in(folder.path()).unwrap();
        let names: Vec<_> = files.iter().map(|file| relative(file, folder.path())).collect();
        assert_eq!(names, ["a", "b/y", "b/z", "c"]);
    }
}
