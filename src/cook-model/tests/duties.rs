//! What the cook is told to do until a piece is off, from the states of a cook.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::duties::{Act, Duty, Why, duties, in_order};
use cook_model::cook::{Chore, ROUND_LASTS, Seen, Stage, What};
use cook_model::piece::PieceId;
use cook_model::quantity::{Moment, Temperature, to_minutes};
use support::looks::{acts, on_the_pit};
use support::{Cook, at, leave_in, piece, pulled, read, set_out};

/// The round that the card asks for, gone through: each piece reads so much less than its likely pull.
fn begin_round(cook: &mut Cook, minute: f64) -> Vec<PieceId> {
    let card = cook.card(minute);
    assert_eq!(card.act, Act::Check, "{card:?}");
    cook.write(minute, What::RoundBegan { pieces: card.pieces.clone() });
    card.pieces
}

#[test]
fn an_empty_cook_asks_what_is_cooked() {
    assert_eq!(Cook::default().card(600.0).act, Act::AddPieces);
}

#[test]
fn a_cook_just_opened_has_no_forecast_and_guesses_nothing() {
    let mut cook = on_the_pit(&[30.0, 38.0]);
    cook.write(58.0, read(1, 166.0, 2));
    cook.write(59.0, pulled(1));
    let facts = Seen::facts(&cook.log, at(59.1));
    let facts_only = duties(&facts);
    for act in acts(&facts_only) {
        assert!(
            matches!(
                act,
                Act::Cover | Act::ReadPit | Act::Discard | Act::HurryUp | Act::Chore { .. }
            ),
            "{act:?} needs a forecast"
        );
    }
    // No reading counts for a proof before a forecast found that it fits.
    assert_eq!(facts.state.pieces[0].stage, Stage::Resting);
}

#[test]
fn what_is_due_stays_due_while_time_goes_by() {
    let cook = on_the_pit(&[30.0, 36.0, 40.0, 46.0]);
    let check = cook.all().into_iter().find(|duty| duty.act == Act::Check).unwrap();
    for minute in 0..90 {
        let now = check.from + (at(f64::from(minute)) - at(0.0));
        let all = cook.all();
        let due: Vec<_> = in_order(&all, now).into_iter().filter(|d| d.is_due(now)).collect();
        assert!(due.iter().any(|duty| duty.act == Act::Check), "minute {minute}: {due:?}");
    }
}

#[test]
fn one_opening_reads_the_piece_due_and_those_that_are_near() {
    let cook = on_the_pit(&[36.0, 37.0, 38.0, 60.0]);
    let check = cook.all().into_iter().find(|duty| duty.act == Act::Check).unwrap();
    let mut read = check.pieces.clone();
    read.sort();
    assert_eq!(read, [piece(1), piece(2), piece(3)], "the thick one is far from its pull");
}

#[test]
fn nothing_interrupts_a_round_and_it_leads_from_piece_to_piece() {
    let mut cook = on_the_pit(&[34.0, 36.0, 38.0]);
    let due = cook.all().into_iter().find(|duty| duty.act == Act::Check).unwrap();
    let minute = to_minutes(due.from - at(0.0)) + 0.01;
    let pieces = begin_round(&mut cook, minute);
    assert_eq!(pieces.len(), 3);
    // The pit was read half an hour ago or more: it is read before the lid goes up.
    assert_eq!(cook.card(minute + 0.1).act, Act::ReadPit);
    cook.write(minute + 0.2, What::PitRead { temperature: Temperature::from_f(252.0) });
    for (i, piece) in pieces.iter().enumerate() {
        let now = minute + 0.4 + 0.2 * i as f64;
        let card = cook.card(now);
        assert_eq!((card.act, &card.pieces[..]), (Act::Read, &[*piece][..]));
        let due: Vec<Duty> = cook.all().into_iter().filter(|duty| duty.is_due(at(now))).collect();
        assert_eq!(due.len(), 1, "nothing else is asked meanwhile: {due:?}");
        cook.write(now, read(piece.0, 130.0 - 2.0 * i as f64, 2));
    }
    let after = cook.card(minute + 1.2);
    assert_ne!(after.act, Act::Read);
    assert!(!after.is_due(at(minute + 1.2)) || after.act != Act::Check, "{after:?}");
}

#[test]
fn a_round_that_nobody_goes_on_with_is_over_after_five_minutes() {
    let mut cook = on_the_pit(&[34.0, 36.0]);
    let due = cook.all().into_iter().find(|duty| duty.act == Act::Check).unwrap();
    let minute = to_minutes(due.from - at(0.0)) + 0.01;
    begin_round(&mut cook, minute);
    cook.write(minute, What::PitRead { temperature: Temperature::from_f(250.0) });
    cook.write(minute + 0.2, read(1, 150.0, 2));
    assert_eq!(cook.card(minute + 4.0).act, Act::Read);
    let later = minute + 0.3 + to_minutes(ROUND_LASTS);
    assert_ne!(cook.card(later).act, Act::Read);
    // And the log knows how long the lid was up: about as long as things were tapped.
    let opening = cook.state().history.pit.lid[0];
    assert!((0.1..1.0).contains(&to_minutes(opening.lasted)), "{opening:?}");
}

#[test]
fn a_reading_at_the_pull_temperature_is_pulled_on_the_spot_in_a_round() {
    let mut cook = on_the_pit(&[34.0, 36.0]);
    let minute = cook.likely_at(1, 163.0);
    let pieces = begin_round(&mut cook, minute);
    cook.write(minute, What::PitRead { temperature: Temperature::from_f(250.0) });
    cook.write(minute + 0.3, read(pieces[0].0, 165.0, 2));
    let card = cook.card(minute + 0.4);
    assert_eq!((card.act, card.pieces), (Act::Pull, vec![pieces[0]]));
    cook.write(minute + 0.5, pulled(pieces[0].0));
    assert_eq!(cook.card(minute + 0.6).act, Act::Read, "then the next piece");
}

#[test]
fn a_doubted_reading_commands_nothing_until_it_is_vouched_for() {
    // 160 typed for 106: the card asks, and no pull is called for.
    let mut cook = on_the_pit(&[38.0]);
    let minute = cook.likely_at(1, 106.0);
    let reading = cook.write(minute, read(1, 160.0, 2));
    let card = cook.card(minute + 0.1);
    assert_eq!(card.act, Act::Answer { reading });
    assert!(!acts(&cook.all()).contains(&&Act::Pull));
    cook.write(minute + 0.5, What::ReadingVouched { reading });
    assert!(!acts(&cook.all()).contains(&&Act::Answer { reading }));
}

#[test]
fn no_forecast_alone_ever_means_pull_and_overdue_says_so() {
    // Forgotten for three hours: the check is due, and likely past 175 F since some moment gone by.
    let cook = on_the_pit(&[30.0, 38.0]);
    let card = cook.card(180.0);
    assert_eq!(card.act, Act::Check);
    let Why::Forecast { past: Some(past), hot: Some(hot) } = card.why else { panic!("{card:?}") };
    assert!(past < hot && hot < at(180.0));
    assert!(!acts(&cook.all()).contains(&&Act::Pull));
}

#[test]
fn the_default_pull_is_near_the_proof_and_higher_for_a_thin_piece() {
    // Common practice, no source: carryover of a breast is 3 to 8 F, more in a thick one.
    let pull_at = |mm| on_the_pit(&[mm]).seen().piece_forecast(piece(1)).unwrap().pull_at.f();
    let mut before = 166.0;
    for mm in [22.0, 30.0, 38.0, 50.0] {
        assert!((157.0..=165.1).contains(&pull_at(mm)), "{mm} mm: {}", pull_at(mm));
        assert!(pull_at(mm) <= before, "{mm} mm: {} after {before}", pull_at(mm));
        before = pull_at(mm);
    }
}

#[test]
fn a_choice_that_will_go_back_is_told_before_the_pull() {
    let mut cook = on_the_pit(&[38.0]);
    let chance =
        |cook: &Cook| cook.seen().piece_forecast(piece(1)).unwrap().goes_back.unwrap().value();
    assert!(chance(&cook) <= 0.06, "the default: one in twenty, {}", chance(&cook));
    cook.write(0.0, What::PullTargetSet { piece: None, target: Some(Temperature::from_f(155.0)) });
    assert!(chance(&cook) > 0.9, "155 F hardly ever comes to 165: {}", chance(&cook));
    cook.write(0.0, What::PullTargetSet { piece: None, target: None });
    assert!(chance(&cook) <= 0.06);
}

#[test]
fn a_fire_that_died_is_the_first_duty_and_spares_pointless_checks() {
    let mut cook = on_the_pit(&[34.0, 36.0, 38.0, 40.0]);
    let due = cook.all().into_iter().find(|duty| duty.act == Act::Check).unwrap();
    let before = to_minutes(due.from - at(0.0)) - 12.0;
    cook.write(before, What::PitRead { temperature: Temperature::from_f(150.0) });
    cook.write(before + 10.0, What::PitRead { temperature: Temperature::from_f(128.0) });
    for wait in [11.0, 13.0, 20.0] {
        let card = cook.card(before + wait);
        assert_eq!(card.act, Act::MendFire, "{card:?}");
        let due = |duty: &&Duty| duty.act == Act::Check && duty.is_due(at(before + wait));
        assert_eq!(cook.all().iter().filter(due).count(), 0);
    }
    let rings = cook.all().into_iter().find(|duty| duty.act == Act::MendFire).unwrap().bells;
    assert_eq!(rings[0].at, at(before + 20.0), "read again in ten minutes");
}

#[test]
fn a_pit_read_just_after_the_lid_was_up_is_no_dead_fire() {
    let mut cook = on_the_pit(&[38.0]);
    cook.write(20.0, What::LidOpened { seconds: 60 });
    cook.write(22.0, What::PitRead { temperature: Temperature::from_f(205.0) });
    assert!(!acts(&cook.all()).contains(&&Act::MendFire));
}

#[test]
fn the_fire_is_fed_though_nobody_said_that_it_was_lit() {
    let cook = on_the_pit(&[38.0]);
    let feed = Act::Chore { chore: Chore::FeedFire };
    let fed = cook.all().into_iter().find(|duty| duty.act == feed).unwrap();
    assert_eq!(fed.from, at(45.0), "every 45 minutes unless the cook told otherwise");
}

#[test]
fn a_leave_in_that_missed_is_reseated_with_the_lid_up_and_commands_no_pull() {
    let mut cook = on_the_pit(&[38.0]);
    cook.write(0.0, What::LeaveInSeated { piece: piece(1) });
    for (minute, shown) in [(20.0, 105.0), (30.0, 135.0), (40.0, 160.0), (45.0, 171.0)] {
        cook.write(minute, leave_in(1, shown, 1));
    }
    assert!(!acts(&cook.all()).contains(&&Act::Pull));
    let round = What::RoundBegan { pieces: vec![piece(1)] };
    cook.write(46.0, round);
    cook.write(46.1, What::PitRead { temperature: Temperature::from_f(250.0) });
    let poked = cook.write(46.4, read(1, 132.0, 2));
    cook.write(46.5, What::ReadingVouched { reading: poked });
    assert_eq!(cook.card(46.6).act, Act::Reseat);
}

#[test]
fn a_plan_says_when_the_fire_is_lit_and_when_each_piece_goes_on() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(0.0, What::DinnerSet { at: Some(at(240.0)) });
    let seen = cook.seen();
    let plan = seen.plan.clone().unwrap();
    let light = Act::Chore { chore: Chore::LightFire };
    let all = cook.all();
    let due = |act: &Act| all.iter().find(|duty| duty.act == *act).map(|duty| duty.from);
    assert_eq!(due(&light), Some(plan.light));
    assert_eq!(due(&Act::PutOn), Some(plan.first_on));
    // Half an hour behind with the fire, dinner is half an hour later than it would be.
    let on_time = seen.outlook(plan.out_of_fridge).unwrap().ready.middle;
    let late = seen.outlook(plan.out_of_fridge + (at(30.0) - at(0.0))).unwrap().ready.middle;
    assert!((to_minutes(late - on_time) - 30.0).abs() < 1.0, "{}", to_minutes(late - on_time));
    cook.write(100.0, What::ChoreDone { chore: Chore::LightFire });
    assert!(!acts(&cook.all()).contains(&&light));
}

#[test]
fn the_same_log_gives_the_same_look_whenever_it_is_taken() {
    let mut cook = on_the_pit(&[34.0, 38.0]);
    cook.write(40.0, read(1, 118.0, 2));
    let at_once = Seen::of(&cook.log, at(40.0));
    let later: Moment = at(75.0);
    assert_eq!(at_once, Seen::of(&cook.log, later));
}
