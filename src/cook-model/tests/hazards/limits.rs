//! A limit that ran out: by whatever is done afterwards, the piece is not food any more.

use cook_model::cook::{Stage, What};
use cook_model::forecast::forecast;
use cook_model::quantity::Temperature;
use cook_model::safety::{ClockKind, RunOut, Then};

use crate::support::{Cook, at, held_rule, packed, piece, pulled, put_on, read};
use crate::{proved_cook, shown};

fn run_out(cook: &Cook, minute: f64) -> Option<RunOut> {
    cook.state().run_out(piece(1), at(minute))
}

/// FDA Food Code 2022, 3-501.19(B), from memory: four hours without temperature control, then it
/// is thrown away. FSIS Revised Appendix A: six hours from 50 to 130 F, under a processor's control.
#[test]
fn five_hours_at_80_to_120_f_then_hot() {
    let mut cook = Cook::two_on();
    cook.write(60.0, read(1, 80.0, 2));
    cook.write(300.0, read(1, 120.0, 2));
    cook.write(320.0, read(1, 141.0, 2));
    cook.write(340.0, read(1, 167.0, 2));
    cook.write(341.0, pulled(1));
    assert!(!cook.is_proved(1));
    let over = run_out(&cook, 341.0).unwrap();
    assert_eq!((over.kind, over.deadline), (ClockKind::WarmUp, at(240.0)));
    assert_eq!(over.then, Then::ThrowAwayUnlessProcessor);
    assert!(over.source().contains("3-501.19"));
    // The same under the rule of time at temperature.
    cook.write(0.0, held_rule());
    for minute in [342.0, 350.0, 360.0, 370.0] {
        cook.write(minute, read(1, 160.0, 2));
    }
    assert!(!cook.is_proved(1));
}

/// USDA consumer advice: from the heat to the refrigerator within two hours.
#[test]
fn five_hours_off_the_heat_then_put_back() {
    for proving in [160.0, 166.0] {
        let mut cook = Cook::two_on();
        cook.write(75.0, read(1, proving, 2));
        cook.write(76.0, pulled(1));
        cook.write(376.0, put_on(1));
        cook.write(420.0, read(1, 167.0, 2));
        cook.write(421.0, pulled(1));
        assert!(!cook.is_proved(1));
        let over = run_out(&cook, 421.0).unwrap();
        assert_eq!((over.kind, over.deadline), (ClockKind::ToFridge, at(196.0)));
        assert_eq!(over.then, Then::ThrowAway);
        // Nothing of it is forgotten: the clock is still told of.
        let state = shown(&cook, 430.0);
        let clocks = state.clocks(&forecast(&state.history, at(430.0)));
        assert!(clocks.iter().any(|(id, clock)| *id == piece(1) && clock.has_run_out(at(430.0))));
    }
}

#[test]
fn hours_off_the_heat_proved_or_not() {
    let cook = proved_cook();
    assert_eq!(run_out(&cook, 190.0), None);
    assert_eq!(shown(&cook, 190.0).pieces[0].stage, Stage::Proved);
    let state = shown(&cook, 76.0 + 404.0);
    assert_eq!((state.pieces[0].stage, state.pieces[0].proof), (Stage::Resting, None));
    assert_eq!(state.pieces[0].run_out.unwrap().kind, ClockKind::ToFridge);
    let mut unproved = Cook::two_on();
    unproved.write(76.0, pulled(1));
    assert!(run_out(&unproved, 376.0).is_some());
    // A reading of 140 F after its end shows nothing of the hours before: nobody knew.
    let mut cook = proved_cook();
    cook.write(300.0, read(1, 166.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn packed_too_late() {
    let mut cook = proved_cook();
    cook.write(180.0, packed(1));
    assert!(cook.state().pieces[0].proof.is_some());
    let mut late = proved_cook();
    late.write(256.0, packed(1));
    let standing = &late.state().pieces[0];
    assert!(standing.is_packed_unproved());
    assert_eq!(standing.run_out.unwrap().deadline, at(196.0));
}

#[test]
fn the_limit_that_ran_out_first_is_told() {
    let mut cook = Cook::two_on();
    let ambient = Temperature::from_f(70.0);
    cook.write(0.0, What::AmbientSet { ambient });
    cook.write(230.0, pulled(1));
    // The warm-up ends at 240, the two hours at 350.
    assert_eq!(run_out(&cook, 400.0).unwrap().deadline, at(240.0));
    assert_eq!(run_out(&cook, 400.0).unwrap().then, Then::ThrowAway);
}

#[test]
fn a_limit_undone_with_its_entry_is_as_if_it_had_never_been() {
    let mut cook = Cook::two_on();
    let early = cook.write(10.0, pulled(1));
    cook.write(75.0, read(1, 160.0, 2));
    assert!(run_out(&cook, 300.0).is_some());
    cook.write(300.0, What::Undone { entry: early });
    cook.write(300.5, read(1, 166.0, 2));
    cook.write(301.0, pulled(1));
    assert!(cook.is_proved(1));
}
