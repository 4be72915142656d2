//! When the cook is called, and that each call is heard once.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use std::collections::BTreeMap;

use chrono::{DateTime, Utc};
use cook_model::cook::alarms::{Alarm, AlarmId, AlarmKind, alarms};
use cook_model::cook::ringing::{Mark, Marks, SNOOZE, due, next, unanswered};
use cook_model::cook::{Chore, CookState, DeviceId, Log, What, fold};
use cook_model::forecast::{Band, Forecast, Peak, PieceForecast, Probability};
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Mass, Moment, Temperature, minutes, seconds};
use proptest::prelude::*;

fn at(minute: f64) -> Moment {
    DateTime::<Utc>::from_timestamp(1_780_000_000, 0).unwrap() + minutes(minute)
}

const PIECE: PieceId = PieceId(1);

fn state_of(whats: &[(f64, What)]) -> CookState {
    let facts = Piece {
        weight: Mass::from_g(230.0),
        thickest: None,
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    };
    let set_out = What::PieceSetOut { piece: PIECE, facts, name: String::new() };
    let mut log = Log::default();
    for (minute, what) in [(-5.0, set_out), (0.0, What::PutOn { piece: PIECE })].iter().chain(whats)
    {
        log.insert(log.next(DeviceId(1), at(*minute), at(*minute), what.clone()));
    }
    fold(&log)
}

fn read(minute: f64, fahrenheit: f64, places: u8) -> (f64, What) {
    let temperature = Temperature::from_f(fahrenheit);
    let instrument = Instrument::InstantRead;
    (minute, What::CoreRead { piece: PIECE, temperature, instrument, places })
}

fn pulled(minute: f64) -> (f64, What) {
    (minute, What::Pulled { piece: PIECE })
}

/// A forecast of a window opening at this minute, nine minutes long, and a check before it.
fn forecast(opens: f64, check_by: Option<f64>) -> Forecast {
    let steady = |value| Temperature::from_f(value);
    let core = Band { low: steady(150.0), middle: steady(150.0), high: steady(150.0) };
    let piece = PieceForecast {
        piece: PIECE,
        core,
        pull: Some(Band { low: at(opens), middle: at(opens + 4.0), high: at(opens + 9.0) }),
        ready: Probability::new(0.1),
        check_by: check_by.map(at),
        peak: Some(Peak { at: at(opens + 14.0), temperature: core }),
        seating: None,
        curve: Vec::new(),
    };
    Forecast {
        at: at(0.0),
        pieces: vec![piece],
        order: vec![PIECE],
        order_certainty: Vec::new(),
        checks: Vec::new(),
        surprises: Vec::new(),
    }
}

fn calls(state: &CookState, forecast: &Forecast) -> Vec<Alarm> {
    alarms(state, forecast, None)
}

fn kinds(state: &CookState, forecast: &Forecast) -> Vec<(AlarmKind, f64)> {
    let minute = |alarm: Alarm| (alarm.at - at(0.0)).num_seconds() as f64 / 60.0;
    calls(state, forecast).into_iter().map(|alarm| (alarm.id.kind, minute(alarm))).collect()
}

#[test]
fn a_piece_on_the_pit_calls_for_its_check_its_window_and_its_end() {
    use AlarmKind::{CheckDue, LikelyPastTarget, PullWindowOpening, WarmUpLimit};
    let on = state_of(&[]);
    // A pit that does not bring it past 140 F within four hours: twenty minutes before.
    let too_cool = (WarmUpLimit, 220.0);
    let expected =
        [(CheckDue, 40.0), (PullWindowOpening, 50.0), (LikelyPastTarget, 59.0), too_cool];
    assert_eq!(kinds(&on, &forecast(50.0, Some(40.0))), expected);
    // A window that opens with a check is not called twice.
    assert_eq!(
        kinds(&on, &forecast(50.0, None)),
        [(CheckDue, 50.0), (LikelyPastTarget, 59.0), too_cool]
    );
    // Just read at 150 F, it cannot be past 165 F for seven and a half minutes at 2 F a minute.
    let poked = state_of(&[read(49.0, 150.0, 1)]);
    assert!(kinds(&poked, &forecast(50.0, Some(45.0))).contains(&(CheckDue, 56.5)));
    // Read at its pull temperature, it calls only if it is not pulled.
    let ready = state_of(&[read(49.0, 161.0, 1)]);
    assert_eq!(kinds(&ready, &forecast(50.0, None)), vec![(LikelyPastTarget, 52.0)]);
}

#[test]
fn a_piece_off_the_pit_calls_for_proof_rest_and_chill() {
    use AlarmKind::{ChillLimit, ProofReadingDue, RestOver};
    let resting = state_of(&[read(49.0, 161.0, 1), pulled(50.0)]);
    let near_peak = forecast(45.0, None);
    // USDA: in the refrigerator within two hours, one above 90 F, of coming off or of being read
    // above 140 F; the call comes twenty minutes before.
    let expected = vec![(ProofReadingDue, 59.0), (ChillLimit, 150.0)];
    assert_eq!(kinds(&resting, &near_peak), expected);
    let hot = What::AmbientSet { ambient: Temperature::from_f(95.0) };
    let hot = state_of(&[(0.0, hot), read(49.0, 161.0, 1), pulled(50.0)]);
    assert!(kinds(&hot, &near_peak).contains(&(ChillLimit, 90.0)));
    let proved = state_of(&[read(49.0, 161.0, 1), pulled(50.0), read(58.0, 166.0, 2)]);
    assert_eq!(kinds(&proved, &near_peak), vec![(RestOver, 60.0), (ChillLimit, 158.0)]);
    let packed = (70.0, What::Packed { piece: PIECE });
    let packed = state_of(&[read(49.0, 161.0, 1), pulled(50.0), read(58.0, 166.0, 2), packed]);
    assert_eq!(kinds(&packed, &near_peak), vec![]);
}

#[test]
fn the_fire_calls_as_often_as_the_cook_feeds_it() {
    let lit = What::ChoreDone { chore: Chore::LightFire };
    let fed = What::ChoreDone { chore: Chore::FeedFire };
    let feed = |state: &CookState| {
        let all = calls(state, &forecast(200.0, None));
        all.into_iter().find(|alarm| alarm.id.kind == AlarmKind::ChoreDue(Chore::FeedFire))
    };
    // Every 45 minutes unless the cook told otherwise.
    let first = feed(&state_of(&[(1.0, lit.clone())])).unwrap();
    let second = feed(&state_of(&[(1.0, lit), (48.0, fed)])).unwrap();
    assert_eq!((first.at, second.at), (at(46.0), at(93.0)));
    assert_ne!(first.id, second.id, "each feeding is called for anew");
    assert_eq!(feed(&state_of(&[])), None, "a pit nobody lit by hand is not fed");
}

#[test]
fn pieces_due_close_together_call_together() {
    let two = {
        let PieceForecast { pull, .. } = forecast(53.0, None).pieces[0].clone();
        let mut forecast = forecast(50.0, None);
        let second = PieceForecast { piece: PieceId(2), pull, ..forecast.pieces[0].clone() };
        forecast.pieces.push(second);
        forecast
    };
    let facts = state_of(&[]).history.pieces[0].piece;
    let set_out = What::PieceSetOut { piece: PieceId(2), facts, name: String::new() };
    let state = state_of(&[(0.0, set_out), (0.0, What::PutOn { piece: PieceId(2) })]);
    let checks: Vec<Moment> = calls(&state, &two)
        .into_iter()
        .filter(|alarm| alarm.id.kind == AlarmKind::CheckDue)
        .map(|alarm| alarm.at)
        .collect();
    assert_eq!(checks, [at(50.0), at(50.0)], "one opening of the lid");
}

/// Lets due alarms ring, and counts each.
struct Listener {
    marks: Marks,
    heard: BTreeMap<AlarmId, u32>,
}

impl Listener {
    fn new() -> Self {
        Self { marks: Marks::new(), heard: BTreeMap::new() }
    }

    fn listen(&mut self, alarms: &[Alarm], now: Moment) -> usize {
        let rings = due(alarms, &self.marks, now);
        for ring in &rings {
            self.marks.insert(ring.alarm.id, Mark::rung(ring, now));
            *self.heard.entry(ring.alarm.id).or_default() += 1;
        }
        rings.len()
    }
}

#[test]
fn a_late_alarm_says_how_late_and_is_silent_after() {
    let alarms = calls(&state_of(&[]), &forecast(50.0, Some(40.0)));
    let late = due(&alarms, &Marks::new(), at(44.0));
    assert_eq!((late.len(), late[0].late), (1, minutes(4.0)));
    let mut listener = Listener::new();
    assert_eq!(listener.listen(&alarms, at(44.0)), 1);
    assert_eq!(listener.listen(&alarms, at(44.0)), 0);
    assert_eq!(next(&alarms, &listener.marks, at(44.0)), Some(at(50.0)));
    // The phone's clock set back an hour does not ring it again.
    assert_eq!(listener.listen(&alarms, at(-16.0)) + listener.listen(&alarms, at(45.0)), 0);
}

#[test]
fn an_alarm_moved_far_into_the_future_rings_again() {
    let moved = |minute: f64| calls(&state_of(&[]), &forecast(minute, Some(minute - 10.0)));
    let mut listener = Listener::new();
    assert_eq!(listener.listen(&moved(50.0), at(40.0)), 1);
    assert_eq!(listener.listen(&moved(59.0), at(49.0)), 0, "moved by nine minutes");
    assert_eq!(listener.listen(&moved(75.0), at(64.0)), 0, "not yet");
    assert_eq!(listener.listen(&moved(75.0), at(65.0)), 1, "moved by twenty-five minutes");
    let mut asleep = Listener::new();
    assert_eq!(asleep.listen(&moved(50.0), at(48.0)), 1);
    assert_eq!(asleep.listen(&moved(57.5), at(57.4)), 0, "moved to before it rang");
}

#[test]
fn snooze_and_done() {
    let alarms = calls(&state_of(&[]), &forecast(50.0, Some(40.0)));
    let check = alarms[0].id;
    let mut listener = Listener::new();
    listener.listen(&alarms, at(40.0));
    assert_eq!(unanswered(&alarms, &listener.marks).len(), 1);
    let snoozed = listener.marks[&check].snooze(at(41.0));
    listener.marks.insert(check, snoozed);
    assert_eq!(unanswered(&alarms, &listener.marks).len(), 0);
    assert_eq!(next(&alarms, &listener.marks, at(41.0)), Some(at(41.0) + SNOOZE));
    assert_eq!(listener.listen(&alarms, at(41.0) + SNOOZE), 1);
    assert_eq!(listener.listen(&alarms, at(41.0) + SNOOZE), 0);
    let answered = listener.marks[&check].answer();
    listener.marks.insert(check, answered);
    assert_eq!(unanswered(&alarms, &listener.marks).len(), 0);
}

proptest! {
    /// Six hours in which the page runs at random moments only, while the forecast wobbles.
    #[test]
    fn each_alarm_is_heard_once_whenever_the_page_may_run(
        sleeps in proptest::collection::vec(0.1_f64..1500.0, 40),
        wobbles in proptest::collection::vec(0.0_f64..4.9, 40),
    ) {
        let state = state_of(&[]);
        let mut listener = Listener::new();
        let mut now = at(0.0);
        for (sleep, wobble) in sleeps.iter().zip(&wobbles) {
            now += seconds(*sleep);
            listener.listen(&calls(&state, &forecast(100.0 + wobble, Some(90.0 + wobble))), now);
        }
        let last = calls(&state, &forecast(104.9, Some(94.9)));
        listener.listen(&last, at(360.0));
        prop_assert_eq!(listener.heard.len(), 4);
        prop_assert!(listener.heard.values().all(|count| *count == 1), "{:?}", listener.heard);
    }

    /// Whoever looks when `next` says hears every alarm at its very time.
    #[test]
    fn following_next_from_one_to_the_next_hears_each_on_time(shift in -20.0_f64..20.0) {
        let state = state_of(&[]);
        let mut listener = Listener::new();
        listener.listen(&calls(&state, &forecast(50.0, Some(40.0))), at(45.0));
        let moved = calls(&state, &forecast(50.0 + shift, Some(40.0 + shift)));
        let mut now = at(45.0);
        listener.listen(&moved, now);
        while let Some(then) = next(&moved, &listener.marks, now) {
            now = then;
            let rings = due(&moved, &listener.marks, now);
            prop_assert!(rings.iter().all(|ring| ring.late.is_zero()));
            prop_assert!(!rings.is_empty());
            listener.listen(&moved, now);
        }
        prop_assert!(due(&moved, &listener.marks, at(600.0)).is_empty());
    }
}
