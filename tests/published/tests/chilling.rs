//! Cooling times against published measurements, tables and limits.

use cook_model::heat::{
    Body, HeatTransferCoefficient, Leg, Medium, Start, Surface, Surroundings, Tuning, trace,
};
use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::chill::{ChillProblem, Chilled, Cooling, chill, into_cold_by};
use cook_model::kitchen::form::Form;
use cook_model::kitchen::shape::{COOKED_BREAST, Portion};
use cook_model::kitchen::storage::Packing;
use cook_model::piece::Dimensions;
use cook_model::quantity::{Length, Mass, Moment, Span, Temperature, to_minutes};
use proptest::prelude::*;

const HOT: Temperature = Temperature::from_f(160.0);

fn whole(grams: f64) -> Portion {
    Portion {
        form: Form::Whole,
        weight: Mass::from_g(grams),
        thickness: None,
        packing: Packing::Plain,
    }
}

fn flat(mm: f64) -> Portion {
    Portion { form: Form::Shredded, thickness: Some(Length::from_mm(mm)), ..whole(500.0) }
}

fn cooled(portion: &Portion, cooling: Cooling) -> Chilled {
    chill(portion, HOT, Span::zero(), cooling).expect("a portion that can be cooled")
}

#[test]
fn ice_water_cools_bags_as_the_table_says() {
    // Slabs in ice water to 5 C from a cooking temperature of 55-60 C (Baldwin, A Practical Guide
    // to Sous Vide Cooking, table 1.1; from memory, rounded to 5 or 15 min there). His diffusivity
    // is low on purpose, 1.08e-7 m2/s (from memory), and cooling takes that much longer.
    let table = [
        (10.0, 14.0),
        (15.0, 25.0),
        (20.0, 35.0),
        (25.0, 50.0),
        (30.0, 75.0),
        (35.0, 90.0),
        (40.0, 105.0),
        (50.0, 165.0),
    ];
    for (mm, published) in table {
        let portion = flat(mm);
        let start = Temperature::from_c(60.0);
        let time = chill(&portion, start, Span::zero(), Cooling::IceBath).unwrap().to_cold;
        let meat = COOKED_BREAST.diffusivity(Temperature::from_c(30.0)).m2_per_s();
        let minutes = to_minutes(time) * meat / 1.08e-7;
        assert!((minutes - published).abs() <= 0.10 * published + 2.5, "{mm} mm: {minutes} min");
    }
}

#[test]
fn a_beef_slab_cools_in_water_as_measured() {
    // James & James, Meat Refrigeration, table 16.7: 0.94 kg of beef, 50 mm thick, from 70 to
    // 10 C at the middle: 1.2 h in water of 0 C, 2.1 h in air of 0 C at 1.2 m/s. The slab's other
    // sides follow from its weight; transfer in the tank is not told: 95 to 500 W/m2K.
    let side = Length::from_m((0.94_f64 / 1060.0 / 0.05).sqrt());
    let size = Dimensions { thickness: Length::from_mm(50.0), width: side, length: side };
    let slab = Body::brick(&size, Medium::of(&COOKED_BREAST));
    let hours = |h| {
        let surface = Surface::convective(HeatTransferCoefficient::from_w_per_m2k(h));
        let cold = Surroundings::new(Leg::steady(surface, Temperature::from_c(0.0)));
        let start = Start::cooked(Temperature::from_c(70.0));
        let cooling = trace(&slab, start, &cold, Span::hours(12), &Tuning::default());
        let time = cooling.core_falls_to(Temperature::from_c(10.0), Span::zero());
        to_minutes(time.unwrap()) / 60.0
    };
    // The measurement is told to 0.1 h.
    assert!(hours(500.0) < 1.25 && 1.2 < hours(60.0), "{} to {}", hours(500.0), hours(60.0));
    // A flat plate in air of 1.2 m/s: some 15 W/m2K and 4 by radiation, wet on top of it.
    assert!(hours(35.0) < 2.15 && 2.1 < hours(15.0), "{} to {}", hours(35.0), hours(15.0));
}

#[test]
fn usual_breasts_keep_the_two_step_limit_in_the_refrigerator() {
    for grams in [130.0, 170.0, 200.0, 250.0] {
        let time = cooled(&whole(grams), Cooling::Fridge);
        assert_eq!(time.cautions, [Caution::TwoHours], "{grams} g");
    }
}

#[test]
fn a_full_thick_bag_does_not_and_ice_mends_it() {
    // FDA Food Code 3-501.14: 135 to 70 F within 2 h. A pan filled higher than 3 in is refused
    // outright by COMAR 10.15.03.11.
    let thick = flat(65.0);
    assert!(cooled(&thick, Cooling::Fridge).cautions.contains(&Caution::FirstStepSlow));
    let bag = flat(45.0);
    assert!(cooled(&bag, Cooling::Fridge).cautions.contains(&Caution::FirstStepSlow));
    assert_eq!(cooled(&bag, Cooling::IceBath).cautions, [Caution::TwoHours]);
}

#[test]
fn the_deadline_is_the_sooner_of_the_two_limits() {
    let off: Moment = "2026-06-01T18:00:00Z".parse().unwrap();
    let time = cooled(&whole(190.0), Cooling::Fridge);
    let mild = Temperature::from_f(75.0);
    assert_eq!(into_cold_by(off, mild, None, &time), off + Span::hours(2));
    let hot = Temperature::from_f(95.0);
    assert_eq!(into_cold_by(off, hot, None, &time), off + Span::hours(1));
    // Under 135 F since 20 minutes after it came off: what the cold needs to 70 F is taken off.
    let since = off + Span::minutes(20);
    let first = time.to_middle - time.to_hot;
    let by = into_cold_by(off, mild, Some(since), &time);
    assert_eq!(by, since + Span::hours(2) - first);
}

#[test]
fn time_already_spent_cooling_counts_whatever_is_read_now() {
    // FDA Food Code 2022, 3-501.14: from 135 to 70 F within two hours, to 41 F within six in all.
    let portion = whole(190.0);
    let told = |core: f64, hours: i64| {
        let core = Temperature::from_f(core);
        chill(&portion, core, Span::hours(hours), Cooling::OnIce).unwrap().cautions
    };
    // 69 F after five hours, put on ice: nobody saw it at 70 F in time.
    assert!(told(69.0, 5).contains(&Caution::MiddleNotSeen));
    assert!(told(80.0, 5).contains(&Caution::CoolingOver));
    assert!(told(45.0, 7).contains(&Caution::CoolingOver));
    assert_eq!(told(69.0, 1), [Caution::TwoHours]);
    assert_eq!(told(150.0, 5), [Caution::TwoHours], "hot again, it begins anew");
}

#[test]
fn what_cannot_be_cooled_is_said() {
    let cold = Temperature::from_f(40.0);
    let portion = whole(190.0);
    let refused =
        |portion: &Portion, core| chill(portion, core, Span::zero(), Cooling::Fridge).unwrap_err();
    assert_eq!(refused(&portion, cold), ChillProblem::Core);
    assert_eq!(refused(&portion, Temperature::from_f(f64::NAN)), ChillProblem::Core);
    assert_eq!(refused(&whole(f64::NAN), HOT), ChillProblem::Portion);
    assert_eq!(refused(&flat(300.0), HOT), ChillProblem::Portion);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn thinner_and_colder_are_quicker(mm in 8.0..60.0_f64) {
        for pair in Cooling::ALL.windows(2) {
            let [slow, quick] = [0, 1].map(|i| cooled(&flat(mm), pair[i]));
            prop_assert!(quick.to_middle < slow.to_middle);
            prop_assert!(quick.to_cold < slow.to_cold);
        }
        let (thin, thick) = (cooled(&flat(mm), Cooling::OnIce), cooled(&flat(mm * 1.1), Cooling::OnIce));
        prop_assert!(thin.to_hot <= thin.to_middle && thin.to_middle <= thin.to_cold);
        prop_assert!(thin.to_cold < thick.to_cold);
    }
}
