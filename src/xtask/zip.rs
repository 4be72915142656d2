//! The finished site as one file, for a host that takes a zip.

use std::fs;
use std::io::Write;
use std::path::Path;

use anyhow::{Context, Result};
use flate2::write::DeflateEncoder;
use flate2::{Compression, Crc};

use crate::machine::Machine;

/// What every part says of itself (PKWARE APPNOTE.TXT 6.3.10, 4.4): needs version 2.0, names are in
/// UTF-8, deflated, and the first moment there is, so that the same site gives the same file.
const ABOUT: [u16; 5] = [20, 0x0800, 8, 0, 0x0021];
const LOCAL: u32 = 0x0403_4b50;
const CENTRAL: u32 = 0x0201_4b50;
const END: u32 = 0x0605_4b50;

/// Writes `dist.zip` beside `dist/`.
pub fn write(machine: &Machine) -> Result<()> {
    let dist = machine.root.join("dist");
    let file = machine.root.join("dist.zip");
    fs::write(&file, packed(&dist)?).with_context(|| format!("cannot write {}", file.display()))?;
    println!("    the same in one file: {}", file.display());
    Ok(())
}

/// All files of a folder, in the order of their names.
fn packed(folder: &Path) -> Result<Vec<u8>> {
    let (mut zip, mut directory, mut count) = (Vec::new(), Vec::new(), 0_u16);
    for name in names(folder, "")? {
        let bytes = fs::read(folder.join(&name))?;
        let begin = u32::try_from(zip.len()).context("too long for a zip")?;
        let (sizes, deflated) = (sizes_of(&bytes)?, deflated(&bytes)?);
        let mut entry = Vec::new();
        put_16(&mut entry, &ABOUT);
        put_32(&mut entry, &[sizes.0, u32::try_from(deflated.len())?, sizes.1]);
        put_16(&mut entry, &[u16::try_from(name.len())?, 0]);

        put_32(&mut zip, &[LOCAL]);
        zip.extend_from_slice(&entry);
        zip.extend_from_slice(name.as_bytes());
        zip.extend_from_slice(&deflated);

        put_32(&mut directory, &[CENTRAL]);
        put_16(&mut directory, &ABOUT[..1]);
        directory.extend_from_slice(&entry);
        // No comment, the first disk, and nothing special about the file.
        put_16(&mut directory, &[0, 0, 0]);
        put_32(&mut directory, &[0, begin]);
        directory.extend_from_slice(name.as_bytes());
        count += 1;
    }
    let (begin, length) = (u32::try_from(zip.len())?, u32::try_from(directory.len())?);
    zip.extend_from_slice(&directory);
    put_32(&mut zip, &[END]);
    put_16(&mut zip, &[0, 0, count, count]);
    put_32(&mut zip, &[length, begin]);
    put_16(&mut zip, &[0]);
    Ok(zip)
}

/// The sum and the length of a file.
fn sizes_of(bytes: &[u8]) -> Result<(u32, u32)> {
    let mut crc = Crc::new();
    crc.update(bytes);
    Ok((crc.sum(), u32::try_from(bytes.len())?))
}

fn deflated(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut encoder = DeflateEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(bytes)?;
    Ok(encoder.finish()?)
}

/// The names of all files below `folder`, each beginning with `before`, with `/` between their parts.
fn names(folder: &Path, before: &str) -> Result<Vec<String>> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder.join(before))? {
        let entry = entry?;
        let name = format!("{before}{}", entry.file_name().to_string_lossy());
        if entry.file_type()?.is_dir() {
            found.extend(names(folder, &format!("{name}/"))?);
        } else {
            found.push(name);
        }
    }
    found.sort();
    Ok(found)
}

fn put_16(to: &mut Vec<u8>, values: &[u16]) {
    to.extend(values.iter().flat_map(|value| value.to_le_bytes()));
}

fn put_32(to: &mut Vec<u8>, values: &[u32]) {
    to.extend(values.iter().flat_map(|value| value.to_le_bytes()));
}

#[cfg(test)]
mod tests {
    use std::process::Command;

    use super::*;

    /// Programs of others that unpack a zip: the first that is on this machine is used.
    const UNPACKERS: [&[&str]; 3] = [
        &["python3", "-m", "zipfile", "-e", "site.zip", "out"],
        &["unzip", "-q", "site.zip", "-d", "out"],
        &["bsdtar", "-x", "-C", "out", "-f", "site.zip"],
    ];

    #[test]
    fn another_program_unpacks_what_was_packed() {
        let folder = tempfile::tempdir().unwrap();
        let site = folder.path().join("site");
        fs::create_dir_all(site.join("icons")).unwrap();
        let files = [("index.html", "<p>é</p>".repeat(999)), ("icons/empty", String::new())];
        for (name, text) in &files {
            fs::write(site.join(name), text).unwrap();
        }
        let zip = packed(&site).unwrap();
        assert_eq!(zip, packed(&site).unwrap(), "the same site gives the same file");
        assert!(zip.len() < files[0].1.len(), "it is packed");
        fs::write(folder.path().join("site.zip"), zip).unwrap();
        fs::create_dir(folder.path().join("out")).unwrap();
        let unpacked = UNPACKERS.iter().any(|words| {
            let run = Command::new(words[0]).args(&words[1..]).current_dir(folder.path()).status();
            run.is_ok_and(|status| status.success())
        });
        assert!(unpacked, "no program here unpacks a zip: python3, unzip or bsdtar");
        for (name, text) in &files {
            assert_eq!(&fs::read_to_string(folder.path().join("out").join(name)).unwrap(), text);
        }
    }
}
