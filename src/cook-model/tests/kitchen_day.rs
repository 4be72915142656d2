//! A meal-prep day from the cooked weight to a bag reheated days later on another phone.

use std::collections::BTreeMap;

use cook_model::history::DeviceId;
use cook_model::kitchen::card::Card;
use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::chill::{Cooling, chill, into_cold_by};
use cook_model::kitchen::cooked_weight::OwnLoss;
use cook_model::kitchen::form::Form;
use cook_model::kitchen::label_sheet::{Sheet, fill};
use cook_model::kitchen::log::{Bag, Brings, KitchenLog, KitchenWhat, fold};
use cook_model::kitchen::packing_order::{ToPack, packing_order};
use cook_model::kitchen::portions::{Amount, CookedPiece, Lot, allot};
use cook_model::kitchen::qr::qr_path;
use cook_model::kitchen::reheat::{BathPlan, USUAL_BATH, USUAL_CORE, bath_time};
use cook_model::kitchen::shape::Portion;
use cook_model::kitchen::storage::{Packing, Place};
use cook_model::piece::PieceId;
use cook_model::quantity::{Length, Mass, Moment, Span, Temperature, to_minutes};

const RAW: [f64; 10] = [258.0, 241.0, 302.0, 227.0, 289.0, 264.0, 315.0, 236.0, 271.0, 250.0];

fn at(text: &str) -> Moment {
    text.parse().expect("a moment")
}

fn cooked() -> Vec<CookedPiece> {
    let end = Temperature::from_f(168.0);
    let piece = |(id, raw): (u32, &f64)| {
        let weight = OwnLoss::default().predict(Mass::from_g(*raw), 1, end).expect("a weight");
        CookedPiece { id: PieceId(id), weight: weight.mean }
    };
    (1..).zip(&RAW).map(piece).collect()
}

fn lots() -> [Lot; 3] {
    let lot = |name: &str, form, amount| Lot { name: name.to_owned(), form, amount };
    let servings = |count, grams| Amount::Servings { count, each: Mass::from_g(grams) };
    [
        lot("dinner", Form::Sliced, servings(5, 150.0)),
        lot("bowls", Form::Shredded, servings(3, 130.0)),
        lot("freezer", Form::Whole, Amount::Rest),
    ]
}

#[test]
fn from_the_board_to_the_bath() {
    let off = at("2026-06-07T22:10:00Z");
    let pieces = cooked();
    let allotment = allot(&pieces, &lots(), &BTreeMap::new()).unwrap();
    let bowls = &allotment.shares[1];
    assert!(allotment.left.is_empty() && bowls.short == Mass::ZERO);

    // Into the cold in time: every portion packed before its limit.
    let portion = Portion {
        form: Form::Shredded,
        weight: bowls.weight,
        thickness: Some(Length::from_mm(20.0)),
        packing: Packing::Plain,
    };
    let chilled =
        chill(&portion, Temperature::from_f(150.0), Span::zero(), Cooling::Fridge).unwrap();
    assert_eq!(chilled.cautions, [Caution::TwoHours]);
    let by = into_cold_by(off, Temperature::from_f(75.0), None, &chilled);
    let to_pack: Vec<ToPack<usize>> =
        (0..6).map(|id| ToPack { id, takes: Span::minutes(6), by }).collect();
    let turns = packing_order(off + Span::minutes(20), &to_pack);
    assert!(turns.iter().all(|turn| turn.spare > Span::zero()));

    // Into the log, with a label on it.
    let mut log = KitchenLog::default();
    let bag = Bag {
        name: "bowls".to_owned(),
        form: Form::Shredded,
        weight: bowls.weight,
        thickness: portion.thickness,
        packing: Packing::Plain,
        cooked: off,
        brings: Brings::default(),
    };
    let packed = KitchenWhat::BagPacked { bag, place: Place::Freezer };
    let entry = log.next(DeviceId(3), turns[0].done, turns[0].done, packed);
    let id = entry.id;
    log.insert(entry);
    let kitchen = fold(&log);
    let state = kitchen.bag(id).unwrap();
    let plan = |portion, from| BathPlan {
        portion,
        from,
        bath: USUAL_BATH,
        core: USUAL_CORE,
        warm: Span::zero(),
    };
    let told = bath_time(&plan(state.bag.portion(), Place::Freezer)).unwrap();
    let until = state.keeps().unwrap().until();
    assert_eq!(until, at("2026-10-07T22:36:00Z"), "four months in the freezer (FoodSafety.gov)");
    let card = Card::of(state).unwrap();
    let address = card.address("https://example.org/pull-order/");
    let code = qr_path(&address).unwrap();
    let lines = [
        "Chicken breast, shredded",
        "bowls, bag 1, 14.1 oz",
        "Cooked Sun, Jun 7, best by Wed, Oct 7",
        "Bath 145 °F, 55 min, lying flat",
    ];
    let lines = lines.map(str::to_owned);
    assert!(fill(Sheet::LetterThirty, &lines, code.size).code.is_some(), "{}", code.size);

    // Another phone, a month later: the code alone says what the bath needs.
    let (_, fragment) = address.split_once('#').unwrap();
    let read = Card::read(fragment).unwrap();
    let again = bath_time(&plan(read.portion(), read.place)).unwrap();
    let apart = (to_minutes(again.surely) - to_minutes(told.surely)).abs();
    assert!(apart < 0.5, "{apart} min apart");
    assert!(again.cautions.contains(&Caution::LeftoversTo165));
}

#[test]
fn a_bag_past_its_days_says_so() {
    let mut log = KitchenLog::default();
    let cooked = at("2026-06-07T22:10:00Z");
    let bag = Bag {
        name: String::new(),
        form: Form::Whole,
        weight: Mass::from_g(190.0),
        thickness: None,
        packing: Packing::Vacuum,
        cooked,
        brings: Brings::default(),
    };
    let packed = KitchenWhat::BagPacked { bag, place: Place::Fridge };
    let entry = log.next(DeviceId(3), cooked, cooked, packed);
    let id = entry.id;
    log.insert(entry);
    let kitchen = fold(&log);
    let state = kitchen.bag(id).unwrap();
    assert_eq!(state.cautions(cooked + Span::days(2)), [Caution::Vacuum]);
    let late = state.cautions(cooked + Span::days(4) + Span::minutes(1));
    assert_eq!(late, [Caution::PastEatBy, Caution::Vacuum]);
}
