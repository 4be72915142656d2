//! Questions that another thread answers: on the way there and back nothing is lost or changed, and
//! what is asked is answered as if it had been worked out on the spot.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::thinking::{Answer, Question, Thinker, come_back, on_the_way};
use cook_model::cook::{DeviceId, Log, Seen, What, fold};
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::plan::plan;
use cook_model::quantity::{Length, Mass, Moment, Temperature, minutes};
use support::at;

const RESTING: PieceId = PieceId(1);

/// Three breasts for a dinner that will be late, the first off early and unproved; told at times that
/// are no whole seconds, with a name that has a line of its own.
fn a_cook() -> Log {
    let mut log = Log::default();
    let mut tell = |minute: f64, what| {
        let happened = at(minute) + minutes(0.012_345);
        log.insert(log.next(DeviceId(1), happened, happened, what));
    };
    tell(-30.0, What::DinnerSet { at: Some(at(55.0)) });
    for (number, grams) in [(1, 180.0), (2, 233.3), (3, 310.1)] {
        let facts = Piece {
            weight: Mass::from_g(grams),
            thickest: (number != 2).then_some(Length::from_mm(30.0 + grams / 25.0)),
            shape: Shape::Natural,
            start: Temperature::from_f(38.7),
            icy: false,
        };
        tell(-20.0, What::PieceSetOut { piece: PieceId(number), facts, name: "a\nb\"".into() });
    }
    for number in 1..=3 {
        tell(0.0, What::PutOn { piece: PieceId(number) });
    }
    tell(5.0, What::PitRead { temperature: Temperature::from_f(243.1) });
    let read = |number, f| What::CoreRead {
        piece: PieceId(number),
        temperature: Temperature::from_f(f),
        instrument: Instrument::InstantRead,
        places: 2,
    };
    tell(30.0, read(1, 121.3));
    tell(31.0, read(2, 108.9));
    tell(40.0, read(1, 148.2));
    tell(40.5, What::Pulled { piece: RESTING });
    log
}

const ALL: [Question; 5] = [
    Question::Look,
    Question::Levers,
    Question::Ways,
    Question::WhyNoPlan,
    Question::TimeBackOn { piece: RESTING },
];

fn asked(thinker: &mut Thinker, log: &Log, now: Moment, question: Question) -> Answer {
    let there = on_the_way(log, now, question);
    come_back(&thinker.answer_to(&there).unwrap()).unwrap()
}

#[test]
fn an_answer_that_was_on_the_way_is_the_one_worked_out_on_the_spot() {
    let (log, now) = (a_cook(), at(44.321));
    let mut elsewhere = Thinker::default();
    for question in ALL {
        let here = Thinker::default().answer(&log, now, question);
        assert_eq!(asked(&mut elsewhere, &log, now, question), here, "{question:?}");
    }
}

#[test]
fn a_look_completed_elsewhere_is_the_whole_look() {
    let (log, now) = (a_cook(), at(44.0));
    let Answer::Look { forecast, plan } = asked(&mut Thinker::default(), &log, now, Question::Look)
    else {
        panic!("a look was asked for")
    };
    assert_eq!(forecast.pieces.len(), 3);
    assert!(plan.is_some());
    assert_eq!(Seen::facts(&log, now).with(forecast, plan), Seen::of(&log, now));
}

#[test]
fn what_is_kept_from_one_question_does_not_reach_the_answer_to_another() {
    let (log, now) = (a_cook(), at(44.0));
    let mut thinker = Thinker::default();
    let first = asked(&mut thinker, &log, now, Question::Look);
    let mut longer = log.clone();
    let target = What::PitTargetSet { target: Temperature::from_f(300.0) };
    longer.insert(longer.next(DeviceId(2), at(43.0), at(43.0), target));
    let second = asked(&mut thinker, &longer, now, Question::Look);
    assert_eq!(second, Thinker::default().answer(&longer, now, Question::Look));
    assert_ne!(second, first);
    assert_eq!(asked(&mut thinker, &log, now, Question::Look), first);
    assert_eq!(asked(&mut thinker, &Log::default(), now, Question::Levers), Answer::Levers(vec![]));
}

#[test]
fn the_other_answers_are_those_of_the_rules_themselves() {
    let (log, now) = (a_cook(), at(44.0));
    let mut thinker = Thinker::default();
    let seen = Seen::of(&log, now);
    let Answer::Levers(levers) = thinker.answer(&log, now, Question::Levers) else { panic!() };
    assert!(!levers.is_empty(), "dinner is late: something can be done");
    let back = thinker.answer(&log, now, Question::TimeBackOn { piece: RESTING });
    assert_eq!(back, Answer::TimeBackOn(seen.state.time_back_on(RESTING, seen.at)));
    assert_ne!(back, Answer::TimeBackOn(None));
    let Answer::Ways([together, staggered]) = thinker.answer(&log, now, Question::Ways) else {
        panic!()
    };
    assert!(together.is_some() && staggered.is_some());
    let why = thinker.answer(&log, at(60.0), Question::WhyNoPlan);
    let request = fold(&log).plan_request(at(60.0)).unwrap();
    assert_eq!(why, Answer::WhyNoPlan(plan(&request).err()));
}

#[test]
fn bytes_that_are_no_question_have_no_answer() {
    let mut thinker = Thinker::default();
    let whole = on_the_way(&a_cook(), at(44.0), Question::Look);
    for length in [0, 1, whole.len() / 2, whole.len() - 1] {
        assert!(thinker.answer_to(&whole[..length]).is_none(), "{length} bytes");
    }
    assert!(come_back(&[]).is_none());
    assert!(come_back(&[255; 40]).is_none());
}
