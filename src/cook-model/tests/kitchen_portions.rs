//! Allotting a cook's pieces to dinner and bags.

use std::collections::{BTreeMap, BTreeSet};

use cook_model::kitchen::form::Form;
use cook_model::kitchen::portions::{Amount, CookedPiece, Lot, PortionProblem, allot};
use cook_model::piece::PieceId;
use cook_model::quantity::Mass;
use proptest::prelude::*;

fn lot(name: &str, form: Form, amount: Amount) -> Lot {
    Lot { name: name.to_owned(), form, amount }
}

fn servings(count: u16, grams: f64) -> Amount {
    Amount::Servings { count, each: Mass::from_g(grams) }
}

fn pieces(grams: &[f64]) -> Vec<CookedPiece> {
    let piece = |(id, g): (u32, &f64)| CookedPiece { id: PieceId(id), weight: Mass::from_g(*g) };
    (1..).zip(grams).map(piece).collect()
}

/// Five at the table at 150 g; three lunches of rice bowls, a pot of soup, whole ones to freeze.
fn week() -> Vec<Lot> {
    vec![
        lot("dinner", Form::Sliced, servings(5, 150.0)),
        lot("rice bowls", Form::Chunked, servings(3, 120.0)),
        lot("soup", Form::Shredded, servings(1, 400.0)),
        lot("freezer", Form::Whole, Amount::Rest),
    ]
}

const DAY: [f64; 14] = [
    205.0, 188.0, 241.0, 176.0, 232.0, 198.0, 214.0, 167.0, 251.0, 223.0, 184.0, 209.0, 195.0,
    236.0,
];

#[test]
fn a_meal_prep_day_is_allotted_with_little_over() {
    let allotment = allot(&pieces(&DAY), &week(), &BTreeMap::new()).unwrap();
    assert!(allotment.finished);
    for share in &allotment.shares {
        assert_eq!(share.short, Mass::ZERO, "{share:?}");
        assert!(share.over < Mass::from_g(20.0), "{share:?}");
    }
    assert!(allotment.left.is_empty());
    assert_eq!(allotment.shares[3].serving, None);
}

#[test]
fn the_cooks_own_choice_stays() {
    let chosen = BTreeMap::from([(PieceId(9), 2), (PieceId(1), 3)]);
    let allotment = allot(&pieces(&DAY), &week(), &chosen).unwrap();
    assert!(allotment.shares[2].pieces.contains(&PieceId(9)));
    assert!(allotment.shares[3].pieces.contains(&PieceId(1)));
}

#[test]
fn too_little_meat_is_short_late_not_at_dinner() {
    let allotment = allot(&pieces(&[200.0, 190.0, 210.0, 180.0]), &week(), &BTreeMap::new());
    let allotment = allotment.unwrap();
    assert_eq!(allotment.shares[0].short, Mass::ZERO);
    assert!(allotment.shares[2].short > Mass::ZERO);
    assert!((allotment.shares[0].serving.unwrap().g() - 156.0).abs() < 1e-9);
}

#[test]
fn what_cannot_be_allotted_is_said() {
    let none = BTreeMap::new();
    assert_eq!(allot(&pieces(&DAY), &[], &none), Err(PortionProblem::NoLots));
    assert_eq!(allot(&pieces(&[200.0; 41]), &week(), &none), Err(PortionProblem::TooMany));
    for grams in [0.0, -5.0, f64::NAN, f64::INFINITY] {
        assert_eq!(allot(&pieces(&[grams]), &week(), &none), Err(PortionProblem::Weight));
    }
    let stranger = BTreeMap::from([(PieceId(99), 0)]);
    assert_eq!(allot(&pieces(&DAY), &week(), &stranger), Err(PortionProblem::UnknownPiece));
    let nowhere = BTreeMap::from([(PieceId(1), 9)]);
    assert_eq!(allot(&pieces(&DAY), &week(), &nowhere), Err(PortionProblem::UnknownPiece));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    #[test]
    fn no_meat_appears_or_vanishes(
        grams in prop::collection::vec(90.0..350.0_f64, 0..21),
        people in 1_u16..9,
    ) {
        let mut lots = week();
        lots[0].amount = servings(people, 150.0);
        let pieces = pieces(&grams);
        let allotment = allot(&pieces, &lots, &BTreeMap::new()).unwrap();
        let shared: f64 = allotment.shares.iter().map(|s| s.weight.g()).sum();
        prop_assert!((shared - grams.iter().sum::<f64>()).abs() < 1e-6);
        let ids: Vec<PieceId> =
            allotment.shares.iter().flat_map(|s| s.pieces.clone()).chain(allotment.left).collect();
        prop_assert_eq!(ids.len(), pieces.len());
        prop_assert_eq!(ids.iter().collect::<BTreeSet<_>>().len(), pieces.len());
    }
}
