//! Bare numbers a person types in the kitchen.

use crate::show;
use crate::typed::Typed;

/// A whole number: people, pieces, bags.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Count(pub u16);

impl Typed for Count {
    fn from_typed(value: f64) -> Self {
        // A number that is too large or negative stays outside every limit.
        Self(if value < 0.0 { u16::MAX } else { value.round() as u16 })
    }
    fn in_unit(self) -> f64 {
        f64::from(self.0)
    }
    fn decimals() -> usize {
        0
    }
    fn unit() -> String {
        String::new()
    }
}

/// A number with decimals: parts, per cent, grams of salt.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Plain(pub f64);

impl Typed for Plain {
    fn from_typed(value: f64) -> Self {
        Self(value)
    }
    fn in_unit(self) -> f64 {
        self.0
    }
    fn decimals() -> usize {
        2
    }
    fn unit() -> String {
        String::new()
    }
    fn in_field(self) -> String {
        show::number(self.0, 2)
    }
}
