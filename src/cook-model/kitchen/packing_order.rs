//! In which order to pack, so that nothing is late into the cold.

use crate::quantity::{Moment, Span};
use crate::sorting::sort_by_key;

/// One portion to pack.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ToPack<Id> {
    /// The caller's own name for it.
    pub id: Id,
    /// How long packing it takes.
    pub takes: Span,
    /// By when it must be in the cold.
    pub by: Moment,
}

/// One portion in its turn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turn<Id> {
    /// The caller's own name for it.
    pub id: Id,
    /// When to start on it.
    pub start: Moment,
    /// When it is in the cold.
    pub done: Moment,
    /// Time to spare; negative where it is late.
    pub spare: Span,
}

/// The order of packing, one after the other from `now` on: the one due first comes first. No
/// order has a smaller greatest lateness (Jackson 1955), so if any order breaks no limit, this one
/// breaks none. Equals keep the order they come in.
pub fn packing_order<Id: Clone>(now: Moment, portions: &[ToPack<Id>]) -> Vec<Turn<Id>> {
    let mut order: Vec<&ToPack<Id>> = portions.iter().collect();
    sort_by_key(&mut order, |portion| portion.by);
    let mut start = now;
    let turn = |portion: &ToPack<Id>| {
        let done = start + portion.takes.max(Span::zero());
        let turn = Turn { id: portion.id.clone(), start, done, spare: portion.by - done };
        start = done;
        turn
    };
    order.into_iter().map(turn).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::{TimeZone, Utc};
    use proptest::prelude::*;

    fn least_spare(turns: &[Turn<usize>]) -> Span {
        turns.iter().map(|turn| turn.spare).min().unwrap_or(Span::zero())
    }

    /// The greatest least spare time of any order, by trying them all.
    fn best(now: Moment, left: &[ToPack<usize>]) -> Span {
        let then = |i: usize| {
            let done = now + left[i].takes;
            let mut rest = left.to_vec();
            rest.remove(i);
            let later = if rest.is_empty() { Span::MAX } else { best(done, &rest) };
            later.min(left[i].by - done)
        };
        (0..left.len()).map(then).max().unwrap_or(Span::zero())
    }

    proptest! {
        #[test]
        fn no_order_is_less_late(facts in prop::collection::vec((1_i64..20, 0_i64..60), 1..7)) {
            let now = Utc.with_ymd_and_hms(2026, 6, 1, 18, 0, 0).unwrap();
            let portions: Vec<ToPack<usize>> = facts
                .iter()
                .enumerate()
                .map(|(id, (takes, by))| ToPack {
                    id,
                    takes: Span::minutes(*takes),
                    by: now + Span::minutes(*by),
                })
                .collect();
            let turns = packing_order(now, &portions);
            prop_assert_eq!(turns.len(), portions.len());
            prop_assert_eq!(least_spare(&turns), best(now, &portions));
        }
    }
}
