//! Tables of judgements.

use std::fmt::Write;

use super::judged::{Judged, State};
use crate::draw::SETTINGS;
use crate::kinds::KINDS;

/// The states in the order of the tables, with their titles.
pub const STATES: [(State, &str); 6] = [
    (State::Before, "before any reading"),
    (State::One, "one own reading"),
    (State::Two, "two own readings"),
    (State::OthersWithout, "others, nothing read"),
    (State::Others, "others, thinnest read"),
    (State::Peak, "peak after the pull, F"),
];

/// A group's figures.
pub struct Figures {
    /// How many.
    pub count: usize,
    /// Median distance, and what nine in ten stay under.
    pub off: [f64; 2],
    /// Median with its sign.
    pub signed: f64,
    /// Share of windows that held the truth.
    pub held: f64,
    /// Median width.
    pub width: f64,
}

impl Figures {
    /// Of a group.
    pub fn of(judged: &[&Judged]) -> Self {
        let sorted = |value: fn(&Judged) -> f64| {
            let mut all: Vec<f64> = judged.iter().map(|j| value(j)).collect();
            all.sort_by(f64::total_cmp);
            all
        };
        let far = sorted(|j| j.off.abs());
        let held = judged.iter().filter(|j| j.held).count();
        Self {
            count: judged.len(),
            off: [twin::study::quantile(&far, 0.5), twin::study::quantile(&far, 0.9)],
            signed: twin::study::quantile(&sorted(|j| j.off), 0.5),
            held: held as f64 / judged.len().max(1) as f64,
            width: twin::study::quantile(&sorted(|j| j.width), 0.5),
        }
    }

    fn cell(&self) -> String {
        let Self { off: [middle, _], signed, held, .. } = self;
        format!("{middle:.1} ({signed:+.1}), {:.0} %", 100.0 * held)
    }
}

/// All together, with counts and widths.
pub fn all(judged: &[Judged]) -> String {
    let mut text = String::from(
        "| state | pieces | median off | nine in ten under | signed | window holds | window's width |\n\
         | --- | --- | --- | --- | --- | --- | --- |\n",
    );
    for (state, title) in STATES {
        let f = Figures::of(&judged.iter().filter(|j| j.state == state).collect::<Vec<_>>());
        let [off, most] = f.off;
        let _ = writeln!(
            text,
            "| {title} | {} | {off:.1} | {most:.1} | {:+.1} | {:.0} % | {:.1} |",
            f.count,
            f.signed,
            100.0 * f.held,
            f.width
        );
    }
    text
}

/// Cells smaller than this say little.
const ENOUGH: usize = 15;

/// The worst cell of world and setting in each state, by how seldom its window held.
pub fn worst(judged: &[Judged]) -> String {
    let mut text = String::from("| state | worst cell | |\n| --- | --- | --- |\n");
    for (state, title) in STATES {
        let cells = KINDS.iter().enumerate().flat_map(|(world, kind)| {
            SETTINGS.map(|set| {
                let belongs = |j: &&Judged| j.state == state && j.world == world && j.set == set;
                let of_it = Figures::of(&judged.iter().filter(belongs).collect::<Vec<_>>());
                (format!("{} at {set:.0} F", kind.name), of_it)
            })
        });
        let enough = cells.filter(|(_, figures)| figures.count >= ENOUGH);
        if let Some((name, figures)) = enough.min_by(|a, b| a.1.held.total_cmp(&b.1.held)) {
            let _ = writeln!(text, "| {title} | {name} | {} |", figures.cell());
        }
    }
    text
}

/// By a group: median distance, in brackets with its sign, and how often the window held.
pub fn by(judged: &[Judged], what: &str, groups: &[Group]) -> String {
    let titles: Vec<&str> = STATES.iter().map(|(_, title)| *title).collect();
    let mut text = format!("| {what} | {} |\n|{}\n", titles.join(" | "), " --- |".repeat(7));
    for (name, belongs) in groups {
        let cells = STATES.map(|(state, _)| {
            let of_it = judged.iter().filter(|j| j.state == state && belongs(j));
            Figures::of(&of_it.collect::<Vec<_>>()).cell()
        });
        let _ = writeln!(text, "| {name} | {} |", cells.join(" | "));
    }
    text
}

/// A group's name and who belongs to it.
pub type Group = (String, Box<dyn Fn(&Judged) -> bool>);

/// By world.
pub fn worlds() -> Vec<Group> {
    let group = |(world, kind): (usize, &crate::kinds::Kind)| -> Group {
        (kind.name.to_owned(), Box::new(move |j| j.world == world))
    };
    KINDS.iter().enumerate().map(group).collect()
}

/// By what the pit is set to.
pub fn settings() -> Vec<Group> {
    let group = |set: f64| -> Group { (format!("{set:.0} F"), Box::new(move |j| j.set == set)) };
    SETTINGS.map(group).into()
}

/// By thickness, and by whether it was measured.
pub fn thicknesses() -> Vec<Group> {
    let within = |from: f64, to: f64| -> Group {
        let belongs = move |j: &Judged| (from..to).contains(&j.thickness);
        (format!("{from:.0} to {to:.0} mm"), Box::new(belongs))
    };
    vec![
        within(20.0, 34.0),
        within(34.0, 38.0),
        within(38.0, 42.0),
        within(42.0, 60.0),
        ("measured".into(), Box::new(|j| j.measured)),
        ("guessed from the weight".into(), Box::new(|j| !j.measured)),
    ]
}
