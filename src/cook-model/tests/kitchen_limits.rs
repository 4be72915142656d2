//! The limits of chilling, thawing and reheating, by the sentences of their sources.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::chill::{Cooling, chill, into_cold_by};
use cook_model::kitchen::form::Form;
use cook_model::kitchen::reheat::{
    BathPlan, ReheatProblem, Thawing, USUAL_BATH, USUAL_CORE, bath_time, thaw_time,
};
use cook_model::kitchen::shape::Portion;
use cook_model::kitchen::storage::{Packing, Place};
use cook_model::quantity::{Length, Mass, Span, Temperature, to_minutes};

fn flat(grams: f64, mm: f64) -> Portion {
    Portion {
        form: Form::Shredded,
        weight: Mass::from_g(grams),
        thickness: Some(Length::from_mm(mm)),
        packing: Packing::Plain,
    }
}

/// What is said against the two steps of a cooling that read `f` so many minutes after 135 F.
fn against(mm: f64, f: f64, minutes: i64, cooling: Cooling) -> Vec<Caution> {
    let core = Temperature::from_f(f);
    let told = chill(&flat(400.0, mm), core, Span::minutes(minutes), cooling).unwrap();
    told.cautions.into_iter().filter(|caution| *caution != Caution::TwoHours).collect()
}

/// FDA Food Code 2022, 3-501.14(A): "within 2 hours from 57 C (135 F) to 21 C (70 F); and within a total
/// of 6 hours from 57 C (135 F) to 5 C (41 F) or less".
#[test]
fn what_cooled_too_slowly_never_keeps_the_two_step_limit() {
    for cooling in Cooling::ALL {
        // Five hours, then 69 F is typed: nobody read 70 F in time, whatever ice does from here.
        assert_eq!(against(10.0, 69.0, 300, cooling)[0], Caution::MiddleNotSeen, "{cooling:?}");
        for minutes in [121, 150, 300, 359] {
            assert!(!against(10.0, 69.0, minutes, cooling).is_empty(), "{cooling:?} {minutes}");
            assert_eq!(against(10.0, 71.0, minutes, cooling)[0], Caution::CoolingOver);
        }
        // Six hours in all are over, however near 41 F it is.
        for f in [43.0, 69.0, 120.0] {
            assert_eq!(against(10.0, f, 361, cooling)[0], Caution::CoolingOver, "{cooling:?} {f}");
        }
        // Read at 69 F within the two hours, and thin.
        assert_eq!(against(10.0, 69.0, 110, cooling), [], "{cooling:?}");
        // What is at 135 F or above has not begun, however long ago it was cooked.
        assert_eq!(against(10.0, 150.0, 300, cooling), [], "{cooling:?}");
    }
    // What went before counts into each step: thin enough by itself, too slow with it.
    let alone =
        chill(&flat(400.0, 22.0), Temperature::from_f(134.0), Span::zero(), Cooling::Fridge);
    let to_70 = to_minutes(alone.unwrap().to_middle);
    assert!((20.0..115.0).contains(&to_70), "{to_70}");
    assert_eq!(against(22.0, 134.0, 0, Cooling::Fridge), []);
    let late = 120 - to_70 as i64 + 1;
    assert!(against(22.0, 134.0, late, Cooling::Fridge).contains(&Caution::FirstStepSlow));
    // Read at 69 F in time, but the rest takes it past six hours.
    assert!(against(80.0, 69.0, 119, Cooling::Fridge).contains(&Caution::SecondStepSlow));
}

/// A bag may be thicker than was measured: near a limit it is said before the likely time breaks it.
#[test]
fn near_the_limit_the_sure_time_counts() {
    let mut between = 0;
    for mm in 20..80 {
        let told = chill(
            &flat(400.0, mm.into()),
            Temperature::from_f(150.0),
            Span::zero(),
            Cooling::Fridge,
        );
        let told = told.unwrap();
        let first = told.to_middle - told.to_hot;
        let said = told.cautions.contains(&Caution::FirstStepSlow);
        assert!(said || first <= Span::hours(2), "{mm} mm: {first}");
        between += i32::from(said && first <= Span::hours(2));
        let whole = told.to_cold - told.to_hot;
        assert!(told.cautions.contains(&Caution::SecondStepSlow) || whole <= Span::hours(6));
    }
    assert!(between > 0, "none was said on the safe side of the limit");
}

/// USDA consumer advice: two hours off the heat, one above 90 F; the two steps may end sooner.
#[test]
fn by_when_it_must_be_in_the_cold() {
    let off = "2026-06-07T22:10:00Z".parse().unwrap();
    let thin = chill(&flat(400.0, 20.0), Temperature::from_f(130.0), Span::zero(), Cooling::Fridge);
    let thin = thin.unwrap();
    let by = |ambient: f64, since| into_cold_by(off, Temperature::from_f(ambient), since, &thin);
    assert_eq!(by(75.0, None), off + Span::hours(2));
    assert_eq!(by(95.0, None), off + Span::hours(1));
    // Under 135 F since it came off, it must be in early enough to be at 70 F two hours after.
    let needs = thin.to_middle - thin.to_hot;
    assert!(needs > Span::minutes(10));
    assert_eq!(by(75.0, Some(off)), off + Span::hours(2) - needs);
    // Hot until later, the two hours off the heat come first.
    assert_eq!(by(75.0, Some(off + Span::hours(2))), off + Span::hours(2));
}

/// USDA, The Big Thaw: a package of three to four pounds in cold water takes two to three hours. Nine are
/// far past what is told, and its outside is as warm as the tap all the while.
#[test]
fn a_block_of_100_mm_in_cold_water_is_cautioned() {
    let block = thaw_time(&flat(2000.0, 100.0), Thawing::ColdWater).unwrap();
    assert!(block.time > Span::hours(6), "{}", block.time);
    assert_eq!(block.cautions, [Caution::SlowToThaw]);
    for mm in 10..100 {
        let told = thaw_time(&flat(800.0, mm.into()), Thawing::ColdWater).unwrap();
        assert!(!told.cautions.is_empty() || told.time <= Span::hours(3), "{mm} mm: {}", told.time);
        assert!(
            told.cautions.is_empty() || told.time > Span::minutes(140),
            "{mm} mm: {}",
            told.time
        );
    }
}

/// FDA Food Code 2022, 3-403.11(D): reheating "shall be done rapidly and the time the food is between 5 C
/// (41 F) and" its end "may not exceed 2 hours". 3-501.19(B), from memory: four hours in all. Each is
/// said by the time that is sure, and as soon as it is passed.
#[test]
fn reheating_past_two_hours_is_said_at_two_hours() {
    let mut caught = [0; 2];
    for place in [Place::Fridge, Place::Freezer] {
        for mm in (20..100).step_by(2) {
            let plan = BathPlan {
                portion: flat(900.0, mm.into()),
                from: place,
                bath: USUAL_BATH,
                core: USUAL_CORE,
                warm: Span::zero(),
            };
            let time = bath_time(&plan).unwrap();
            assert!(time.surely > time.likely && time.warming <= time.surely);
            let expected = match time.surely {
                sure if sure > Span::hours(4) => Some(Caution::SlowToWarm),
                sure if sure > Span::hours(2) => Some(Caution::SlowToReheat),
                _ => None,
            };
            let slow = [Caution::SlowToWarm, Caution::SlowToReheat];
            let said = time.cautions.iter().copied().find(|caution| slow.contains(caution));
            assert_eq!(said, expected, "{mm} mm: {}", time.surely);
            // Where the likely time alone would have said nothing.
            let limits = [Span::hours(2), Span::hours(4)];
            for (count, limit) in caught.iter_mut().zip(limits) {
                *count += i32::from(time.likely <= limit && time.surely > limit);
            }
        }
    }
    assert!(caught.iter().all(|count| *count > 0), "{caught:?}");
}

/// "Within 2 hours" and "6 hours" hold their ends; boiling water is still a bath, and one that hardly is
/// hotter than the core wanted is none.
#[test]
fn the_ends_of_the_limits_are_within_them() {
    assert_eq!(against(10.0, 69.0, 120, Cooling::IceBath), []);
    assert!(!against(10.0, 71.0, 120, Cooling::IceBath).contains(&Caution::CoolingOver));
    assert!(!against(10.0, 43.0, 360, Cooling::IceBath).contains(&Caution::CoolingOver));
    let bath = |f: f64| {
        let bath = Temperature::from_f(f);
        let (portion, from) = (flat(400.0, 20.0), Place::Fridge);
        bath_time(&BathPlan { portion, from, bath, core: USUAL_CORE, warm: Span::zero() })
    };
    assert!(bath(212.0).is_ok());
    assert_eq!(bath(212.5), Err(ReheatProblem::BathTooHot));
    for cool in [60.0, 135.0, 137.0] {
        assert_eq!(bath(cool), Err(ReheatProblem::BathTooCool));
    }
}
