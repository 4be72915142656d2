//! What can be typed and logged: everything that can be true, and nothing that cannot.

use cook_model::cook::{Problem, What, limits};
use cook_model::history::{Instrument, Tolerances};
use cook_model::plan::Habits;
use cook_model::quantity::{Length, Mass, Span, Temperature, TemperatureDifference};

use crate::support::{Cook, piece, set_out};

/// Whether an entry counts, whoever wrote it.
fn counts(what: What) -> bool {
    let mut cook = Cook::two_on();
    let entry = cook.write(30.0, what);
    let ignored = cook.state().ignored;
    let own = ignored.iter().find(|ignored| ignored.entry == entry);
    assert!(own.is_none_or(|own| own.why == Problem::ImpossibleValue));
    own.is_none()
}

fn each(good: &[f64], bad: &[f64], what: impl Fn(f64) -> What) {
    good.iter().for_each(|value| assert!(counts(what(*value)), "{value} is refused"));
    bad.iter().for_each(|value| assert!(!counts(what(*value)), "{value} is taken"));
}

/// Meat between nearly frozen and boiling: a thawing core at 29 F, one cooked to shreds at 210 F. Water
/// boils at 212 F, so no core is at 220, and none that is on a pit is at 25.
#[test]
fn a_core_reading() {
    each(&[29.0, 165.0, 210.0, 214.0], &[25.5, 217.0, 374.0, f64::NAN], |f| What::CoreRead {
        piece: piece(1),
        temperature: Temperature::from_f(f),
        instrument: Instrument::InstantRead,
        places: 2,
    });
}

/// Winter mornings at 5 F happen, and grease fires of 690 F.
#[test]
fn a_pit_reading() {
    each(&[1.0, 250.0, 690.0], &[-2.5, 702.0, f64::INFINITY], |f| What::PitRead {
        temperature: Temperature::from_f(f),
    });
}

/// Smokers hold 180 F, grills with the fire to one side 450 (common practice, no source). At 140 F,
/// aimed for, meat spends its day in the danger zone.
#[test]
fn a_pit_target() {
    each(&[181.0, 250.0, 449.0], &[140.0, 178.5, 452.0, 1000.0], |f| What::PitTargetSet {
        target: Temperature::from_f(f),
    });
}

/// USDA: the danger zone ends at 140 F. Nobody eats a breast of 185 F with pleasure.
#[test]
fn a_pull_temperature() {
    for piece in [None, Some(piece(1))] {
        each(&[140.0, 157.0, 185.0], &[100.0, 139.0, 186.5, f64::NAN], |f| What::PullTargetSet {
            piece,
            target: Some(Temperature::from_f(f)),
        });
    }
}

/// The coldest and the hottest places where people live: -40 F and 130 F.
#[test]
fn the_air() {
    each(&[-39.0, 70.0, 129.0], &[-42.5, 132.0, 250.0], |f| What::AmbientSet {
        ambient: Temperature::from_f(f),
    });
}

/// A check can find anything; what bars a thermometer is another question.
#[test]
fn an_offset() {
    each(&[-200.0, -4.0, 0.0, 4.0, 200.0], &[-500.0, 500.0, f64::NAN], |f| {
        What::ThermometerChecked {
            instrument: Instrument::InstantRead,
            offset: TemperatureDifference::from_f(f),
        }
    });
}

/// A food thermometer is sold with 0.5 to 4 F (from memory), a dial in a lid with 25; none is perfect,
/// and 10 F is no food thermometer.
#[test]
fn a_tolerance() {
    let told = |tolerances| What::TolerancesSet { tolerances };
    let diff = TemperatureDifference::from_f;
    each(&[0.2, 0.5, 2.0, 4.0, 5.0], &[0.04, 0.0, -1.0, 7.0, 30.0], |f| {
        told(Tolerances { instant_read: diff(f), ..Tolerances::default() })
    });
    each(&[0.2, 2.0, 5.0], &[0.04, 7.0, 30.0], |f| {
        told(Tolerances { leave_in: diff(f), ..Tolerances::default() })
    });
    each(&[0.2, 5.0, 25.0, 30.0], &[0.04, 40.0], |f| {
        told(Tolerances { pit: diff(f), ..Tolerances::default() })
    });
}

/// Trimmed breasts weigh 95 to 450 g, thick ones are 50 mm (from memory); a tenderloin weighs 55 g, a
/// cutlet is 10 mm thin. A whole bird is no breast. None is put on above 90 F: it would have been cooked.
#[test]
fn a_piece() {
    let with = |change: &dyn Fn(&mut cook_model::piece::Piece)| {
        let What::PieceSetOut { piece, mut facts, name } = set_out(3, 38.0) else { panic!() };
        change(&mut facts);
        What::PieceSetOut { piece, facts, name }
    };
    each(&[55.0, 240.0, 950.0], &[20.0, 0.0, 1400.0], |g| {
        with(&|piece| piece.weight = Mass::from_g(g))
    });
    each(&[10.0, 38.0, 85.0], &[5.0, 0.0, 120.0, f64::NAN], |mm| {
        with(&|piece| piece.thickest = Some(Length::from_mm(mm)))
    });
    each(&[30.0, 40.0, 89.0], &[10.0, 92.0, 140.0], |f| {
        with(&|piece| piece.start = Temperature::from_f(f))
    });
}

/// One in a hundred to an even chance.
#[test]
fn a_risk() {
    each(&[1.0, 10.0, 50.0], &[0.0, 60.0, 100.0], |percent| What::CheckRiskSet {
        percent: percent as u8,
    });
}

/// A big smoker's rack has 30 places, the far end of a grill is 50 F hotter (common practice, no source).
#[test]
fn a_rack() {
    let places = |count: usize, f: f64| What::RackSet {
        places_c: vec![TemperatureDifference::from_f(f); count],
    };
    for f in [-50.0, 0.0, 50.0] {
        assert!(counts(places(30, f)), "{f}");
    }
    assert!(!counts(places(50, 0.0)));
    assert!(!counts(places(4, 100.0)) && !counts(places(4, -100.0)));
}

/// The offset with which a thermometer still may prove: Food Code 2022, 4-203.11, from memory, allows 2 F;
/// one that is 5 F off is corrected, one further off is not to be trusted.
#[test]
fn the_offset_that_bars() {
    let barred = |f: f64| {
        let mut cook = Cook::two_on();
        let offset = TemperatureDifference::from_f(f);
        cook.write(1.0, What::ThermometerChecked { instrument: Instrument::InstantRead, offset });
        cook.state().is_barred(Instrument::InstantRead)
    };
    for f in [-4.9, 0.0, 4.9] {
        assert!(!barred(f) && limits::OFFSET.contains(&TemperatureDifference::from_f(f)), "{f}");
    }
    for f in [-5.5, 5.5, -30.0] {
        assert!(barred(f), "{f}");
    }
}

/// Habits take minutes to hours (common practice, no source); raw meat lies out two at the most (USDA).
#[test]
fn a_habit() {
    let with = |change: &dyn Fn(&mut Habits)| {
        let mut habits = Habits::default();
        change(&mut habits);
        counts(What::HabitsSet { habits })
    };
    for (minutes, good) in [(0, true), (300, true), (700, false), (-10, false)] {
        let span = Span::minutes(minutes);
        assert_eq!(with(&|habits| habits.rest = span), good, "{minutes}");
        assert_eq!(with(&|habits| habits.seasoning = span), good, "{minutes}");
        assert_eq!(with(&|habits| habits.carving = span), good, "{minutes}");
        assert_eq!(with(&|habits| habits.fire.preheat = span), good, "{minutes}");
        assert_eq!(with(&|habits| habits.fire.feed_every = span), good, "{minutes}");
    }
    for (minutes, good) in [(0, true), (120, true), (121, false), (480, false), (-1, false)] {
        assert_eq!(
            with(&|habits| habits.out_of_fridge = Span::minutes(minutes)),
            good,
            "{minutes}"
        );
    }
}
