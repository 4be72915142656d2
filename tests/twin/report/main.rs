//! `cargo run -p twin --release -- report [COOKS [BY RULES]]`: tries the forecast, and the trade's rules,
//! against simulated cooks, and writes a page and plots into `tests/twin/results`.
//!
//! With `table` for `report` it only prints, and leaves out the cooks by the trade's rules, which take
//! long.
//!
//! `seats COOKS FIRST` judges the leave-ins of so many cooks from a seed on, with only their piece
//! in the pit: a few hundred misplaced ones are soon simulated, and fewer say little of one in twenty.
//!
//! `conduct [COOKS [FIRST]]` has a person cook so many by the duties alone, as a page in
//! `tests/twin/conduct.md`, and goes on where it was cut off; `figures COOKS FIRST SIZE` prints what is
//! counted of those of one size, `story SEED SIZE` how one went, `pulls COOKS FIRST` where pieces are told to
//! be pulled.

mod conduct;
mod page;
mod plots;

use std::path::Path;
use std::process::ExitCode;
use std::{env, fs};

use twin::cook::Setup;
use twin::record::Record;
use twin::study::forecaster::{Forecaster, PerPound, StraightLine};
use twin::study::model::Model;
use twin::study::rules::{self, ByRule};
use twin::study::seating::{self, Seats};
use twin::study::table::{self, Row, Score};
use twin::study::{self};
use twin::{cache, cooks, cores};

/// Cooks in the whole study.
const COOKS: u64 = 300;
/// First seed of the cooks that were looked at while the forecast was being made.
const KNOWN: u64 = 0;
/// First seed of cooks kept back: nothing was fitted to them.
const FRESH: u64 = 1_000_000;
/// First seed of the cooks that judge the conduct. Nothing was chosen by these.
const CONDUCTED: u64 = 41_000_000;
const USAGE: &str =
    "usage: twin report|table [number of cooks, 1 to 5000 [of which by the trade's rules]]
       twin seats|conduct|pulls [number of cooks [first seed]]
       twin figures [number of cooks [first seed [pieces]]]
       twin story SEED PIECES";

/// All that the page tells.
pub struct Findings {
    /// The cooks tried.
    pub cooks: Vec<(Setup, Record)>,
    /// For each forecaster: its name, whether it has a window, and its score in each row.
    pub scores: Vec<(&'static str, bool, Vec<Score>)>,
    /// Probe placement.
    pub seats: Seats,
    /// The first cooks by each of the trade's rules.
    pub by_rules: Vec<(&'static str, Vec<ByRule>)>,
}

impl Findings {
    /// Follows the rules in the first cooks.
    fn follow_rules(&mut self, followed: usize) {
        let first = &self.cooks[..followed.min(self.cooks.len())];
        eprintln!("following the trade's rules");
        let (line, per_pound) = trade_rules(&self.cooks);
        let rules: [&dyn Forecaster; 2] = [&line, &per_pound];
        let by_rule = |rule: &dyn Forecaster| {
            let cooks = cores::each(first, |(setup, record)| rules::cook(rule, setup, record));
            (rule.name(), cooks)
        };
        self.by_rules = rules.map(by_rule).to_vec();
    }
}

fn trade_rules(cooks: &[(Setup, Record)]) -> (StraightLine, PerPound) {
    let per_pound = PerPound { minutes_per_kg: study::best_minutes_per_kg(cooks) };
    (StraightLine { otherwise: per_pound }, per_pound)
}

/// How the leave-ins of `count` cooks from a seed on are judged.
fn judged(first: u64, count: u64) -> String {
    let seeds: Vec<u64> = (first..first + count).collect();
    let cooks = cores::each(&seeds, |seed| {
        let setup = cooks::draw_probed(*seed);
        let record = Record::run(&setup);
        (setup, record)
    });
    let seats = seating::judge(&Model, &cooks);
    format!(
        "{:.1} % of {} misplaced leave-ins flagged, {:.1} % of {} well seated",
        100.0 * seats.found(seating::MISPLACED),
        seats.missed.len(),
        100.0 * seats.false_alarm_rate(),
        seats.seated
    )
}

/// Success, or what went wrong.
fn wrote(done: Result<(), std::io::Error>) -> ExitCode {
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("the page could not be written: {error}");
            ExitCode::FAILURE
        }
    }
}

fn printed(text: &str) -> ExitCode {
    println!("{text}");
    ExitCode::SUCCESS
}

fn main() -> ExitCode {
    let mut arguments = env::args().skip(1);
    let command = arguments.next().unwrap_or_default();
    // The second number is a count or a seed, and the first number of cooks where it is not told.
    let mut number =
        |otherwise: u64| arguments.next().map_or(Some(otherwise), |text| text.parse::<u64>().ok());
    let count = number(COOKS);
    let second = number(if command == "conduct" { CONDUCTED } else { count.unwrap_or(COOKS) });
    let size = number(4);
    let (Some(count), Some(second), Some(size)) = (count, second, size) else {
        eprintln!("{USAGE}");
        return ExitCode::FAILURE;
    };
    match (command.as_str(), count) {
        ("story", seed) => printed(&conduct::story(seed, second as usize)),
        ("table", 1..=5000) => printed(&page::write(&study(KNOWN, count), &study(FRESH, count))),
        ("figures", 1..=5000) => printed(&conduct::figures(second, count, size as usize)),
        ("pulls", 1..=5000) => printed(&conduct::told_pulls(second, count)),
        ("seats", 1..) => printed(&judged(second, count)),
        ("conduct", 1..=5000) => wrote(conduct::write(count, second)),
        ("report", 1..=5000) => wrote(report(count, second as usize)),
        _ => {
            eprintln!("{USAGE}");
            ExitCode::FAILURE
        }
    }
}

/// All but the cooks by the trade's rules.
fn study(first: u64, count: u64) -> Findings {
    eprintln!("simulating {count} cooks from seed {first}, or reading them back");
    let records = cache::records(first, count, &cache::directory());
    let cooks: Vec<(Setup, Record)> =
        records.into_iter().map(|record| (cooks::draw(record.seed), record)).collect();
    let (line, per_pound) = trade_rules(&cooks);
    let forecasters: [&dyn Forecaster; 3] = [&Model, &line, &per_pound];
    let scores = forecasters
        .iter()
        .map(|forecaster| {
            eprintln!("scoring {}", forecaster.name());
            let rows = Row::ALL.map(|row| table::score(*forecaster, row, &cooks)).to_vec();
            (forecaster.name(), forecaster.has_window(), rows)
        })
        .collect();
    eprintln!("judging leave-ins");
    let seats = seating::judge(&Model, &cooks);
    Findings { cooks, scores, seats, by_rules: Vec::new() }
}

fn report(count: u64, followed: usize) -> Result<(), std::io::Error> {
    let mut findings = study(KNOWN, count);
    let fresh = study(FRESH, count);
    if followed > 0 {
        findings.follow_rules(followed);
    }
    let results = Path::new(env!("CARGO_MANIFEST_DIR")).join("results");
    fs::create_dir_all(&results)?;
    fs::write(results.join("errors.svg"), plots::errors(&findings))?;
    fs::write(results.join("reliability.svg"), plots::reliability(&findings))?;
    let page = page::write(&findings, &fresh);
    fs::write(results.join("study.md"), &page)?;
    println!("{page}");
    Ok(())
}
