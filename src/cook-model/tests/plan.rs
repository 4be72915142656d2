//! The plan back from dinner, and where dinner stands as the cook goes on.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use chrono::{DateTime, Utc};
use cook_model::cook::{CookState, DeviceId, Log, What, fold};
use cook_model::forecast::forecast;
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::plan::{
    Clock, Move, Outlook, Plan, PlanProblem, Style, levers, outlook, plan, plan_by,
};
use cook_model::quantity::{
    Length, Mass, Moment, Span, Temperature, TemperatureDifference, minutes, to_minutes,
};

fn at(minute: f64) -> Moment {
    DateTime::<Utc>::from_timestamp(1_780_000_000, 0).unwrap() + minutes(minute)
}

fn breast(millimetres: f64) -> Piece {
    Piece {
        weight: Mass::from_g(6.5 * millimetres),
        thickest: Some(Length::from_mm(millimetres)),
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    }
}

/// A cook of pieces so thick, set out at minute 0, dinner at a minute, and what else happened.
fn cook(thick: &[f64], dinner: f64, then: &[(f64, What)]) -> CookState {
    let mut log = Log::default();
    let mut put = |minute: f64, what: What| {
        log.insert(log.next(DeviceId(1), at(minute), at(minute), what));
    };
    put(0.0, What::DinnerSet { at: Some(at(dinner)) });
    put(0.0, What::PitTargetSet { target: Temperature::from_f(250.0) });
    for (i, mm) in thick.iter().enumerate() {
        let piece = PieceId(i as u32 + 1);
        put(0.0, What::PieceSetOut { piece, facts: breast(*mm), name: String::new() });
    }
    for (minute, what) in then {
        put(*minute, what.clone());
    }
    fold(&log)
}

fn plan_of(state: &CookState, minute: f64) -> Result<Plan, PlanProblem> {
    plan(&state.plan_request(at(minute)).unwrap())
}

fn outlook_of(state: &CookState, minute: f64) -> Outlook {
    let plan = plan_of(state, minute).ok();
    let forecast = forecast(&state.history, at(minute));
    let dinner = state.settings.dinner.unwrap();
    let clock = Clock::at(forecast.at);
    outlook(&state.history, &forecast, plan.as_ref(), &state.settings.habits, dinner, clock)
        .unwrap()
}

fn all_on(count: u32, minute: f64) -> Vec<(f64, What)> {
    (1..=count).map(|piece| (minute, What::PutOn { piece: PieceId(piece) })).collect()
}

#[test]
fn the_times_run_back_from_dinner_in_order() {
    let state = cook(&[30.0, 34.0, 38.0, 42.0], 300.0, &[]);
    let plan = plan_of(&state, 0.0).unwrap();
    assert!(at(0.0) < plan.light && plan.light < plan.first_on);
    assert!(plan.out_of_fridge < plan.first_on && plan.season < plan.first_on);
    for piece in &plan.pieces {
        assert!(plan.first_on <= piece.on && piece.on < piece.pull.low);
        assert!(piece.pull.low <= piece.pull.middle && piece.pull.middle <= piece.pull.high);
        assert!(piece.rested < plan.dinner);
    }
    assert!(plan.in_time.value() >= 0.9, "{:?}", plan.in_time);
    // A usual breast takes 45 to 80 min at 250 F (common practice, no source), so four of them
    // with rest, carving and a margin go on between one and a half and two and a half hours before.
    let lead = to_minutes(plan.dinner - plan.first_on);
    assert!((90.0..150.0).contains(&lead), "{lead} min");
}

#[test]
fn a_dinner_too_close_starts_at_once_and_says_how_likely_it_is() {
    let state = cook(&[40.0], 70.0, &[]);
    let plan = plan_of(&state, 0.0).unwrap();
    assert_eq!(plan.light, at(0.0));
    assert!(plan.in_time.value() < 0.5, "{:?}", plan.in_time);
}

#[test]
fn what_is_missing_is_said() {
    assert_eq!(plan_of(&cook(&[], 300.0, &[]), 0.0), Err(PlanProblem::NoPieces));
    assert_eq!(plan_of(&cook(&[38.0], 300.0, &[]), 301.0), Err(PlanProblem::DinnerPast));
    let mut none = cook(&[38.0], 300.0, &[]);
    none.settings.dinner = None;
    assert_eq!(none.plan_request(at(0.0)), None);
}

#[test]
fn a_plan_may_cross_midnight_and_a_change_of_clocks() {
    // Dinner at half past three in the night in which Europe's clocks go back (25 October 2026,
    // 01:00 UTC): in UTC every span stays what it is.
    let mut state = cook(&[38.0], 300.0, &[]);
    let dinner = "2026-10-25T02:30:00Z".parse::<Moment>().unwrap();
    state.settings.dinner = Some(dinner);
    let now = dinner - minutes(300.0);
    let night = plan(&state.plan_request(now).unwrap()).unwrap();
    let day = plan_of(&cook(&[38.0], 300.0, &[]), 0.0).unwrap();
    assert_eq!(night.dinner - night.light, day.dinner - day.light);
}

#[test]
fn the_forecast_that_a_plan_starts_from_holds_for_a_later_one() {
    let state = cook(&[28.0, 38.0, 45.0], 300.0, &[(60.0, What::PutOn { piece: PieceId(1) })]);
    let early = state.plan_request(at(1.0)).unwrap();
    let kept = forecast(&early.raw(), early.now);
    let late = state.plan_request(at(97.3)).unwrap();
    assert_eq!(late.raw(), early.raw());
    assert_eq!(plan_by(&late, &kept), plan(&late));
    // Another pit is another forecast.
    let hotter = What::PitTargetSet { target: Temperature::from_f(275.0) };
    let other = cook(&[28.0, 38.0, 45.0], 300.0, &[(90.0, hotter)]);
    assert_ne!(other.plan_request(at(97.3)).unwrap().raw(), early.raw());
}

#[test]
fn off_together_puts_the_thick_ones_on_first_and_holds_less() {
    let mut state = cook(&[28.0, 45.0], 300.0, &[]);
    let together = plan_of(&state, 0.0).unwrap();
    state.settings.style = Style::OffTogether;
    let staggered = plan_of(&state, 0.0).unwrap();
    assert_eq!(staggered.pieces[0].piece, PieceId(2));
    let apart = staggered.pieces[1].pull.middle - staggered.pieces[0].pull.middle;
    assert!(apart.abs() < minutes(4.0), "{apart}");
    assert!(staggered.held < together.held);
}

#[test]
fn more_pieces_than_places_go_on_in_waves_with_tonight_last_or_alone() {
    let rack = What::RackSet { places_c: vec![TemperatureDifference::ZERO; 2] };
    let later = |piece| What::TonightSet { piece: PieceId(piece), tonight: false };
    let state =
        cook(&[38.0, 38.0, 38.0, 38.0], 400.0, &[(0.0, rack), (0.0, later(1)), (0.0, later(3))]);
    let plan = plan_of(&state, 0.0).unwrap();
    let wave = |piece: u32| plan.pieces.iter().find(|p| p.piece == PieceId(piece)).unwrap().wave;
    assert_eq!(wave(2), wave(4), "tonight's two share a wave");
    assert_eq!(wave(1), wave(3));
    assert!(plan.pieces.iter().all(|piece| piece.place < 2));
}

#[test]
fn a_sagging_pit_makes_dinner_late_and_raising_it_helps() {
    let mut happened = all_on(2, 60.0);
    let read = |minute, f| (minute, What::PitRead { temperature: Temperature::from_f(f) });
    happened.extend([read(65.0, 250.0), read(80.0, 210.0), read(90.0, 205.0)]);
    let steady = cook(&[36.0, 40.0], 145.0, &all_on(2, 60.0));
    let sagged = cook(&[36.0, 40.0], 145.0, &happened);
    let (before, after) = (outlook_of(&steady, 91.0), outlook_of(&sagged, 91.0));
    assert!(after.ready.middle > before.ready.middle + minutes(5.0));
    assert!(after.in_time < before.in_time);

    let plan = plan_of(&sagged, 91.0).ok();
    let seen = forecast(&sagged.history, at(91.0));
    let habits = &sagged.settings.habits;
    let offered = levers(&sagged.history, &seen, plan.as_ref(), habits, Clock::at(seen.at), &after);
    let raised =
        offered.iter().find(|lever| matches!(lever.action, Move::RaisePit { .. })).unwrap();
    assert!(raised.outlook.ready.middle < after.ready.middle - minutes(2.0));
}

#[test]
fn after_a_sag_the_expected_dinner_is_that_of_a_fresh_plan_from_the_same_facts() {
    // Four pieces on a rack of two: the second wave is raw while the pit sags by 40 F.
    let thick = [36.0, 40.0, 34.0, 38.0];
    let rack = What::RackSet { places_c: vec![TemperatureDifference::ZERO; 2] };
    let mut happened = vec![(0.0, rack)];
    happened.extend(all_on(2, 60.0));
    let before = outlook_of(&cook(&thick, 260.0, &happened), 79.0);
    let read = |minute, f| (minute, What::PitRead { temperature: Temperature::from_f(f) });
    happened.extend([read(65.0, 250.0), read(80.0, 210.0), read(90.0, 210.0)]);
    let core = What::CoreRead {
        piece: PieceId(1),
        temperature: Temperature::from_f(104.0),
        instrument: Instrument::InstantRead,
        places: 2,
    };
    happened.push((91.0, core));
    // As the cook went on: the plan as it was made, then a new one with each entry.
    let mut replanned = before;
    for known in 1..=happened.len() {
        let (minute, _) = happened[known - 1];
        replanned = outlook_of(&cook(&thick, 260.0, &happened[..known]), minute.max(60.0));
    }
    // All of it typed into an empty log afterwards, the latest first, and planned once.
    let mut log = Log::default();
    let mut put = |minute: f64, what: What| {
        log.insert(log.next(DeviceId(2), at(minute), at(91.0), what));
    };
    for (i, mm) in thick.iter().enumerate() {
        let piece = PieceId(i as u32 + 1);
        put(0.0, What::PieceSetOut { piece, facts: breast(*mm), name: String::new() });
    }
    happened.iter().rev().for_each(|(minute, what)| put(*minute, what.clone()));
    put(0.0, What::PitTargetSet { target: Temperature::from_f(250.0) });
    put(0.0, What::DinnerSet { at: Some(at(260.0)) });
    let fresh = outlook_of(&fold(&log), 91.0);

    let sagged_by = replanned.ready.middle - before.ready.middle;
    assert!(sagged_by > minutes(3.0), "{sagged_by}");
    for (again, fresh) in [
        (replanned.ready.low, fresh.ready.low),
        (replanned.ready.middle, fresh.ready.middle),
        (replanned.ready.high, fresh.ready.high),
    ] {
        assert!((again - fresh).abs() <= minutes(1.0), "{again} and {fresh}");
    }
}

#[test]
fn some_can_be_served_first_when_one_thick_piece_holds_up_dinner() {
    let state = cook(&[28.0, 30.0, 55.0], 150.0, &all_on(3, 60.0));
    let now = outlook_of(&state, 70.0);
    assert_eq!(now.last, PieceId(3));
    assert!(now.late_by() > Span::zero());
    let seen = forecast(&state.history, at(70.0));
    let offered =
        levers(&state.history, &seen, None, &state.settings.habits, Clock::at(seen.at), &now);
    let first = offered.iter().find_map(|lever| match &lever.action {
        Move::ServeFirst { pieces } => Some(pieces.clone()),
        _ => None,
    });
    assert_eq!(first, Some(vec![PieceId(1), PieceId(2)]));
}

#[test]
fn a_piece_that_rests_only_waits_for_its_rest() {
    let mut happened = all_on(1, 60.0);
    happened.push((
        120.0,
        What::CoreRead {
            piece: PieceId(1),
            temperature: Temperature::from_f(165.0),
            instrument: Instrument::InstantRead,
            places: 2,
        },
    ));
    happened.push((121.0, What::Pulled { piece: PieceId(1) }));
    let state = cook(&[38.0], 200.0, &happened);
    let seen = outlook_of(&state, 122.0);
    let habits = state.settings.habits;
    assert_eq!(seen.ready.middle, at(121.0) + habits.rest + habits.carving);
    assert_eq!(seen.in_time.value(), 1.0);
}

/// Pokes of piece 1, by minute, F.
fn poked(readings: &[(f64, f64)]) -> Vec<(f64, What)> {
    let poke = |&(minute, f): &(f64, f64)| {
        let what = What::CoreRead {
            piece: PieceId(1),
            temperature: Temperature::from_f(f),
            instrument: Instrument::InstantRead,
            places: 3,
        };
        (minute, what)
    };
    readings.iter().map(poke).collect()
}

#[test]
fn a_piece_that_hardly_warms_any_more_makes_dinner_late_whatever_is_forecast() {
    let mut happened = all_on(1, 60.0);
    let target = Temperature::from_f(165.0);
    happened.push((60.0, What::PullTargetSet { piece: None, target: Some(target) }));
    happened.extend(poked(&[(110.0, 155.0), (120.0, 157.0), (130.0, 159.0)]));
    let state = cook(&[38.0], 165.0, &happened);
    let seen = forecast(&state.history, at(130.0));
    let pull = seen.pieces[0].pull.unwrap().middle;
    let now = outlook_of(&state, 130.0);
    let habits = &state.settings.habits;
    // 2 F in the last ten minutes, so the 6 F left take half an hour.
    assert!(pull < at(150.0), "{pull}");
    assert_eq!(now.ready.middle, at(160.0) + habits.rest + habits.carving);

    let offered = levers(&state.history, &seen, None, habits, Clock::at(seen.at), &now);
    assert!(matches!(offered[0].action, Move::RaisePit { .. }), "{offered:?}");
    // From 250 to 275 F: as 91 to 116 F above the core.
    let sooner = to_minutes(now.ready.middle - offered[0].outlook.ready.middle);
    assert!((sooner - 30.0 * (1.0 - 91.0 / 116.0)).abs() < 0.1, "{sooner} min");
}

#[test]
fn a_dinner_at_risk_is_offered_a_hotter_pit_before_it_is_late() {
    let on = all_on(2, 60.0);
    let ready = outlook_of(&cook(&[36.0, 40.0], 300.0, &on), 70.0).ready;
    let offered = |dinner: Moment| {
        let state = cook(&[36.0, 40.0], to_minutes(dinner - at(0.0)), &on);
        let seen = forecast(&state.history, at(70.0));
        let now = outlook_of(&state, 70.0);
        levers(&state.history, &seen, None, &state.settings.habits, Clock::at(seen.at), &now)
    };
    let at_risk = offered(ready.middle + minutes(1.0));
    assert_eq!(at_risk.len(), 1, "{at_risk:?}");
    assert!(matches!(at_risk[0].action, Move::RaisePit { .. }), "{at_risk:?}");
    assert_eq!(offered(ready.high), []);
}
