//! Cooked weight and what is in it against published yields and the food-composition table.

use cook_model::kitchen::cooked_weight::{OwnLoss, published_share_lost};
use cook_model::kitchen::nutrition::nutrition;
use cook_model::quantity::{Mass, Temperature};

const TABLE: &str = include_str!("../tables/cooking_yields.csv");

/// One row: the end temperature, C, the loss, % of raw weight, and its spread if one is told.
struct Row {
    what: String,
    end: Temperature,
    loss: f64,
    spread: Option<f64>,
}

/// The rows of intact breast roasted dry: what the model is for.
fn rows() -> Vec<Row> {
    let row = |line: &str| {
        let field: Vec<&str> = line.split(';').collect();
        Row {
            what: field[0].to_owned(),
            end: Temperature::from_c(field[1].parse().expect("an end temperature")),
            loss: field[2].parse().expect("a loss"),
            spread: field[3].parse().ok(),
        }
    };
    TABLE.lines().filter(|line| !line.starts_with('#')).skip(1).map(row).collect()
}

#[test]
fn the_curve_runs_through_the_published_losses() {
    let rows = rows();
    assert_eq!(rows.len(), 5);
    for row in rows {
        let curve = published_share_lost(row.end).unwrap().percent();
        // Where no spread is told, that of the others.
        let spread = row.spread.unwrap_or(3.1);
        let off = (curve - row.loss).abs();
        assert!(off <= 1.0 * spread, "{}: {curve} against {}", row.what, row.loss);
    }
}

#[test]
fn the_composition_tables_yield_lies_within_the_spread() {
    // USDA SR28: protein 22.50 raw and 31.02 roasted: a yield of 72.5 % if all of it stays. The
    // end temperature is not told; 165 F (74 C) is what USDA cooks poultry to.
    let raw = Mass::from_g(1000.0);
    let end = Temperature::from_f(165.0);
    let cooked = OwnLoss::default().predict(raw, 1, end).unwrap();
    let off = (cooked.mean.g() - 725.0).abs();
    assert!(off < 1.5 * cooked.spread.g(), "{cooked:?}");
}

#[test]
fn cooked_breast_holds_what_the_table_says() {
    // USDA SR28, breast, meat only, roasted: 31.02 g protein, 3.57 g fat, 165 kcal (energy from
    // memory) in 100 g. A cook's own yield near the table's must come near its figures.
    let raw = Mass::from_g(100.0 / 0.74);
    let portion = nutrition(raw, Mass::ZERO);
    assert!((portion.protein.g() / 31.02 - 1.0).abs() < 0.03);
    assert!((portion.energy.kcal() / 165.0 - 1.0).abs() < 0.03);
    assert!((portion.fat.g() / 3.57 - 1.0).abs() < 0.03);
}
