//! Raw meat out of the refrigerator: wave by wave, never too long, and never silently.

use cook_model::cook::alarms::{Alarm, AlarmKind, alarms};
use cook_model::cook::duties::{Act, Doing, Duty, Why, duties, in_order};
use cook_model::cook::{Problem, Seen, What};
use cook_model::forecast::{Forecast, forecast};
use cook_model::history::PieceHistory;
use cook_model::plan::{Habits, Style};
use cook_model::quantity::{Span, Temperature, TemperatureDifference, minutes, to_minutes};
use cook_model::safety::ClockKind;

use crate::support::{Cook, at, piece, pulled, put_on, read, set_out};

/// A meal-prep day: twenty pieces on a rack for seven, so three waves, eaten ten hours from now.
fn prep_day(pit: f64, ambient: f64, out_of_fridge: Span) -> Cook {
    let mut cook = Cook::default();
    let pit = Temperature::from_f(pit);
    cook.write(0.0, What::PitTargetSet { target: pit });
    cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(ambient) });
    cook.write(0.0, What::RackSet { places_c: vec![TemperatureDifference::ZERO; 7] });
    let habits = Habits { out_of_fridge, ..Habits::default() };
    cook.write(0.0, What::HabitsSet { habits });
    for number in 1..=20 {
        cook.write(0.0, set_out(number, 30.0 + f64::from(number % 5) * 3.0));
    }
    cook.write(0.0, What::DinnerSet { at: Some(at(600.0)) });
    cook
}

/// Does what is asked of raw meat as it is asked, to the minute, and nothing else.
fn follow(cook: &mut Cook, until: f64) {
    let plan = Seen::of(&cook.log, at(0.0)).plan;
    let look = |cook: &Cook, minute| {
        duties(&Seen { plan: plan.clone(), ..Seen::facts(&cook.log, at(minute)) })
    };
    let mut all = look(cook, 0.0);
    let mut minute = 0.0;
    while minute < until {
        let due = in_order(&all, at(minute)).into_iter().filter(|duty| duty.is_due(at(minute)));
        let raw = due.flat_map(|duty| duty.doing()).find_map(|doing| match doing {
            Doing::Write { entries } => Some(entries).filter(|entries| entries.iter().all(of_raw)),
            _ => None,
        });
        match raw {
            Some(entries) => {
                entries.into_iter().for_each(|what| {
                    cook.write(minute, what);
                });
                all = look(cook, minute);
            }
            None => minute += 1.0,
        }
    }
}

fn of_raw(what: &What) -> bool {
    matches!(what, What::ChoreDone { .. } | What::TakenOut { .. } | What::PutOn { .. })
}

/// How long a piece lay raw out of the refrigerator before it went on.
fn lay_out(piece: &PieceHistory) -> Span {
    piece.on().unwrap() - piece.raw_out.first().unwrap().from
}

/// USDA consumer advice: perishable food is not left out for over two hours, one above 90 F.
#[test]
fn who_does_what_is_asked_leaves_no_raw_piece_out_too_long() {
    let usual = Habits::default().out_of_fridge;
    for (pit, ambient, habit, longest) in [
        (225.0, 75.0, usual, 120.0),
        (250.0, 75.0, usual, 120.0),
        (225.0, 75.0, Span::hours(2), 120.0),
        (250.0, 95.0, Span::hours(2), 60.0),
    ] {
        let mut cook = prep_day(pit, ambient, habit);
        follow(&mut cook, 600.0);
        let state = cook.state();
        let pieces = &state.history.pieces;
        assert_eq!(pieces.len(), 20);
        let first = state.history.first_on().unwrap();
        let last = pieces.iter().filter_map(PieceHistory::on).max().unwrap();
        assert!(last - first > minutes(90.0), "there are waves: {}", last - first);
        for piece in pieces {
            let lay = lay_out(piece);
            assert!(lay > Span::zero() && lay < minutes(longest), "{lay} at {pit} F");
            assert_eq!(state.run_out(piece.id, piece.on().unwrap()), None);
            // It counts towards the four hours of the Food Code, 3-501.19(B) (from memory).
            let (later, on) = (minutes(10.0), piece.on().unwrap());
            assert_eq!(state.life(piece.id, on + later).unwrap().warm, lay + later);
        }
    }
}

/// Pieces that come off together go on one after another: the last of them is not taken out with the
/// first where it would lie too long.
#[test]
fn what_goes_on_long_after_the_first_of_its_wave_is_taken_out_later() {
    let mut cook = Cook::default();
    cook.write(0.0, What::StyleSet { style: Style::OffTogether });
    let habits = Habits { out_of_fridge: Span::minutes(40), ..Habits::default() };
    cook.write(0.0, What::HabitsSet { habits });
    cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(95.0) });
    for (number, mm) in [(1, 20.0), (2, 30.0), (3, 45.0), (4, 62.0)] {
        cook.write(0.0, set_out(number, mm));
    }
    cook.write(0.0, What::DinnerSet { at: Some(at(480.0)) });
    follow(&mut cook, 480.0);
    let state = cook.state();
    let on: Vec<_> = state.history.pieces.iter().filter_map(PieceHistory::on).collect();
    let spread = *on.iter().max().unwrap() - *on.iter().min().unwrap();
    assert!(on.len() == 4 && spread > minutes(30.0), "{spread}");
    for piece in &state.history.pieces {
        assert!(lay_out(piece) < minutes(60.0), "{}", lay_out(piece));
    }
}

/// A fire that was late delays the next wave, and so it is taken out and put on later too; if that one is
/// later still, the one after it follows. Rack and fire are the same for all (common sense, no source).
#[test]
fn a_late_wave_leaves_the_next_one_in_the_refrigerator() {
    let mut cook = prep_day(250.0, 75.0, Habits::default().out_of_fridge);
    let plan = Seen::of(&cook.log, at(0.0)).plan.unwrap();
    let of_wave = |wave| plan.pieces.iter().filter(move |piece| piece.wave == wave);
    assert!(of_wave(2).count() > 0);
    let minute = |moment| to_minutes(moment - at(0.0));
    for (wave, late) in [(0, 60.0), (1, 85.0)] {
        let late = minutes(late);
        for planned in of_wave(wave) {
            cook.write(minute(planned.on + late), What::PutOn { piece: planned.piece });
        }
        let nothing = Forecast::nothing(at(900.0));
        let seen = Seen::facts(&cook.log, at(900.0)).with(nothing, Some(plan.clone()));
        let all = duties(&seen);
        for planned in of_wave(wave + 1) {
            let due = |act: &Act| {
                let of_it = |duty: &&Duty| duty.act == *act && duty.pieces.contains(&planned.piece);
                all.iter().find(of_it).unwrap().from
            };
            // Put on together are those that go on within one trip.
            for (act, moment) in [(Act::TakeOut, planned.out_of_fridge), (Act::PutOn, planned.on)] {
                let off = (due(&act) - (moment + late)).abs();
                assert!(off < minutes(4.1), "{act:?}: {off}");
            }
        }
    }
}

/// Where dinner stands is told by when the next wave will go on, not by when it was to.
#[test]
fn a_late_first_wave_is_told_with_dinner() {
    let told = |late: f64| {
        let mut cook = prep_day(250.0, 75.0, Habits::default().out_of_fridge);
        let plan = Seen::of(&cook.log, at(0.0)).plan.unwrap();
        let minute = |moment| to_minutes(moment - at(0.0));
        let mut last = 0.0_f64;
        for planned in plan.pieces.iter().filter(|planned| planned.wave == 0) {
            last = minute(planned.on) + late;
            cook.write(last, What::PutOn { piece: planned.piece });
        }
        let forecast = forecast(&cook.state().history, at(last));
        let seen = Seen::facts(&cook.log, at(last)).with(forecast, Some(plan));
        seen.outlook(at(last)).unwrap().ready.middle
    };
    let moved = told(60.0) - told(0.0);
    assert!(moved > minutes(50.0) && moved < minutes(70.0), "{moved}");
}

/// It can be put back: that is asked before the limit, and what is past it is food no more.
#[test]
fn raw_meat_left_lying_calls_before_its_limit_and_at_it() {
    for (ambient, limit) in [(75.0, 120.0), (95.0, 60.0)] {
        let mut cook = Cook::default();
        cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(ambient) });
        cook.write(0.0, set_out(1, 38.0));
        cook.write(0.0, What::TakenOut { pieces: vec![piece(1)] });
        let seen = Seen::of(&cook.log, at(0.0));
        let of_limit = |alarm: &&Alarm| alarm.id.kind == AlarmKind::WarmUpLimit;
        let calls: Vec<_> = alarms(&seen).iter().filter(of_limit).map(|alarm| alarm.at).collect();
        assert_eq!(calls, [at(limit - 20.0), at(limit)]);
        let all = duties(&seen);
        let due = |minute: f64| in_order(&all, at(minute))[0].clone();
        let before = due(limit - 10.0);
        assert_eq!(before.act, Act::PutAway);
        // The tap does what it says: the clock stands, and what it was out counts on.
        let Doing::Write { entries } = before.doing().remove(0) else { panic!("one tap") };
        entries.into_iter().for_each(|what| {
            cook.write(limit - 10.0, what);
        });
        assert_eq!(cook.state().run_out(piece(1), at(limit + 600.0)), None);
        assert_eq!(due(limit + 1.0).act, Act::Discard);
    }
}

/// USDA consumer advice, two hours: eight hours out of the refrigerator are no habit.
#[test]
fn a_habit_of_hours_on_the_counter_is_refused_in_plain_words() {
    let mut cook = Cook::default();
    let habits = Habits { out_of_fridge: Span::hours(8), ..Habits::default() };
    let entry = cook.write(0.0, What::HabitsSet { habits });
    let state = cook.state();
    assert_eq!(state.settings.habits, Habits::default());
    let told = state.ignored.iter().find(|ignored| ignored.entry == entry).unwrap();
    assert_eq!(told.why, Problem::ImpossibleValue);
    let plain = told.why.to_string();
    assert!(!plain.is_empty() && !plain.contains("Span"), "{plain}");
    let just = Habits { out_of_fridge: Span::hours(2), ..Habits::default() };
    cook.write(1.0, What::HabitsSet { habits: just });
    assert_eq!(cook.state().settings.habits, just);
}

/// 88 F is warmer than any room is: it lay out past the two hours, and going on makes it no better.
#[test]
fn meat_that_starts_at_88_f_is_not_cooked_in_silence() {
    let What::PieceSetOut { piece: number, mut facts, name } = set_out(1, 38.0) else { panic!() };
    facts.start = Temperature::from_f(88.0);
    let mut cook = Cook::default();
    cook.write(0.0, What::PieceSetOut { piece: number, facts, name });
    cook.write(1.0, put_on(1));
    let all = duties(&Seen::of(&cook.log, at(1.0)));
    let told = in_order(&all, at(2.0))[0];
    assert_eq!(told.act, Act::Discard);
    let Why::Limit(clock) = &told.why else { panic!("{told:?}") };
    assert_eq!(clock.kind, ClockKind::RawOut);
    cook.write(90.0, read(1, 170.0, 2));
    cook.write(91.0, pulled(1));
    assert!(!cook.is_proved(1));
}
