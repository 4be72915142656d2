//! The study's plots, as SVG.

use twin::chart::{Chart, Line};
use twin::study::table::{Row, Score};

use crate::Findings;

/// Median error against number of own readings, for each forecaster.
pub fn errors(findings: &Findings) -> String {
    let rows = [Row::Before, Row::OwnOnce, Row::OwnTwice];
    let lines: Vec<Line> = findings
        .scores
        .iter()
        .map(|(name, _, scores)| {
            let medians = rows.iter().filter_map(|row| Some(of(scores, *row)?.median()));
            let points = medians.enumerate().map(|(n, median)| (n as f64, median));
            Line { name, points: points.filter(|(_, y)| y.is_finite()).collect() }
        })
        .collect();
    let highest = lines.iter().flat_map(|l| &l.points).map(|(_, y)| *y).fold(1.0, f64::max);
    let up = (0..=(highest / 2.0).ceil() as usize).map(|tick| 2.0 * tick as f64).collect();
    Chart {
        title: "Median distance from the true pull time",
        labels: ["readings of the piece", "min"],
        along: vec![0.0, 1.0, 2.0],
        up,
        lines,
        diagonal: false,
        joined: true,
        names_low: false,
    }
    .svg()
}

/// How often the truth came before the 10 %, 50 % and 90 % points of the forecast.
pub fn reliability(findings: &Findings) -> String {
    let rows = [Row::Before, Row::ThinnestTwice, Row::OwnOnce, Row::OwnTwice];
    let ticks = || (0..=5).map(|tick| f64::from(tick) / 5.0).collect();
    let lines = findings
        .scores
        .iter()
        .filter(|(_, has_window, _)| *has_window)
        .flat_map(|(_, _, scores)| rows.iter().filter_map(|row| of(scores, *row)))
        .map(|score| Line {
            name: score.row.name(),
            points: [0.1, 0.5, 0.9].into_iter().zip(score.below).collect(),
        })
        .collect();
    Chart {
        title: "True pull times before each point of the forecast",
        labels: ["share said", "share found"],
        along: ticks(),
        up: ticks(),
        lines,
        diagonal: true,
        joined: true,
        names_low: true,
    }
    .svg()
}

fn of(scores: &[Score], row: Row) -> Option<&Score> {
    scores.iter().find(|score| score.row == row)
}
