//! The figures of safety against what the agency published and what was measured.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use cook_model::quantity::{Moment, Span, Temperature, TemperatureDifference, seconds, to_seconds};
use cook_model::safety::{
    ASKED_OF_POULTRY, DeathKinetics, FatColumn, INSTANT_KILL, SALMONELLA_IN_CHICKEN, dwell_at,
    dwell_rows,
};

/// The table as far as we know it; its head says how each row is known.
const TABLE: &str = include_str!("../tables/poultry_dwell.csv");

#[derive(Debug)]
struct Row {
    fat: Option<u8>,
    temperature: Temperature,
    time: Span,
    seen: bool,
}

fn table() -> Vec<Row> {
    let lines = TABLE.lines().filter(|line| !line.starts_with('#')).skip(1);
    lines
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            Row {
                fat: cells[0].parse().ok(),
                temperature: Temperature::from_f(cells[1].parse().unwrap()),
                time: seconds(cells[2].parse().unwrap()),
                seen: cells[3] == "seen",
            }
        })
        .collect()
}

fn columns() -> [(u8, FatColumn); 2] {
    [(5, FatColumn::Five), (12, FatColumn::Twelve)]
}

/// FSIS ready-to-eat poultry table: each row used was seen, and is the longest where copies
/// disagree.
#[test]
fn every_row_used_was_seen_and_is_the_longest() {
    let table = table();
    assert!(table.len() > 60);
    for (percent, column) in columns() {
        for used in dwell_rows(column) {
            let longest = table
                .iter()
                .filter(|row| row.fat == Some(percent) && row.seen)
                .filter(|row| row.temperature == used.at_least)
                .map(|row| row.time)
                .max();
            assert_eq!(Some(used.dwell), longest, "{percent} % at {} F", used.at_least.f());
        }
    }
}

/// At no temperature is less time asked for than in any row, seen or from memory.
#[test]
fn no_row_of_the_table_asks_for_more() {
    for (percent, column) in columns() {
        let rows = table().into_iter().filter(|row| row.fat == Some(percent));
        let rows = rows.filter(|row| row.temperature < INSTANT_KILL);
        for row in rows {
            let asked = dwell_at(row.temperature, column).unwrap();
            assert!(asked >= row.time, "{percent} %: {row:?}");
        }
    }
    // The leanest column, which is not offered, is shorter throughout.
    for row in table().iter().filter(|row| row.fat == Some(1) && row.temperature < INSTANT_KILL) {
        assert!(dwell_at(row.temperature, FatColumn::Five).unwrap() >= row.time, "{row:?}");
    }
}

/// FDA Food Code 2022, 3-401.11(A)(3) (from memory; the older 165 F for 15 s was seen), and the
/// USDA chart's minimum for poultry (seen).
#[test]
fn at_once_means_165_f() {
    assert!((INSTANT_KILL.f() - 165.0).abs() < 1e-9);
    let at_165 = table().into_iter().filter(|row| row.temperature == INSTANT_KILL);
    assert!(at_165.into_iter().all(|row| row.time == Span::zero()));
}

/// D and z as two rows of a table give them, for the reduction that the table is made for.
fn kinetics_of(cool: (f64, f64), hot: (f64, f64)) -> DeathKinetics {
    let decades = (cool.1 / hot.1).log10();
    DeathKinetics {
        reference: Temperature::from_f(cool.0),
        d_value: seconds(cool.1 / ASKED_OF_POULTRY.log10()),
        z_value: TemperatureDifference::from_f((hot.0 - cool.0) / decades),
    }
}

/// From 155 F up the table follows one D and one z. The column whose fat level the copy does not
/// state was seen row by row, 157 to 162 F, rounded to 0.1 s (the first to 1 s).
#[test]
fn the_table_above_155_f_follows_from_its_own_d_and_z() {
    let unlabelled: Vec<Row> = table().into_iter().filter(|row| row.fat.is_none()).collect();
    assert_eq!(unlabelled.len(), 6);
    let ends =
        [&unlabelled[0], &unlabelled[5]].map(|row| (row.temperature.f(), to_seconds(row.time)));
    let kinetics = kinetics_of(ends[0], ends[1]);
    for row in &unlabelled {
        let time = to_seconds(kinetics.time_for(ASKED_OF_POULTRY, row.temperature));
        assert!((time - to_seconds(row.time)).abs() <= 0.051, "{row:?}: {time}");
    }
    // The same z, 9.8 F, joins the rows seen at 155 and 160 F of the other columns.
    for (at_155, at_160) in [(44.2, 13.7), (47.7, 14.8)] {
        let z = kinetics_of((155.0, at_155), (160.0, at_160)).z_value;
        assert!((z - kinetics.z_value).abs() < TemperatureDifference::from_f(0.05), "{z:?}");
    }
}

/// Holding a row's temperature for a row's time gives the 7 reductions, by integration too.
#[test]
fn a_core_held_by_the_table_gets_the_reduction_asked_for() {
    let kinetics = kinetics_of((155.0, 44.2), (160.0, 13.7));
    let start = Moment::from_timestamp(1_780_000_000, 0).unwrap();
    for (fahrenheit, time) in [(155.0, 44.2), (160.0, 13.7)] {
        let at = Temperature::from_f(fahrenheit);
        let held = kinetics.lethality(&[(start, at), (start + seconds(time), at)]);
        assert!((held.log10() - 7.0).abs() < 0.01, "{fahrenheit} F: {held:?}");
    }
}

/// Murphy et al. 2004, Poultry Science 83:1218 (abstract): D 43.33 min at 55 C, 0.07 min at
/// 70 C, z 5.34 C.
#[test]
fn the_measured_kinetics_span_the_measured_range() {
    let k = SALMONELLA_IN_CHICKEN;
    let d_70 = to_seconds(k.time_for(ASKED_OF_POULTRY, Temperature::from_c(70.0))) / 7.0 / 60.0;
    assert!((d_70 - 0.07).abs() < 0.005, "{d_70}");
}

/// Two sources that share nothing: at 60 C the measured kinetics ask for 35.1 min, the table's
/// 12 % column (seen) for 35. Hotter, the table asks for more, as it should.
#[test]
fn the_table_is_not_shorter_than_the_measured_kinetics() {
    let k = SALMONELLA_IN_CHICKEN;
    let measured = |f: f64| to_seconds(k.time_for(ASKED_OF_POULTRY, Temperature::from_f(f)));
    assert!((measured(140.0) / (35.0 * 60.0) - 1.0).abs() < 0.01);
    for used in dwell_rows(FatColumn::Twelve) {
        let ratio = to_seconds(used.dwell) / measured(used.at_least.f());
        // Below 140 F the slopes part: the table's z is wider.
        let least = if used.at_least < Temperature::from_f(140.0) { 0.85 } else { 0.99 };
        assert!(ratio >= least, "{} F: {ratio}", used.at_least.f());
    }
}
