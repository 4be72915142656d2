//! What the cook is told to do, from the states of a cook.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use chrono::{DateTime, Utc};
use cook_model::cook::alarms::{AlarmKind, alarms};
use cook_model::cook::{Action, Chore, CookState, DeviceId, Log, What, fold, next_step, steps};
use cook_model::forecast::{Band, Forecast, Peak, PieceForecast, Probability, Seating};
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::plan::plan;
use cook_model::quantity::{Length, Mass, Moment, Temperature, minutes, to_minutes};

fn at(minute: f64) -> Moment {
    DateTime::<Utc>::from_timestamp(1_780_000_000, 0).unwrap() + minutes(minute)
}

fn state_of(whats: &[(f64, What)]) -> CookState {
    let mut log = Log::default();
    for (minute, what) in whats {
        log.insert(log.next(DeviceId(1), at(*minute), at(*minute), what.clone()));
    }
    fold(&log)
}

fn set_out(piece: u32) -> (f64, What) {
    let facts = Piece {
        weight: Mass::from_g(230.0),
        thickest: None,
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    };
    (-5.0, What::PieceSetOut { piece: PieceId(piece), facts, name: String::new() })
}

fn on(piece: u32) -> (f64, What) {
    (0.0, What::PutOn { piece: PieceId(piece) })
}

fn read(minute: f64, piece: u32, fahrenheit: f64, instrument: Instrument) -> (f64, What) {
    let temperature = Temperature::from_f(fahrenheit);
    (minute, What::CoreRead { piece: PieceId(piece), temperature, instrument, places: 1 })
}

fn steady(value: f64) -> Band<Temperature> {
    let t = Temperature::from_f(value);
    Band { low: t, middle: t, high: t }
}

/// A forecast that each piece may be done from its minute on, and peaks ten minutes later.
fn forecast(now: f64, pulls: &[(u32, f64)]) -> Forecast {
    let pieces = pulls.iter().map(|&(piece, minute)| PieceForecast {
        piece: PieceId(piece),
        core: steady(150.0),
        pull: Some(Band { low: at(minute), middle: at(minute + 4.0), high: at(minute + 9.0) }),
        ready: Probability::new(0.1),
        check_by: None,
        peak: Some(Peak { at: at(minute + 14.0), temperature: steady(164.0) }),
        seating: None,
        curve: Vec::new(),
    });
    let order = pulls.iter().map(|&(piece, _)| PieceId(piece)).collect();
    Forecast {
        at: at(now),
        pieces: pieces.collect(),
        order,
        order_certainty: Vec::new(),
        checks: Vec::new(),
        surprises: Vec::new(),
    }
}

#[test]
fn an_empty_cook_is_set_out_first() {
    let step = next_step(&state_of(&[]), &forecast(0.0, &[]), None, at(0.0)).unwrap();
    assert_eq!(step.action, Action::SetOut);
}

#[test]
fn pieces_due_close_together_are_checked_in_one_opening() {
    let state = state_of(&[set_out(1), set_out(2), set_out(3), on(1), on(2), on(3)]);
    let forecast = forecast(10.0, &[(1, 50.0), (2, 53.0), (3, 58.0)]);
    let checks: Vec<(Vec<PieceId>, Moment)> = steps(&state, &forecast, None, at(10.0))
        .into_iter()
        .filter(|step| step.action == Action::Check)
        .map(|step| (step.pieces, step.due))
        .collect();
    assert_eq!(checks, [(vec![PieceId(1), PieceId(2)], at(50.0)), (vec![PieceId(3)], at(58.0))]);
}

#[test]
fn a_reading_at_the_pull_temperature_means_pull_and_comes_before_a_check() {
    let state = state_of(&[
        set_out(1),
        set_out(2),
        on(1),
        on(2),
        read(50.0, 2, 160.0, Instrument::InstantRead),
    ]);
    let step = next_step(&state, &forecast(51.0, &[(1, 45.0), (2, 45.0)]), None, at(51.0)).unwrap();
    assert_eq!((step.action, step.pieces), (Action::Pull, vec![PieceId(2)]));
}

#[test]
fn no_forecast_alone_ever_means_pull() {
    let state = state_of(&[set_out(1), on(1)]);
    let mut late = forecast(200.0, &[(1, 50.0)]);
    late.pieces[0].ready = Probability::new(1.0);
    late.pieces[0].core = steady(190.0);
    let actions: Vec<Action> =
        steps(&state, &late, None, at(200.0)).into_iter().map(|step| step.action).collect();
    assert!(!actions.contains(&Action::Pull), "{actions:?}");
    assert_eq!(actions[0], Action::Check);
}

#[test]
fn a_misplaced_leave_in_means_reseat_not_pull() {
    let state = state_of(&[set_out(1), on(1), read(40.0, 1, 160.0, Instrument::LeaveIn)]);
    let mut doubtful = forecast(41.0, &[(1, 60.0)]);
    doubtful.pieces[0].seating = Some(Seating {
        misplaced: Probability::new(0.9),
        off_by: Length::from_mm(9.0),
        poked: true,
    });
    let actions: Vec<Action> =
        steps(&state, &doubtful, None, at(41.0)).into_iter().map(|step| step.action).collect();
    assert_eq!(actions[0], Action::Reseat);
    assert!(!actions.contains(&Action::Pull), "{actions:?}");
}

#[test]
fn a_doubtful_leave_in_is_left_alone_until_the_piece_is_poked() {
    let state = state_of(&[set_out(1), on(1), read(40.0, 1, 150.0, Instrument::LeaveIn)]);
    for poked in [false, true] {
        let mut doubtful = forecast(41.0, &[(1, 60.0)]);
        let (misplaced, off_by) = (Probability::new(0.4), Length::from_mm(7.0));
        doubtful.pieces[0].seating = Some(Seating { misplaced, off_by, poked });
        let steps = steps(&state, &doubtful, None, at(41.0));
        assert_eq!(steps.iter().any(|step| step.action == Action::Reseat), poked);
    }
}

#[test]
fn a_leave_in_at_160_and_an_instant_read_at_140_mean_reseat_and_a_quarter_of_an_hour_more() {
    // Common practice, no source: no pull, and about 15 to 25 minutes to go at 250 to 275 F; about,
    // so two minutes more or less are as good.
    for target in [250.0, 275.0] {
        let facts = Piece {
            weight: Mass::from_g(280.0),
            thickest: Some(Length::from_mm(40.0)),
            shape: Shape::Natural,
            start: Temperature::from_f(38.0),
            icy: false,
        };
        let state = state_of(&[
            (-5.0, What::PitTargetSet { target: Temperature::from_f(target) }),
            (-5.0, What::PieceSetOut { piece: PieceId(1), facts, name: String::new() }),
            on(1),
            read(44.0, 1, 160.0, Instrument::LeaveIn),
            read(45.0, 1, 140.0, Instrument::InstantRead),
        ]);
        let forecast = cook_model::forecast::forecast(&state.history, at(45.0));
        let pull = forecast.pieces[0].pull.unwrap().middle;
        assert!(at(58.0) <= pull && pull <= at(72.0), "{pull} at {target} F");
        let steps = steps(&state, &forecast, None, at(45.0));
        assert_eq!(steps[0].action, Action::Reseat);
        assert!(steps.iter().all(|step| step.action != Action::Pull), "{steps:?}");
    }
}

#[test]
fn an_instant_read_below_the_pull_temperature_outweighs_an_earlier_reading_above_it() {
    let mut whats = vec![
        set_out(1),
        on(1),
        read(48.0, 1, 161.0, Instrument::LeaveIn),
        read(49.0, 1, 157.0, Instrument::InstantRead),
    ];
    let next = |whats: &[(f64, What)], now| {
        next_step(&state_of(whats), &forecast(now, &[(1, 48.0)]), None, at(now)).unwrap().action
    };
    assert_ne!(next(&whats, 50.0), Action::Pull);
    // The leave-in at the pull temperature, and nothing poked yet: check, do not pull.
    assert_eq!(next(&whats[..3], 48.5), Action::Check);
    // And a leave-in that shows less afterwards does not undo an instant-read above it.
    whats.push(read(54.0, 1, 160.0, Instrument::InstantRead));
    whats.push(read(54.5, 1, 159.0, Instrument::LeaveIn));
    assert_eq!(next(&whats, 55.0), Action::Pull);
}

#[test]
fn a_piece_without_a_window_is_still_checked() {
    let mut unlikely = forecast(10.0, &[(1, 50.0)]);
    unlikely.pieces[0].pull = None;
    unlikely.pieces[0].check_by = Some(at(45.0));
    let state = state_of(&[set_out(1), on(1)]);
    let steps = steps(&state, &unlikely, None, at(10.0));
    assert!(steps.iter().any(|step| step.action == Action::Check && step.due == at(45.0)));
    let alarms = alarms(&state, &unlikely, None);
    assert!(alarms.iter().any(|a| a.id.kind == AlarmKind::CheckDue && a.at == at(45.0)));
}

#[test]
fn after_the_pull_it_is_covered_read_at_the_peak_and_put_back_if_that_proves_nothing() {
    let pulled = |minute| (minute, What::Pulled { piece: PieceId(1) });
    let mut whats =
        vec![set_out(1), on(1), read(54.0, 1, 160.0, Instrument::InstantRead), pulled(55.0)];
    let rest = forecast(55.0, &[(1, 50.0)]); // the peak is at minute 64
    let next = |whats: &[(f64, What)], now: f64| {
        let step = next_step(&state_of(whats), &rest, None, at(now)).unwrap();
        (step.action, step.due)
    };
    assert_eq!(next(&whats, 56.0), (Action::Cover, at(55.0)));
    whats.push((56.0, What::Covered { piece: PieceId(1) }));
    assert_eq!(next(&whats, 57.0), (Action::Prove, at(64.0)));
    whats.push(read(64.5, 1, 163.0, Instrument::InstantRead));
    assert_eq!(next(&whats, 68.0).0, Action::PutBack);
    let mut proved = whats.clone();
    proved.pop();
    proved.push(read(64.5, 1, 165.0, Instrument::InstantRead));
    assert!(matches!(next(&proved, 65.0).0, Action::TrySecondPlace { .. }));
}

#[test]
fn a_pit_left_unread_is_worth_a_look_but_not_before_a_pull() {
    let mut whats = vec![set_out(1), on(1)];
    assert_eq!(
        next_step(&state_of(&whats), &forecast(35.0, &[(1, 50.0)]), None, at(35.0)).unwrap().action,
        Action::ReadPit
    );
    whats.push(read(36.0, 1, 160.0, Instrument::InstantRead));
    assert_eq!(
        next_step(&state_of(&whats), &forecast(37.0, &[(1, 50.0)]), None, at(37.0)).unwrap().action,
        Action::Pull
    );
}

#[test]
fn a_plan_says_when_the_fire_is_lit_and_when_each_piece_goes_on() {
    let dinner = at(240.0);
    let mut whats = vec![set_out(1), set_out(2), (-4.0, What::DinnerSet { at: Some(dinner) })];
    let state = state_of(&whats);
    let plan = plan(&state.plan_request(at(0.0)).unwrap()).unwrap();
    let due: Vec<(Action, Moment)> =
        steps(&state, &forecast(0.0, &[(1, 0.0), (2, 0.0)]), Some(&plan), at(0.0))
            .into_iter()
            .map(|step| (step.action, step.due))
            .collect();
    let light = Action::Chore { chore: Chore::LightFire };
    assert!(due.contains(&(light.clone(), plan.light)), "{due:?}");
    assert!(due.contains(&(Action::PutOn, plan.first_on)), "{due:?}");
    assert!(plan.light < plan.first_on && plan.first_on < dinner);

    whats.push((10.0, What::ChoreDone { chore: Chore::LightFire }));
    let lit = state_of(&whats);
    let next = steps(&lit, &forecast(10.0, &[(1, 0.0), (2, 0.0)]), Some(&plan), at(10.0));
    let fed = next.iter().find(|step| step.action == Action::Chore { chore: Chore::FeedFire });
    assert_eq!(fed.unwrap().due, at(10.0) + lit.settings.habits.fire.feed_every);
    assert!(!next.iter().any(|step| step.action == light));
}

#[test]
fn a_piece_that_hardly_warms_is_left_alone_longer_than_one_that_does() {
    // Read at 60 min, 4 F below the pull temperature, and so much lower ten minutes before.
    let pause = |risen: f64| {
        let whats = [
            set_out(1),
            on(1),
            (0.0, What::PullTargetSet { piece: None, target: Temperature::from_f(160.0) }),
            read(50.0, 1, 156.0 - risen, Instrument::InstantRead),
            read(60.0, 1, 156.0, Instrument::InstantRead),
        ];
        let steps = steps(&state_of(&whats), &forecast(60.0, &[(1, 60.0)]), None, at(60.0));
        let check = steps.iter().find(|step| step.action == Action::Check).unwrap();
        to_minutes(check.due - at(60.0))
    };
    // 9 F until it is past, at the 2 F a minute that no core exceeds; at a quarter more than it rose.
    assert!((pause(20.0) - 4.5).abs() < 0.1, "{} min", pause(20.0));
    assert!((pause(9.0) - 8.0).abs() < 0.1, "{} min", pause(9.0));
    // Never left alone for longer than ten minutes: the reading may be a slip.
    assert!((pause(1.0) - 10.0).abs() < 0.1, "{} min", pause(1.0));
    assert!((pause(-3.0) - 10.0).abs() < 0.1, "{} min", pause(-3.0));
}
