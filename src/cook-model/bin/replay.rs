//! Prints what the app would have forecast: `replay cook.json [--at TIME]`.
//!
//! `cook.json` is a cook saved by the app (its form is told in `cook::export`). With `--at`, entries
//! that happened later are left out and the forecast for that moment is printed; without it, one
//! forecast after each entry, at the moment it happened.
//!
//! Output: a JSON array of objects.
//!
//! | field | meaning |
//! | --- | --- |
//! | `at` | the moment forecast for (RFC 3339, UTC) |
//! | `after` | id of the last entry counted: `count`, `device` |
//! | `forecast.pieces[]` | every piece that was set out |
//! | `.piece` | its number |
//! | `.core_c` | core at that moment, C: `low`, `middle`, `high` of the central 80 % |
//! | `.pull` | when it reaches its pull temperature if left on: the same three, moments; null once off |
//! | `.ready` | chance that it is at its pull temperature, 0 to 1 |
//! | `.check_by` | latest moment for the next check at the cook's own limit of risk |
//! | `.peak` | `at` and `temperature_c` (three values) of the peak after the pull |
//! | `.seating` | of the leave-in: `misplaced` (chance), `off_by_mm`, `poked`; null without readings of it |
//! | `.curve_c` | pairs of a moment and the core's three values |
//! | `forecast.order` | piece numbers, the first to be pulled first |
//! | `forecast.order_certainty` | for each but the last, the chance that it is ready before the next |
//! | `forecast.checks[]` | lid openings to come: `at`, `pieces` |
//! | `forecast.surprises[]` | readings to ask about: `piece`, `entry`, `read_c`, `expected_c`, `slip` (chance) |

use std::process::ExitCode;

use cook_model::cook::export::import;
use cook_model::cook::{EntryId, Log, fold};
use cook_model::forecast::{Forecast, forecast};
use cook_model::quantity::Moment;
use serde::Serialize;

const USAGE: &str = "usage: replay cook.json [--at TIME], TIME such as 2026-06-01T17:42:00Z";

#[derive(Serialize)]
struct Row {
    at: Moment,
    after: Option<EntryId>,
    forecast: Forecast,
}

fn main() -> ExitCode {
    match run(&std::env::args().skip(1).collect::<Vec<_>>()) {
        Ok(text) => {
            println!("{text}");
            ExitCode::SUCCESS
        }
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::FAILURE
        }
    }
}

fn run(arguments: &[String]) -> Result<String, String> {
    let (path, at) = match arguments {
        [path] => (path, None),
        [path, flag, at] | [flag, at, path] if flag == "--at" => {
            let at: Moment = at.parse().map_err(|error| format!("{at}: {error}. {USAGE}"))?;
            (path, Some(at))
        }
        _ => return Err(USAGE.to_owned()),
    };
    let text = std::fs::read_to_string(path).map_err(|error| format!("{path}: {error}"))?;
    let log = import(&text).map_err(|problem| format!("{path}: {problem}"))?;
    for aside in log.set_aside() {
        eprintln!("left out, {}: {}", aside.why, aside.text);
    }
    let rows = match at {
        Some(at) => vec![row(&log, at)],
        None => {
            let mut moments: Vec<Moment> = log.entries().iter().map(|e| e.happened).collect();
            moments.sort();
            moments.dedup();
            moments.into_iter().map(|at| row(&log, at)).collect()
        }
    };
    serde_json::to_string_pretty(&rows).map_err(|error| error.to_string())
}

/// The forecast at a moment, from what had happened by then.
fn row(log: &Log, at: Moment) -> Row {
    let by_then = log.entries().iter().filter(|entry| entry.happened <= at);
    let after = by_then.clone().map(|entry| entry.id).max();
    let state = fold(&Log::from_entries(by_then.cloned()));
    Row { at, after, forecast: forecast(&state.history, at) }
}
