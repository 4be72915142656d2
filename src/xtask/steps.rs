//! Steps that say what they do and how long it took, and commands whose output goes to a file.

use std::fs::{self, File};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Instant;

use anyhow::{Context, Result, bail};

/// Announces `what`, does it, and says how long it took.
pub fn step<T>(what: &str, work: impl FnOnce() -> Result<T>) -> Result<T> {
    println!("... {what}");
    let start = Instant::now();
    let outcome = work()?;
    println!("    {what}: {:.1} s", start.elapsed().as_secs_f64());
    Ok(outcome)
}

/// Runs `command` with its output kept in `log`, so that steps can run side by side. A failure is
/// told in one line: the command's own last complaint, and where the rest is.
pub fn quietly(command: &mut Command, log: &Path) -> Result<()> {
    if let Some(folder) = log.parent() {
        fs::create_dir_all(folder)?;
    }
    let output = File::create(log).with_context(|| format!("cannot write {}", log.display()))?;
    let program = command.get_program().to_string_lossy().into_owned();
    let status = command
        .stdin(Stdio::null())
        .stdout(output.try_clone()?)
        .stderr(output)
        .status()
        .with_context(|| format!("cannot run {program}"))?;
    if !status.success() {
        let text = fs::read_to_string(log).unwrap_or_default();
        bail!("{program} failed: {} (all of it: {})", complaint(&text), log.display());
    }
    Ok(())
}

/// Runs `command` with its output shown as it comes. True if it succeeded.
pub fn openly(command: &mut Command) -> Result<bool> {
    let program = command.get_program().to_string_lossy().into_owned();
    Ok(command.status().with_context(|| format!("cannot run {program}"))?.success())
}

/// The line of a tool's output that says best what went wrong: the first error, else the last line.
fn complaint(output: &str) -> String {
    let says_error = |line: &&str| line.to_lowercase().trim_start().starts_with("error");
    output
        .lines()
        .find(says_error)
        .or_else(|| output.lines().rfind(|line| !line.trim().is_empty()))
        .unwrap_or("it said nothing")
        .trim()
        .to_owned()
}

/// The same words on one line.
pub fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_failed_command_is_told_in_one_line_with_its_own_words() {
        let folder = tempfile::tempdir().unwrap();
        let log = folder.path().join("log/step.log");
        let mut command = Command::new("sh");
        command.args(["-c", "echo working; echo 'error: no such crate' >&2; echo later; exit 3"]);
        let told = format!("{:#}", quietly(&mut command, &log).unwrap_err());
        assert!(told.starts_with("sh failed: error: no such crate"), "{told}");
        assert_eq!(told.lines().count(), 1);
        assert!(fs::read_to_string(log).unwrap().contains("later"));
    }

    #[test]
    fn a_missing_program_is_named() {
        let folder = tempfile::tempdir().unwrap();
        let mut command = Command::new("no-such-program-here");
        let told = quietly(&mut command, &folder.path().join("log")).unwrap_err();
        assert!(format!("{told:#}").starts_with("cannot run no-such-program-here"));
    }

    #[test]
    fn without_the_word_error_the_last_line_is_the_complaint() {
        assert_eq!(complaint("one\ntwo\n\n"), "two");
        assert_eq!(complaint(""), "it said nothing");
    }

    #[test]
    fn many_lines_become_one() {
        assert_eq!(one_line("a\n  b\tc\n"), "a b c");
    }
}
