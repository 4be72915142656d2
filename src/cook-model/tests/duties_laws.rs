//! What must be true of every list of duties, in logs of any length and at any moment.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use cook_model::cook::alarms::alarms;
use cook_model::cook::duties::{Act, Duty, duties, in_order, of_alarm};
use cook_model::cook::{PieceState, Seen, Stage};
use cook_model::piece::PieceId;
use proptest::prelude::*;
use support::at;
use support::logs::any_log;
use support::looks::after;

/// Where a piece must be for a duty to name it.
fn may_name(act: &Act, known: &PieceState) -> bool {
    let stage = known.stage;
    match act {
        // What is in a bag must be proved, and not have been out too long before: a doubt about that is
        // still to be settled, and what it never was, or is no more, is no food in the bag either.
        Act::Answer { .. } | Act::Discard => stage != Stage::Packed || known.is_packed_unproved(),
        Act::Pull | Act::Reseat | Act::Read | Act::Check => stage == Stage::On,
        Act::PutOn | Act::TakeOut | Act::PutAway => stage == Stage::Raw,
        Act::PutBack | Act::Prove => stage == Stage::Resting,
        // A piece proved at its pull rests like any other.
        Act::Cover => matches!(stage, Stage::Resting | Stage::Proved),
        Act::Serve | Act::Pack | Act::KeepHot => stage == Stage::Proved,
        Act::Chill => stage != Stage::On && stage != Stage::Packed,
        _ => stage != Stage::Packed,
    }
}

/// Whether a duty is a round's own.
fn is_of_a_round(act: &Act) -> bool {
    matches!(act, Act::Read | Act::ReadPit | Act::Pull | Act::Reseat | Act::Answer { .. })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn the_card_and_the_calls_are_of_one_list(log in any_log(), minute in 0.0..600.0_f64) {
        let seen = Seen::of(&log, at(600.0));
        let all = duties(&seen);
        let now = after(&seen, minute);
        if let Some(card) = in_order(&all, now).first() {
            prop_assert!(all.contains(card));
            // What is due stands before what comes.
            let some_is_due = all.iter().any(|duty| duty.is_due(now));
            prop_assert_eq!(card.is_due(now), some_is_due);
        }
        let calls = alarms(&seen);
        prop_assert_eq!(calls.len(), all.iter().map(|duty| duty.bells.len()).sum::<usize>());
        for call in &calls {
            let duty = of_alarm(&all, call.id).unwrap();
            prop_assert!(duty.bells.iter().any(|bell| bell.id == call.id));
            prop_assert!(calls.iter().filter(|other| other.id == call.id).count() == 1,
                "two calls of one name: {:?}", all);
            prop_assert!(duty.from <= call.at, "it calls before it is due: {duty:?}");
        }
    }

    #[test]
    fn no_duty_names_a_piece_that_is_elsewhere(log in any_log()) {
        let seen = Seen::of(&log, at(600.0));
        for duty in duties(&seen) {
            let mut named: Vec<PieceId> = duty.pieces.clone();
            named.sort();
            named.dedup();
            prop_assert_eq!(named.len(), duty.pieces.len(), "twice in {:?}", duty);
            for number in named {
                let known = seen.state.piece(number);
                prop_assert!(known.is_some(), "unknown {number:?} in {duty:?}");
                let known = known.unwrap().0;
                prop_assert!(may_name(&duty.act, known), "{known:?} in {duty:?}");
            }
        }
    }

    #[test]
    fn what_is_due_stays_until_an_entry_or_its_own_end(
        log in any_log(), first in 0.0..120.0_f64, later in 0.0..240.0_f64
    ) {
        let last = Seen::of(&log, at(6000.0)).at;
        let first = last + (at(first) - at(0.0));
        let later = first + (at(later) - at(0.0));
        let (then, now) = (duties(&Seen::of(&log, first)), duties(&Seen::of(&log, later)));
        for duty in then.iter().filter(|duty| duty.is_due(first)) {
            let ended = duty.until.is_some_and(|until| until <= later);
            let stays = |other: &Duty| other == duty && other.is_due(later);
            prop_assert!(ended || now.iter().any(stays), "{duty:?}");
        }
    }

    #[test]
    fn while_a_round_lasts_only_its_own_is_due(log in any_log(), minute in 0.0..5.0_f64) {
        let seen = Seen::of(&log, at(600.0));
        let now = after(&seen, minute);
        let is_left = |piece: &PieceId| seen.state.piece(*piece).is_some_and(|(known, _)| known.stage == Stage::On);
        let round = seen.state.round(seen.at).filter(|round| {
            round.pieces.iter().any(|piece| is_left(piece) && !round.answered.contains(piece))
        });
        let Some(round) = round.filter(|round| now < round.lapses()) else { return Ok(()) };
        let all = duties(&seen);
        let due: Vec<&Duty> = all.iter().filter(|duty| duty.is_due(now)).collect();
        prop_assert!(due.iter().all(|duty| is_of_a_round(&duty.act)), "{round:?} {due:?}");
        // And it is not left alone with nothing to do.
        prop_assert!(!due.is_empty(), "{round:?}");
    }
}
