//! A weight as people say it: "7 oz", "2 lb 4 oz", "1/2 lb", or a bare number in the field's own unit.

use core::iter::Peekable;
use core::str::Chars;

use super::{Mass, NumberProblem, number};

/// Ounces in an avoirdupois pound (exact).
const OUNCES: f64 = 16.0;

/// What a weight is said in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WeightUnit {
    /// Avoirdupois ounces.
    Ounce,
    /// Pounds of sixteen ounces.
    Pound,
    /// Grams.
    Gram,
    /// Kilograms.
    Kilogram,
}

impl WeightUnit {
    /// So many of this unit.
    pub const fn mass(self, count: f64) -> Mass {
        match self {
            Self::Ounce => Mass::from_ounces(count),
            Self::Pound => Mass::from_ounces(count * OUNCES),
            Self::Gram => Mass::from_g(count),
            Self::Kilogram => Mass::from_kg(count),
        }
    }

    /// The unit that a person writes like this, in English or Spanish.
    fn written(word: &str) -> Option<Self> {
        Some(match word {
            "oz" | "ounce" | "ounces" | "onza" | "onzas" => Self::Ounce,
            "lb" | "lbs" | "pound" | "pounds" | "libra" | "libras" => Self::Pound,
            "g" | "gr" | "gram" | "grams" | "gramo" | "gramos" => Self::Gram,
            "kg" | "kilo" | "kilos" => Self::Kilogram,
            _ => return None,
        })
    }
}

/// Reads a weight as a person types it: numbers, each with its unit, and fractions. A number without
/// a unit is in `bare`, behind pounds in ounces.
///
/// # Errors
/// [`NumberProblem`] says what was typed instead.
///
/// ```
/// use cook_model::quantity::{Mass, WeightUnit, weight};
/// assert_eq!(weight("7 oz", WeightUnit::Gram), Ok(Mass::from_ounces(7.0)));
/// assert_eq!(weight("2 lb 4 oz", WeightUnit::Ounce), Ok(Mass::from_ounces(36.0)));
/// assert_eq!(weight("1/2 lb", WeightUnit::Ounce), Ok(Mass::from_ounces(8.0)));
/// assert_eq!(weight("230", WeightUnit::Gram), Ok(Mass::from_g(230.0)));
/// ```
pub fn weight(text: &str, bare: WeightUnit) -> Result<Mass, NumberProblem> {
    let text = text.trim().to_ascii_lowercase();
    if text.is_empty() {
        return Err(NumberProblem::Blank);
    }
    let mut rest = text.chars().peekable();
    let (mut sum, mut last) = (Mass::ZERO, None);
    loop {
        let count =
            count(&take(&mut rest, |c| !c.is_ascii_alphabetic())).map_err(
                |problem| match problem {
                    // A unit without a number is not nothing.
                    NumberProblem::Blank => NumberProblem::NotANumber,
                    other => other,
                },
            )?;
        let word = take(&mut rest, |c| c.is_ascii_alphabetic() || c == '.');
        let unit = match (word.trim_end_matches('.'), last) {
            ("", Some(WeightUnit::Pound)) => WeightUnit::Ounce,
            ("", None) => bare,
            (word, _) => WeightUnit::written(word).ok_or(NumberProblem::NotANumber)?,
        };
        let more = unit.mass(count);
        // Of what is put together each part counts on: "2 lb -4 oz" is a slip.
        if last.is_some() && more < Mass::ZERO {
            return Err(NumberProblem::NotANumber);
        }
        (sum, last) = (sum + more, Some(unit));
        if rest.peek().is_none() {
            return Ok(sum);
        }
    }
}

fn take(rest: &mut Peekable<Chars<'_>>, is_part: impl Fn(char) -> bool) -> String {
    let mut taken = String::new();
    while let Some(next) = rest.next_if(|c| is_part(*c)) {
        taken.push(next);
    }
    taken.trim().to_owned()
}

/// A number, a fraction, or a number and a fraction: "7", "1/2", "1 1/2".
fn count(text: &str) -> Result<f64, NumberProblem> {
    let Some((before, below)) = text.split_once('/') else { return number(text) };
    let (whole, above) = before.trim_end().rsplit_once(' ').unwrap_or(("0", before));
    let (whole, above, below) = (number(whole)?, number(above)?, number(below)?);
    if whole < 0.0 || above < 0.0 || below <= 0.0 {
        return Err(NumberProblem::NotANumber);
    }
    Ok(whole + above / below)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Sixteen ounces to the pound, 453.592 37 g (international yard and pound agreement of 1959).
    #[test]
    fn what_people_type() {
        let cases = [
            ("7oz", 198.5),
            ("7 OZ.", 198.5),
            ("2 lb 4 oz", 1020.6),
            ("2lb4oz", 1020.6),
            ("2 lbs 4", 1020.6),
            ("1/2 lb", 226.8),
            ("1 1/2 lb", 680.4),
            ("2,25 lb", 1020.6),
            ("1 libra 2 onzas", 510.3),
            ("0.5 kg", 500.0),
            ("230 g", 230.0),
            ("8", 226.8),
            ("-40", -1134.0),
        ];
        for (text, grams) in cases {
            let read = weight(text, WeightUnit::Ounce).unwrap_or(Mass::ZERO).g();
            assert!((read - grams).abs() < 0.1, "typed {text:?}: {read} g");
        }
    }

    #[test]
    fn what_is_no_weight() {
        for text in
            ["half", "lb", "1e3", "7 stone", "7 7", "1/0 lb", "1/2/3 lb", "2 lb -4 oz", "oz 7"]
        {
            let read = weight(text, WeightUnit::Ounce);
            assert_eq!(read, Err(NumberProblem::NotANumber), "typed {text:?}");
        }
        assert_eq!(weight(" ", WeightUnit::Ounce), Err(NumberProblem::Blank));
        assert_eq!(weight("1,234", WeightUnit::Gram), Err(NumberProblem::AmbiguousComma));
    }

    proptest! {
        #[test]
        fn a_bare_number_is_read_as_any_number(text in "[-0-9.,]{0,6}") {
            let read = weight(&text, WeightUnit::Gram).map(Mass::g);
            prop_assert_eq!(read, number(&text));
        }

        #[test]
        fn never_panics(text in "\\PC*") {
            let _ = weight(&text, WeightUnit::Gram);
        }
    }
}
