//! The boiling point of water by altitude, by which a thermometer is checked.

use cook_model::quantity::{Length, Temperature};
use cook_model::safety::boiling_point;

const METRES_PER_FOOT: f64 = 0.3048;

/// Widely taught figures (seen on general web pages, not measurements): 212 F at the sea, 203 F at
/// 5,000 ft, 194 F at 10,000 ft.
#[test]
fn as_taught() {
    for (feet, fahrenheit) in [(0.0, 212.0), (5_000.0, 203.0), (10_000.0, 194.0)] {
        let boiling = boiling_point(Length::from_m(feet * METRES_PER_FOOT)).f();
        assert!((boiling - fahrenheit).abs() < 0.6, "{feet} ft: {boiling}");
    }
}

/// Two tables joined (both from memory): the US Standard Atmosphere 1976 has 84.56 kPa at 1500 m
/// and 70.12 kPa at 3000 m; steam tables have water boiling at 95 C under 84.61 kPa and at 90 C
/// under 70.18 kPa.
#[test]
fn by_atmosphere_and_steam_tables() {
    for (metres, celsius) in [(0.0, 100.0), (1500.0, 95.0), (3000.0, 90.0)] {
        let boiling = boiling_point(Length::from_m(metres));
        let off = (boiling - Temperature::from_c(celsius)).c().abs();
        assert!(off < 0.06, "{metres} m: {}", boiling.c());
    }
}
