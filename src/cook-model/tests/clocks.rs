//! The clocks of safety, by their rules.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::{Chore, What};
use cook_model::quantity::{Moment, Span, Temperature, minutes};
use cook_model::safety::{Clock, ClockKind, Life, Then, cooling, life, longest_out};
use support::{Cook, PHONE, at, leave_in, packed, piece, pulled, put_on, read, set_out};

fn life_of(cook: &Cook, coming: &[(Moment, Temperature)], minute: f64) -> Life {
    let state = cook.state();
    let history = state.history.piece(piece(1)).unwrap();
    life(&state.history, history, &[], coming, at(minute))
}

fn clock(cook: &Cook, kind: ClockKind, minute: f64) -> Option<Clock> {
    life_of(cook, &[], minute).clocks.into_iter().find(|clock| clock.kind == kind)
}

fn warm(cook: &Cook, minute: f64) -> Span {
    life_of(cook, &[], minute).warm
}

fn pit_read(f: f64) -> What {
    What::PitRead { temperature: Temperature::from_f(f) }
}

fn core(points: &[(f64, f64)]) -> Vec<(Moment, Temperature)> {
    points.iter().map(|(minute, f)| (at(*minute), Temperature::from_f(*f))).collect()
}

/// FDA Food Code 2022, 3-501.19(B), from memory: four hours without temperature control.
#[test]
fn the_warm_up_runs_from_going_on_until_a_reading_of_140_f() {
    let mut cook = Cook::two_on();
    let coming = core(&[(50.0, 120.0), (90.0, 139.0), (95.0, 142.0)]);
    let clock = life_of(&cook, &coming, 10.0).clocks[0];
    assert_eq!(clock.kind, ClockKind::WarmUp);
    assert_eq!((clock.since, clock.deadline), (at(0.0), at(240.0)));
    assert_eq!((clock.done, clock.expected), (None, Some(at(95.0))));
    assert_eq!(clock.left(at(200.0)), minutes(40.0));
    assert!(!clock.has_run_out(at(240.0)) && clock.has_run_out(at(240.1)));
    // There is time to do something about it, and the limit itself is called too.
    assert_eq!(clock.calls(), [at(220.0), at(240.0)]);
    // The forecast passing 140 F does not stop it; a reading does.
    cook.write(100.0, read(1, 139.9, 1));
    assert_eq!(life_of(&cook, &coming, 100.0).clocks[0].deadline, at(240.0));
    cook.write(110.0, read(1, 141.0, 1));
    let stopped = life_of(&cook, &[], 300.0);
    assert_eq!((stopped.run_out, stopped.clocks.len()), (None, 0));
    assert_eq!((stopped.warm, stopped.cold_by), (minutes(110.0), None));
}

#[test]
fn only_a_reading_that_could_prove_stops_the_warm_up() {
    // "Only readings that could prove stop it": a leave-in, which may be misplaced; one two minutes
    // after going on; another piece's; one said to be from the future.
    let stops = |happened: f64, typed: f64, what: What| {
        let mut cook = Cook::two_on();
        cook.write_as(PHONE, happened, typed, what);
        warm(&cook, 200.0) < minutes(200.0)
    };
    assert!(stops(100.0, 100.0, read(1, 141.0, 1)));
    assert!(!stops(100.0, 100.0, leave_in(1, 141.0, 1)));
    assert!(!stops(2.0, 2.0, read(1, 141.0, 2)));
    assert!(!stops(100.0, 100.0, read(2, 141.0, 2)));
    assert!(!stops(190.0, 100.0, read(1, 141.0, 2)));
    // Doubted by the forecast and not vouched for.
    let mut cook = Cook::two_on();
    let reading = cook.write(100.0, read(1, 141.0, 2));
    let state = cook.state();
    let history = state.history.piece(piece(1)).unwrap();
    assert_eq!(life(&state.history, history, &[reading], &[], at(200.0)).warm, minutes(200.0));
    // A colder spot is found a minute later.
    cook.write(101.0, read(1, 120.0, 1));
    assert_eq!(warm(&cook, 200.0), minutes(200.0));
}

#[test]
fn a_pit_that_fell_or_a_forecast_below_starts_it_again() {
    // 141 F, then the pit at 100 F for five hours.
    let mut cook = Cook::two_on();
    cook.write(95.0, pit_read(240.0));
    cook.write(100.0, read(1, 141.0, 2));
    cook.write(110.0, pit_read(240.0));
    cook.write(140.0, pit_read(100.0));
    // Known to be hot until the pit was last read so.
    let again = clock(&cook, ClockKind::WarmUp, 150.0).unwrap();
    assert_eq!(again.left(at(150.0)), minutes(240.0 - 100.0 - 40.0));
    let over = life_of(&cook, &[], 440.0).run_out.unwrap();
    assert_eq!((over.kind, over.deadline), (ClockKind::WarmUp, at(250.0)));
    assert_eq!(over.then, Then::ThrowAway);
    // Not read before, it may have fallen just after the piece was read.
    let mut cook = Cook::two_on();
    cook.write(100.0, read(1, 141.0, 2));
    cook.write(140.0, pit_read(100.0));
    assert_eq!(warm(&cook, 150.0), minutes(150.0));
    // By the forecast's unfavourable side alone.
    let mut cook = Cook::two_on();
    cook.write(100.0, read(1, 141.0, 2));
    let falls = core(&[(90.0, 139.0), (120.0, 142.0), (160.0, 139.0), (200.0, 110.0)]);
    assert_eq!(life_of(&cook, &falls, 200.0).warm, minutes(140.0));
    assert_eq!(life_of(&cook, &[], 200.0).warm, minutes(100.0));
    // A pit that fell before the piece was on, or once it was off, says nothing of it.
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(10.0, pit_read(100.0));
    cook.write(30.0, put_on(1));
    cook.write(100.0, read(1, 150.0, 2));
    assert_eq!(warm(&cook, 150.0), minutes(70.0));
    cook.write(150.0, pulled(1));
    cook.write(152.0, read(1, 150.0, 2));
    cook.write(155.0, pit_read(100.0));
    cook.write(160.0, read(1, 145.0, 2));
    assert_eq!(warm(&cook, 160.0), minutes(70.0));
}

#[test]
fn time_in_the_danger_zone_adds_up_over_a_dying_fire_and_a_put_back() {
    let mut cook = Cook::two_on();
    cook.write(110.0, read(1, 141.0, 1));
    cook.write(120.0, pulled(1));
    cook.write(130.0, read(1, 138.0, 1));
    cook.write(131.0, put_on(1));
    // 110 minutes before, and again since it came off, last known to be hot.
    let clock = clock(&cook, ClockKind::WarmUp, 150.0).unwrap();
    assert_eq!(clock.left(at(150.0)), minutes(240.0 - 110.0 - 30.0));
    assert_eq!(warm(&cook, 150.0), minutes(140.0));
    // A pit that is not expected to get there in time.
    let never = core(&[(200.0, 130.0), (400.0, 141.0)]);
    let slow = life_of(&Cook::two_on(), &never, 150.0).clocks[0];
    assert!(slow.is_expected_to_run_out());
}

#[test]
fn a_cold_reading_at_rest_is_not_forgotten_for_a_hot_one_after_it() {
    let mut cook = Cook::two_on();
    cook.write(110.0, read(1, 141.0, 2));
    cook.write(120.0, pulled(1));
    let mut always_hot = cook.clone();
    cook.write(130.0, read(1, 138.0, 2));
    cook.write(150.0, read(1, 141.0, 2));
    // Somewhere it was below 140 F, nobody knows since when: all of it counts.
    assert_eq!(warm(&cook, 150.0), minutes(110.0 + 30.0));
    always_hot.write(150.0, read(1, 141.0, 2));
    assert_eq!(warm(&always_hot, 150.0), minutes(110.0));
}

#[test]
fn every_stretch_of_a_piece_s_life_counts() {
    // Counter, pit, rest, put back, and until it is packed; not the hot time on the pit.
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(0.0, What::TakenOut { pieces: vec![piece(1)] });
    cook.write(20.0, What::BackInFridge { pieces: vec![piece(1)] });
    cook.write(60.0, What::TakenOut { pieces: vec![piece(1)] });
    assert_eq!(warm(&cook, 70.0), minutes(30.0));
    cook.write(75.0, put_on(1));
    cook.write(125.0, read(1, 145.0, 2));
    cook.write(135.0, pulled(1));
    cook.write(140.0, read(1, 143.0, 2));
    cook.write(165.0, put_on(1));
    cook.write(185.0, read(1, 166.0, 2));
    cook.write(190.0, pulled(1));
    cook.write(220.0, packed(1));
    let counted = 20.0 + 15.0 + 50.0 + 25.0 + 20.0 + 30.0;
    assert_eq!(warm(&cook, 900.0), minutes(counted));
    assert_eq!(life_of(&cook, &[], 900.0).run_out, None);
}

/// USDA consumer advice: perishable food is not left out for over two hours, one above 90 F.
#[test]
fn raw_meat_may_lie_out_for_two_hours_and_one_in_the_heat() {
    let out = |ambient: f64| {
        let mut cook = Cook::default();
        cook.write(-10.0, set_out(1, 38.0));
        cook.write(-10.0, set_out(2, 38.0));
        let ambient = Temperature::from_f(ambient);
        cook.write(-10.0, What::AmbientSet { ambient });
        cook.write(0.0, What::TakenOut { pieces: vec![piece(1)] });
        cook
    };
    let raw = clock(&out(70.0), ClockKind::RawOut, 30.0).unwrap();
    assert_eq!((raw.since, raw.deadline), (at(0.0), at(120.0)));
    assert_eq!(clock(&out(95.0), ClockKind::RawOut, 30.0).unwrap().deadline, at(60.0));
    // Only the pieces named; and the old entry means all that are raw.
    let state = out(70.0).state();
    let second = state.history.piece(piece(2)).unwrap();
    assert_eq!(life(&state.history, second, &[], &[], at(300.0)).run_out, None);
    let mut all = Cook::two_on();
    all.write(1.0, set_out(3, 38.0));
    all.write(2.0, What::ChoreDone { chore: Chore::OutOfFridge });
    let state = all.state();
    let taken = |number| state.history.piece(piece(number)).unwrap().raw_out.len();
    assert_eq!((taken(1), taken(3)), (0, 1));
    // Put back in between, the two stretches add up; said twice, it counts once.
    let mut cook = out(70.0);
    cook.write(10.0, What::TakenOut { pieces: vec![piece(1)] });
    cook.write(50.0, What::BackInFridge { pieces: vec![piece(1)] });
    cook.write(200.0, What::TakenOut { pieces: vec![piece(1)] });
    assert_eq!(clock(&cook, ClockKind::RawOut, 210.0).unwrap().deadline, at(270.0));
    assert_eq!(life_of(&cook, &[], 270.0).run_out, None);
    let over = life_of(&cook, &[], 271.0).run_out.unwrap();
    assert_eq!((over.kind, over.then), (ClockKind::RawOut, Then::ThrowAway));
    // On the pit in time, it adds to the warm-up; too late, it stays run out.
    let mut in_time = cook.clone();
    in_time.write(260.0, put_on(1));
    assert_eq!(clock(&in_time, ClockKind::RawOut, 300.0), None);
    assert_eq!(clock(&in_time, ClockKind::WarmUp, 300.0).unwrap().deadline, at(260.0 + 130.0));
    cook.write(275.0, put_on(1));
    assert_eq!(cook.state().pieces[0].run_out.unwrap().kind, ClockKind::RawOut);
}

#[test]
fn meat_warmer_than_two_hours_make_it_has_lain_out_longer() {
    let start = |f: f64| {
        let What::PieceSetOut { piece, mut facts, name } = set_out(1, 38.0) else { panic!() };
        facts.start = Temperature::from_f(f);
        let mut cook = Cook::default();
        cook.write(0.0, What::PieceSetOut { piece, facts, name });
        cook.write(0.0, put_on(1));
        cook
    };
    // 88 F is warmer than a room; 55 F is what half an hour or more on the counter makes.
    assert_eq!(start(88.0).state().pieces[0].run_out.unwrap().kind, ClockKind::RawOut);
    let cool = start(55.0);
    assert_eq!(cool.state().pieces[0].run_out, None);
    assert!((minutes(10.0)..minutes(60.0)).contains(&warm(&cool, 0.0)));
    assert_eq!(warm(&start(38.0), 0.0), minutes(0.0));
}

#[test]
fn two_hours_to_the_refrigerator_and_one_in_the_heat() {
    let (mild, hot) = (Temperature::from_f(90.0), Temperature::from_f(90.5));
    assert_eq!(longest_out(mild), minutes(120.0));
    assert_eq!(longest_out(hot), minutes(60.0));
    let mut cook = Cook::two_on();
    let fridge = |cook: &Cook, minute| clock(cook, ClockKind::ToFridge, minute);
    assert_eq!(fridge(&cook, 70.0), None);
    cook.write(75.0, read(1, 160.0, 2));
    cook.write(76.0, pulled(1));
    let falling = core(&[(76.0, 155.0), (85.0, 160.0), (110.0, 139.0)]);
    let expected = life_of(&cook, &falling, 80.0).clocks[0];
    assert_eq!((expected.since, expected.deadline), (at(76.0), at(196.0)));
    assert_eq!(expected.expected, Some(at(110.0)));
    let mut heat = cook.clone();
    heat.write(76.0, What::AmbientSet { ambient: hot });
    assert_eq!(fridge(&heat, 80.0).unwrap().deadline, at(136.0));
    // A reading from the future moves nothing.
    cook.write_as(PHONE, 190.0, 80.0, read(1, 145.0, 1));
    assert_eq!(fridge(&cook, 80.0).unwrap().since, at(76.0));
    // Held hot, it counts from the last reading that shows so.
    cook.write(100.0, read(1, 145.0, 1));
    cook.write(130.0, read(1, 137.0, 1));
    assert_eq!(fridge(&cook, 130.0).unwrap().since, at(100.0));
    let mut late = cook.clone();
    late.write(221.0, packed(1));
    assert_eq!(late.state().pieces[0].run_out.unwrap().deadline, at(220.0));
    cook.write(140.0, packed(1));
    assert_eq!(fridge(&cook, 300.0), None);
    assert_eq!(life_of(&cook, &[], 300.0).cold_by, Some(at(220.0)));
    assert_eq!(life_of(&cook, &[], 300.0).run_out, None);
}

/// FDA Food Code 2022, 3-501.14: 135 to 70 F in 2 h, 41 F within 6 h in all.
#[test]
fn cooling_in_two_steps() {
    let readings = core(&[(10.0, 136.0), (60.0, 90.0), (125.0, 69.0)]);
    let coming = core(&[(125.0, 69.0), (200.0, 50.0), (380.0, 41.0)]);
    let [first, second] = cooling(at(0.0), &readings, &coming);
    assert_eq!((first.kind, second.kind), (ClockKind::CoolTo70, ClockKind::CoolTo41));
    assert_eq!((first.since, first.deadline, second.deadline), (at(10.0), at(130.0), at(370.0)));
    assert_eq!(first.done, Some(at(125.0)));
    assert!(!first.has_run_out(at(500.0)));
    assert!(second.is_expected_to_run_out() && !second.has_run_out(at(370.0)));
    // Nothing read: it runs from when the meat was last hot.
    let [first, _] = cooling(at(0.0), &[], &core(&[(90.0, 70.0)]));
    assert_eq!((first.deadline, first.done), (at(120.0), None));
    assert!(!first.is_expected_to_run_out() && first.has_run_out(at(121.0)));
    // It took five hours: done at last, the warning stays.
    let [first, _] = cooling(at(0.0), &core(&[(300.0, 69.0)]), &[]);
    assert!(first.has_run_out(at(300.0)) && first.matters(at(900.0)));
    let [first, _] = cooling(at(0.0), &core(&[(100.0, 69.0)]), &[]);
    assert!(!first.matters(at(900.0)));
    // A reading of 70 F from before it was last hot is not of this cooling.
    let [first, _] = cooling(at(50.0), &core(&[(20.0, 69.0), (60.0, 120.0)]), &[]);
    assert_eq!(first.done, None);
}
