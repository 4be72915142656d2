//! The machine as the commands see it: where the project is, and what is on PATH.

use std::env;
use std::ffi::{OsStr, OsString};
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result};

/// Where programs and folders are. The tests build one with stand-in programs on its PATH.
#[derive(Debug, Clone)]
pub struct Machine {
    /// The project's top folder.
    pub root: PathBuf,
    /// The search path for programs.
    pub path: OsString,
    /// Where the build tools are kept, outside the checkout.
    pub tools: PathBuf,
    /// What `PULL_ORDER_TOOLCHAIN` says.
    pub wished_toolchain: Option<String>,
}

impl Machine {
    /// This machine, as the environment describes it.
    pub fn this_one() -> Result<Self> {
        let crate_folder = env::var_os("CARGO_MANIFEST_DIR")
            .context("run this by `cargo xtask`, which says where the project is")?;
        let root = Path::new(&crate_folder).ancestors().nth(2);
        Ok(Self {
            root: root.context("src/xtask is not inside the project")?.to_owned(),
            path: env::var_os("PATH").unwrap_or_default(),
            tools: tools_folder()?,
            wished_toolchain: env::var("PULL_ORDER_TOOLCHAIN").ok().filter(|wish| !wish.is_empty()),
        })
    }

    /// Where `program` is, if it is on PATH.
    pub fn find(&self, program: &str) -> Option<PathBuf> {
        self.each(program).next()
    }

    /// Every place on PATH where `program` is, the first found before the others.
    pub fn each(&self, program: &str) -> impl Iterator<Item = PathBuf> {
        let places = env::split_paths(&self.path).map(move |folder| folder.join(program));
        places.filter(|file| file.is_file())
    }

    /// A command for `program` as found on this machine's PATH.
    pub fn command(&self, program: &str) -> Result<Command> {
        let file = self.find(program).with_context(|| format!("`{program}` is not on PATH"))?;
        let mut command = Command::new(file);
        command.env("PATH", &self.path).current_dir(&self.root);
        Ok(command)
    }

    /// As [`command`](Self::command), for work that is to leave the processor to what runs beside it,
    /// where the system has `nice`.
    pub fn unhurried(&self, program: &str) -> Result<Command> {
        let file = self.find(program).with_context(|| format!("`{program}` is not on PATH"))?;
        let Ok(mut command) = self.command("nice") else { return self.command(program) };
        command.args(["-n", "10"]).arg(file);
        Ok(command)
    }

    /// The output of `program` with `arguments`, or nothing if it is missing or fails.
    pub fn ask(&self, program: &str, arguments: &[&str]) -> Option<String> {
        let output = self.command(program).ok()?.args(arguments).output().ok()?;
        output.status.success().then(|| String::from_utf8_lossy(&output.stdout).into_owned())
    }

    /// Where cargo puts what it builds for the browser. Native builds have `target` itself: the two
    /// may use different compilers, and would throw away each other's work.
    pub fn web_target(&self) -> PathBuf {
        self.root.join("target/web")
    }

    /// The file that keeps the output of one step.
    pub fn log(&self, step: &str) -> PathBuf {
        self.web_target().join("log").join(format!("{step}.log"))
    }
}

/// `folders` put before `path`.
pub fn path_with(folders: &[PathBuf], path: &OsStr) -> Result<OsString> {
    let all = folders.iter().cloned().chain(env::split_paths(path));
    env::join_paths(all).context("a folder's name does not fit into PATH")
}

fn tools_folder() -> Result<PathBuf> {
    let set = |name: &str| env::var_os(name).filter(|value| !value.is_empty()).map(PathBuf::from);
    if let Some(folder) = set("PULL_ORDER_TOOLS") {
        return Ok(folder);
    }
    let home = || set("HOME").or_else(|| set("USERPROFILE"));
    let cache = if cfg!(target_os = "macos") {
        home().map(|home| home.join("Library/Caches"))
    } else {
        set("XDG_CACHE_HOME").or_else(|| home().map(|home| home.join(".cache")))
    };
    Ok(cache.context("neither HOME nor PULL_ORDER_TOOLS is set")?.join("pull-order"))
}

/// Machines for tests: an empty PATH but for scripts that stand in for the real programs.
#[cfg(test)]
pub mod stand_in {
    use std::fs;
    use std::io::Write;
    use std::process::Stdio;

    use super::*;

    /// A machine whose project, tools and programs are all in `folder`; `programs` are pairs of a
    /// name and a shell script. The scripts also find the system's own basic programs.
    pub fn machine(folder: &Path, programs: &[(&str, &str)]) -> Machine {
        for (name, script) in programs {
            let script = format!("#!/bin/sh\nPATH=/usr/bin:/bin\n{script}\n");
            write_program(&folder.join(name), &script);
        }
        Machine {
            root: folder.to_owned(),
            path: folder.as_os_str().to_owned(),
            tools: folder.join("tools"),
            wished_toolchain: None,
        }
    }

    /// Writes an executable file from another process: were it open in this one, another test that
    /// starts a program at that moment would hold it open, and it could not be run.
    fn write_program(file: &Path, text: &str) {
        let mut writer = Command::new("sh")
            .args(["-c", "cat > \"$0\" && chmod +x \"$0\""])
            .arg(file)
            .stdin(Stdio::piped())
            .spawn()
            .unwrap();
        writer.stdin.take().unwrap().write_all(text.as_bytes()).unwrap();
        assert!(writer.wait().unwrap().success());
    }

    /// What a stand-in wrote beside itself.
    pub fn read(folder: &Path, name: &str) -> String {
        fs::read_to_string(folder.join(name)).unwrap_or_default()
    }
}
