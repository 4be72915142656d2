//! The figures as a table, beside their goals.

use std::fmt::Write;

use super::figures::Figures;
use super::outcome::Outcome;

/// The numbers of pieces that are studied.
pub const SIZES: [usize; 3] = [4, 12, 20];

/// The figures of cooks by size.
pub fn table(title: &str, by_size: &[Vec<Outcome>; 3]) -> String {
    let each = by_size.each_ref().map(|cooks| Figures::of(cooks));
    let all = Figures::of(&by_size.concat());
    let [four, twelve, twenty] = &each;
    let percent = |share: f64| format!("{:.1} %", 100.0 * share);
    let of = |(kept, all): (usize, usize)| {
        format!("{kept} of {all} ({:.0} %)", 100.0 * kept as f64 / all.max(1) as f64)
    };
    let rows = [
        (
            "lid openings until the last piece is off, median, 4 pieces",
            "5",
            four.openings.to_string(),
        ),
        ("the same, 12 pieces", "9", twelve.openings.to_string()),
        ("pieces put back", "at most 3 %", percent(all.put_back)),
        (
            "proof readings for each piece, mean",
            "at most 1.2",
            format!("{:.2}", all.proof_readings),
        ),
        ("above 167 F when pulled, true core", "at most 5 %", percent(all.above[1])),
        ("above 165 F", "at most 15 %", percent(all.above[0])),
        (
            "called proved though the coldest spot never reached 163 F, slips included",
            "at most 0.5 %",
            percent(all.falsely_proved as f64 / all.pieces.max(1) as f64),
        ),
        ("duties due that went away unfulfilled without a new entry", "0", {
            format!("{}, and {} at the end that they told", all.vanished, all.ran_out)
        }),
        ("card, alarm and row that disagree at any moment", "0", {
            format!("alarms of what was not due: {}; rows: not counted", all.off_card)
        }),
        (
            "alarms in the worst ten minutes, median, 4 pieces (nine in ten)",
            "at most 3",
            format!("{:.0} ({:.0})", four.alarms[0], four.alarms[1]),
        ),
        ("alarms of a whole cook, median, 4 pieces", "", four.all_alarms.to_string()),
        (
            "alarms for which nothing was due once the person was there",
            "0",
            all.in_vain.to_string(),
        ),
        ("taps from put-on to served, median, 4 pieces", "70", four.taps.to_string()),
        ("the same, 20 pieces", "260", twenty.taps.to_string()),
        ("honest instant-reads that are asked about, of a hundred", "", {
            format!("{:.1}", all.needless_questions)
        }),
        ("ready in time where plans say nine in ten, dinner not moved", "88-96 %", of(all.in_time)),
        ("the same where the fire lived", "", of(all.in_time_with_fire)),
        ("in time as the plans told it, mean", "", percent(all.told_in_time)),
        ("readings of each piece on the pit, mean", "", format!("{:.2}", all.checks)),
        ("peak foreseen at the pull, off by, F: median (nine in ten)", "1.5", {
            format!("{:.1} ({:.1})", all.peak_off[0], all.peak_off[1])
        }),
        ("rise of the core at rest, F: mean (as told at the pull)", "", {
            format!("{:.1} ({:.1})", all.rises[0], all.rises[1])
        }),
        ("pieces thrown away; never served or bagged", "0; 0", {
            format!("{}; {}", all.lost[0], all.lost[1])
        }),
    ];
    let mut text = format!(
        "## {title}\n\n{} cooks, {} pieces: {} cooks of 4, {} of 12, {} of 20.\n\n| what | goal | found |\n| --- | --- | --- |\n",
        all.cooks, all.pieces, four.cooks, twelve.cooks, twenty.cooks
    );
    for (what, goal, found) in rows {
        let _ = writeln!(text, "| {what} | {goal} | {found} |");
    }
    text.push('\n');
    text
}
