//! How well plans were kept, as a table.

use twin::study::plans::Kept;
use twin::study::quantile;

/// What the table tells, and one row for the plans of each name.
pub fn table(rows: &[(&str, &[Kept])]) -> String {
    let mut text = String::from(
        "Planned to be proved by 165 F, put on when the plan said, and then cooked by the advice alone; the \
         pit raised where the app offers that first, as it does for a dinner late or at risk. In time: every \
         piece proved, rested and carved by dinner; the aim is 88 to 96 %.\n\n\
         | cooks | plans | in time, as the plans tell | in time | early, min: median (one in ten, nine in ten) | raised the pit |\n\
         | --- | --- | --- | --- | --- | --- |\n",
    );
    rows.iter().for_each(|(name, kept)| text.push_str(&row(name, kept)));
    text
}

fn row(name: &str, kept: &[Kept]) -> String {
    let mut early: Vec<f64> = kept.iter().map(|kept| kept.early / 60.0).collect();
    early.sort_by(f64::total_cmp);
    let count = kept.len() as f64;
    let in_time = kept.iter().filter(|kept| kept.in_time).count();
    format!(
        "| {name} | {count} | {:.0} % | {in_time} ({:.0} %) | {:.0} ({:.0} to {:.0}) | {} |\n",
        100.0 * kept.iter().map(|kept| kept.told).sum::<f64>() / count,
        100.0 * in_time as f64 / count,
        quantile(&early, 0.5),
        quantile(&early, 0.1),
        quantile(&early, 0.9),
        kept.iter().filter(|kept| kept.raised > 0).count(),
    )
}
