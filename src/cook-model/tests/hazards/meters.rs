//! Thermometers and pits that show too much.

use cook_model::cook::What;
use cook_model::history::{Instrument, Tolerances};
use cook_model::quantity::{Temperature, TemperatureDifference};
use cook_model::safety::Shortfall;

use crate::support::{Cook, held_rule, pulled, read};
use crate::why_not;

fn checked(f: f64) -> What {
    What::ThermometerChecked {
        instrument: Instrument::InstantRead,
        offset: TemperatureDifference::from_f(f),
    }
}

fn proves(checks: &[(f64, What)], f: f64) -> bool {
    let mut cook = Cook::two_on();
    for (minute, what) in checks {
        cook.write(*minute, what.clone());
    }
    cook.write(75.0, read(1, f, 2));
    cook.write(76.0, pulled(1));
    cook.is_proved(1)
}

#[test]
fn a_thermometer_too_far_off_proves_nothing_until_it_is_replaced() {
    // Food Code 2022, 4-203.11, from memory: within 2 F. Beyond 5 F the app corrects nothing.
    let replaced = || What::ThermometerReplaced { instrument: Instrument::InstantRead };
    assert!(proves(&[], 175.0));
    assert!(!proves(&[(1.0, checked(-8.0))], 175.0));
    assert!(!proves(&[(1.0, checked(8.0))], 175.0));
    assert!(!proves(&[(1.0, checked(-8.0)), (2.0, checked(0.0))], 175.0));
    assert!(proves(&[(1.0, checked(-8.0)), (2.0, replaced())], 166.0));
    // It was found after the reading; the new one does not vouch for the old.
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 175.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(77.0, checked(-8.0));
    assert!(!cook.is_proved(1));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::BadThermometer));
    assert!(cook.state().is_barred(Instrument::InstantRead));
    cook.write(78.0, replaced());
    assert!(!cook.is_proved(1) && !cook.state().is_barred(Instrument::InstantRead));
    cook.write(79.0, read(1, 170.0, 2));
    assert!(cook.is_proved(1));
}

#[test]
fn a_later_reads_true_does_not_erase_reads_high() {
    assert!(!proves(&[(1.0, checked(-3.0)), (2.0, checked(0.0))], 166.0));
    let mut cook = Cook::two_on();
    let offset = |cook: &Cook| cook.state().offset(Instrument::InstantRead).f().round();
    cook.write(1.0, checked(-3.0));
    cook.write(2.0, checked(0.0));
    assert_eq!(offset(&cook), -3.0);
    // A third check decides.
    cook.write(3.0, checked(0.0));
    assert_eq!(offset(&cook), 0.0);
}

#[test]
fn a_useless_tolerance_is_refused() {
    let told = |f: f64| What::TolerancesSet {
        tolerances: Tolerances {
            instant_read: TemperatureDifference::from_f(f),
            ..Tolerances::default()
        },
    };
    let mut cook = Cook::two_on();
    cook.write(1.0, told(30.0));
    assert_eq!(cook.state().settings.tolerances, Tolerances::default());
    assert_eq!(cook.state().ignored.len(), 1);
}

#[test]
fn a_hold_by_a_thermometer_that_may_read_high() {
    // The agency's 150 F row, 12 % fat: 4.2 minutes at a true 150 F. A thermometer within 2 F shows
    // 152 F for it (Food Code 2022, 4-203.11, from memory); at 151.9 it may have been 149.9, for
    // which the next row asks 5.4 minutes.
    let proves = |f: f64, tolerance: f64| {
        let mut cook = Cook::two_on();
        cook.write(0.0, held_rule());
        let tolerances = Tolerances {
            instant_read: TemperatureDifference::from_f(tolerance),
            ..Tolerances::default()
        };
        cook.write(0.0, What::TolerancesSet { tolerances });
        cook.write(70.0, read(1, f, 2));
        cook.write(75.0, read(1, f, 2));
        cook.is_proved(1)
    };
    assert!(proves(152.0, 2.0) && !proves(151.9, 2.0));
    assert!(proves(150.5, 0.5) && !proves(150.4, 0.5));
}

#[test]
fn hotter_than_the_pit_was_read() {
    // 190 F in a pit read at 160 F five times: no tap makes it proof.
    let pit = |f: f64| {
        let mut cook = Cook::two_on();
        for minute in [5.0, 20.0, 35.0, 50.0, 65.0] {
            let temperature = Temperature::from_f(f);
            cook.write(minute, What::PitRead { temperature });
        }
        let reading = cook.write(75.0, read(1, 190.0, 2));
        cook.write(75.5, What::ReadingVouched { reading });
        cook.write(76.0, pulled(1));
        cook
    };
    assert_eq!(why_not(&pit(160.0), 1), Some(Shortfall::TooFast));
    assert!(pit(250.0).is_proved(1));
    // Read once and long ago, the pit may be as hot as it was set.
    let mut cook = Cook::two_on();
    cook.write(5.0, What::PitRead { temperature: Temperature::from_f(160.0) });
    cook.write(75.0, read(1, 190.0, 2));
    cook.write(76.0, pulled(1));
    assert!(cook.is_proved(1));
}
