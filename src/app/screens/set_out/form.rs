//! What is typed to add pieces, and what pieces that makes: several alike, or a whole pack of which
//! some are smaller or larger.

use cook_model::cook::limits;
use cook_model::pack::{Size, share_out};
use cook_model::piece::Shape;
use cook_model::quantity::{Length, Mass};
use leptos::prelude::*;

use crate::kitchen::Count;
use crate::typed::{PackWeight, Typed, quantity, quantity_or_blank, within};

/// A usual weight, shown as an example of what to type.
const USUAL_WEIGHT: Mass = Mass::from_g(230.0);
/// A usual thickness, shown as an example of what to type.
const USUAL_THICKNESS: Length = Length::from_mm(38.0);
/// As many are added by those who touch nothing.
const USUAL_COUNT: Count = Count(1);
/// More pieces than anyone has set out at once.
const MOST_PIECES: Count = Count(40);

/// What the weight typed is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weighed {
    /// Of each piece.
    Each,
    /// Of the pack, which its pieces share.
    Pack,
}

/// What is typed, and what was wrong with it.
#[derive(Clone, Copy)]
pub struct Typing {
    /// The text as typed.
    pub text: RwSignal<String>,
    /// What was wrong with it.
    pub bad: RwSignal<Option<String>>,
}

impl Typing {
    /// What stands in the field at first.
    pub fn holding(text: &str) -> Self {
        Self { text: RwSignal::new(text.to_owned()), bad: RwSignal::new(None) }
    }

    /// What was typed, read; what is wrong with it is said beside it.
    pub fn read<T>(self, how: impl FnOnce(&str) -> Result<T, String>) -> Option<T> {
        let read = how(&self.text.read_untracked());
        self.bad.set(read.as_ref().err().cloned());
        read.ok()
    }

    fn clear(self) {
        self.text.set(String::new());
    }
}

/// The form as a person fills it in.
#[derive(Clone, Copy)]
pub struct Form {
    /// How many pieces.
    pub count: Typing,
    /// What is weighed.
    pub weighed: RwSignal<Weighed>,
    /// The weight of that.
    pub weight: Typing,
    /// The thickest part of a usual one.
    pub thickest: Typing,
    /// How many of a pack are smaller.
    pub smaller: Typing,
    /// How many of a pack are larger.
    pub larger: Typing,
    /// How they are cut.
    pub shape: RwSignal<Shape>,
    /// Whether their middles are icy.
    pub icy: RwSignal<bool>,
}

impl Form {
    /// As it stands at first.
    pub fn new() -> Self {
        let blank = || Typing::holding("");
        Self {
            count: Typing::holding(&USUAL_COUNT.in_field()),
            weighed: RwSignal::new(Weighed::Each),
            weight: blank(),
            thickest: blank(),
            smaller: blank(),
            larger: blank(),
            shape: RwSignal::new(Shape::Natural),
            icy: RwSignal::new(false),
        }
    }

    /// How many pieces the form is about, as far as what is typed is a number of pieces. Reactive.
    pub fn pieces(self) -> u16 {
        read_count(&self.count.text.read()).unwrap_or(USUAL_COUNT).0
    }

    /// Whether it is about a pack of several. Reactive.
    pub fn is_of_several(self) -> bool {
        self.weighed.get() == Weighed::Pack && self.pieces() > 1
    }

    /// Weight and thickness of each piece; what is wrong is said beside its field.
    pub fn sizes(self) -> Option<Vec<(Mass, Option<Length>)>> {
        let count = self.count.read(read_count);
        let thickest = self.thickest.read(read_thickest);
        // Without a number of pieces a pack's limits are not known; nothing else is wrong yet.
        let Count(count) = count?;
        let places = usize::from(count);
        if self.weighed.get_untracked() == Weighed::Each {
            return Some(vec![(self.weight.read(read_weight)?, thickest?); places]);
        }
        // A pack of one has no others to be smaller than: what was typed of them is not in sight.
        let some = |typed: Typing, there_are: u16| {
            if count > 1 { typed.read(|text| some_of(text, there_are)) } else { Some(0) }
        };
        let smaller = some(self.smaller, count);
        let left = count - smaller.unwrap_or(0);
        let larger = some(self.larger, left);
        let all = |one: Mass| PackWeight(one * f64::from(count));
        let pack_limits = all(*limits::WEIGHT.start())..=all(*limits::WEIGHT.end());
        let weight = self.weight.read(|text| quantity(text, &pack_limits, all(USUAL_WEIGHT)));
        let (smaller, larger) = (smaller?, larger?);
        let of = |size, count: u16| core::iter::repeat_n(size, usize::from(count));
        let sizes: Vec<Size> = of(Size::Small, smaller)
            .chain(of(Size::Usual, left - larger))
            .chain(of(Size::Large, larger))
            .collect();
        let pieces = share_out(weight?.0, thickest?, &sizes);
        // One that would be too light or too heavy is the pack's fault.
        self.weight
            .read(|_| pieces.iter().try_for_each(|(weight, _)| within(*weight, &limits::WEIGHT)))
            .map(|()| pieces)
    }

    /// Ready for the next ones.
    pub fn clear(self) {
        for typed in [self.weight, self.thickest, self.smaller, self.larger] {
            typed.clear();
        }
        self.icy.set(false);
        self.count.text.set(USUAL_COUNT.in_field());
        self.weighed.set(Weighed::Each);
    }

    /// One more or one fewer; what is no number begins anew.
    pub fn step(self, by: i16) {
        let Count(now) = read_count(&self.count.text.read_untracked()).unwrap_or(USUAL_COUNT);
        let next = now.saturating_add_signed(by).clamp(USUAL_COUNT.0, MOST_PIECES.0);
        self.count.bad.set(None);
        self.count.text.set(Count(next).in_field());
    }
}

fn read_count(text: &str) -> Result<Count, String> {
    quantity(text, &(USUAL_COUNT..=MOST_PIECES), Count(4))
}

/// So many of those there are; nothing typed is none.
fn some_of(text: &str, there_are: u16) -> Result<u16, String> {
    let read = quantity_or_blank(text, &(Count(0)..=Count(there_are)), Count(2))?;
    Ok(read.map_or(0, |count| count.0))
}

/// The weight of one piece, as typed.
///
/// # Errors
/// What is accepted, in words.
pub fn read_weight(text: &str) -> Result<Mass, String> {
    quantity(text, &limits::WEIGHT, USUAL_WEIGHT)
}

/// The thickest part of one piece, as typed; blank where it was not measured.
///
/// # Errors
/// What is accepted, in words.
pub fn read_thickest(text: &str) -> Result<Option<Length>, String> {
    quantity_or_blank(text, &limits::THICKEST, USUAL_THICKNESS)
}
