//! Reheating and thawing times against published figures and facts of the trade.

use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::form::Form;
use cook_model::kitchen::reheat::{
    BathPlan, ReheatProblem, Thawing, USUAL_BATH, USUAL_CORE, bath_time, thaw_time,
};
use cook_model::kitchen::shape::Portion;
use cook_model::kitchen::storage::{Packing, Place};
use cook_model::quantity::{Length, Mass, Span, Temperature, to_minutes};
use proptest::prelude::*;

fn whole(grams: f64) -> Portion {
    Portion {
        form: Form::Whole,
        weight: Mass::from_g(grams),
        thickness: None,
        packing: Packing::Plain,
    }
}

fn flat(grams: f64, mm: f64) -> Portion {
    let thickness = Some(Length::from_mm(mm));
    Portion { form: Form::Shredded, thickness, ..whole(grams) }
}

fn plan(portion: Portion, from: Place) -> BathPlan {
    BathPlan { portion, from, bath: USUAL_BATH, core: USUAL_CORE, warm: Span::zero() }
}

#[test]
fn a_sealed_whole_breast_is_hot_through_in_about_an_hour() {
    // Common practice, no source: a sealed whole breast, chilled, in a 145 F bath for about an
    // hour is hot through. Usual sizes: 225-400 g (8-14 oz) raw, three quarters of that cooked.
    // What a cook is told is the later time, by which a piece an eighth thicker is there too.
    for grams in [170.0, 200.0, 250.0, 300.0] {
        let time = bath_time(&plan(whole(grams), Place::Fridge)).unwrap();
        let [likely, surely] = [time.likely, time.surely].map(to_minutes);
        println!("{grams} g: {likely:.0} min, surely by {surely:.0}");
        assert!((40.0..=75.0).contains(&surely), "{grams} g: {surely} min");
        assert!(likely > 0.75 * surely, "{grams} g: {likely} against {surely} min");
    }
}

#[test]
fn thirty_millimetres_take_as_long_as_published_chilled_and_frozen() {
    // 30 mm of meat from 5 C, heated nearly to its bath: 69 min, 84 from frozen (an older version
    // of Baldwin's table); one test with a wet towel of that thickness measured 67 and 98 min.
    let near = |from| {
        let bath = BathPlan {
            bath: Temperature::from_c(60.0),
            core: Temperature::from_c(58.2),
            ..plan(flat(400.0, 30.0), from)
        };
        to_minutes(bath_time(&bath).unwrap().likely)
    };
    let (chilled, frozen) = (near(Place::Fridge), near(Place::Freezer));
    println!("30 mm: {chilled:.0} min chilled, {frozen:.0} frozen");
    assert!((chilled / 68.0 - 1.0).abs() < 0.12, "{chilled}");
    assert!((84.0..=98.0).contains(&frozen), "{frozen}");
}

#[test]
fn thawing_times_are_those_usda_tells() {
    // USDA, as many extensions repeat: in cold water a package of about a pound may thaw in an
    // hour or less, one of three to four pounds in two to three hours; in the refrigerator a pound
    // of boneless breasts can need a full day. USDA gives no thickness: an inch for a pound lying flat,
    // two inches for a large package are ours.
    let water =
        |grams, mm| to_minutes(thaw_time(&flat(grams, mm), Thawing::ColdWater).unwrap().time);
    let fridge = thaw_time(&flat(454.0, 25.4), Thawing::Fridge).unwrap().time;
    assert!((20.0..=60.0).contains(&water(454.0, 25.4)), "{}", water(454.0, 25.4));
    let large = water(1600.0, 50.8);
    assert!((120.0..=190.0).contains(&large), "{large}");
    assert!((Span::hours(6)..=Span::hours(24)).contains(&fridge), "{fridge}");
}

#[test]
fn thawing_for_longer_than_usda_tells_is_said() {
    // "A package of three to four pounds in two to three hours": 100 mm takes far longer.
    let cautions = |mm, how| thaw_time(&flat(1000.0, mm), how).unwrap().cautions;
    assert_eq!(cautions(100.0, Thawing::ColdWater), [Caution::SlowToThaw]);
    assert_eq!(cautions(40.0, Thawing::ColdWater), []);
    assert_eq!(cautions(100.0, Thawing::Fridge), []);
}

#[test]
fn reheating_for_more_than_two_hours_is_said_and_what_went_before_counts() {
    // Food Code 2022, 3-403.11: within two hours. 3-501.19(B), from memory: four hours in all.
    let told = |mm: f64, warm: Span| {
        let plan = BathPlan { warm, ..plan(flat(800.0, mm), Place::Fridge) };
        let time = bath_time(&plan).unwrap();
        let slow = [Caution::SlowToReheat, Caution::SlowToWarm]
            .map(|caution| time.cautions.contains(&caution));
        (to_minutes(time.warming), slow)
    };
    let zero = Span::zero();
    let (quick, none) = told(25.0, zero);
    assert!(quick < 110.0 && none == [false, false], "{quick}");
    let (slow, two_hours) = told(54.0, zero);
    assert!((120.0..239.0).contains(&slow) && two_hours == [true, false], "{slow}");
    let (longer, four_hours) = told(78.0, zero);
    assert!(longer > 240.0 && four_hours == [false, true], "{longer}");
    assert_eq!(told(25.0, Span::hours(4)).1, [false, true]);
    assert_eq!(told(25.0, Span::hours(2)).1, [false, false]);
}

#[test]
fn the_four_hours_run_until_the_core_is_hot_enough_to_hold() {
    // Food Code 2022, 3-501.16 and 3-501.19 (from memory): hot holding is 135 F, and the four hours
    // count below it. 130 F is for roasts alone.
    let plan = plan(flat(800.0, 54.0), Place::Fridge);
    let time = bath_time(&plan).unwrap();
    assert_eq!(plan.core, Temperature::from_f(135.0));
    assert_eq!(time.warming, time.surely);
    let roast = BathPlan { core: Temperature::from_f(130.0), ..plan };
    assert_eq!(bath_time(&roast).unwrap_err(), ReheatProblem::Core);
}

#[test]
fn what_cannot_be_reheated_is_said() {
    let base = plan(whole(180.0), Place::Fridge);
    let f = Temperature::from_f;
    let refused = |plan: BathPlan| bath_time(&plan).unwrap_err();
    assert_eq!(refused(BathPlan { core: f(125.0), ..base }), ReheatProblem::Core);
    assert_eq!(refused(BathPlan { bath: f(136.0), ..base }), ReheatProblem::BathTooCool);
    assert_eq!(refused(BathPlan { bath: f(f64::NAN), ..base }), ReheatProblem::BathTooCool);
    assert_eq!(refused(BathPlan { bath: f(300.0), ..base }), ReheatProblem::BathTooHot);
    assert_eq!(refused(plan(whole(0.0), Place::Fridge)), ReheatProblem::Bag);
    assert_eq!(refused(plan(flat(400.0, 150.0), Place::Fridge)), ReheatProblem::Bag);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn thicker_colder_and_hotter_wanted_all_take_longer(
        mm in 8.0..40.0_f64,
        bath in 141.0..180.0_f64,
    ) {
        let at = |mm, bath, core, from| {
            let bath = Temperature::from_f(bath);
            let core = Temperature::from_f(core);
            let plan = BathPlan { bath, core, ..plan(flat(500.0, mm), from) };
            bath_time(&plan).unwrap().likely
        };
        let base = at(mm, bath, 135.0, Place::Fridge);
        prop_assert!(at(mm * 1.1, bath, 135.0, Place::Fridge) > base);
        prop_assert!(at(mm, bath + 5.0, 135.0, Place::Fridge) < base);
        prop_assert!(at(mm, bath, 137.0, Place::Fridge) > base);
        prop_assert!(at(mm, bath, 135.0, Place::Freezer) > base);
    }
}
