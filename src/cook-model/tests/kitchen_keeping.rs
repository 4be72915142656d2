//! What a bag brings with it: no move, label, phone or file sets its clocks back.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

mod support;

use chrono::{TimeZone, Utc};
use cook_model::history::DeviceId;
use cook_model::kitchen::card::Card;
use cook_model::kitchen::card_limit::Limit;
use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::form::Form;
use cook_model::kitchen::log::{
    Bag, BagId, BagState, Brings, KitchenLog, KitchenWhat, ReminderKind, fold, reminders,
};
use cook_model::kitchen::storage::{Keeps, Packing, Place, Spoiled};
use cook_model::quantity::{Mass, Moment, Span};
use support::{Cook, packed, piece, pulled, read, undo};

const PHONE: DeviceId = DeviceId(1);
const SLOW_PHONE: DeviceId = DeviceId(2);

fn evening(day: u32) -> Moment {
    Utc.with_ymd_and_hms(2026, 6, day, 19, 0, 0).unwrap()
}

fn bag(cooked: Moment, brings: Brings) -> Bag {
    Bag {
        name: String::new(),
        form: Form::Shredded,
        weight: Mass::from_g(400.0),
        thickness: None,
        packing: Packing::Plain,
        cooked,
        brings,
    }
}

fn write(log: &mut KitchenLog, by: DeviceId, at: Moment, what: KitchenWhat) -> BagId {
    let entry = log.next(by, at, at, what);
    let id = entry.id;
    log.insert(entry);
    id
}

fn packed_bag(brings: Brings, place: Place, after: Span) -> (KitchenLog, BagId) {
    let mut log = KitchenLog::default();
    let bag = bag(evening(1), brings);
    let id = write(&mut log, PHONE, evening(1) + after, KitchenWhat::BagPacked { bag, place });
    (log, id)
}

fn state(log: &KitchenLog, id: BagId) -> BagState {
    fold(log).bag(id).unwrap().clone()
}

/// USDA consumer advice: into the refrigerator within two hours of the heat, or thrown away.
#[test]
fn a_bag_packed_too_late_does_not_keep() {
    for place in [Place::Fridge, Place::Freezer] {
        let (log, id) = packed_bag(Brings::default(), place, Span::hours(5));
        let late = state(&log, id);
        let since = evening(1) + Span::hours(2);
        let spoiled = Keeps::ThrowAway { since, why: Spoiled::TooLateIntoCold };
        assert_eq!(late.keeps(), Some(spoiled));
        assert!(late.is_past(evening(1) + Span::hours(6)) && !late.is_due(evening(4)));
        assert_eq!(late.cautions(evening(2)), [Caution::TooLateIntoCold]);
        // Its label says so, and the list reminds of it.
        assert_eq!(Card::of(&late).unwrap().limit, Limit::ThrowAway(since));
        let told = reminders(&fold(&log));
        assert_eq!(told.len(), 1);
        assert_eq!((told[0].at, told[0].kind), (since, ReminderKind::ThrowAway));
    }
    let (log, id) = packed_bag(Brings::default(), Place::Fridge, Span::hours(2));
    assert!(!state(&log, id).is_past(evening(2)));
}

#[test]
fn the_limit_of_the_cook_comes_with_the_bag() {
    let brings =
        |by: i64| Brings { cold_by: Some(evening(1) + Span::minutes(by)), ..Brings::default() };
    let past = |brings: Brings, minutes: i64| {
        let (log, id) = packed_bag(brings, Place::Fridge, Span::minutes(minutes));
        state(&log, id).is_past(evening(2))
    };
    // One hour where it is hot; three where it was held hot for an hour.
    assert!(past(brings(60), 61) && !past(brings(60), 60));
    assert!(!past(brings(180), 170));
    // Chilled in time, and bagged the day after.
    let chilled = Brings { cold_at: Some(evening(1) + Span::hours(1)), ..Brings::default() };
    let (log, id) = packed_bag(chilled.clone(), Place::Fridge, Span::days(1));
    assert!(!state(&log, id).is_past(evening(2)));
    assert_eq!(state(&log, id).keeps().unwrap().until(), evening(5), "four days from the cook");
    // Too late into the cold, and bagged from there.
    let late = Brings { cold_at: Some(evening(1) + Span::hours(3)), ..chilled };
    assert!(past(late, 300));
}

#[test]
fn what_a_bag_brings_is_stored_and_an_older_entry_brings_nothing() {
    let brings = Brings {
        hot: Some(evening(1)),
        cold_by: Some(evening(1) + Span::hours(2)),
        cold_at: None,
        warm: Span::minutes(95),
        cook: Some(7),
        pieces: vec![piece(1), piece(3)],
    };
    let (log, id) = packed_bag(brings.clone(), Place::Fridge, Span::hours(1));
    let text = serde_json::to_string(&log.entries()[0]).unwrap();
    let read = KitchenLog::from_stored([text.as_str()]);
    assert_eq!(state(&read, id).bag.brings, brings);
    assert_eq!(Card::of(&state(&read, id)).unwrap().warm, Span::minutes(95));
    let old = r#"{"v":1,"id":{"count":1,"device":1},"happened":"2026-06-01T19:30:00Z","typed":"2026-06-01T19:30:00Z","what":{"kind":"bag_packed","bag":{"form":"shredded","weight_g":400.0,"packing":"plain","cooked":"2026-06-01T19:00:00Z"},"place":"fridge"}}"#;
    let read = KitchenLog::from_stored([old]);
    assert_eq!(read.set_aside(), []);
    assert_eq!(state(&read, id).bag.brings, Brings::default());
}

#[test]
fn a_bag_of_an_impossible_day_is_set_aside() {
    let (log, _) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    let text = serde_json::to_string(&log.entries()[0]).unwrap();
    let odd = text.replace(r#""cooked":"2026"#, r#""cooked":"+262142"#);
    assert_ne!(odd, text);
    let read = KitchenLog::from_stored([odd.as_str()]);
    assert_eq!((read.entries().len(), read.set_aside().len()), (0, 1));
}

/// FoodSafety.gov chart: four days. USDA: freezing does not destroy bacteria.
#[test]
fn six_days_in_the_refrigerator_and_then_frozen() {
    let (mut log, id) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    write(&mut log, PHONE, evening(7), KitchenWhat::BagMoved { bag: id, to: Place::Freezer });
    let frozen = state(&log, id);
    assert!(frozen.is_past(evening(7)));
    assert_eq!(frozen.cautions(evening(7)), [Caution::PastEatBy]);
    assert_eq!(frozen.keeps().unwrap().until(), evening(5));
    assert_eq!(frozen.place(), Some(Place::Freezer));
}

#[test]
fn a_move_by_a_phone_whose_clock_is_slow_is_not_dropped() {
    let (mut log, id) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    let slow = evening(1) - Span::hours(3);
    write(&mut log, SLOW_PHONE, slow, KitchenWhat::BagMoved { bag: id, to: Place::Freezer });
    let kitchen = fold(&log);
    assert_eq!(kitchen.ignored, []);
    let moved = kitchen.bag(id).unwrap();
    assert_eq!(moved.place(), Some(Place::Freezer));
    assert_eq!(moved.stays[1].from, evening(1) + Span::hours(1));
    // A bag of that number that is packed later is another matter.
    let stranger = BagId { count: 9, device: PHONE };
    write(&mut log, PHONE, evening(1), KitchenWhat::BagUsed { bag: stranger });
    assert_eq!(fold(&log).ignored.len(), 1);
}

#[test]
fn moves_by_a_slow_clock_follow_what_was_done_before_them() {
    // Packed, frozen by one phone at ten; taken out to thaw at eleven by the other, whose clock says
    // eight: the bag lies in the refrigerator, and its days run.
    let (mut log, id) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    let frozen = evening(1) + Span::hours(3);
    write(&mut log, PHONE, frozen, KitchenWhat::BagMoved { bag: id, to: Place::Freezer });
    let slow = evening(1) + Span::hours(1);
    write(&mut log, SLOW_PHONE, slow, KitchenWhat::BagMoved { bag: id, to: Place::Fridge });
    let moved = state(&log, id);
    assert_eq!(moved.place(), Some(Place::Fridge));
    assert_eq!(moved.stays.last().unwrap().from, frozen);
    // Eaten, by the slow phone: gone.
    let slow = slow + Span::minutes(5);
    write(&mut log, SLOW_PHONE, slow, KitchenWhat::BagUsed { bag: id });
    let kitchen = fold(&log);
    assert_eq!(kitchen.ignored, []);
    assert_eq!(kitchen.bag(id).unwrap().place(), None);
    // A move typed late, with a clock that is right, still counts where it happened.
    let (mut log, id) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    write(&mut log, PHONE, evening(3), KitchenWhat::BagMoved { bag: id, to: Place::Freezer });
    let what = KitchenWhat::BagMoved { bag: id, to: Place::Freezer };
    let late = log.next(SLOW_PHONE, evening(2), evening(4), what);
    log.insert(late);
    assert_eq!(state(&log, id).stays[1].from, evening(2));
}

#[test]
fn a_label_carries_the_limit() {
    let (mut log, id) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    let chilled = Card::of(&state(&log, id)).unwrap();
    assert_eq!(chilled.limit, Limit::EatBy(evening(5)));
    write(&mut log, PHONE, evening(3), KitchenWhat::BagMoved { bag: id, to: Place::Freezer });
    let frozen = Card::of(&state(&log, id)).unwrap();
    assert_eq!(frozen.limit, Limit::FridgeLeft(Span::days(2)));
    // On a phone that knows nothing else of the bag.
    for card in [chilled, frozen] {
        let read = Card::read(&card.fragment()).unwrap();
        assert_eq!(read, card);
    }
    assert_eq!(
        Card::read(&chilled.fragment()).unwrap().cautions(evening(30)),
        [Caution::PastEatBy]
    );
}

#[test]
fn a_bag_of_a_piece_whose_proof_fell() {
    let mut cook = Cook::two_on();
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(90.0, packed(1));
    assert!(cook.state().are_proved(&[piece(1)]));
    assert!(!cook.state().are_proved(&[piece(1), piece(2)]));
    assert!(!cook.state().are_proved(&[piece(9)]));
    cook.write(91.0, undo(5));
    assert!(!cook.state().are_proved(&[piece(1)]));
}

/// FoodSafety.gov chart, 3 to 4 days: between the third and the fourth it is to be eaten now.
#[test]
fn a_bag_in_its_last_days_is_due() {
    let (log, id) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    let due = |at: Moment| state(&log, id).is_due(at);
    assert!(due(evening(4)) && due(evening(5)));
    assert!(!due(evening(4) - Span::minutes(1)) && !due(evening(5) + Span::minutes(1)));
}

/// What brings nothing is stored without a word of it, so that an older version reads it as it wrote it.
#[test]
fn what_brings_nothing_is_stored_as_ever() {
    let (log, _) = packed_bag(Brings::default(), Place::Fridge, Span::hours(1));
    assert!(!serde_json::to_string(&log.entries()[0]).unwrap().contains("brings"));
}
