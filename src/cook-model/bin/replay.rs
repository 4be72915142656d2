//! Prints what the app would have forecast and asked for: `replay cook.json [--at TIME]`.
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
//! | `seen_at` | the moment of the last entry counted, for which the duties were made |
//! | `stages` | by piece number: `raw`, `on`, `resting`, `proved`, `packed` |
//! | `duties[]` | what is to be done: what is due first, most urgent first, then what comes, by time |
//! | `.act.do` | what: see `cook::duties::Act` |
//! | `.pieces` | with which, in order |
//! | `.from`, `.until` | from when it is due, and when it ends by itself (null: only by an entry) |
//! | `.due` | whether it is due at `at` |
//! | `.why` | the reason, with its figures: `because` is `usual`, `forecast`, `reading`, `peak`, `pit`, `limit` |
//! | `.bells[]` | when it calls: `at`, and the call's name `id` |
//! | `.doing[]` | how it is done, the usual way first: `by` is `write` (these `entries`, each a `what` as stored), `type_core` (an instant-read of each of `pieces`, a `core_read` entry), `type_pit` (a `pit_read` entry), `type_pieces` |
//! | `ignored[]` | entries by then that changed nothing: `entry`, `why` |
//! | `forecast.pieces[]` | every piece that was set out |
//! | `.piece` | its number |
//! | `.core_c` | core at that moment, C: `low`, `middle`, `high` of the central 80 % |
//! | `.pull_at_c` | the temperature at which to pull it; `.proving_pull_c` the lowest after which its rest proves it |
//! | `.goes_back` | chance that a pull at `pull_at_c` leaves it unproved; null once off |
//! | `.left_on_c` | pairs of a moment and the core's three values, if it is left on |
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

use std::collections::BTreeMap;
use std::process::ExitCode;

use cook_model::cook::duties::{Doing, Duty, duties, in_order};
use cook_model::cook::export::import;
use cook_model::cook::{EntryId, Log, Seen, Stage};
use cook_model::forecast::{Forecast, forecast};
use cook_model::piece::PieceId;
use cook_model::quantity::Moment;
use serde::Serialize;

const USAGE: &str = "usage: replay cook.json [--at TIME], TIME such as 2026-06-01T17:42:00Z";

#[derive(Serialize)]
struct Row {
    at: Moment,
    after: Option<EntryId>,
    seen_at: Moment,
    stages: BTreeMap<PieceId, Stage>,
    duties: Vec<Told>,
    ignored: Vec<Ignored>,
    forecast: Forecast,
}

#[derive(Serialize)]
struct Ignored {
    entry: EntryId,
    why: String,
}

/// A duty, whether it is due, and how it is done.
#[derive(Serialize)]
struct Told {
    #[serde(flatten)]
    duty: Duty,
    due: bool,
    doing: Vec<Doing>,
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

/// The forecast and the duties at a moment, from what had happened by then.
fn row(log: &Log, at: Moment) -> Row {
    let by_then = log.entries().iter().filter(|entry| entry.happened <= at);
    let after = by_then.clone().map(|entry| entry.id).max();
    let seen = Seen::of(&Log::from_entries(by_then.cloned()), at);
    let state = seen.state_at(at);
    let stages =
        state.each_piece().map(|(standing, history)| (history.id, standing.stage)).collect();
    let all = duties(&seen);
    let told = |duty: &Duty| Told { due: duty.is_due(at), doing: duty.doing(), duty: duty.clone() };
    let ignored = seen.state.ignored.iter();
    let ignored = ignored.map(|it| Ignored { entry: it.entry, why: it.why.to_string() }).collect();
    Row {
        at,
        after,
        seen_at: seen.at,
        stages,
        duties: in_order(&all, at).into_iter().map(told).collect(),
        ignored,
        forecast: forecast(&seen.state.history, at),
    }
}
