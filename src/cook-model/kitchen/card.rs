//! What a label's code carries: enough about a bag to reheat it, on any phone, without a network.

use thiserror::Error;

use super::card_limit::{
    Limit, as_whole_minutes, limit_text, read_limit, read_minute, read_span, to_the_minute,
};
use super::caution::Caution;
use super::form::Form;
use super::log::{BagId, BagState};
use super::shape::Portion;
use super::storage::{FRIDGE_THROW_AFTER, Keeps, Packing, Place};
use crate::history::DeviceId;
use crate::quantity::{Length, Mass, Moment, Span};

/// What the fragment of a card's address begins with: it names the reheat screen.
pub const PREFIX: &str = "reheat-";
/// The version of the text this crate writes.
const VERSION: &str = "2";
/// The one before it, of labels that know nothing of limits.
const OLD_VERSION: &str = "1";
/// What is to be known of a bag to reheat it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Card {
    /// The bag's name in the log it came from.
    pub bag: BagId,
    /// What the meat was made into.
    pub form: Form,
    /// Weight, to the gram.
    pub weight: Mass,
    /// Thickness, to the millimetre, if it was measured.
    pub thickness: Option<Length>,
    /// What the meat lies in.
    pub packing: Packing,
    /// Where the bag was when the label was made.
    pub place: Place,
    /// When it was cooked, to the minute.
    pub cooked: Moment,
    /// How long it keeps.
    pub limit: Limit,
    /// How long it was between 41 and 140 F before it was packed, to the minute.
    pub warm: Span,
}

/// Why an address is not a card.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum CardProblem {
    /// It does not name the reheat screen.
    #[error("this is not a label's address")]
    NotACard,
    /// It was made by a later version.
    #[error("this label was made by a later version of the app; update the app to read it")]
    LaterVersion,
    /// A part of it is missing or not possible.
    #[error("this label's code is damaged; choose the bag from the list instead")]
    Damaged,
}

impl Card {
    /// The card of a bag that is still there.
    pub fn of(state: &BagState) -> Option<Self> {
        let bag = &state.bag;
        Some(Self {
            bag: state.id,
            form: bag.form,
            weight: Mass::from_g(bag.weight.g().round()),
            thickness: bag.thickness.map(|t| Length::from_mm(t.mm().round().max(1.0))),
            packing: bag.packing,
            place: state.place()?,
            cooked: to_the_minute(bag.cooked)?,
            limit: match state.keeps()? {
                Keeps::Fridge { eat_by, .. } => Limit::EatBy(to_the_minute(eat_by)?),
                Keeps::Freezer { fridge_left, .. } => {
                    Limit::FridgeLeft(Span::minutes(fridge_left.num_minutes()))
                }
                Keeps::ThrowAway { since, .. } => Limit::ThrowAway(to_the_minute(since)?),
            },
            // The longer time, so that a label never says less than was.
            warm: Span::minutes(as_whole_minutes(bag.brings.warm)),
        })
    }

    /// What to say of the bag on a phone that knows only its label.
    pub fn cautions(&self, now: Moment) -> Vec<Caution> {
        let over = match self.limit {
            Limit::ThrowAway(_) => true,
            Limit::EatBy(eat_by) => now > eat_by,
            Limit::FridgeLeft(_) => false,
            Limit::Unknown => self.place == Place::Fridge && now > self.cooked + FRIDGE_THROW_AFTER,
        };
        let past = over.then_some(Caution::PastEatBy);
        let unknown = self.limit == Limit::Unknown && self.place == Place::Freezer;
        let vacuum = (self.packing == Packing::Vacuum).then_some(Caution::Vacuum);
        past.into_iter().chain(unknown.then_some(Caution::DaysUnknown)).chain(vacuum).collect()
    }

    /// What heat has to get through.
    pub const fn portion(&self) -> Portion {
        Portion {
            form: self.form,
            weight: self.weight,
            thickness: self.thickness,
            packing: self.packing,
        }
    }

    /// The fragment of an address, without its `#`: letters, digits, `.` and `-` only.
    pub fn fragment(&self) -> String {
        let thickness = self.thickness.map_or(0.0, Length::mm);
        format!(
            "{PREFIX}{VERSION}.{}{}{}.{:.0}.{thickness:.0}.{}.{}-{}.{}.{}",
            form_letter(self.form),
            packing_letter(self.packing),
            place_letter(self.place),
            self.weight.g(),
            self.cooked.timestamp().div_euclid(60),
            self.bag.count,
            self.bag.device.0,
            limit_text(self.limit),
            self.warm.num_minutes(),
        )
    }

    /// The address that opens the card: the app's own, with the fragment. What the app's address
    /// has behind a `#` is dropped.
    pub fn address(&self, app: &str) -> String {
        let base = app.split('#').next().unwrap_or_default();
        format!("{base}#{}", self.fragment())
    }

    /// Reads a fragment, with or without its `#`.
    ///
    /// # Errors
    /// [`CardProblem`] says why it is not a card.
    pub fn read(fragment: &str) -> Result<Self, CardProblem> {
        let text = fragment.strip_prefix('#').unwrap_or(fragment);
        let text = text.strip_prefix(PREFIX);
        let mut parts = text.ok_or(CardProblem::NotACard)?.split('.');
        let card = match parts.next() {
            Some(VERSION) => Self::read_parts(&mut parts).and_then(|card| {
                let limit = read_limit(parts.next()?)?;
                Some(Self { limit, warm: read_span(parts.next()?)?, ..card })
            }),
            Some(OLD_VERSION) => Self::read_parts(&mut parts),
            Some(later) if later.parse::<u32>().is_ok_and(|v| v > 2) => {
                return Err(CardProblem::LaterVersion);
            }
            _ => None,
        };
        card.filter(|_| parts.next().is_none()).ok_or(CardProblem::Damaged)
    }

    /// What both versions begin with.
    fn read_parts<'a>(parts: &mut impl Iterator<Item = &'a str>) -> Option<Self> {
        let mut letters = parts.next()?.chars();
        let form = Form::ALL.into_iter().find(|f| Some(form_letter(*f)) == letters.clone().next());
        letters.next();
        let packing = letters.next();
        let place = letters.next();
        let weight: u32 = parts.next()?.parse().ok()?;
        let thickness: u32 = parts.next()?.parse().ok()?;
        let cooked = read_minute(parts.next()?)?;
        let (count, device) = parts.next()?.split_once('-')?;
        if letters.next().is_some() {
            return None;
        }
        if !(1..=10_000).contains(&weight) || thickness > 200 {
            return None;
        }
        let known = [Packing::Plain, Packing::Covered, Packing::Vacuum];
        Some(Self {
            bag: BagId { count: count.parse().ok()?, device: DeviceId(device.parse().ok()?) },
            form: form?,
            weight: Mass::from_g(f64::from(weight)),
            thickness: (thickness > 0).then(|| Length::from_mm(f64::from(thickness))),
            packing: known.into_iter().find(|p| Some(packing_letter(*p)) == packing)?,
            place: [Place::Fridge, Place::Freezer]
                .into_iter()
                .find(|p| Some(place_letter(*p)) == place)?,
            cooked,
            limit: Limit::Unknown,
            warm: Span::zero(),
        })
    }
}

const fn form_letter(form: Form) -> char {
    match form {
        Form::Whole => 'w',
        Form::Sliced => 's',
        Form::Chunked => 'c',
        Form::Shredded => 'h',
    }
}

const fn packing_letter(packing: Packing) -> char {
    match packing {
        Packing::Plain => 'p',
        Packing::Covered => 'b',
        Packing::Vacuum => 'v',
    }
}

const fn place_letter(place: Place) -> char {
    match place {
        Place::Fridge => 'f',
        Place::Freezer => 'z',
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::DateTime;
    use proptest::prelude::*;

    fn card() -> impl Strategy<Value = Card> {
        (
            (any::<u64>(), any::<u32>()),
            (0_usize..4, 0_usize..3, any::<bool>()),
            (1_u32..10_001, 0_u32..201, 0_i64..100_000_000),
            (0_usize..4, 0_i64..86_400, 0_i64..1000),
        )
            .prop_map(
                |(
                    (count, device),
                    (form, packing, frozen),
                    (weight, mm, minutes),
                    (limit, span, warm),
                )| Card {
                    bag: BagId { count, device: DeviceId(device) },
                    form: Form::ALL[form],
                    weight: Mass::from_g(f64::from(weight)),
                    thickness: (mm > 0).then(|| Length::from_mm(f64::from(mm))),
                    packing: [Packing::Plain, Packing::Covered, Packing::Vacuum][packing],
                    place: if frozen { Place::Freezer } else { Place::Fridge },
                    cooked: DateTime::from_timestamp(minutes * 60, 0).unwrap(),
                    limit: match limit {
                        0 => Limit::Unknown,
                        1 => Limit::EatBy(DateTime::from_timestamp(span * 60, 0).unwrap()),
                        2 => Limit::FridgeLeft(Span::minutes(span)),
                        _ => Limit::ThrowAway(DateTime::from_timestamp(span * 60, 0).unwrap()),
                    },
                    warm: Span::minutes(warm),
                },
            )
    }

    #[test]
    fn what_is_not_a_card_is_said() {
        let cases = [
            ("", CardProblem::NotACard),
            ("#cook", CardProblem::NotACard),
            ("reheat", CardProblem::NotACard),
            ("reheat-3.anything", CardProblem::LaterVersion),
            ("reheat-2.hpf.400.22.29000000.3-1", CardProblem::Damaged),
            ("reheat-2.hpf.400.22.29000000.3-1.e29000000", CardProblem::Damaged),
            ("reheat-2.hpf.400.22.29000000.3-1.q1.0", CardProblem::Damaged),
            ("reheat-2.hpf.400.22.29000000.3-1.l86401.0", CardProblem::Damaged),
            ("reheat-2.hpf.400.22.29000000.3-1.u.0.more", CardProblem::Damaged),
            ("reheat-1.hpf.400.22.120971521.3-1", CardProblem::Damaged),
            ("reheat-", CardProblem::Damaged),
            ("reheat-1.hpf.400.22.29000000", CardProblem::Damaged),
            ("reheat-1.xpf.400.22.29000000.3-1", CardProblem::Damaged),
            ("reheat-1.hpf.0.22.29000000.3-1", CardProblem::Damaged),
            ("reheat-1.hpf.400.22.29000000.3-1.more", CardProblem::Damaged),
            ("reheat-1.hpf.400.22.9223372036854775807.3-1", CardProblem::Damaged),
        ];
        for (text, expected) in cases {
            assert_eq!(Card::read(text), Err(expected), "{text}");
        }
    }

    #[test]
    fn an_old_label_is_read_and_warns_by_its_cooked_day() {
        let cooked = DateTime::from_timestamp(29_000_000 * 60, 0).unwrap();
        let card = Card::read("reheat-1.hpf.400.22.29000000.3-1").unwrap();
        assert_eq!((card.cooked, card.limit, card.warm), (cooked, Limit::Unknown, Span::zero()));
        // FoodSafety.gov chart: cooked poultry four days in the refrigerator at the most.
        assert_eq!(card.cautions(cooked + Span::days(4)), []);
        assert_eq!(card.cautions(cooked + Span::days(30)), [Caution::PastEatBy]);
        let frozen = Card { place: Place::Freezer, packing: Packing::Vacuum, ..card };
        let told = frozen.cautions(cooked + Span::days(30));
        assert_eq!(told, [Caution::DaysUnknown, Caution::Vacuum]);
        let left = Card { limit: Limit::FridgeLeft(Span::days(2)), ..frozen };
        assert_eq!(left.cautions(cooked + Span::days(30)), [Caution::Vacuum]);
        let over = Card { limit: Limit::ThrowAway(cooked), ..card };
        assert_eq!(over.cautions(cooked), [Caution::PastEatBy]);
        let limit = Limit::EatBy(cooked + Span::days(3));
        let chilled = Card { limit, ..card };
        assert_eq!(chilled.cautions(cooked + Span::days(3)), []);
        assert_eq!(chilled.cautions(cooked + Span::hours(73)), [Caution::PastEatBy]);
    }

    proptest! {
        #[test]
        fn a_card_reads_back(card in card()) {
            let address = card.address("https://example.org/app/?lang=en#cook");
            let fragment = address.strip_prefix("https://example.org/app/?lang=en").unwrap();
            prop_assert_eq!(Card::read(fragment), Ok(card));
        }

        #[test]
        fn nothing_makes_it_panic(text in "(reheat-1\\.)?.*") {
            let _ = Card::read(&text);
        }
    }
}
