//! Thermometers, and the water that they are checked in.

use cook_model::quantity::{Length, Temperature, TemperatureDifference};
use cook_model::safety::{ALLOWED, Bath, CheckProblem};

/// FDA Food Code 2022, 4-203.11, from memory: food thermometers in Fahrenheit are accurate to 2 F.
#[test]
fn a_food_thermometer_may_be_2_f_off() {
    assert!((ALLOWED.f() - 2.0).abs() < 1e-9);
}

/// A degree or two is corrected; more than 5 F off needs a new battery or a new thermometer.
#[test]
fn what_is_too_far_off_is_not_corrected() {
    let found = |shown: f64| Bath::IceWater.offset(Temperature::from_f(shown));
    for (shown, offset) in [(32.0, 0.0), (34.0, -2.0), (36.9, -4.9), (27.1, 4.9)] {
        let told: TemperatureDifference = found(shown).unwrap();
        assert!((told.f() - offset).abs() < 0.01, "{shown}");
    }
    for shown in [37.2, 26.8, 60.0, f64::NAN] {
        assert_eq!(found(shown), Err(CheckProblem::TooFarOff), "{shown}");
    }
}

/// The shore of the Dead Sea lies 430 m below the sea, the highest town, La Rinconada, at 5,100 m (both
/// from memory): people boil water at either. On Everest, at 8,849 m, nobody cooks chicken.
#[test]
fn water_boils_wherever_people_cook() {
    let boils = |m: f64| Bath::BoilingWater { altitude: Length::from_m(m) }.temperature();
    for m in [-430.0, 0.0, 1600.0, 5100.0] {
        assert!(boils(m).is_ok(), "{m}");
    }
    for m in [-600.0, 7000.0, 8849.0] {
        assert_eq!(boils(m), Err(CheckProblem::ImpossibleAltitude), "{m}");
    }
}
