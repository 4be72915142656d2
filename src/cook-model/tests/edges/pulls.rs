//! When a piece comes off, by the rule that is to prove it.

use cook_model::quantity::{Span, Temperature, TemperatureDifference, minutes};
use cook_model::safety::{FatColumn, ProofRule, lowest_pull, pull_target};

const HELD: ProofRule = ProofRule::Held { fat: FatColumn::Twelve };

/// The lowest pull where the core stays so much above it for so many minutes, and is then cold.
fn lowest(rule: ProofRule, rise: f64, lasts: u32) -> Option<f64> {
    let core = |pull: Temperature| {
        let core = pull + TemperatureDifference::from_f(rise);
        let flat = (0..=lasts).map(|minute| (minutes(f64::from(minute)), core));
        let cold = (minutes(f64::from(lasts) + 1.0), Temperature::from_f(90.0));
        Some(flat.chain([cold]).collect::<Vec<(Span, Temperature)>>())
    };
    lowest_pull(rule, TemperatureDifference::ZERO, core).map(|pull| pull.f().round())
}

/// USDA: the danger zone ends at 140 F, so nothing comes off below it, whatever it would rise to; and
/// above 185 F nothing is worth eating.
#[test]
fn no_pull_in_the_danger_zone() {
    assert_eq!(lowest(ProofRule::Instant, 10.0, 5), Some(155.0));
    assert_eq!(lowest(ProofRule::Instant, 40.0, 5), Some(140.0));
    assert_eq!(lowest(ProofRule::Instant, -20.0, 5), Some(185.0));
    assert_eq!(lowest(ProofRule::Instant, -21.0, 5), None);
}

/// USDA FSIS (2005), 12 % fat: 4.2 minutes at 150 F. Who reads both ends needs a minute for each; a core
/// that only just holds is never read so.
#[test]
fn a_hold_leaves_time_to_read_it() {
    // Just five minutes are the table's 4.2 and no time to read: 165 F is asked.
    assert_eq!(lowest(HELD, 0.0, 5), Some(165.0));
    assert_eq!(lowest(HELD, 0.0, 7), Some(150.0));
    // Two spans with a dip between them are not one.
    let dips = |pull: Temperature| {
        let at = |minute: u32, f: f64| {
            (minutes(f64::from(minute)), pull + TemperatureDifference::from_f(f))
        };
        let dip = at(4, -20.0);
        let around = (0..8).map(|minute| if minute == 4 { dip } else { at(minute, 0.0) });
        Some(around.collect::<Vec<_>>())
    };
    let found = lowest_pull(HELD, TemperatureDifference::ZERO, dips);
    assert_eq!(found.map(|pull| pull.f().round()), Some(165.0));
}

/// A reading of what proves at once needs no rest, so nothing is left on beyond it; a piece whose rest
/// failed once is not pulled early again.
#[test]
fn nothing_stays_on_beyond_what_proves_it() {
    let f = Temperature::from_f;
    let pull =
        |back, choice, lowest| pull_target(ProofRule::Instant, back, choice, lowest).f().round();
    assert_eq!(pull(false, None, Some(f(158.0))), 158.0);
    assert_eq!(pull(false, None, Some(f(170.0))), 165.0);
    assert_eq!(pull(false, None, None), 165.0);
    assert_eq!(pull(false, Some(f(160.0)), Some(f(158.0))), 160.0);
    assert_eq!(pull(true, Some(f(150.0)), Some(f(158.0))), 165.0);
    let own = ProofRule::Stricter { at_least: f(172.0) };
    assert_eq!(pull_target(own, true, None, None).f().round(), 172.0);
}

/// FSIS Revised Appendix A, 2021, table 5, gap 3: without humidity control the surface is not validated,
/// so the rule of time is not offered without its word of caution.
#[test]
fn the_rule_of_time_comes_with_its_caution() {
    assert!(HELD.caution().is_some() && ProofRule::Instant.caution().is_none());
}
