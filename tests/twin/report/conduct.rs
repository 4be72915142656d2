//! The study of conduct as a Markdown page.

use std::fmt::Write;
use std::path::Path;
use std::{fs, io};

use twin::cooks;
use twin::cores;
use twin::study::conduct::{self, Day, Figures, Outcome};

/// First seed of the cooks by which the timing of the duties was chosen, and of those that judge it.
const CHOSEN_BY: u64 = 2_000_000;
const JUDGED_BY: u64 = 3_000_000;
/// Of each three cooks one has so many pieces.
const SIZES: [usize; 3] = [4, 12, 20];

/// The cooks of a seed on, by size.
fn cooks(first: u64, count: u64, size: usize) -> Vec<Outcome> {
    let seeds: Vec<u64> = (first..first + count).collect();
    cores::each(&seeds, |seed| {
        let setup = cooks::draw_with(*seed, size);
        conduct::cook(&setup, &Day::draw(*seed, size))
    })
}

/// Writes the page, of so many cooks.
pub fn write(count: u64) -> io::Result<()> {
    let page = page(count);
    let results = Path::new(env!("CARGO_MANIFEST_DIR")).join("results");
    fs::create_dir_all(&results)?;
    fs::write(results.join("conduct.md"), &page)?;
    println!("{page}");
    Ok(())
}

/// How one cook went.
pub fn story(seed: u64, size: usize) -> String {
    let setup = cooks::draw_with(seed, size);
    let outcome = conduct::cook(&setup, &Day::draw(seed, size));
    let mut text = outcome.story.join("\n");
    for (number, piece) in outcome.pieces.iter().enumerate() {
        let f = |c: f64| 1.8 * c + 32.0;
        let pulled: Vec<String> =
            piece.pulled.iter().map(|core| format!("{:.1}", f(*core))).collect();
        let _ = write!(
            text,
            "\npiece {}: pull at {:.0}, pulled at {}, peak told {:.1}, hottest {:.1}, back {}, checks {}, proof readings {}",
            number + 1,
            f(piece.pull_at.unwrap_or(0.0)),
            pulled.join(" "),
            f(piece.peak_told.unwrap_or(0.0)),
            f(piece.hottest),
            piece.put_back,
            piece.checks,
            piece.proof_readings
        );
    }
    let _ = write!(
        text,
        "\nopenings {}, taps {}, alarms {} (worst ten minutes {}), early {:.0} min",
        outcome.openings,
        outcome.taps,
        outcome.rings.len(),
        outcome.worst_ten_minutes(),
        outcome.early.unwrap_or(f64::NAN) / 60.0
    );
    text
}

/// The figures of `count` cooks from a seed on of one size, as lines to read while choosing.
pub fn figures(first: u64, count: u64, size: usize) -> String {
    let figures = Figures::of(&cooks(first, count, size));
    format!("{size} pieces: {figures:?}")
}

fn page(count: u64) -> String {
    let mut text = format!(
        "# How a cook goes by the duties alone\n\n\
         Made with `cargo run -p twin --release -- conduct {count}`; the same seeds give the same page. A \
         simulated person acts on the duties from putting on until every piece is served or bagged: 30 s \
         and up to 3 min more to get there after a bell, 15 s for the lid, 12 s a piece; 2 % of readings \
         mistyped or of the piece beside; thermometers with errors of their own; one fire in ten dies, one \
         dinner in ten moves. The person hears bells only, and looks at the card when one rings and for a \
         minute after acting. Meat and pit are the simulator's that shares no code with the forecast.\n\n"
    );
    let each = count / SIZES.len() as u64;
    for (name, first) in [("judged by", JUDGED_BY), ("chosen by", CHOSEN_BY)] {
        let by_size = SIZES.map(|size| cooks(first, each, size));
        text.push_str(&table(name, first, &by_size));
    }
    text
}

/// The figures of cooks by size.
fn table(name: &str, first: u64, by_size: &[Vec<Outcome>; 3]) -> String {
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
            "called proved though the coldest spot never reached 163 F",
            "at most 0.5 %",
            format!("{} of {}", all.falsely_proved, all.pieces),
        ),
        ("duties due that went away without an entry", "0", all.vanished.to_string()),
        ("duties due that ran out at the end that they told", "", all.ran_out.to_string()),
        (
            "alarms in the worst ten minutes, median, 4 pieces (nine in ten)",
            "at most 3",
            format!("{:.0} ({:.0})", four.alarms[0], four.alarms[1]),
        ),
        ("alarms of a whole cook, median, 4 pieces", "", four.all_alarms.to_string()),
        ("alarms for which nothing was due", "0", all.in_vain.to_string()),
        ("taps from put-on to served, median, 4 pieces", "70", four.taps.to_string()),
        ("the same, 20 pieces", "260", twenty.taps.to_string()),
        ("ready in time, dinner not moved", "88-96 %", of(all.in_time)),
        ("the same where the fire lived", "", of(all.in_time_with_fire)),
        ("in time as the plans told it, mean", "", percent(all.told_in_time)),
        ("readings of each piece on the pit, mean", "", format!("{:.2}", all.checks)),
        ("peak foreseen at the pull, off by, F: median (nine in ten)", "1.5", {
            format!("{:.1} ({:.1})", all.peak_off[0], all.peak_off[1])
        }),
        ("pieces thrown away; never served or bagged", "0; 0", {
            format!("{}; {}", all.lost[0], all.lost[1])
        }),
    ];
    let mut text = format!(
        "## The timing was {name} these\n\n{} cooks, {} pieces: seeds from {first} on, a third each of 4, 12 \
         and 20 pieces.\n\n| what | goal | found |\n| --- | --- | --- |\n",
        all.cooks, all.pieces
    );
    for (what, goal, found) in rows {
        let _ = writeln!(text, "| {what} | {goal} | {found} |");
    }
    text.push('\n');
    text
}
