//! Pits by what people own: each is read from the logs of old, and only a fire of wood or charcoal is fed.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::alarms::AlarmKind;
use cook_model::cook::duties::{Act, duties};
use cook_model::cook::export::{export, import};
use cook_model::cook::gear::{Gear, pit_chosen};
use cook_model::cook::{Chore, Seen, Settings, What, fold};
use cook_model::heat::{PitKind, Surface};
use cook_model::plan::{FireHabits, Habits};
use cook_model::quantity::{Span, Temperature};
use support::{Cook, at};

/// Their owners load pellets, turn a knob or plug in a cord: nobody puts fuel on a fire there (common
/// practice, no source).
const NEVER_FED: [PitKind; 3] = [PitKind::Pellet, PitKind::Gas, PitKind::Electric];

/// Two on, dinner asked for, in a pit of a kind whose owner told no times of his own.
fn two_on(kind: PitKind) -> Cook {
    let mut cook = Cook::default();
    cook.write(0.0, What::PitKindSet { pit: kind });
    cook.write(0.0, What::DinnerSet { at: Some(at(240.0)) });
    cook.write(0.0, support::set_out(1, 40.0));
    cook.write(0.0, support::set_out(2, 44.0));
    cook
}

fn says_feed(cook: &Cook) -> bool {
    let feed = Chore::FeedFire;
    let seen = Seen::of(&cook.log, at(0.0));
    let all = duties(&seen);
    let planned = seen.plan.as_ref().is_some_and(|plan| !plan.feeds.is_empty());
    let calls = |kind| kind == AlarmKind::ChoreDue(feed);
    planned
        || all.iter().any(|duty| {
            duty.act == Act::Chore { chore: feed } || duty.bells.iter().any(|b| calls(b.id.kind))
        })
}

#[test]
fn who_owns_a_pit_that_heats_by_itself_is_never_told_to_feed_it() {
    for kind in PitKind::ALL {
        let mut cook = two_on(kind);
        let fed = !NEVER_FED.contains(&kind);
        assert_eq!(kind.is_fed(), fed, "{kind:?}");
        assert_eq!(says_feed(&cook), fed, "{kind:?}, as planned");
        cook.write(0.0, support::put_on(1));
        cook.write(0.0, support::put_on(2));
        assert_eq!(says_feed(&cook), fed, "{kind:?}, with both on");
    }
}

/// The four words that stood in files before there were more kinds.
#[test]
fn a_log_of_old_is_read() {
    let old = [
        ("indirect", PitKind::Indirect),
        ("pellet", PitKind::Pellet),
        ("gas", PitKind::Gas),
        ("drum", PitKind::Drum),
    ];
    let mut cook = Cook::default();
    cook.write(0.0, What::PitKindSet { pit: PitKind::Pellet });
    let text = export(&cook.log);
    for (word, kind) in old {
        let told = text.replace("\"pellet\"", &format!("\"{word}\""));
        let log = import(&told).unwrap();
        assert!(log.set_aside().is_empty(), "{word}");
        assert_eq!(fold(&log).settings.pit_kind, kind);
        let gear = format!(
            r#"{{"pits":[{{"kind":"{word}","rack_c":[],"tolerance_c":1.7,"habits":{}}}]}}"#,
            serde_json::to_string(&Habits::default()).unwrap(),
        );
        assert_eq!(serde_json::from_str::<Gear>(&gear).unwrap().pit().unwrap().kind, kind);
    }
    for kind in PitKind::ALL {
        let mut cook = Cook::default();
        cook.write(0.0, What::PitKindSet { pit: kind });
        assert_eq!(fold(&import(&export(&cook.log)).unwrap()).settings.pit_kind, kind);
    }
}

/// A fan moves more air than a draught, and a pan of water makes it moister (common practice, no source).
#[test]
fn a_fan_blows_and_a_water_pan_steams() {
    let of = |kind| {
        let Surface { convection, evaporation, .. } = Surface::pit(kind);
        (convection.w_per_m2k(), evaporation.unwrap().vapour.kpa())
    };
    for kind in PitKind::ALL {
        let (convection, vapour) = of(kind);
        assert!(convection <= of(PitKind::Pellet).0, "{kind:?}");
        assert!(vapour <= of(PitKind::Water).1, "{kind:?}");
        // A flat plate of 0.1 m, 120 C: 3.9 W/m2K in air at 0.1 m/s, 17 at 2 m/s, and natural convection
        // of some 7 to 9 beside it (textbook correlations, worked by hand).
        assert!((7.0..=20.0).contains(&convection), "{kind:?}: {convection}");
        // Drier than no burning, a summer day's air (1 to 3 kPa), and moister than any but a steamed oven,
        // whose wet bulb is 65 C or more: 25 kPa.
        assert!((1.0..25.0).contains(&vapour), "{kind:?}: {vapour}");
    }
}

/// After the lid a burner turned up is back sooner than an offset's fire, a cabinet's small element later
/// (common practice, no source).
#[test]
fn the_lid_costs_a_cabinet_more_than_a_gas_grill() {
    let of = PitKind::lid_recovery;
    assert!(of(PitKind::Gas) < of(PitKind::Indirect));
    assert!(of(PitKind::Ceramic) < of(PitKind::Indirect), "thick walls keep their heat");
    assert!(of(PitKind::Indirect) < of(PitKind::Electric));
    // So a cabinet that shows 200 F ten minutes after a minute's opening may still be on its way, and an
    // offset that does has a fire that is down.
    let mends = |kind| {
        let mut cook = two_on(kind);
        cook.write(0.0, support::put_on(1));
        cook.write(20.0, What::LidOpened { seconds: 60 });
        cook.write(31.0, What::PitRead { temperature: Temperature::from_f(215.0) });
        let all = duties(&Seen::of(&cook.log, at(31.0)));
        all.iter().any(|duty| duty.act == Act::MendFire)
    };
    assert!(mends(PitKind::Indirect) && !mends(PitKind::Electric));
}

#[test]
fn a_pit_chosen_brings_its_usual_times_where_its_owner_told_none() {
    let usual = |kind: PitKind| FireHabits::usual(kind);
    for kind in PitKind::ALL {
        let told = pit_chosen(&Settings::default(), kind);
        let mut cook = Cook::default();
        for what in told {
            cook.write(0.0, what);
        }
        let settings = cook.state().settings;
        assert_eq!((settings.pit_kind, settings.habits.fire), (kind, usual(kind)));
    }
    // Nobody waits three quarters of an hour for a burner, and one load of charcoal in a ceramic pit, a
    // drum or a water smoker outlasts a cook of breasts (common practice, no source).
    assert!(usual(PitKind::Gas).preheat < usual(PitKind::Indirect).preheat);
    for kind in [PitKind::Ceramic, PitKind::Drum, PitKind::Water] {
        assert_eq!(usual(kind).feed_every, Span::zero(), "{kind:?}");
    }
    // Times of one's own stay.
    let own = FireHabits { preheat: Span::minutes(55), feed_every: Span::minutes(30) };
    let habits = Habits { fire: own, ..Habits::default() };
    let told = pit_chosen(&Settings { habits, ..Settings::default() }, PitKind::Drum);
    assert_eq!(told, [What::PitKindSet { pit: PitKind::Drum }]);
}
