//! At what temperature to pull a piece, so that its rest can still prove it.

use super::dwell::dwell_rows;
use super::rule::ProofRule;
use crate::quantity::{Span, Temperature, TemperatureDifference};

/// The temperatures looked at, whole degrees Fahrenheit.
const LOWEST_F: i32 = 140;
const HIGHEST_F: i32 = 185;
/// A hold must last this much longer than the table says, for the readings at its two ends.
const FOR_READING: Span = Span::minutes(2);

/// The lowest whole Fahrenheit degree at which to pull so that the core, as `core_after` gives it
/// minute by minute on the unfavourable side, satisfies the rule. Pulling hotter never makes the
/// core after it colder. None if no pull up to 185 F is sure enough, or the core does not get there.
/// A hold must be read hotter than the table says by the thermometer's `tolerance`.
pub fn lowest_pull(
    rule: ProofRule,
    tolerance: TemperatureDifference,
    core_after: impl Fn(Temperature) -> Option<Vec<(Span, Temperature)>>,
) -> Option<Temperature> {
    let (mut low, mut high) = (LOWEST_F, HIGHEST_F + 1);
    while low < high {
        let middle = (low + high) / 2;
        let pull = Temperature::from_f(f64::from(middle));
        if satisfies(rule, tolerance, &core_after(pull)?) {
            high = middle
        } else {
            low = middle + 1
        }
    }
    (low <= HIGHEST_F).then(|| Temperature::from_f(f64::from(low)))
}

/// The temperature at which to pull a piece: the cook's choice, or else the lowest after which its
/// rest proves it, as far as a forecast found one. Never above what proves at once, for a reading of
/// that needs no rest; and just that where a piece was put back, for its rest failed once.
pub fn pull_target(
    rule: ProofRule,
    was_put_back: bool,
    choice: Option<Temperature>,
    lowest: Option<Temperature>,
) -> Temperature {
    if was_put_back {
        return rule.instant();
    }
    choice.unwrap_or_else(|| lowest.map_or(rule.instant(), |lowest| lowest.min(rule.instant())))
}

/// Whether readings along this core could prove the piece.
fn satisfies(
    rule: ProofRule,
    tolerance: TemperatureDifference,
    core: &[(Span, Temperature)],
) -> bool {
    let at_once = core.iter().any(|(_, core)| *core >= rule.instant());
    at_once
        || match rule {
            ProofRule::Held { fat } => dwell_rows(fat)
                .iter()
                .any(|row| longest_at(core, row.at_least + tolerance) >= row.dwell + FOR_READING),
            ProofRule::Instant | ProofRule::Stricter { .. } => false,
        }
}

/// The longest time without a break at a temperature or above.
fn longest_at(core: &[(Span, Temperature)], at_least: Temperature) -> Span {
    let (mut longest, mut since) = (Span::zero(), None);
    for (at, core) in core {
        if *core < at_least {
            since = None;
            continue;
        }
        longest = longest.max(*at - *since.get_or_insert(*at));
    }
    longest
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::minutes;
    use crate::safety::FatColumn;

    /// A core that is so much hotter than at the pull five minutes later, at its peak, and goes up
    /// and down by 0.8 F a minute.
    fn rising(by_f: f64) -> impl Fn(Temperature) -> Option<Vec<(Span, Temperature)>> {
        move |pull| {
            let core = |minute: i32| {
                let from_peak = f64::from((minute - 5).abs()) * 0.8;
                pull + TemperatureDifference::from_f(by_f - from_peak)
            };
            Some((0..40).map(|i| (minutes(f64::from(i)), core(i))).collect())
        }
    }

    fn f(rule: ProofRule, by_f: f64) -> Option<f64> {
        lowest_pull(rule, TemperatureDifference::ZERO, rising(by_f)).map(|pull| pull.f().round())
    }

    #[test]
    fn what_carryover_gives_need_not_be_waited_for() {
        assert_eq!(f(ProofRule::Instant, 5.0), Some(160.0));
        assert_eq!(f(ProofRule::Instant, 3.0), Some(162.0));
        assert_eq!(f(ProofRule::Instant, 0.0), Some(165.0));
        // A rest that is sure of nothing asks for more than the rule.
        assert_eq!(f(ProofRule::Instant, -2.5), Some(168.0));
        let own = ProofRule::Stricter { at_least: Temperature::from_f(175.0) };
        assert_eq!(f(own, 4.0), Some(171.0));
        let impossible = ProofRule::Stricter { at_least: Temperature::from_f(200.0) };
        assert_eq!(f(impossible, 4.0), None);
        assert_eq!(lowest_pull(ProofRule::Instant, TemperatureDifference::ZERO, |_| None), None);
    }

    #[test]
    fn under_the_table_the_hold_counts_with_time_to_read() {
        // It is within 3.2 F of its peak for eight minutes. The 150 F row asks for 4.2 minutes and
        // two more to read, the 149 F row for 5.4 and two.
        let held = ProofRule::Held { fat: FatColumn::Twelve };
        assert_eq!(f(held, 4.0), Some(149.0));
        assert!(f(held, 0.0) <= f(held, -3.0));
        // A thermometer that may read 2 F high must show 2 F more.
        let two = TemperatureDifference::from_f(2.0);
        let sure = lowest_pull(held, two, rising(4.0)).map(|pull| pull.f().round());
        assert_eq!(sure, Some(151.0));
    }
}
