//! Bags: brining, chilling and reheating.

use cook_model::kitchen::amounts::SaltLevel;
use cook_model::kitchen::brine::{Brine, salting};
use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::chill::{ChillProblem, Cooling, chill};
use cook_model::kitchen::form::Form;
use cook_model::kitchen::reheat::{BathPlan, ReheatProblem, USUAL_BATH, USUAL_CORE, bath_time};
use cook_model::kitchen::shape::Portion;
use cook_model::kitchen::storage::{Packing, Place};
use cook_model::quantity::{Length, Mass, Span, Temperature, to_minutes};

fn bag(mm: f64) -> Portion {
    Portion {
        form: Form::Shredded,
        weight: Mass::from_g(400.0),
        thickness: Some(Length::from_mm(mm)),
        packing: Packing::Plain,
    }
}

/// FoodSafety.gov cold food storage chart: raw poultry pieces, 1 to 2 days at 40 F. Salt at 3e-10 m2/s
/// needs `0.1388 (h / 2)^2 / D` to the middle (Crank 1975): 42 h for 36 mm, 57 h for 42 mm.
#[test]
fn a_brine_longer_than_two_days_outlasts_raw_poultry() {
    let outlasts = |mm: f64| {
        let level = SaltLevel::from_g_per_100g(1.0);
        salting(Brine::Dry, Mass::from_g(1000.0), Length::from_mm(mm), level, SaltLevel::NONE)
            .unwrap()
            .outlasts_raw
    };
    assert!(!outlasts(36.0) && outlasts(42.0));
}

/// FDA Food Code 2022, 3-501.16, from memory: hot food is held at 135 F or above. USDA FSIS: leftovers
/// are reheated to 165 F.
#[test]
fn a_bath_keeps_hot_food_hot() {
    assert!((USUAL_CORE.f() - 135.0).abs() < 1e-9 && USUAL_BATH >= USUAL_CORE);
    assert!((Caution::LEFTOVERS.f() - 165.0).abs() < 1e-9);
    let asked = |core: f64, bath: f64| {
        let (core, bath) = (Temperature::from_f(core), Temperature::from_f(bath));
        let plan =
            BathPlan { portion: bag(15.0), from: Place::Fridge, bath, core, warm: Span::zero() };
        bath_time(&plan).map(|time| time.cautions)
    };
    assert_eq!(asked(134.0, 160.0), Err(ReheatProblem::Core));
    assert_eq!(asked(190.0, 205.0), Err(ReheatProblem::Core));
    for (core, bath) in [(135.0, 145.0), (164.5, 175.0), (184.0, 200.0)] {
        let told = asked(core, bath).unwrap();
        assert_eq!(told.contains(&Caution::LeftoversTo165), core < 165.0, "{core} F");
    }
}

/// A bag from the refrigerator, at 38 F, needs the time of a slab that starts there; out of the freezer it
/// must thaw first, which takes far longer. A core in a bath hardly hotter never gets there.
#[test]
fn what_is_colder_takes_longer() {
    let minutes = |from, bath: f64| {
        let (bath, core) = (Temperature::from_f(bath), Temperature::from_f(140.0));
        let plan = BathPlan { portion: bag(25.0), from, bath, core, warm: Span::zero() };
        bath_time(&plan).map(|time| to_minutes(time.likely))
    };
    let (cold, frozen) = (minutes(Place::Fridge, 150.0), minutes(Place::Freezer, 150.0));
    assert!(frozen.unwrap() > 1.2 * cold.unwrap(), "{frozen:?} {cold:?}");
    assert_eq!(minutes(Place::Fridge, 142.0), Err(ReheatProblem::BathTooCool));
    assert!(minutes(Place::Fridge, 143.5).is_ok());
}

/// What comes to be chilled is hotter than a refrigerator and no hotter than boiling water.
#[test]
fn what_can_be_chilled() {
    let told = |f: f64| chill(&bag(20.0), Temperature::from_f(f), Span::zero(), Cooling::Fridge);
    for f in [43.0, 60.0, 165.0, 210.0] {
        assert!(told(f).is_ok(), "{f}");
    }
    for f in [32.0, 40.0, 220.0, 400.0, f64::NAN] {
        assert_eq!(told(f), Err(ChillProblem::Core), "{f}");
    }
}

/// Ice water cools faster than ice, and ice faster than the air of a refrigerator; a slab of 25 mm in
/// stirred ice water is at 41 F within the better part of an hour (water-bath tables: 50 min, from memory).
#[test]
fn the_ways_of_chilling_in_order() {
    let cold = |cooling| {
        let told = chill(&bag(25.0), Temperature::from_f(140.0), Span::zero(), cooling).unwrap();
        assert!(told.to_hot <= told.to_middle && told.to_middle <= told.to_cold);
        to_minutes(told.to_cold)
    };
    let [fridge, ice, bath] = Cooling::ALL.map(cold);
    assert!(bath < ice && ice < fridge, "{bath} {ice} {fridge}");
    assert!((40.0..65.0).contains(&bath), "{bath}");
    assert!((1.05..1.6).contains(&(ice / bath)), "{ice}");
}
