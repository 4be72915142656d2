//! The project's own commands, one word each. `cargo xtask help` lists them.
//!
//! A failure is one plain line that names what is missing and the remedy; the exit code is then 1.

mod advisories;
mod bench;
mod browser;
mod debian;
mod engines;
mod fingerprint;
mod finish;
mod fuzz;
mod licences;
mod machine;
mod mutants;
mod serve;
mod shares;
mod site;
mod size;
mod steps;
mod testing;
mod toolchain;
mod tools;
mod versions;
mod zip;

use std::process::ExitCode;

use anyhow::{Result, bail};
use lexopt::prelude::*;
use machine::Machine;

const HELP: &str = "\
cargo xtask serve [--port N] [--open]   build the app and serve it at http://127.0.0.1:8080
cargo xtask build [--zip]               leave the finished site in dist/, and with --zip in dist.zip
cargo xtask test [--only LAYER]         run every test; LAYER is tidy, native or browser
cargo xtask bench                       time the heat model and the forecast, native and in Chromium
cargo xtask fuzz [--runs N]             give each fuzz target N inputs (20,000 unless told)
cargo xtask mutants [--file F]          change the rules of safety to see tests fail; takes hours
cargo xtask size                        what the built files weigh, by crate and against the budget
cargo xtask help                        this text

Each command first gets what it needs and is missing. Variables:
PULL_ORDER_TOOLCHAIN  rustup or distro: where the wasm32 target comes from
PULL_ORDER_TOOLS      folder for the build tools (default: pull-order in the user's cache folder)
PULL_ORDER_CHROMIUM   the browser the tests run in (default: a Chromium found on this machine)
PULL_ORDER_FIREFOX    the Firefox of the engines' journeys; \"none\" leaves them out
PULL_ORDER_WEBKIT     the Python that has GTK's WebKit; \"none\" leaves its journeys out
";

/// What the command line asked for.
#[derive(Debug, PartialEq)]
enum Task {
    Help,
    Build { zip: bool },
    Serve { port: u16, open: bool },
    Test { only: Option<testing::Layer> },
    Fuzz { runs: u32 },
    Mutants { file: Option<String> },
    Bench,
    Size,
}

fn main() -> ExitCode {
    match parse(lexopt::Parser::from_env()).and_then(run) {
        Ok(()) => ExitCode::SUCCESS,
        Err(reason) => {
            eprintln!("xtask: {}", steps::one_line(&format!("{reason:#}")));
            ExitCode::FAILURE
        }
    }
}

fn parse(mut arguments: lexopt::Parser) -> Result<Task> {
    let mut task = None;
    while let Some(argument) = arguments.next()? {
        task = Some(match (argument, task) {
            (Short('h') | Long("help"), _) => Task::Help,
            (Value(word), None) => match word.string()?.as_str() {
                "help" => Task::Help,
                "build" => Task::Build { zip: false },
                "serve" => Task::Serve { port: 8080, open: false },
                "test" => Task::Test { only: None },
                "fuzz" => Task::Fuzz { runs: fuzz::USUAL_RUNS },
                "bench" => Task::Bench,
                "mutants" => Task::Mutants { file: None },
                "size" => Task::Size,
                other => bail!("there is no command `{other}`; `cargo xtask help` lists them"),
            },
            (Long("zip"), Some(Task::Build { .. })) => Task::Build { zip: true },
            (Long("port"), Some(Task::Serve { open, .. })) => {
                Task::Serve { port: arguments.value()?.parse()?, open }
            }
            (Long("open"), Some(Task::Serve { port, .. })) => Task::Serve { port, open: true },
            (Long("only"), Some(Task::Test { .. })) => {
                Task::Test { only: Some(arguments.value()?.parse()?) }
            }
            (Long("runs"), Some(Task::Fuzz { .. })) => {
                Task::Fuzz { runs: arguments.value()?.parse()? }
            }
            (Long("file"), Some(Task::Mutants { .. })) => {
                Task::Mutants { file: Some(arguments.value()?.string()?) }
            }
            (other, _) => return Err(other.unexpected().into()),
        });
    }
    Ok(task.unwrap_or(Task::Help))
}

fn run(task: Task) -> Result<()> {
    let machine = Machine::this_one()?;
    match task {
        Task::Help => print!("{HELP}"),
        Task::Build { zip } => {
            site::build(&machine)?;
            if zip {
                zip::write(&machine)?;
            }
        }
        Task::Serve { port, open } => {
            site::build(&machine)?;
            serve::serve(&machine.root.join("dist"), port, open)?;
        }
        Task::Test { only } => testing::run(&machine, only)?,
        Task::Fuzz { runs } => fuzz::run(&machine, runs)?,
        Task::Mutants { file } => mutants::run(&machine, file.as_deref())?,
        Task::Bench => bench::run(&machine)?,
        Task::Size => {
            site::build(&machine)?;
            let compiled = machine.web_target().join(toolchain::TARGET);
            shares::report(&compiled.join("release/pull-order.wasm"))?;
            size::report(&machine.root.join("dist"))?;
        }
    }
    Ok(())
}

#[cfg(test)]
mod command_line {
    use super::*;

    fn parsed(words: &[&str]) -> Result<Task> {
        parse(lexopt::Parser::from_args(words))
    }

    #[test]
    fn reads_each_command() {
        assert_eq!(parsed(&[]).unwrap(), Task::Help);
        assert_eq!(parsed(&["bench"]).unwrap(), Task::Bench);
        assert_eq!(parsed(&["build"]).unwrap(), Task::Build { zip: false });
        assert_eq!(parsed(&["build", "--zip"]).unwrap(), Task::Build { zip: true });
        assert_eq!(parsed(&["serve"]).unwrap(), Task::Serve { port: 8080, open: false });
        assert_eq!(
            parsed(&["serve", "--port", "9000", "--open"]).unwrap(),
            Task::Serve { port: 9000, open: true }
        );
        assert_eq!(parsed(&["fuzz", "--runs", "7"]).unwrap(), Task::Fuzz { runs: 7 });
        assert_eq!(parsed(&["mutants"]).unwrap(), Task::Mutants { file: None });
        let file = Some("safety/held.rs".to_owned());
        assert_eq!(
            parsed(&["mutants", "--file", "safety/held.rs"]).unwrap(),
            Task::Mutants { file }
        );
        assert_eq!(
            parsed(&["test", "--only=browser"]).unwrap(),
            Task::Test { only: Some(testing::Layer::Browser) }
        );
    }

    #[test]
    fn refuses_what_it_does_not_know() {
        for words in [
            &["bake"][..],
            &["serve", "--port", "hot"],
            &["build", "--open"],
            &["serve", "--zip"],
            &["test", "--only", "x"],
            &["build", "extra"],
        ] {
            assert!(parsed(words).is_err(), "{words:?} should be refused");
        }
    }
}
