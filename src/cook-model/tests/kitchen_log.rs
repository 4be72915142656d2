//! The kitchen as its log adds up: bags, weighings, rubs.

use chrono::{TimeZone, Utc};
use cook_model::history::DeviceId;
use cook_model::kitchen::cooked_weight::{Weighing, WeightProblem};
use cook_model::kitchen::form::Form;
use cook_model::kitchen::log::{
    Bag, BagId, Brings, Ending, KitchenLog, KitchenWhat, Problem, ReminderKind, fold, reminders,
};
use cook_model::kitchen::rub::{Ingredient, Measure, Recipe, RubProblem};
use cook_model::kitchen::spice::Spice;
use cook_model::kitchen::storage::{Packing, Place};
use cook_model::quantity::{Length, Mass, Moment, Span, Temperature};
use proptest::prelude::*;

const PHONE: DeviceId = DeviceId(1);

fn evening(day: u32) -> Moment {
    Utc.with_ymd_and_hms(2026, 6, day, 19, 0, 0).unwrap()
}

fn bag(name: &str, cooked: Moment) -> Bag {
    Bag {
        name: name.to_owned(),
        form: Form::Shredded,
        weight: Mass::from_g(400.0),
        thickness: Some(Length::from_mm(22.0)),
        packing: Packing::Plain,
        cooked,
        brings: Brings::default(),
    }
}

fn write(log: &mut KitchenLog, at: Moment, what: KitchenWhat) -> BagId {
    let entry = log.next(PHONE, at, at, what);
    let id = entry.id;
    log.insert(entry);
    id
}

fn pack(log: &mut KitchenLog, name: &str, at: Moment, place: Place) -> BagId {
    write(log, at, KitchenWhat::BagPacked { bag: bag(name, at), place })
}

#[test]
fn the_oldest_comes_first_and_gone_bags_are_gone() {
    let mut log = KitchenLog::default();
    let new = pack(&mut log, "soup", evening(5), Place::Fridge);
    let old = pack(&mut log, "bowls", evening(3), Place::Fridge);
    let frozen = pack(&mut log, "spare", evening(3), Place::Freezer);
    let kitchen = fold(&log);
    let ids: Vec<BagId> = kitchen.in_place(Place::Fridge).iter().map(|bag| bag.id).collect();
    assert_eq!(ids, [old, new]);
    assert_eq!(kitchen.weight(), Mass::from_g(1200.0));

    write(&mut log, evening(6), KitchenWhat::BagUsed { bag: old });
    let thrown = write(&mut log, evening(6), KitchenWhat::BagThrownAway { bag: frozen });
    let kitchen = fold(&log);
    assert_eq!(kitchen.in_place(Place::Fridge).len(), 1);
    assert!(kitchen.in_place(Place::Freezer).is_empty());
    assert_eq!(kitchen.bag(old).unwrap().ended.unwrap().how, Ending::Used);

    write(&mut log, evening(6), KitchenWhat::Undone { entry: thrown });
    assert_eq!(fold(&log).in_place(Place::Freezer).len(), 1);
}

#[test]
fn moving_to_the_fridge_starts_the_days_that_are_left() {
    let mut log = KitchenLog::default();
    let id = pack(&mut log, "spare", evening(1), Place::Fridge);
    write(&mut log, evening(2), KitchenWhat::BagMoved { bag: id, to: Place::Freezer });
    write(&mut log, evening(20), KitchenWhat::BagMoved { bag: id, to: Place::Fridge });
    let kitchen = fold(&log);
    let state = kitchen.bag(id).unwrap();
    assert_eq!(state.keeps().unwrap().until(), evening(23));
    assert!(!state.is_past(evening(23)));
    assert!(state.is_past(evening(23) + Span::minutes(1)));
}

#[test]
fn reminders_follow_the_bags() {
    let mut log = KitchenLog::default();
    let fridge = pack(&mut log, "bowls", evening(1), Place::Fridge);
    let freezer = pack(&mut log, "spare", evening(1), Place::Freezer);
    let all = reminders(&fold(&log));
    let told: Vec<_> = all.iter().map(|r| (r.at, r.kind, r.bag)).collect();
    let best_by = Utc.with_ymd_and_hms(2026, 10, 1, 19, 0, 0).unwrap();
    assert_eq!(
        told,
        [
            (evening(4), ReminderKind::UseNow, fridge),
            (evening(5), ReminderKind::ThrowAway, fridge),
            (best_by - Span::days(14), ReminderKind::UseSoonFromFreezer, freezer),
        ]
    );
    write(&mut log, evening(2), KitchenWhat::BagUsed { bag: fridge });
    let kitchen = fold(&log);
    assert_eq!(reminders(&kitchen).len(), 1);
}

#[test]
fn weighings_add_up_to_ones_own_loss() {
    let mut log = KitchenLog::default();
    let end = Temperature::from_c(74.0);
    let weighing = |cooked| Weighing {
        pieces: 6,
        raw: Mass::from_g(1500.0),
        cooked: Mass::from_g(cooked),
        end,
    };
    let before = fold(&log).own_loss.predict(Mass::from_g(1000.0), 4, end).unwrap();
    let first = write(&mut log, evening(1), KitchenWhat::Weighed { weighing: weighing(1050.0) });
    write(&mut log, evening(2), KitchenWhat::Weighed { weighing: weighing(1050.0) });
    write(&mut log, evening(3), KitchenWhat::Weighed { weighing: weighing(1600.0) });
    let kitchen = fold(&log);
    assert_eq!(kitchen.weighings, 2);
    assert_eq!(kitchen.ignored[0].why, Problem::Weighing(WeightProblem::NotPossible));
    let after = kitchen.own_loss.predict(Mass::from_g(1000.0), 4, end).unwrap();
    assert!(after.mean < before.mean && after.spread < before.spread);
    write(&mut log, evening(4), KitchenWhat::Undone { entry: first });
    assert_eq!(fold(&log).weighings, 1);
}

#[test]
fn a_rub_is_kept_by_its_name() {
    let mut log = KitchenLog::default();
    let rub = |parts| Recipe {
        name: "house".to_owned(),
        measure: Measure::Weight,
        ingredients: vec![Ingredient { name: "salt".to_owned(), spice: Spice::FlakeSalt, parts }],
    };
    write(&mut log, evening(1), KitchenWhat::RubKept { recipe: rub(1.0) });
    write(&mut log, evening(2), KitchenWhat::RubKept { recipe: rub(2.0) });
    write(&mut log, evening(2), KitchenWhat::RubKept { recipe: rub(-1.0) });
    let kitchen = fold(&log);
    assert_eq!(kitchen.rubs, [rub(2.0)]);
    assert_eq!(kitchen.ignored[0].why, Problem::Rub(RubProblem::Parts));
    let dropped = KitchenWhat::RubDropped { name: "house".to_owned() };
    let gone = write(&mut log, evening(3), dropped);
    assert!(fold(&log).rubs.is_empty());
    write(&mut log, evening(3), KitchenWhat::Undone { entry: gone });
    assert_eq!(fold(&log).rubs.len(), 1);
}

#[test]
fn entries_that_cannot_be_are_kept_and_say_why() {
    let mut log = KitchenLog::default();
    let id = pack(&mut log, "bowls", evening(1), Place::Fridge);
    write(&mut log, evening(2), KitchenWhat::BagUsed { bag: id });
    write(&mut log, evening(3), KitchenWhat::BagUsed { bag: id });
    let stranger = BagId { count: 99, device: PHONE };
    write(&mut log, evening(3), KitchenWhat::BagMoved { bag: stranger, to: Place::Freezer });
    let heavy = Bag { weight: Mass::from_kg(50.0), ..bag("heavy", evening(3)) };
    write(&mut log, evening(3), KitchenWhat::BagPacked { bag: heavy, place: Place::Fridge });
    let why: Vec<Problem> = fold(&log).ignored.iter().map(|ignored| ignored.why).collect();
    assert_eq!(why, [Problem::Gone, Problem::UnknownBag, Problem::ImpossibleValue]);
}

#[test]
fn stored_entries_are_read_back_and_strange_ones_set_aside() {
    let mut log = KitchenLog::default();
    let id = pack(&mut log, "bowls", evening(1), Place::Fridge);
    write(&mut log, evening(2), KitchenWhat::BagMoved { bag: id, to: Place::Freezer });
    let texts: Vec<String> =
        log.entries().iter().map(|entry| serde_json::to_string(entry).unwrap()).collect();
    let strange = [r#"{"v":9,"id":1}"#, "not json", r#"{"id":{"count":1,"device":1}}"#];
    let read = KitchenLog::from_stored(texts.iter().map(String::as_str).chain(strange));
    assert_eq!(read.entries(), log.entries());
    assert_eq!(read.set_aside().len(), 3);
}

proptest! {
    #[test]
    fn the_order_of_arrival_does_not_matter(seed in prop::collection::vec(0_usize..6, 2..20)) {
        let mut log = KitchenLog::default();
        let mut bags = vec![pack(&mut log, "first", evening(1), Place::Fridge)];
        for (i, kind) in seed.iter().enumerate() {
            let at = evening(1) + Span::hours(i64::try_from(i).unwrap_or(0));
            let bag = bags[i % bags.len()];
            match kind {
                0 => bags.push(pack(&mut log, "more", at, Place::Fridge)),
                1 => { write(&mut log, at, KitchenWhat::BagMoved { bag, to: Place::Freezer }); }
                2 => { write(&mut log, at, KitchenWhat::BagMoved { bag, to: Place::Fridge }); }
                3 => { write(&mut log, at, KitchenWhat::BagUsed { bag }); }
                4 => { write(&mut log, at, KitchenWhat::Undone { entry: bag }); }
                _ => { write(&mut log, at, KitchenWhat::BagThrownAway { bag }); }
            }
        }
        let mut entries = log.entries().to_vec();
        entries.reverse();
        prop_assert_eq!(fold(&KitchenLog::from_entries(entries)), fold(&log));
    }
}
