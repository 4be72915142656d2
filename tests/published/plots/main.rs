//! `cargo run -p published --release --example plots`: the heat model beside the series, tables and
//! facts it is checked against, as a page with plots in `tests/published/results`.

mod sensitivities;

use std::path::Path;
use std::{fs, io};

use cook_model::heat::{Body, Medium};
use cook_model::piece::Dimensions;
use cook_model::quantity::{Temperature, minutes, to_minutes};
use published::series::{self, Solid};
use published::{bath, shapes, trade};
use twin::chart::{Chart, Line};

type Points = Vec<(f64, f64)>;

/// Between the points of a cook's curve, min.
const STEP: usize = 5;
/// A cook's curve is drawn for so long after the pull, min.
const REST: f64 = 30.0;

fn main() -> io::Result<()> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("results");
    fs::create_dir_all(&folder)?;
    let mut page = String::from(PREFACE);
    for (name, words, chart) in [
        ("series", SERIES, series_chart()),
        ("shapes", SHAPES, shapes_chart()),
        ("baths", BATHS, baths_chart()),
        ("trade", TRADE, trade_chart()),
    ] {
        fs::write(folder.join(format!("{name}.svg")), chart.svg())?;
        let worst = if chart.diagonal { worst(&chart) } else { String::new() };
        page +=
            &format!("\n## {}\n\n{words}\n{worst}\n![{}]({name}.svg)\n", chart.title, chart.title);
    }
    fs::write(folder.join("checks.md"), &page)?;
    let moved = sensitivities::page();
    fs::write(folder.join("sensitivities.md"), &moved)?;
    println!("{page}\n{moved}");
    Ok(())
}

const PREFACE: &str = "# The heat model beside what it is checked against

Made with `cargo run -p published --release --example plots`. The checks themselves, with their \
tolerances, are the tests of this crate.

**Chief limit.** No measured core temperature of a breast in a pit, in any open source, was found. \
What follows shows that the equations are solved rightly, that the shapes are reduced rightly, that \
heating in a stirred bath comes out as its tables say, and that one set of defaults gives the facts \
of the trade together. The last were fitted: how a surface dries, above all, rests on them alone.
";

const SERIES: &str = "Slab, cylinder and sphere, Biot numbers 0.05 to 100, Fourier numbers 0.02 to 3, \
centre and surface: the part of the change still to come, by the series (Carslaw & Jaeger 1959) and \
by the model.
";

const SHAPES: &str = "Thirty breast-like proportions, Biot numbers 0.3 to 10, centre down to 0.4, 0.2 \
and 0.1: the Fourier number at which it is there, by the exact product solution for bricks and by a \
fine three-dimensional solution for ellipsoids, and by the model.
";

const BATHS: &str = "Minutes in a stirred bath, printed and by the model with the author's stated \
assumptions (Baldwin, A Practical Guide to Sous Vide Cooking; the heating table from memory). Times \
are printed to five minutes under an hour and to fifteen above.
";

const TRADE: &str = "Four breasts of 25, 32, 38 and 45 mm from the refrigerator at 250 F indirect to \
160 F, then under loose foil, by the defaults. Common practice, no source: the three thicker ones \
take 45 to 80 minutes, their last 20 F about 15 to 20, and they carry over some 3 to 5 F in ten minutes, a \
thin one less.
";

/// The largest departure of each line from the diagonal, as a table.
fn worst(chart: &Chart) -> String {
    let mut table =
        String::from("| | points | largest difference | largest in % |\n|---|---|---|---|\n");
    for line in &chart.lines {
        let off = line.points.iter().map(|(x, y)| (y - x).abs()).fold(0.0, f64::max);
        let part = line.points.iter().map(|(x, y)| (y / x - 1.0).abs()).fold(0.0, f64::max);
        // Of a quantity that dies away, a part of what is left says nothing.
        let part = if off < 0.01 { "-".to_owned() } else { format!("{:.1}", 100.0 * part) };
        table += &format!("| {} | {} | {off:.4} | {part} |\n", line.name, line.points.len());
    }
    table
}

fn ticks(count: usize, step: f64) -> Vec<f64> {
    (0..=count).map(|i| i as f64 * step).collect()
}

fn series_chart() -> Chart {
    let line = |name, solid: Solid| Line { name, points: series_points(solid) };
    Chart {
        title: "Series solutions",
        labels: ["still to come, by the series", "by the model"],
        along: ticks(5, 0.2),
        up: ticks(5, 0.2),
        lines: vec![
            line("slab", Solid::Slab),
            line("cylinder", Solid::Cylinder),
            line("sphere", Solid::Sphere),
        ],
        diagonal: true,
        joined: false,
        names_low: true,
    }
}

fn series_points(solid: Solid) -> Points {
    let body = solid.body();
    let mut points = Vec::new();
    for biot in series::BIOTS {
        let (roots, trace) = (solid.roots(biot), series::run(&body, biot));
        for fourier in series::FOURIERS {
            let at = series::span(fourier);
            for (x, got) in [(0.0, trace.core(at)), (1.0, trace.surface(at))] {
                points.push((solid.unfulfilled(&roots, fourier, x), got.c()));
            }
        }
    }
    points
}

fn shapes_chart() -> Chart {
    Chart {
        title: "Bricks and ellipsoids",
        labels: ["Fourier number, exact", "by the model"],
        along: ticks(5, 2.0),
        up: ticks(5, 2.0),
        lines: vec![
            Line { name: "bricks", points: shape_points(Body::brick, shapes::brick_fourier) },
            Line {
                name: "ellipsoids",
                points: shape_points(Body::ellipsoid, shapes::ellipsoid_fourier),
            },
        ],
        diagonal: true,
        joined: false,
        names_low: true,
    }
}

fn shape_points(
    body: impl Fn(&Dimensions, Medium) -> Body,
    exact: impl Fn([f64; 3], f64, f64) -> f64,
) -> Points {
    let mut points = Vec::new();
    for width in shapes::WIDTHS {
        for length in shapes::LENGTHS {
            let body = body(&shapes::dimensions(width, length), shapes::medium());
            for biot in shapes::BIOTS {
                let trace = shapes::cooling(&body, biot);
                for ratio in shapes::RATIOS {
                    let exact = exact([1.0, width, width * length], biot, ratio);
                    points.push((exact, shapes::fourier(&trace, ratio)));
                }
            }
        }
    }
    points
}

fn baths_chart() -> Chart {
    let pasteurised = bath::pasteurisation_table()
        .map(|[mm, bath, printed]| (printed, bath::pasteurised_after(mm, bath)));
    let heated = bath::heating_table().filter_map(|[mm, printed]| {
        let reached = bath::heated_slab(mm).core_reaches(Temperature::from_c(59.5))?;
        Some((printed, to_minutes(reached)))
    });
    Chart {
        title: "Water-bath tables",
        labels: ["minutes printed", "by the model"],
        along: ticks(7, 60.0),
        up: ticks(7, 60.0),
        lines: vec![
            Line { name: "poultry pasteurised", points: pasteurised.collect() },
            Line { name: "slabs heated (from memory)", points: heated.collect() },
        ],
        diagonal: true,
        joined: false,
        names_low: true,
    }
}

fn trade_chart() -> Chart {
    let names = ["25 mm", "32 mm", "38 mm", "45 mm"];
    let pieces = [trade::THIN, trade::USUAL[0], trade::USUAL[1], trade::USUAL[2]];
    let lines = names.into_iter().zip(pieces);
    Chart {
        title: "Facts of the trade",
        labels: ["min", "core, F"],
        along: ticks(6, 20.0),
        up: ticks(9, 20.0),
        lines: lines.map(|(name, piece)| Line { name, points: trade_points(piece) }).collect(),
        diagonal: false,
        joined: true,
        names_low: true,
    }
}

fn trade_points(piece: (f64, f64)) -> Points {
    let cook = trade::cook(piece);
    let pull = to_minutes(cook.pull);
    let steps = (0..).step_by(STEP).map(|minute| minute as f64);
    let mut at: Vec<f64> = steps.take_while(|minute| *minute < pull + REST).collect();
    at.push(pull);
    at.sort_by(f64::total_cmp);
    let core = |minute: f64| {
        let trace = if minute < pull { &cook.on } else { &cook.rest };
        trace.core(minutes(minute)).f()
    };
    at.into_iter().map(|minute| (minute, core(minute))).collect()
}
