//! A second place that is said to read no lower, and was hardly looked at.

use cook_model::cook::duties::{Act, Doing, Duty, Why, duties};
use cook_model::cook::{Seen, What};
use cook_model::history::Instrument;
use cook_model::quantity::{Temperature, TemperatureDifference};
use cook_model::safety::ProofRule;

use crate::support::{Cook, at, piece, pulled, read};

/// What is asked for after one place of piece 1 read so much.
fn asked(f: f64, told_before: &[What]) -> Duty {
    let mut cook = Cook::two_on();
    for what in told_before {
        cook.write(1.0, what.clone());
    }
    cook.write(75.0, read(1, f, 1));
    cook.write(76.0, pulled(1));
    let asked = duties(&Seen::of(&cook.log, at(76.0)));
    asked.into_iter().find(|duty| matches!(duty.act, Act::TrySecondPlace { .. })).unwrap()
}

fn asks_for_the_figure(duty: &Duty) -> bool {
    matches!(duty.doing()[0], Doing::TypeCore { .. })
}

#[test]
fn a_rule_met_by_under_3_f_asks_for_the_figure() {
    for (f, figure) in [(165.5, true), (167.9, true), (168.0, false), (172.0, false)] {
        assert_eq!(asks_for_the_figure(&asked(f, &[])), figure, "{f}");
    }
    // By what counts for the proof: this thermometer reads 2 F high.
    let high = What::ThermometerChecked {
        instrument: Instrument::InstantRead,
        offset: TemperatureDifference::from_f(-2.0),
    };
    assert!(asks_for_the_figure(&asked(169.5, &[high])));
    // And by the cook's own rule.
    let rule = ProofRule::Stricter { at_least: Temperature::from_f(170.0) };
    assert!(asks_for_the_figure(&asked(172.0, &[What::ProofRuleSet { rule }])));
}

#[test]
fn the_piece_and_the_figure_are_named_before_it_counts() {
    for f in [166.0, 170.0] {
        let duty = asked(f, &[]);
        assert_eq!(duty.pieces, [piece(1)]);
        let Why::Reading { shown, .. } = duty.why else { panic!("{duty:?}") };
        assert!((shown.f() - f).abs() < 1e-6);
    }
}
