//! What a label's code carries: enough about a bag to reheat it, on any phone, without a network.

use chrono::DateTime;
use thiserror::Error;

use super::form::Form;
use super::log::{BagId, BagState};
use super::shape::Portion;
use super::storage::{Packing, Place};
use crate::history::DeviceId;
use crate::quantity::{Length, Mass, Moment};

/// What the fragment of a card's address begins with: it names the reheat screen.
pub const PREFIX: &str = "reheat-";
/// The version of the text this crate writes and reads.
const VERSION: &str = "1";

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
            cooked: DateTime::from_timestamp(bag.cooked.timestamp().div_euclid(60) * 60, 0)?,
        })
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
            "{PREFIX}{VERSION}.{}{}{}.{:.0}.{thickness:.0}.{}.{}-{}",
            form_letter(self.form),
            packing_letter(self.packing),
            place_letter(self.place),
            self.weight.g(),
            self.cooked.timestamp().div_euclid(60),
            self.bag.count,
            self.bag.device.0,
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
        match parts.next() {
            Some(VERSION) => {}
            Some(later) if later.parse::<u32>().is_ok_and(|v| v > 1) => {
                return Err(CardProblem::LaterVersion);
            }
            _ => return Err(CardProblem::Damaged),
        }
        Self::read_parts(parts).ok_or(CardProblem::Damaged)
    }

    fn read_parts<'a>(mut parts: impl Iterator<Item = &'a str>) -> Option<Self> {
        let mut letters = parts.next()?.chars();
        let form = Form::ALL.into_iter().find(|f| Some(form_letter(*f)) == letters.clone().next());
        letters.next();
        let packing = letters.next();
        let place = letters.next();
        let weight: u32 = parts.next()?.parse().ok()?;
        let thickness: u32 = parts.next()?.parse().ok()?;
        let minutes: i64 = parts.next()?.parse().ok()?;
        let (count, device) = parts.next()?.split_once('-')?;
        if letters.next().is_some() || parts.next().is_some() {
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
            cooked: DateTime::from_timestamp(minutes.checked_mul(60)?, 0)?,
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
    use proptest::prelude::*;

    fn card() -> impl Strategy<Value = Card> {
        (
            (any::<u64>(), any::<u32>()),
            (0_usize..4, 0_usize..3, any::<bool>()),
            (1_u32..10_001, 0_u32..201, 0_i64..100_000_000),
        )
            .prop_map(
                |((count, device), (form, packing, frozen), (weight, mm, minutes))| Card {
                    bag: BagId { count, device: DeviceId(device) },
                    form: Form::ALL[form],
                    weight: Mass::from_g(f64::from(weight)),
                    thickness: (mm > 0).then(|| Length::from_mm(f64::from(mm))),
                    packing: [Packing::Plain, Packing::Covered, Packing::Vacuum][packing],
                    place: if frozen { Place::Freezer } else { Place::Fridge },
                    cooked: DateTime::from_timestamp(minutes * 60, 0).unwrap(),
                },
            )
    }

    #[test]
    fn what_is_not_a_card_is_said() {
        let cases = [
            ("", CardProblem::NotACard),
            ("#cook", CardProblem::NotACard),
            ("reheat", CardProblem::NotACard),
            ("reheat-2.anything", CardProblem::LaterVersion),
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
