//! The study of conduct as a Markdown page.

use std::fmt::Write;
use std::path::Path;
use std::{fs, io};

use twin::cooks;
use twin::cores;
use twin::study::conduct::{self, Day, Figures, Outcome, SIZES, pulls, table};

/// First seed of the cooks by which the timing of the duties was chosen, and of those that judge it.
const CHOSEN_BY: u64 = 2_000_000;
const JUDGED_BY: u64 = 3_000_000;
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
        let title = format!("The timing was {name} these: seeds from {first} on");
        text.push_str(&table(&title, &by_size));
    }
    eprintln!("pulls");
    let seeds: Vec<u64> = (JUDGED_BY..JUDGED_BY + each).collect();
    text.push_str(&pulls::table(&cores::each(&seeds, |seed| {
        pulls::of(&cooks::draw_with(*seed, 6))
    })));
    text
}
