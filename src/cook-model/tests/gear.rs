//! What belongs to the phone: a thermometer found to read high reads high in the next cook too.

mod support;

use cook_model::cook::What;
use cook_model::cook::gear::{Gear, Pit, Thermometer};
use cook_model::heat::PitKind;
use cook_model::history::Instrument;
use cook_model::quantity::TemperatureDifference;
use cook_model::safety::ProofRule;
use support::{Cook, at, held_rule, put_on, read, set_out};

fn high_by(fahrenheit: f64) -> What {
    let offset = TemperatureDifference::from_f(-fahrenheit);
    What::ThermometerChecked { instrument: Instrument::InstantRead, offset }
}

/// A new cook that starts from this gear.
fn cook_with(gear: &Gear) -> Cook {
    let mut cook = Cook::default();
    for what in gear.entries_for(&cook.state()) {
        cook.write(0.0, what);
    }
    cook
}

#[test]
fn what_a_cook_says_of_the_gear_holds_in_the_next_one() {
    let mut first = Cook::default();
    first.write(0.0, What::PitKindSet { pit: PitKind::Pellet });
    first.write(0.0, What::RackSet { places_c: vec![TemperatureDifference::from_f(15.0); 3] });
    first.write(0.0, held_rule());
    first.write(1.0, high_by(2.0));
    let mut gear = Gear::default();
    gear.learn(&first.state(), at(1.0));
    let next = cook_with(&gear).state();
    let settings = first.state().settings;
    assert_eq!(next.settings, settings);
    assert_eq!(next.offset(Instrument::InstantRead), TemperatureDifference::from_f(-2.0));
    assert!(gear.entries_for(&next).is_empty(), "and nothing more is to be said");
    assert_eq!(gear.thermometer(Instrument::InstantRead).unwrap().checked, Some(at(1.0)));
}

#[test]
fn a_thermometer_that_reads_high_proves_nothing_more_in_the_next_cook() {
    let mut gear = Gear::default();
    let mut first = Cook::default();
    first.write(0.0, high_by(2.0));
    gear.learn(&first.state(), at(0.0));
    let mut next = cook_with(&gear);
    next.write(0.0, set_out(1, 38.0));
    next.write(0.0, put_on(1));
    next.write(90.0, read(1, 166.0, 2));
    assert!(!next.is_proved(1), "166 shown is 164");
    next.write(95.0, read(1, 168.0, 2));
    assert!(next.is_proved(1));
}

#[test]
fn a_phone_that_knows_nothing_says_nothing() {
    assert!(Gear::default().entries_for(&Cook::default().state()).is_empty());
    let mut gear = Gear::default();
    gear.learn(&Cook::two_on().state(), at(0.0));
    assert_eq!(gear, Gear::default());
}

#[test]
fn another_thermometer_has_its_own_offset_and_the_first_keeps_its_own() {
    let mut gear = Gear::default();
    let mut cook = Cook::default();
    cook.write(0.0, high_by(2.0));
    gear.learn(&cook.state(), at(0.0));
    gear.thermometers.insert(0, Thermometer::unknown(Instrument::InstantRead));
    for what in gear.entries_for(&cook.state()) {
        cook.write(1.0, what);
    }
    gear.learn(&cook.state(), at(1.0));
    assert_eq!(gear.thermometers[0].offset, TemperatureDifference::ZERO);
    assert_eq!(gear.thermometers[1].offset, TemperatureDifference::from_f(-2.0));
    gear.use_thermometer(1);
    assert_eq!(gear.entries_for(&cook.state()), [high_by(2.0)]);
}

#[test]
fn a_thermometer_too_far_out_proves_nothing_in_the_next_cook_either_until_it_is_replaced() {
    let mut first = Cook::default();
    first.write(0.0, high_by(9.0));
    let mut gear = Gear::default();
    gear.learn(&first.state(), at(0.0));
    let mut next = cook_with(&gear);
    next.write(0.0, set_out(1, 38.0));
    next.write(0.0, put_on(1));
    next.write(90.0, read(1, 180.0, 2));
    assert!(!next.is_proved(1));
    next.write(91.0, What::ThermometerReplaced { instrument: Instrument::InstantRead });
    gear.learn(&next.state(), at(91.0));
    assert!(gear.entries_for(&Cook::default().state()).is_empty());
}

#[test]
fn a_rule_taken_back_to_the_usual_one_is_so_in_the_next_cook() {
    let mut gear = Gear { proof_rule: Some(ProofRule::Instant), ..Gear::default() };
    let mut cook = Cook::default();
    cook.write(0.0, held_rule());
    gear.learn(&cook.state(), at(0.0));
    cook.write(1.0, What::ProofRuleSet { rule: ProofRule::Instant });
    gear.learn(&cook.state(), at(1.0));
    assert!(gear.entries_for(&Cook::default().state()).is_empty());
}

#[test]
fn it_is_kept_as_text_and_read_again() {
    let mut gear = Gear { pits: vec![Pit::unknown()], ..Gear::default() };
    gear.pits[0].name = "Big drum".to_owned();
    gear.thermometers.push(Thermometer::unknown(Instrument::LeaveIn));
    let text = serde_json::to_string(&gear).unwrap();
    assert_eq!(serde_json::from_str::<Gear>(&text).unwrap(), gear);
    assert_eq!(serde_json::from_str::<Gear>("{}").unwrap(), Gear::default());
}
