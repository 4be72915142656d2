//! The `replay` program on a cook's file: what it prints is what its documentation says, and what
//! the app itself would have shown.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use std::process::{Command, Output};

use cook_model::cook::export::import;
use cook_model::cook::{Log, fold};
use cook_model::forecast::forecast;
use cook_model::quantity::Moment;
use serde_json::Value;

/// A cook of two pieces: the first is pulled, the leave-in of the second shows too much.
const FILE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/golden/small_cook_v1.json");
const PROGRAM: &str = include_str!("../bin/replay.rs");
/// After the second piece was read with both thermometers.
const BOTH_READ: &str = "2026-06-01T16:45:40Z";

fn replay(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_replay")).args(arguments).output().unwrap()
}

/// The rows printed.
fn rows(arguments: &[&str]) -> Vec<Value> {
    let output = replay(arguments);
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

fn log() -> Log {
    import(&std::fs::read_to_string(FILE).unwrap()).unwrap()
}

/// Three values in order.
fn ordered(band: &Value) -> bool {
    let at = |end: &str| band[end].as_f64().unwrap();
    at("low") <= at("middle") && at("middle") <= at("high")
}

#[test]
fn at_a_moment_it_prints_every_documented_field() {
    let [row] = &rows(&[FILE, "--at", BOTH_READ])[..] else { panic!("one row") };
    assert_eq!(row["at"], BOTH_READ);
    assert_eq!(row["after"], serde_json::json!({ "count": 11, "device": 7 }));
    let forecast = &row["forecast"];
    let [small, thick] = &forecast["pieces"].as_array().unwrap()[..] else { panic!("two pieces") };
    assert_eq!((&small["piece"], &thick["piece"]), (&1.into(), &2.into()));
    assert!(ordered(&small["core_c"]) && ordered(&thick["core_c"]));
    assert!((small["core_c"]["middle"].as_f64().unwrap() - 64.0).abs() < 1.5, "{small}");
    let window = |end: &str| thick["pull"][end].as_str().unwrap().parse::<Moment>().unwrap();
    assert!(window("low") < window("middle") && window("middle") < window("high"));
    assert!((0.0..=1.0).contains(&thick["ready"].as_f64().unwrap()));
    assert!(thick["check_by"].as_str().unwrap().parse::<Moment>().is_ok());
    assert!(ordered(&thick["peak"]["temperature_c"]) && thick["peak"]["at"].is_string());
    assert!(thick["seating"]["misplaced"].as_f64().unwrap() > 0.9, "{}", thick["seating"]);
    assert!(thick["seating"]["off_by_mm"].as_f64().unwrap() > 6.0);
    assert!(small["seating"].is_null());
    let (when, core) = (&thick["curve_c"][3][0], &thick["curve_c"][3][1]);
    assert!(when.is_string() && ordered(core));
    assert_eq!(forecast["order"], serde_json::json!([1, 2]));
    assert!(forecast["order_certainty"][0].as_f64().unwrap() > 0.9);
    assert!(forecast["checks"][0]["at"].is_string());
    assert_eq!(forecast["checks"][0]["pieces"][0], 1);
    assert_eq!(forecast["surprises"], serde_json::json!([]));
}

#[test]
fn its_documentation_names_every_field_that_it_prints() {
    let documented = |field: &str| {
        let table = PROGRAM.lines().take_while(|line| line.starts_with("//!"));
        table.filter(|line| line.starts_with("//! |")).any(|line| line.contains(field))
    };
    for row in rows(&[FILE]) {
        let forecast = row["forecast"].as_object().unwrap();
        let pieces = forecast["pieces"].as_array().unwrap().iter().flat_map(|p| p.as_object());
        let of_pieces = pieces.flat_map(|piece| piece.keys().filter(|key| *key != "piece"));
        let of_forecast = forecast.keys().filter(|key| *key != "at");
        for field in row.as_object().unwrap().keys().chain(of_forecast).chain(of_pieces) {
            assert!(documented(field), "{field}");
        }
    }
}

#[test]
fn without_a_moment_it_prints_a_row_after_each() {
    let rows = rows(&[FILE]);
    let log = log();
    let mut moments: Vec<Moment> = log.entries().iter().map(|entry| entry.happened).collect();
    moments.dedup();
    let printed = rows.iter().map(|row| row["at"].as_str().unwrap().parse::<Moment>().unwrap());
    assert_eq!(printed.collect::<Vec<_>>(), moments);
    // The last row is the forecast the app makes at that moment, to the last digit.
    let last = moments.last().copied().unwrap();
    let app = serde_json::to_value(forecast(&fold(&log).history, last)).unwrap();
    assert_eq!(rows.last().unwrap()["forecast"], app);
    // Once off, a piece has no window any more.
    assert!(rows.last().unwrap()["forecast"]["pieces"][0]["pull"].is_null());
}

#[test]
fn what_changed_nothing_is_said_and_why() {
    // A piece of 1,200 g is no breast: without it nothing is forecast, and the row says so.
    let text =
        std::fs::read_to_string(FILE).unwrap().replace("\"weight_g\":280.0", "\"weight_g\":1200.0");
    let heavy = std::env::temp_dir().join("a-cook-with-a-heavy-piece.json");
    std::fs::write(&heavy, text).unwrap();
    let rows = rows(&[heavy.to_str().unwrap()]);
    let ignored = &rows.last().unwrap()["ignored"];
    assert_eq!(ignored[0]["why"], "its value is not possible", "{ignored}");
    assert!(ignored[0]["entry"]["count"].is_u64());
}

#[test]
fn what_cannot_be_read_is_said() {
    let left_out = replay(&[FILE, "--at", BOTH_READ]);
    assert!(String::from_utf8_lossy(&left_out.stderr).contains("smudge"));
    for (arguments, words) in [
        (&["no-such-file.json"][..], "no-such-file.json"),
        (&[FILE, "--at", "supper"][..], "usage"),
        (&[][..], "usage"),
    ] {
        let output = replay(arguments);
        assert!(!output.status.success());
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        assert!(said.contains(words), "{said}");
    }
}
