//! Bags: brining, chilling and reheating.

use cook_model::kitchen::amounts::SaltLevel;
use cook_model::kitchen::brine::{Brine, salting};
use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::chill::{ChillProblem, Cooling, chill};
use cook_model::kitchen::form::Form;
use cook_model::kitchen::reheat::{
    BathPlan, ReheatProblem, Thawing, USUAL_BATH, USUAL_CORE, bath_time, thaw_time,
};
use cook_model::kitchen::shape::Portion;
use cook_model::kitchen::storage::{Keeps, Packing, Place, Stay, keeps};
use cook_model::quantity::{Length, Mass, Span, Temperature, seconds, to_minutes};

use crate::support::at;

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
    for (core, bath) in [(135.0, 145.0), (164.5, 175.0), (165.0, 175.0), (184.0, 200.0)] {
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

/// FDA Food Code 2022, 3-501.19(B), from memory: four hours in all. What it brings with it counts in, and
/// just four hours are within them.
#[test]
fn what_a_bag_brings_counts_into_the_four_hours() {
    let plan = |warm| BathPlan {
        portion: bag(15.0),
        from: Place::Fridge,
        bath: USUAL_BATH,
        core: USUAL_CORE,
        warm,
    };
    let slow = |warm| bath_time(&plan(warm)).unwrap().cautions.contains(&Caution::SlowToWarm);
    let left = Span::hours(4) - bath_time(&plan(Span::zero())).unwrap().warming;
    assert!(left > Span::hours(2));
    assert!(!slow(left) && slow(left + seconds(1.0)));
}

/// Without air *Clostridium botulinum* can grow where it is not cold enough (FDA Food Code 2022, 3-502.12,
/// from memory): that is said of what was sealed so, and of nothing else.
#[test]
fn what_is_sealed_without_air_is_told_so() {
    for packing in [Packing::Plain, Packing::Covered, Packing::Vacuum] {
        let portion = Portion { packing, ..bag(15.0) };
        let (from, warm) = (Place::Fridge, Span::zero());
        let plan = BathPlan { portion, from, bath: USUAL_BATH, core: USUAL_CORE, warm };
        let told = bath_time(&plan).unwrap().cautions;
        assert_eq!(told.contains(&Caution::Vacuum), packing == Packing::Vacuum, "{packing:?}");
    }
}

/// "From 57 C (135 F) to 21 C (70 F) within 2 hours" (FDA Food Code 2022, 3-501.14(A)): at 135 F it has not
/// begun; and what is at 70 F only now, after the two hours, did not get there within them.
#[test]
fn cooling_begins_below_135_f_and_its_first_step_ends_at_70_f() {
    let told = |f: f64, hours| {
        let core = Temperature::from_f(f);
        chill(&bag(10.0), core, Span::hours(hours), Cooling::IceBath).unwrap().cautions
    };
    assert_eq!(told(135.0, 5), [Caution::TwoHours]);
    assert_eq!(told(70.0, 3)[1], Caution::CoolingOver);
    assert_eq!(told(69.9, 3)[1], Caution::MiddleNotSeen);
}

/// The six hours count from 135 F: how much hotter it came off does not matter, nor is a limit said to be
/// broken that a bag an eighth thicker keeps.
#[test]
fn the_time_above_135_f_is_no_time_of_cooling() {
    let told = |mm: f64, f: f64| {
        chill(&bag(mm), Temperature::from_f(f), Span::zero(), Cooling::Fridge).unwrap()
    };
    let mut kept = 0;
    for mm in (20..60).map(f64::from) {
        for f in [140.0, 170.0, 205.0] {
            let thicker = told(mm * 1.125, f);
            let keeps = thicker.to_cold - thicker.to_hot <= Span::hours(6);
            kept += i32::from(keeps && thicker.to_cold + thicker.to_hot > Span::hours(6));
            let said = told(mm, f).cautions.contains(&Caution::SecondStepSlow);
            assert!(!(said && keeps), "{mm} mm from {f} F: {}", thicker.to_cold);
        }
    }
    assert!(kept > 0, "none was near its limit");
}

/// Cooling rates of foods: times grow with the square of the smallest dimension at the most. What needs many
/// hours has its own time all the same.
#[test]
fn what_cools_for_many_hours_is_followed_to_the_end() {
    let cold = |mm: f64| {
        let told = chill(&bag(mm), Temperature::from_f(140.0), Span::zero(), Cooling::Fridge);
        to_minutes(told.unwrap().to_cold)
    };
    for mm in [40.0, 50.0, 60.0, 70.0] {
        let (thin, thick) = (cold(mm), cold(mm + 10.0));
        let square = (mm + 10.0) * (mm + 10.0) / (mm * mm);
        assert!(thin > 300.0 && thick > 1.02 * thin && thick < square * thin, "{thin} {thick}");
    }
}

/// USDA, The Big Thaw, from memory: in a refrigerator even a pound of boneless breasts needs a full day; a
/// flat bag at least the night and the morning.
#[test]
fn a_pound_thaws_in_the_refrigerator_in_a_day() {
    let pound = Portion { weight: Mass::from_g(454.0), ..bag(25.0) };
    let time = thaw_time(&pound, Thawing::Fridge).unwrap().time;
    assert!((Span::hours(12)..Span::hours(30)).contains(&time), "{time}");
}

/// "At least 3 F hotter than the core" holds just 3 F, at each whole degree that can be typed.
#[test]
fn a_bath_just_hot_enough_is_accepted() {
    for core in (135..=185).map(f64::from) {
        let (bath, core) = (Temperature::from_f(core + 3.0), Temperature::from_f(core));
        let (portion, from, warm) = (bag(15.0), Place::Fridge, Span::zero());
        assert!(bath_time(&BathPlan { portion, from, bath, core, warm }).is_ok(), "{}", core.f());
    }
}

/// FoodSafety.gov cold food storage chart: cooked poultry, 3 to 4 days. What was frozen as they ended is in
/// time; the days before it was bagged count from both ends of it.
#[test]
fn the_days_count_from_the_cook() {
    let frozen = [Stay { place: Place::Freezer, from: at(0.0) + Span::days(4) }];
    let kept = keeps(at(0.0), &frozen, Packing::Plain);
    assert!(matches!(kept, Some(Keeps::Freezer { fridge_left, .. }) if fridge_left.is_zero()));
    let next_day = [Stay { place: Place::Fridge, from: at(0.0) + Span::days(1) }];
    let (use_by, eat_by) = (at(0.0) + Span::days(3), at(0.0) + Span::days(4));
    let kept = keeps(at(0.0), &next_day, Packing::Plain);
    assert_eq!(kept, Some(Keeps::Fridge { use_by, eat_by }));
}
