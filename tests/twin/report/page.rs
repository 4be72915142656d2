//! The study as a Markdown page.

use std::fmt::Write;

use twin::study::quantile;
use twin::study::seating::MISPLACED;
use twin::study::table::{Row, Score};

use crate::Findings;

/// Fahrenheit degrees in a Celsius degree.
const F_PER_C: f64 = 1.8;

/// The page: the findings, and those on cooks that were kept back.
pub fn write(findings: &Findings, fresh: &Findings) -> String {
    let mut page = String::new();
    let pieces: usize = findings.cooks.iter().map(|(setup, _)| setup.told.len()).sum();
    let mut times: Vec<f64> =
        findings.cooks.iter().flat_map(|(_, r)| r.pull.iter().map(|p| p / 60.0)).collect();
    times.sort_by(f64::total_cmp);
    let [low, middle, high] = [0.05, 0.5, 0.95].map(|share| quantile(&times, share));
    let cooks = findings.cooks.len();
    let by_rules = findings.by_rules.first().map_or(0, |(_, cooks)| cooks.len());
    let followed = match by_rules {
        count if count == cooks => String::new(),
        count => format!(" {count}"),
    };
    let text = format!(
        "# The forecasts against simulated cooks\n\n\
         Made with `cargo run -p twin --release -- report {cooks}{followed}`; the same seeds give the same \
         page. {cooks} cooks, {pieces} pieces; true pull times {low:.0} to {high:.0} min (5 % and \
         95 %), median {middle:.0} min. The cooks come from a 3-D simulator that shares no code with \
         the forecast.\n\n"
    );
    page.push_str(&text);
    page.push_str(&pull_times(findings, fresh));
    if by_rules > 0 {
        page.push_str(&following_rules(findings, by_rules));
    }
    page.push_str(&seats(findings, fresh));
    page
}

fn pull_times(findings: &Findings, fresh: &Findings) -> String {
    let mut text = String::from(
        "## Pull times\n\nMedian distance from the true pull time, min, and in brackets the one that \
         nine in ten stay under; then how often the 80 % window held the truth, and the median signed \
         error of the forecast (early is negative). The straight line runs through the last two \
         readings, or from the start through a single one; without readings it falls back on the \
         minutes per pound, whose constant is the best for these very cooks. Fresh cooks are as many \
         others, of seeds that nothing was fitted to.\n\n\
         | state | aim | pieces | forecast | window holds | signed | fresh: forecast | window holds |",
    );
    for (name, ..) in &findings.scores[1..] {
        let _ = write!(text, " {name} |");
    }
    text.push('\n');
    text.push_str(&"| --- ".repeat(6 + 2 + findings.scores.len() - 1));
    text.push_str("|\n");
    for (place, row) in Row::ALL.into_iter().enumerate() {
        let score = |forecaster: usize| &findings.scores[forecaster].2[place];
        let own = score(0);
        let kept_back = &fresh.scores[0].2[place];
        let _ = writeln!(
            text,
            "| {} | {} | {} | {} | {:.0} % | {:+.1} | {} | {:.0} % | {} | {} |",
            row.name(),
            aim(row),
            own.errors.len(),
            error(own),
            100.0 * own.held(),
            own.bias,
            error(kept_back),
            100.0 * kept_back.held(),
            error(score(1)),
            error(score(2)),
        );
    }
    let left = |findings: &Findings| {
        let of = |row: Row| {
            findings.scores[0].2.iter().find(|s| s.row == row).map_or(f64::NAN, Score::median)
        };
        100.0 * of(Row::ThinnestTwice) / of(Row::ThinnestUnread)
    };
    let _ = write!(
        text,
        "\nTwo readings on the thinnest piece leave {:.0} % of the other pieces' error ({:.0} % for fresh \
         cooks).\n\n\
         ![Error against number of readings](errors.svg)\n\n\
         ![Reliability of the pull window](reliability.svg)\n\n",
        left(findings),
        left(fresh),
    );
    text
}

fn aim(row: Row) -> &'static str {
    match row {
        Row::Before => "7",
        Row::ThinnestUnread => "",
        Row::ThinnestTwice => "65 % of the row above",
        Row::OwnOnce => "2.5",
        Row::OwnTwice => "1.5",
    }
}

fn error(score: &Score) -> String {
    spread(&score.errors)
}

/// The cooks by the trade's rules.
fn following_rules(findings: &Findings, cooks: usize) -> String {
    let mut text = format!(
        "## By the trade's rules\n\nThe first {cooks} cooks, each piece pulled when a rule said, every piece \
         read at the openings of the tables above. Pull temperatures are 155, 157 and 160 F; a true core is \
         compared with them.\n\n\
         | pulled by | above 165 F | core off the pull temperature, median (nine in ten), F | median, signed, F |\n\
         | --- | --- | --- | --- |\n",
    );
    for (name, cooks) in &findings.by_rules {
        let over = cooks.iter().map(|cook| cook.over).sum();
        let above = cooks.iter().flat_map(|cook| &cook.above_pull).copied().collect();
        text.push_str(&pulled(name, over, above));
    }
    text.push('\n');
    text
}

/// One row: pieces pulled above 165 F, and by how much their cores were above the pull temperature, C.
fn pulled(name: &str, over: usize, above: Vec<f64>) -> String {
    format!(
        "| {name} | {:.1} % | {} | {:+.1} |\n",
        100.0 * over as f64 / above.len().max(1) as f64,
        spread(&fahrenheit(&above)),
        F_PER_C * quantile(&sorted(above), 0.5),
    )
}

fn sorted(values: impl IntoIterator<Item = f64>) -> Vec<f64> {
    let mut values: Vec<f64> = values.into_iter().collect();
    values.sort_by(f64::total_cmp);
    values
}

/// Sizes of errors in C, in F and in order.
fn fahrenheit<'a>(errors: impl IntoIterator<Item = &'a f64>) -> Vec<f64> {
    sorted(errors.into_iter().map(|error| error.abs() * F_PER_C))
}

/// Median and, in brackets, what nine in ten stay under.
fn spread(sorted: &[f64]) -> String {
    format!("{:.1} ({:.1})", quantile(sorted, 0.5), quantile(sorted, 0.9))
}

fn seats(findings: &Findings, fresh: &Findings) -> String {
    let [known, others] = [&findings.seats, &fresh.seats];
    let mut text = format!(
        "## Misplaced leave-ins\n\n\
         Judged by the leave-in's own readings and one instant-read of its piece, 15 min or more \
         before the pull. {} leave-ins were 6 to 15 mm off the coldest spot, {} were well seated; of \
         the fresh cooks {} and {}.\n\n\
         | what | aim | found | fresh cooks |\n| --- | --- | --- | --- |\n\
         | flagged, 6 mm or more off | at least 90 % | {:.0} % | {:.0} % |\n\
         | flagged, well seated (false alarms) | at most 5 % | {:.1} % | {:.1} % |\n",
        known.missed.len(),
        known.seated,
        others.missed.len(),
        others.seated,
        100.0 * known.found(MISPLACED),
        100.0 * others.found(MISPLACED),
        100.0 * known.false_alarm_rate(),
        100.0 * others.false_alarm_rate(),
    );
    for read_high in [2.0, 5.0, 10.0] {
        let [known, others] = [known, others].map(|s| s.found_reading_high(read_high / F_PER_C));
        let _ = writeln!(
            text,
            "| flagged, of the {} ({}) misplaced that showed {read_high:.0} F or more above the \
             instant-read | | {:.0} % | {:.0} % |",
            known.0,
            others.0,
            100.0 * known.1,
            100.0 * others.1
        );
    }
    text
}
