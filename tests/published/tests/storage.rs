//! Storage dates against the cold food storage chart.

use chrono::Days;
use cook_model::kitchen::storage::{Keeps, Packing, Place, Stay, keeps};
use cook_model::quantity::{Moment, Span};

/// FoodSafety.gov cold food storage chart and FoodKeeper: what, days at 40 F, months at 0 F.
const CHART: [(&str, Packing, [i64; 2], [u32; 2]); 3] = [
    ("cooked poultry pieces, plain", Packing::Plain, [3, 4], [4, 4]),
    ("cooked poultry pieces covered with broth", Packing::Covered, [3, 4], [6, 6]),
    // The chart has no row for sealed bags; plain pieces' stands.
    ("cooked meat or poultry", Packing::Vacuum, [3, 4], [2, 6]),
];

#[test]
fn dates_are_those_of_the_chart() {
    let cooked: Moment = "2026-03-10T18:30:00Z".parse().unwrap();
    for (what, packing, days, months) in CHART {
        let stay = |place| [Stay { place, from: cooked }];
        let fridge = keeps(cooked, &stay(Place::Fridge), packing);
        let [use_by, eat_by] = days.map(|days| cooked + Span::days(days));
        assert_eq!(fridge, Some(Keeps::Fridge { use_by, eat_by }), "{what}");
        let best_by = keeps(cooked, &stay(Place::Freezer), packing).unwrap().until();
        let [least, most] = months.map(|m| cooked + chrono::Months::new(m));
        assert!(least <= best_by && best_by <= most + Days::new(1), "{what}: {best_by}");
    }
}

#[test]
fn nothing_keeps_longer_for_having_been_moved() {
    let cooked: Moment = "2026-03-10T18:30:00Z".parse().unwrap();
    let at = |days| cooked + Span::days(days);
    let stays = [
        Stay { place: Place::Fridge, from: cooked },
        Stay { place: Place::Freezer, from: at(1) },
        Stay { place: Place::Fridge, from: at(30) },
        Stay { place: Place::Freezer, from: at(31) },
        Stay { place: Place::Fridge, from: at(60) },
    ];
    // Two days in the refrigerator are used up; the freezer's date runs from the first freezing.
    assert_eq!(keeps(cooked, &stays, Packing::Plain).unwrap().until(), at(62));
    let frozen = keeps(cooked, &stays[..4], Packing::Plain).unwrap();
    let best_by = at(1) + chrono::Months::new(4);
    assert_eq!(frozen, Keeps::Freezer { best_by, fridge_left: Span::days(2) });
}
