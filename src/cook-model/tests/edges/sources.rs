//! The sources that the app names, for a person to look up.

use cook_model::safety::{Caution, FatColumn, INSTANT_KILL, ProofRule};

/// Poultry at 165 F is of the Food Code's 3-401.11; time at temperature of the agency's tables. A figure of
/// the cook's own has no other source than the one it may not be below.
#[test]
fn each_rule_names_where_its_figures_stand() {
    assert!(ProofRule::Instant.source().contains("FDA Food Code 2022, 3-401.11"));
    let stricter = ProofRule::Stricter { at_least: INSTANT_KILL };
    assert!(stricter.source().contains("FDA Food Code 2022, 3-401.11"));
    let held = ProofRule::Held { fat: FatColumn::Twelve }.source();
    assert!(held.contains("FSIS") && held.contains("Revised Appendix A, 2021"));
}

/// What a person is told of 165 F and of cleanliness is the agencies'; what the app says of itself has no
/// source but the app.
#[test]
fn a_caution_names_its_agency_or_none() {
    let source = |caution: Caution| caution.source().unwrap_or_default();
    assert!(source(Caution::InstantKill).contains("3-401.11"));
    for caution in [Caution::CleanBetween, Caution::HigherCare] {
        assert!(source(caution).contains("USDA FSIS"), "{caution:?}");
    }
    for own in [Caution::WhatItKnows, Caution::WhatItCannotKnow, Caution::OnlyReadingsProve] {
        assert_eq!(own.source(), None);
    }
}
