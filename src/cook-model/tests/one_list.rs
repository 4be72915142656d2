//! The card, the rows' buttons and the calls are all of the one list of duties, at any moment of any log,
//! and what was told is not asked for again before the next look.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::alarms::{alarms, alarms_of};
use cook_model::cook::duties::{Act, Doing, Duty, duties, in_order, of_alarm, offers, untold};
use cook_model::cook::ringing::{self, Marks};
use cook_model::cook::{Chore, Log, Seen, What};
use cook_model::piece::PieceId;
use proptest::prelude::*;
use support::logs::{PIECES, any_log};
use support::looks::after;
use support::{Cook, at, piece, pulled, put_on, read, set_out, undo};

/// The first entries of a log.
fn beginning(log: &Log, count: usize) -> Log {
    Log::from_entries(log.entries().iter().take(count).cloned())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn a_row_offers_what_is_due_with_its_piece_and_nothing_else(log in any_log(), minute in 0.0..600.0_f64) {
        let seen = Seen::of(&log, at(600.0));
        let all = duties(&seen);
        let now = after(&seen, minute);
        for number in 1..=PIECES {
            let own = |duty: &&Duty| duty.pieces.contains(&piece(number));
            let due: Vec<&Act> = all.iter().filter(own).filter(|duty| duty.is_due(now)).map(|duty| &duty.act).collect();
            let offered = offers(&all, piece(number), now);
            for offer in &offered {
                // A raw piece can go on before its time; all else waits for it.
                prop_assert!(due.contains(&&offer.act) || offer.act == Act::PutOn, "{offer:?} of {all:?}");
                let of_list = |duty: &Duty| duty.act == offer.act && duty.from == offer.from && duty.why == offer.why;
                prop_assert!(all.iter().filter(own).any(of_list), "{offer:?} of {all:?}");
                // One tap there says nothing of another piece.
                for doing in offer.doing() {
                    let Doing::Write { entries } = doing else { continue };
                    let others = entries.iter().filter_map(What::piece).filter(|named| *named != piece(number));
                    prop_assert!(offer.act == Act::Read || others.count() == 0, "{offer:?}");
                }
            }
            for act in due {
                prop_assert_eq!(offered.iter().filter(|offer| offer.act == *act).count(), 1, "{:?} of {:?}", act, offered);
            }
        }
    }

    #[test]
    fn what_the_card_asks_of_pieces_is_offered_on_their_rows(log in any_log(), minute in 0.0..600.0_f64) {
        let seen = Seen::of(&log, at(600.0));
        let all = duties(&seen);
        let now = after(&seen, minute);
        let Some(card) = in_order(&all, now).into_iter().next().filter(|card| card.is_due(now)) else { return Ok(()) };
        for named in &card.pieces {
            let offered = offers(&all, *named, now);
            prop_assert!(offered.iter().any(|offer| offer.act == card.act), "{card:?} {offered:?}");
        }
    }

    #[test]
    fn what_rings_or_waits_is_due(log in any_log(), minute in 0.0..600.0_f64) {
        let seen = Seen::of(&log, at(600.0));
        let all = duties(&seen);
        let now = after(&seen, minute);
        let calls = alarms(&seen);
        // A page that slept all the time looks now for the first time.
        for ring in ringing::due(&calls, &Marks::new(), now) {
            let duty = of_alarm(&all, ring.alarm.id).unwrap();
            prop_assert!(duty.is_due(now), "{duty:?} rings at {now}");
        }
        // One that was awake all the time has heard each at its moment.
        let heard = calls.iter().filter(|call| call.at <= now);
        let heard: Marks = heard
            .map(|call| (call.id, ringing::Mark::rung(&ringing::Ring { alarm: *call, late: now - now }, call.at)))
            .collect();
        for (call, _) in ringing::unanswered(&calls, &heard, now) {
            let duty = of_alarm(&all, call.id).unwrap();
            prop_assert!(duty.is_due(now), "{duty:?} waits at {now}");
        }
    }

    #[test]
    fn what_was_told_since_a_look_is_not_asked_for_again(log in any_log(), least in 0.0..1.0_f64) {
        // What was set out and put on at the start is in every look.
        let first = 6 + ((log.entries().len() - 6) as f64 * least) as usize;
        let seen = Seen::of(&beginning(&log, first), at(600.0));
        let old = duties(&seen);
        let left = untold(&seen, old.clone(), &log);
        for duty in &left {
            let of_old = |other: &Duty| {
                other.act == duty.act && duty.pieces.iter().all(|named| other.pieces.contains(named))
            };
            prop_assert!(old.iter().any(of_old), "{duty:?}");
        }
        let mut named: Vec<PieceId> = Vec::new();
        for entry in &log.entries()[first..] {
            named.extend(entry.what.piece());
            if let What::RoundBegan { pieces } = &entry.what {
                named.extend(pieces);
            }
            if let What::ChoreDone { chore } = entry.what {
                prop_assert!(left.iter().all(|duty| duty.act != (Act::Chore { chore })), "{left:?}");
            }
            if matches!(entry.what, What::PitRead { .. }) {
                prop_assert!(!left.iter().any(|duty| matches!(duty.act, Act::ReadPit | Act::MendFire)));
            }
            if matches!(entry.what, What::RoundEnded) {
                prop_assert!(!left.iter().any(|duty| duty.act == Act::Read));
            }
        }
        for duty in &left {
            prop_assert!(!duty.pieces.iter().any(|piece| named.contains(piece)), "{duty:?}");
        }
        // What is about other pieces stays as it was.
        for duty in old.iter().filter(|duty| !duty.pieces.is_empty() && !matches!(duty.act, Act::Read | Act::Reseat)) {
            if !duty.pieces.iter().any(|piece| named.contains(piece)) && first == log.entries().len() {
                prop_assert!(left.contains(duty));
            }
        }
    }
}

/// Four pieces set out, of which none is on.
fn four_raw() -> Cook {
    let mut cook = Cook::default();
    (1..=4).for_each(|number| _ = cook.write(0.0, set_out(number, 30.0 + 4.0 * f64::from(number))));
    cook
}

/// What a look at a cook leaves to do once more was told.
fn left(before: &Cook, now: &Cook) -> Vec<Duty> {
    let seen = Seen::of(&before.log, at(600.0));
    untold(&seen, duties(&seen), &now.log)
}

#[test]
fn beside_the_word_that_all_are_on_nothing_asks_to_put_them_on() {
    let before = four_raw();
    let mut now = before.clone();
    (1..=4).for_each(|number| _ = now.write(1.0, put_on(number)));
    assert!(!left(&before, &before).is_empty());
    assert_eq!(left(&before, &now), []);
}

#[test]
fn one_of_four_put_on_leaves_three_to_put_on() {
    let before = four_raw();
    let mut now = before.clone();
    now.write(1.0, put_on(2));
    let left = left(&before, &now);
    let on: Vec<&Duty> = left.iter().filter(|duty| duty.act == Act::PutOn).collect();
    assert_eq!(on.len(), 1);
    assert_eq!(on[0].pieces, [piece(1), piece(3), piece(4)]);
}

#[test]
fn what_is_taken_back_or_vouched_for_is_about_the_piece_that_it_was_told_of() {
    let mut before = four_raw();
    before.write(1.0, put_on(1));
    before.write(1.0, put_on(2));
    let reading = before.write(40.0, read(1, 120.0, 1));
    let pull = before.write(41.0, pulled(2));
    for what in
        [undo(reading.count), What::ReadingVouched { reading }, What::SecondPlaceTried { reading }]
    {
        let mut now = before.clone();
        now.write(42.0, what);
        assert!(left(&before, &now).iter().all(|duty| !duty.pieces.contains(&piece(1))));
        assert!(left(&before, &now).iter().any(|duty| duty.pieces.contains(&piece(2))));
    }
    // Taken back and given again.
    before.write(42.0, undo(pull.count));
    let last = before.log.entries().last().unwrap().id;
    let mut now = before.clone();
    now.write(43.0, undo(last.count));
    assert!(left(&before, &now).iter().all(|duty| !duty.pieces.contains(&piece(2))));
}

#[test]
fn with_a_chore_told_its_call_goes_and_others_stay() {
    let mut before = four_raw();
    before.write(0.0, What::DinnerSet { at: Some(at(300.0)) });
    let mut now = before.clone();
    now.write(1.0, What::ChoreDone { chore: Chore::LightFire });
    let (old, left) = (left(&before, &before), left(&before, &now));
    let is_chore = |duty: &&Duty| duty.act == Act::Chore { chore: Chore::LightFire };
    assert_eq!(old.iter().filter(is_chore).count(), 1);
    assert_eq!(left.len() + 1, old.len());
    assert!(!left.iter().any(|duty| is_chore(&duty)));
    assert!(alarms_of(&left).len() < alarms_of(&old).len());
}
