//! `cargo run -p worlds --release -- report [COOKS [FIRST]]`: the forecasts against so many cooks of every
//! world, from a number on, as a page in `tests/worlds/results/study.md`. `table` in place of `report` only
//! prints, `times` tells what the worlds themselves are like, and `sensitivities` how far each constant of
//! the heat model moves a pull.

use std::fmt::Write;
use std::path::Path;
use std::process::ExitCode;

use worlds::draw::{SETTINGS, Setup};
use worlds::kinds::KINDS;
use worlds::record::Record;
use worlds::study::judged::{Judged, judge};
use worlds::study::sensitivity::{AS_IT_IS, MOVES, pull_and_rise};
use worlds::study::{kept, table};

/// Cooks of every world, if not said.
const EACH: u64 = 40;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let command = arguments.next().unwrap_or_default();
    let mut number =
        |otherwise: u64| arguments.next().and_then(|text| text.parse().ok()).unwrap_or(otherwise);
    let (each, first) = (number(EACH), number(0));
    let cooks = || kept::cooks(first, each, &kept::directory());
    match command.as_str() {
        "sensitivities" => print!("{}", sensitivities()),
        "times" => print!("{}", times(&cooks())),
        "table" => print!("{}", tables(&cooks())),
        "report" => {
            let page = format!(
                "# The forecasts in worlds that nothing was tuned to\n\nMade with `cargo run -p worlds \
                 --release -- report {each} {first}`. {} worlds of {each} cooks, pits set from 225 to 325 F in \
                 equal shares; what the worlds are is told in `tests/worlds/kinds.rs`. Minutes, forecast less \
                 truth; of peaks F. In each cell: median distance, in brackets with its sign, and how often \
                 the 80 % window held the truth.\n\n{}",
                KINDS.len(),
                tables(&cooks())
            );
            let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("results/study.md");
            if let Err(error) = std::fs::write(&path, page) {
                eprintln!("{}: {error}", path.display());
                return ExitCode::FAILURE;
            }
        }
        _ => {
            eprintln!(
                "usage: worlds report|table|times|sensitivities [cooks of every world [first]]"
            );
            return ExitCode::FAILURE;
        }
    }
    ExitCode::SUCCESS
}

fn tables(cooks: &[(Setup, Record)]) -> String {
    let judged: Vec<Judged> = twin::cores::each(cooks, judge).into_iter().flatten().collect();
    let groups = [
        ("world", table::worlds()),
        ("pit set to", table::settings()),
        ("thickness", table::thicknesses()),
    ];
    let by = groups.map(|(what, groups)| table::by(&judged, what, &groups));
    format!("{}\n{}\n{}", table::all(&judged), table::worst(&judged), by.join("\n"))
}

/// What each constant does to a usual piece.
fn sensitivities() -> String {
    let mut text = String::from("| moved | 225 F | 250 F | 275 F | 300 F |\n|");
    text.push_str(&" --- |".repeat(5));
    for (name, moved) in [("as it is", AS_IT_IS)].iter().chain(&MOVES) {
        let _ = write!(text, "\n| {name} |");
        for set in [225.0, 250.0, 275.0, 300.0] {
            let (Some(here), Some(usual)) =
                (pull_and_rise(moved, set), pull_and_rise(&AS_IT_IS, set))
            else {
                text.push_str(" never |");
                continue;
            };
            let _ = if *name == "as it is" {
                write!(text, " {:.1} min, {:.1} F |", here.0, here.1)
            } else {
                write!(text, " {:+.1} min, {:+.1} F |", here.0 - usual.0, here.1 - usual.1)
            };
        }
    }
    text.push('\n');
    text
}

/// A figure of one piece of a cook, if it has one.
type Value<'a> = &'a dyn Fn(&(Setup, Record), usize) -> Option<f64>;

/// Median true time to the pull, min, by world and setting; the rise after it, F; water lost, kg/m2.
fn times(cooks: &[(Setup, Record)]) -> String {
    let mut text = String::new();
    for (world, kind) in KINDS.iter().enumerate() {
        let _ = write!(text, "| {} |", kind.name);
        for set in SETTINGS {
            let of_it = || cooks.iter().filter(|(s, _)| s.world == world && s.set == set);
            let median = |value: Value<'_>| {
                let mut all: Vec<f64> = of_it()
                    .flat_map(|cook| (0..cook.0.told.len()).filter_map(|piece| value(cook, piece)))
                    .collect();
                all.sort_by(f64::total_cmp);
                twin::study::quantile(&all, 0.5)
            };
            let pull = median(&|(_, r), p| r.pull[p].map(|s| s / 60.0));
            let rise = median(&|(s, r), p| r.pull[p].map(|_| 1.8 * (r.peak[p] - s.pull_at)));
            let lost = median(&|(_, r), p| r.pull[p].map(|_| r.lost[p]));
            let never = of_it().flat_map(|(_, r)| &r.pull).filter(|pull| pull.is_none()).count();
            let _ = write!(text, " {pull:.0} min, {rise:.1} F, {lost:.2}, {never} never |");
        }
        text.push('\n');
    }
    text
}
