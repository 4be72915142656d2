//! The time that counts over the life of a piece. USDA: two hours out of the refrigerator in all;
//! Food Code 2022, 3-501.19(B), from memory: four hours without temperature control.

use cook_model::cook::What;
use cook_model::quantity::{Temperature, minutes};
use cook_model::safety::{ClockKind, Life, RunOut, Then, life};

use crate::support::{Cook, at, leave_in, packed, piece, pulled, put_on, read, set_out};

fn raw() -> Cook {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook
}

fn out(cook: &mut Cook, minute: f64) {
    cook.write(minute, What::TakenOut { pieces: vec![piece(1)] });
}

fn away(cook: &mut Cook, minute: f64) {
    cook.write(minute, What::BackInFridge { pieces: vec![piece(1)] });
}

fn run_out(cook: &Cook, minute: f64) -> Option<RunOut> {
    cook.state().run_out(piece(1), at(minute))
}

/// Each time on the counter adds to those before it; to tell it twice changes nothing.
#[test]
fn stretches_on_the_counter_add_up() {
    let mut cook = raw();
    for minute in [0.0, 100.0, 200.0] {
        out(&mut cook, minute);
        out(&mut cook, minute + 20.0);
        away(&mut cook, minute + 35.0);
    }
    // 105 minutes so far, so 15 are left.
    out(&mut cook, 300.0);
    assert_eq!(run_out(&cook, 314.0), None);
    let over = run_out(&cook, 316.0).unwrap();
    assert_eq!((over.kind, over.deadline), (ClockKind::RawOut, at(315.0)));
    assert_eq!(over.then, Then::ThrowAway);
    let warm = cook.state().life(piece(1), at(310.0)).unwrap().warm;
    assert_eq!(warm, minutes(3.0 * 35.0 + 10.0));
}

/// Counter and pit add up to four hours; a limit of the pit leaves what FSIS lets a processor do, one of
/// the counter does not.
#[test]
fn the_counter_counts_towards_the_four_hours() {
    let mut cook = raw();
    out(&mut cook, 0.0);
    cook.write(60.0, put_on(1));
    assert_eq!(run_out(&cook, 239.0), None);
    let over = run_out(&cook, 241.0).unwrap();
    assert_eq!((over.kind, over.deadline), (ClockKind::WarmUp, at(240.0)));
    assert_eq!(over.then, Then::ThrowAwayUnlessProcessor);
    // Once it was hot, the slow warm-up of a processor is no excuse.
    let mut cook = raw();
    cook.write(0.0, put_on(1));
    cook.write(100.0, read(1, 141.0, 2));
    cook.write(101.0, What::PitRead { temperature: Temperature::from_f(90.0) });
    cook.write(130.0, read(1, 130.0, 2));
    let over = run_out(&cook, 400.0).unwrap();
    assert_eq!((over.kind, over.then), (ClockKind::WarmUp, Then::ThrowAway));
    // 100 minutes before it was hot, and since it was last known to be.
    assert_eq!(over.deadline, at(100.0 + 140.0));
}

/// Off the pit it must be in the cold within two hours of when it was last read hot, or of coming off;
/// what is packed by then has kept it, and nothing runs on.
#[test]
fn into_the_cold_in_time() {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(80.0, pulled(1));
    let cold_by =
        |cook: &Cook, minute: f64| cook.state().life(piece(1), at(minute)).unwrap().cold_by;
    assert_eq!(cold_by(&cook, 90.0), Some(at(200.0)));
    cook.write(100.0, read(1, 150.0, 2));
    assert_eq!(cold_by(&cook, 110.0), Some(at(220.0)));
    let mut in_time = cook.clone();
    in_time.write(219.0, packed(1));
    assert_eq!(run_out(&in_time, 3000.0), None);
    assert!(in_time.state().life(piece(1), at(3000.0)).unwrap().clocks.is_empty());
    let over = run_out(&cook, 3000.0).unwrap();
    assert_eq!((over.kind, over.deadline), (ClockKind::ToFridge, at(220.0)));
}

/// Put back on, it is what it was: time between and before goes on counting, from when it was last hot.
#[test]
fn back_on_the_pit_nothing_is_forgiven() {
    let mut cook = Cook::two_on();
    cook.write(90.0, read(1, 150.0, 2));
    cook.write(100.0, pulled(1));
    cook.write(110.0, read(1, 120.0, 2));
    cook.write(150.0, put_on(1));
    let warm = |cook: &Cook, minute: f64| cook.state().life(piece(1), at(minute)).unwrap().warm;
    assert_eq!(warm(&cook, 160.0), minutes(90.0 + 70.0));
    cook.write(170.0, read(1, 150.0, 2));
    assert_eq!(warm(&cook, 200.0), minutes(90.0 + 80.0));
}

/// A pit that was read colder than meat must be starts the clock again: from when it was last read well,
/// and for a piece that was put on since, from no earlier.
#[test]
fn a_pit_that_fell_counts_from_when_it_was_last_well() {
    let pit = |cook: &mut Cook, minute: f64, f: f64| {
        cook.write(minute, What::PitRead { temperature: Temperature::from_f(f) });
    };
    let mut cook = Cook::two_on();
    cook.write(60.0, read(1, 145.0, 2));
    pit(&mut cook, 90.0, 250.0);
    pit(&mut cook, 120.0, 139.0);
    let warm = |cook: &Cook, minute: f64| cook.state().life(piece(1), at(minute)).unwrap().warm;
    assert_eq!(warm(&cook, 120.0), minutes(60.0 + 30.0));
    // A pit at 140 F is hot enough.
    let mut cook = Cook::two_on();
    cook.write(60.0, read(1, 145.0, 2));
    pit(&mut cook, 120.0, 140.5);
    assert_eq!(warm(&cook, 150.0), minutes(60.0));
    // Never read well, it may have been cold ever since the core was last read.
    let mut cook = Cook::two_on();
    cook.write(60.0, read(1, 145.0, 2));
    pit(&mut cook, 120.0, 100.0);
    assert_eq!(warm(&cook, 120.0), minutes(60.0 + 60.0));
}

/// On the pit a core a little under 140 F after one a little over it may be so since then.
#[test]
fn a_colder_reading_on_the_pit_starts_the_clock_again() {
    let mut cook = Cook::two_on();
    cook.write(60.0, read(1, 141.0, 2));
    cook.write(90.0, read(1, 139.0, 2));
    let warm = cook.state().life(piece(1), at(120.0)).unwrap().warm;
    assert_eq!(warm, minutes(60.0 + 30.0));
}

/// At rest, hot again by a reading, it is known to be hot from then to the next hot one.
#[test]
fn between_two_hot_readings_at_rest_nothing_counts() {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 160.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(100.0, read(1, 139.0, 2));
    cook.write(101.0, read(1, 141.0, 2));
    cook.write(120.0, read(1, 141.0, 2));
    let warm = cook.state().life(piece(1), at(120.0)).unwrap().warm;
    assert_eq!(warm, minutes(75.0 + 25.0));
}

/// A reading said to be of later is of a wrong clock: it runs no limit out.
#[test]
fn a_reading_from_the_future_runs_nothing_out() {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    cook.write_as(crate::support::PHONE, 900.0, 80.0, read(1, 120.0, 2));
    assert_eq!(run_out(&cook, 81.0), None);
}

/// Meat of 79 F in a kitchen of 80 lay out for 38 ln(39) = 138 min at the least before it was first told
/// of: its two hours ran out before that.
#[test]
fn a_limit_before_it_was_told_of_ran_out_then() {
    let What::PieceSetOut { piece: number, mut facts, name } = set_out(1, 38.0) else { panic!() };
    facts.start = Temperature::from_f(79.0);
    for taken_out in [false, true] {
        let mut cook = Cook::default();
        cook.write(0.0, What::PieceSetOut { piece: number, facts, name: name.clone() });
        if taken_out {
            out(&mut cook, 0.0);
            away(&mut cook, 5.0);
            out(&mut cook, 25.0);
        }
        cook.write(if taken_out { 30.0 } else { 0.0 }, put_on(1));
        cook.write(60.0, read(1, 100.0, 2));
        let over = run_out(&cook, 200.0).unwrap();
        assert_eq!(over.kind, ClockKind::RawOut);
        assert!(over.deadline < at(-10.0) && over.deadline > at(-30.0), "{}", over.deadline);
    }
}

/// A limit that ran out stays with the piece, packed or put back, beside a new clock of its kind.
#[test]
fn a_limit_that_ran_out_stays_beside_a_new_clock() {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(300.0, put_on(1));
    cook.write(350.0, read(1, 166.0, 2));
    cook.write(351.0, pulled(1));
    let shown = |cook: &Cook, minute: f64| {
        let clocks = cook.state().life(piece(1), at(minute)).unwrap().clocks;
        clocks.iter().any(|clock| clock.deadline == at(196.0) && clock.has_run_out(at(minute)))
    };
    assert!(shown(&cook, 360.0));
    cook.write(361.0, packed(1));
    assert!(shown(&cook, 400.0));
}

/// A pit that fell says nothing of meat that is still in the refrigerator.
#[test]
fn a_cold_pit_warms_no_meat_in_the_refrigerator() {
    let mut cook = Cook::two_on();
    cook.write(0.0, set_out(3, 38.0));
    for (minute, f) in [(30.0, 250.0), (60.0, 100.0)] {
        cook.write(minute, What::PitRead { temperature: Temperature::from_f(f) });
    }
    assert_eq!(cook.state().life(piece(3), at(90.0)).unwrap().warm, minutes(0.0));
}

/// The danger zone is 40 to 140 F (USDA FSIS): at 140 F it is out of it, by a leave-in too and by a forecast.
#[test]
fn just_140_f_is_out_of_the_danger_zone() {
    let by = |coming: &[(f64, f64)], until: f64, cook: &Cook| -> Life {
        let coming: Vec<_> =
            coming.iter().map(|(minute, f)| (at(*minute), Temperature::from_f(*f))).collect();
        let state = cook.state();
        life(&state.history, state.history.piece(piece(1)).unwrap(), &[], &coming, at(until))
    };
    let mut cook = Cook::two_on();
    cook.write(60.0, read(1, 150.0, 2));
    // Colder than that, it speaks against the hot reading before it.
    for (f, counts) in [(140.0, 60.0), (139.9, 80.0)] {
        let mut cook = cook.clone();
        cook.write(70.0, leave_in(1, f, 1));
        assert_eq!(by(&[], 80.0, &cook).warm, minutes(counts), "{f} F");
    }
    for (f, counts) in [(140.0, 60.0), (139.0, 70.0)] {
        assert_eq!(by(&[(70.0, f)], 80.0, &cook).warm, minutes(counts), "forecast at {f} F");
    }
    // Off the pit, by the forecast of what comes, its time to the refrigerator is told from 140 F on.
    cook.write(75.0, pulled(1));
    let told = |f: f64| {
        let clocks = by(&[(80.0, f), (100.0, 120.0)], 80.0, &cook).clocks;
        clocks.iter().find(|clock| clock.kind == ClockKind::ToFridge).unwrap().expected
    };
    assert_eq!((told(140.0), told(139.0)), (Some(at(100.0)), Some(at(80.0))));
}

/// Three and a half hours on its way to 140 F leave half an hour of the four, which end before the two that a
/// piece may be off: that one is told.
#[test]
fn of_two_limits_the_one_that_ends_sooner_is_told() {
    let left = |hot: f64| {
        let mut cook = Cook::two_on();
        cook.write(hot, read(1, 150.0, 2));
        cook.write(hot + 5.0, pulled(1));
        let state = cook.state();
        let own = state.history.piece(piece(1)).unwrap();
        let clocks = life(&state.history, own, &[], &[], at(hot + 6.0)).clocks;
        let warm_up = clocks.iter().find(|clock| clock.kind == ClockKind::WarmUp);
        warm_up.map(|clock| clock.deadline)
    };
    assert_eq!(left(210.0), Some(at(245.0)));
    assert_eq!(left(60.0), None, "two hours off the pit end sooner");
}
