//! A small, fixed part of the study, for every test run. The whole is `twin report`; its results are
//! in `results/study.md`.

use std::sync::LazyLock;

use twin::cook::Setup;
use twin::cooks;
use twin::record::Record;
use twin::study::forecaster::{Forecaster, PerPound, StraightLine};
use twin::study::model::Model;
use twin::study::seating;
use twin::study::table::{self, Row, Score};
use twin::study::{self};

/// Limits for these few cooks, a little wider than the aims of the whole study: medians of 4.5, 2.1
/// and 1.2 min, and windows that hold 74 to 94 % of the truths, were seen.
const BEFORE: f64 = 7.0;
const ONCE: f64 = 3.0;
const TWICE: f64 = 2.0;
const HELD: core::ops::RangeInclusive<f64> = 0.6..=1.0;
/// And over all rows together, for in one of so few pieces windows of a fair width may well hold all.
const HELD_IN_ALL: core::ops::RangeInclusive<f64> = 0.7..=0.96;

/// Cooks of four to seven pieces: enough to notice a broken forecast, few enough to wait for.
static COOKS: LazyLock<Vec<(Setup, Record)>> = LazyLock::new(|| {
    (0..12)
        .map(|seed| cooks::draw_with(seed, 4 + seed as usize % 4))
        .map(|setup| (setup.clone(), Record::run(&setup)))
        .collect()
});

fn rules() -> (StraightLine, PerPound) {
    let per_pound = PerPound { minutes_per_kg: study::best_minutes_per_kg(&COOKS) };
    (StraightLine { otherwise: per_pound }, per_pound)
}

fn score(forecaster: &dyn Forecaster, row: Row) -> Score {
    table::score(forecaster, row, &COOKS)
}

#[test]
fn the_forecast_beats_minutes_per_pound_before_any_reading() {
    let (_, per_pound) = rules();
    let (forecast, rule) = (score(&Model, Row::Before), score(&per_pound, Row::Before));
    assert!(forecast.median() < rule.median(), "{} {}", forecast.median(), rule.median());
    assert!(forecast.median() < BEFORE, "{} min", forecast.median());
}

#[test]
fn one_own_reading_sharpens_the_forecast_beyond_the_straight_line() {
    let (line, _) = rules();
    let before = score(&Model, Row::Before).median();
    let once = score(&Model, Row::OwnOnce).median();
    assert!(once < before, "{once} after, {before} before");
    assert!(once < score(&line, Row::OwnOnce).median());
    let twice = score(&Model, Row::OwnTwice).median();
    assert!(twice < once, "{twice} after two, {once} after one");
    assert!(once < ONCE && twice < TWICE, "{once} after one, {twice} after two");
}

#[test]
fn most_truths_lie_in_the_pull_window() {
    let (mut in_all, mut pieces) = (0.0, 0.0);
    for row in Row::ALL {
        let score = score(&Model, row);
        let (held, count) = (score.held(), score.errors.len() as f64);
        assert!(HELD.contains(&held), "{}: {held}", row.name());
        (in_all, pieces) = (in_all + held * count, pieces + count);
    }
    let in_all = in_all / pieces;
    assert!(HELD_IN_ALL.contains(&in_all), "{in_all} of {pieces}");
}

#[test]
fn a_misplaced_leave_in_is_found_and_few_others_suspected() {
    let seats = seating::judge(&Model, &COOKS);
    let missed = seats.missed.len();
    let found = seats.missed.iter().filter(|(.., flagged)| *flagged).count();
    assert!(missed >= 1 && found == missed, "{found} of {missed}");
    assert!(seats.false_alarms <= 1, "{} of {}", seats.false_alarms, seats.seated);
}
