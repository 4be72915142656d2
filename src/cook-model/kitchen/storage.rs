//! How long cooked meat keeps, and where.

use chrono::Months;
use serde::{Deserialize, Serialize};

use crate::quantity::{Moment, Span};

/// Days cooked poultry keeps in the refrigerator at 40 F (4 C): 3 to 4 (FoodSafety.gov cold food
/// storage chart: cooked meat or poultry; the same for pieces plain or in broth). At the first it
/// should be used, after the second thrown away.
pub const FRIDGE_USE_WITHIN: Span = Span::days(3);
/// The end of those days.
pub const FRIDGE_THROW_AFTER: Span = Span::days(4);

/// Months at 0 F (-18 C) before quality falls, plain pieces and pieces covered with broth or gravy
/// (the older USDA chart: cooked poultry pieces, plain 4; in broth or gravy 6; the current one gives cooked
/// meat or poultry 2 to 6 without a difference, from memory, and both lie within it). Frozen at 0 F food
/// stays safe without limit: this is quality, not safety.
const FREEZER_MONTHS_PLAIN: Months = Months::new(4);
const FREEZER_MONTHS_COVERED: Months = Months::new(6);

/// Where a bag is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Place {
    /// In the refrigerator, at 40 F (4 C) or below.
    Fridge,
    /// In the freezer, at 0 F (-18 C) or below.
    Freezer,
}

/// What the meat lies in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Packing {
    /// In an ordinary bag or box.
    #[default]
    Plain,
    /// Covered with broth, gravy or sauce.
    Covered,
    /// Vacuum-sealed.
    Vacuum,
}

/// One stay of a bag in one place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stay {
    /// Where.
    pub place: Place,
    /// From when.
    pub from: Moment,
}

/// How long a bag is good.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keeps {
    /// In the refrigerator: a matter of safety.
    Fridge {
        /// Best used by then.
        use_by: Moment,
        /// To be thrown away after then.
        eat_by: Moment,
    },
    /// In the freezer: a matter of quality only.
    Freezer {
        /// Best by then.
        best_by: Moment,
        /// Days it may still spend in the refrigerator once thawed there.
        fridge_left: Span,
    },
    /// It does not keep at all, wherever it is: to be thrown away.
    ThrowAway {
        /// Since when.
        since: Moment,
        /// Why.
        why: Spoiled,
    },
}

/// Why a bag is to be thrown away.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spoiled {
    /// It came too late into the cold. Source: USDA consumer advice, two hours, one above 90 F.
    TooLateIntoCold,
    /// Its days in the refrigerator were over before it was frozen. Freezing kills nothing.
    DaysOver,
}

/// How long a bag keeps that has been in these places, in order of time; none without any.
///
/// Days in the refrigerator add up: freezing stops the clock and does not set it back. Days
/// between cooking and packing count as if in the refrigerator, so `cooked` is where they start.
pub fn keeps(cooked: Moment, stays: &[Stay], packing: Packing) -> Option<Keeps> {
    let last = stays.last()?;
    let mut spent = (stays[0].from - cooked).max(Span::zero());
    let mut first_frozen = None;
    if spent > FRIDGE_THROW_AFTER {
        return Some(days_over(cooked + FRIDGE_THROW_AFTER));
    }
    for (stay, next) in stays.iter().zip(&stays[1..]) {
        match stay.place {
            Place::Fridge => {
                let left = FRIDGE_THROW_AFTER - spent;
                spent += next.from - stay.from;
                if spent > FRIDGE_THROW_AFTER {
                    return Some(days_over(stay.from + left));
                }
            }
            Place::Freezer => {
                first_frozen.get_or_insert(stay.from);
            }
        }
    }
    Some(match last.place {
        Place::Fridge => Keeps::Fridge {
            use_by: last.from + (FRIDGE_USE_WITHIN - spent),
            eat_by: last.from + (FRIDGE_THROW_AFTER - spent),
        },
        Place::Freezer => {
            let months = match packing {
                Packing::Covered => FREEZER_MONTHS_COVERED,
                Packing::Plain | Packing::Vacuum => FREEZER_MONTHS_PLAIN,
            };
            let frozen = *first_frozen.get_or_insert(last.from);
            Keeps::Freezer {
                best_by: frozen.checked_add_months(months).unwrap_or(frozen),
                fridge_left: (FRIDGE_THROW_AFTER - spent).max(Span::zero()),
            }
        }
    })
}

fn days_over(since: Moment) -> Keeps {
    Keeps::ThrowAway { since, why: Spoiled::DaysOver }
}

impl Keeps {
    /// The date that counts: eat by in the refrigerator, best by in the freezer; from when it was to be
    /// thrown away.
    pub const fn until(self) -> Moment {
        match self {
            Self::Fridge { eat_by, .. } => eat_by,
            Self::Freezer { best_by, .. } => best_by,
            Self::ThrowAway { since, .. } => since,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::TimeZone;
    use chrono::Utc;

    fn day(month: u32, day: u32) -> Moment {
        Utc.with_ymd_and_hms(2026, month, day, 18, 0, 0).unwrap()
    }

    fn stay(place: Place, from: Moment) -> Stay {
        Stay { place, from }
    }

    #[test]
    fn the_chart_for_each_place() {
        // FoodSafety.gov cold food storage chart: cooked poultry 3-4 days; pieces plain 4 months,
        // covered with broth 6 months.
        let cooked = day(6, 1);
        let fridge = keeps(cooked, &[stay(Place::Fridge, cooked)], Packing::Plain);
        let expected = Keeps::Fridge { use_by: day(6, 4), eat_by: day(6, 5) };
        assert_eq!(fridge, Some(expected));
        let freezer = [stay(Place::Freezer, cooked)];
        let until = |packing| keeps(cooked, &freezer, packing).unwrap().until();
        assert_eq!(until(Packing::Plain), day(10, 1));
        assert_eq!(until(Packing::Covered), day(12, 1));
    }

    #[test]
    fn freezing_stops_the_clock_and_does_not_set_it_back() {
        let cooked = day(6, 1);
        let stays = [
            stay(Place::Fridge, cooked),
            stay(Place::Freezer, day(6, 3)),
            stay(Place::Fridge, day(7, 20)),
        ];
        let thawed = keeps(cooked, &stays, Packing::Plain).unwrap();
        assert_eq!(thawed.until(), day(7, 22));
        let Some(Keeps::Freezer { fridge_left, best_by }) =
            keeps(cooked, &stays[..2], Packing::Plain)
        else {
            panic!("it is in the freezer")
        };
        assert_eq!(fridge_left, Span::days(2));
        assert_eq!(best_by, day(10, 3));
    }

    #[test]
    fn freezing_brings_nothing_back() {
        // FoodSafety.gov chart: four days in the refrigerator at the most. USDA: freezing does not
        // destroy bacteria.
        let cooked = day(6, 1);
        let late = [stay(Place::Fridge, cooked), stay(Place::Freezer, day(6, 7))];
        let over = Keeps::ThrowAway { since: day(6, 5), why: Spoiled::DaysOver };
        assert_eq!(keeps(cooked, &late, Packing::Plain), Some(over));
        let again = [late[0], late[1], stay(Place::Fridge, day(6, 20))];
        assert_eq!(keeps(cooked, &again, Packing::Plain), Some(over));
        let in_time = [late[0], stay(Place::Freezer, day(6, 5))];
        let kept = keeps(cooked, &in_time, Packing::Plain);
        assert!(matches!(kept, Some(Keeps::Freezer { fridge_left, .. }) if fridge_left.is_zero()));
        // Frozen a week after it was cooked, wherever it was meanwhile.
        let straight = keeps(cooked, &[stay(Place::Freezer, day(6, 8))], Packing::Plain);
        assert_eq!(straight, Some(over));
        assert_eq!(over.until(), day(6, 5));
    }

    #[test]
    fn packing_late_eats_into_the_days() {
        let stays = [stay(Place::Fridge, day(6, 2))];
        assert_eq!(keeps(day(6, 1), &stays, Packing::Plain).unwrap().until(), day(6, 5));
        assert_eq!(keeps(day(6, 1), &[], Packing::Plain), None);
    }
}
