//! The study of conduct as a Markdown page.

use std::fmt::Write;
use std::path::Path;
use std::process::Command;
use std::time::{SystemTime, UNIX_EPOCH};
use std::{fs, io};

use chrono::DateTime;
use twin::cooks;
use twin::cores;
use twin::study::conduct::kept::{self, Kept};
use twin::study::conduct::{self, Day, Figures, Outcome, SIZES, pulls, table};

/// The cooks of a seed on, by size.
fn cooks(first: u64, count: u64, size: usize) -> Vec<Outcome> {
    let seeds: Vec<u64> = (first..first + count).collect();
    cores::each(&seeds, |seed| {
        let setup = cooks::draw_with(*seed, size);
        conduct::cook(&setup, &Day::draw(*seed, size))
    })
}

/// Has `count` cooks conducted from a seed on, or what is left of them, and writes the page as often as
/// some of them are done.
pub fn write(count: u64, first: u64) -> io::Result<()> {
    let file = kept::file(first);
    let mut kept = Kept::open(&file, commit())?;
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("conduct.md");
    while kept.go_on(first, count, &file)? {
        fs::write(&path, page(&kept, count, first))?;
        eprintln!("{} of {count} cooks", kept.cooks.len());
    }
    fs::write(&path, page(&kept, count, first))
}

/// What is checked out here.
fn commit() -> String {
    let asked = Command::new("git")
        .args(["describe", "--always", "--exclude=*", "--abbrev=12", "--dirty"])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output();
    let told = asked.ok().filter(|told| told.status.success());
    told.map_or("unknown".to_owned(), |told| {
        String::from_utf8_lossy(&told.stdout).trim().to_owned()
    })
}

fn today() -> String {
    let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
    let now = DateTime::from_timestamp(since.as_secs().cast_signed(), 0).unwrap_or_default();
    now.date_naive().to_string()
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

/// Where `count` cooks from a seed on were told to pull, and what came of pulling there.
pub fn told_pulls(first: u64, count: u64) -> String {
    let seeds: Vec<u64> = (first..first + count).collect();
    pulls::table(&cores::each(&seeds, |seed| pulls::of(&cooks::draw_with(*seed, 6))))
}

fn page(kept: &Kept, count: u64, first: u64) -> String {
    let of_size = |size: usize| {
        let cooks = kept.cooks.iter().take(count as usize);
        cooks.filter(|cook| cook.pieces.len() == size).cloned().collect()
    };
    let by_size: [Vec<Outcome>; 3] = SIZES.map(of_size);
    let run = by_size.iter().map(Vec::len).sum::<usize>();
    format!(
        "# How a cook goes by the duties alone\n\n\
         Made with `cargo run -p twin --release -- conduct {count} {first}` at commit {}, on {}: {run} of \
         {count} cooks were run, from seed {first} on. Nothing was chosen by seeds from 41,000,000 on.\n\n\
         A simulated person acts on the duties from putting on until every piece is served or bagged: 30 s \
         and up to 3 min more to get there after a bell, 15 s for the lid, 12 s a piece; 2 % of readings \
         mistyped or of the piece beside; thermometers with errors of their own; one fire in ten dies, one \
         dinner in ten moves. The person hears bells only, and looks at the card when one rings and for a \
         minute after acting. Meat and pit are the simulator's that shares no code with the forecast. Pull \
         temperatures are left to the app. A proof reading is one typed of a piece at rest that is not yet \
         proved: most are proved by the reading on the pit that pulls them. No screen is drawn: of card, alarm \
         and row only the duties are seen that all three are made of.\n\n{}",
        kept.commit,
        today(),
        table("What was found", &by_size).trim_end().to_owned() + "\n"
    )
}
