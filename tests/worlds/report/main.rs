//! `cargo run -p worlds --release -- report [COOKS [FIRST]]`: the forecasts against so many cooks of every
//! world, from a number on, as a page in `tests/worlds/results/study.md`. `table` in place of `report` only
//! prints, and `times` tells what the worlds themselves are like.
//!
//! `conduct [COOKS [FIRST]]` has a person cook so many by the duties alone, as a page in
//! `tests/worlds/results/conduct.md`; `figures COOKS FIRST SIZE` only prints what is counted of those of one
//! size.

use std::fmt::Write;
use std::path::Path;
use std::process::ExitCode;

use worlds::draw::{SETTINGS, Setup};
use worlds::kinds::KINDS;
use worlds::record::Record;
use worlds::study::judged::{Judged, judge};
use worlds::study::{conducted, kept, table};

/// Cooks of every world, if not said.
const EACH: u64 = 40;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let command = arguments.next().unwrap_or_default();
    let mut number =
        |otherwise: u64| arguments.next().and_then(|text| text.parse().ok()).unwrap_or(otherwise);
    let (each, first) = (number(EACH), number(0));
    let size = number(4) as usize;
    let cooks = || kept::cooks(first, each, &kept::directory());
    match command.as_str() {
        "times" => print!("{}", times(&cooks())),
        "table" => print!("{}", tables(&cooks())),
        "figures" => {
            let cooks = conducted::of_size(first, each, size);
            println!("{size} pieces: {:?}", twin::study::conduct::Figures::of(&cooks));
        }
        "conduct" => return written("conduct.md", &conduct(each, first)),
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
            return written("study.md", &page);
        }
        _ => {
            eprintln!("usage: worlds report|table|times|conduct|figures [cooks [first]]");
            return ExitCode::FAILURE;
        }
    }
    ExitCode::SUCCESS
}

/// Writes a page of results.
fn written(name: &str, page: &str) -> ExitCode {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("results").join(name);
    match std::fs::write(&path, page) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{}: {error}", path.display());
            ExitCode::FAILURE
        }
    }
}

/// The page on conduct.
fn conduct(each: u64, first: u64) -> String {
    let table = twin::study::conduct::table(
        "In worlds by which nothing was chosen",
        &conducted::cooks(first, each / 3),
    );
    format!(
        "# How a cook goes by the duties alone\n\nMade with `cargo run -p worlds --release -- conduct {each} \
         {first}`: the {} worlds take turns. The person is the one of `tests/twin/study/conduct`, the goals \
         those of its page.\n\n{table}",
        KINDS.len()
    )
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
