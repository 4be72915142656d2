use thiserror::Error;

/// Why a typed text is not a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum NumberProblem {
    /// Nothing was typed.
    #[error("nothing is typed yet; a number such as 38 or 1.5 is accepted")]
    Blank,
    /// Something other than digits and one decimal mark was typed.
    #[error("this is not a number; digits with at most one decimal point or comma are accepted")]
    NotANumber,
    /// A comma with exactly three digits behind it could mean thousands or decimals.
    #[error("1,234 can be read two ways; write 1234 or 1.234")]
    AmbiguousComma,
}

/// Reads a number as a person types it: digits, an optional minus sign, and a decimal point or
/// comma. Spaces around it are ignored.
///
/// # Errors
/// [`NumberProblem`] says what was typed instead.
///
/// ```
/// use cook_model::quantity::{NumberProblem, number};
/// assert_eq!(number(" 63,5 "), Ok(63.5));
/// assert_eq!(number("1,234"), Err(NumberProblem::AmbiguousComma));
/// assert_eq!(number("1e9"), Err(NumberProblem::NotANumber));
/// ```
pub fn number(text: &str) -> Result<f64, NumberProblem> {
    let text = text.trim();
    if text.is_empty() {
        return Err(NumberProblem::Blank);
    }
    let digits = text.strip_prefix(['-', '\u{2212}']).unwrap_or(text);
    if digits.is_empty() || !digits.chars().all(|c| c.is_ascii_digit() || c == '.' || c == ',') {
        return Err(NumberProblem::NotANumber);
    }
    let (whole, tail) = digits.split_once([',', '.']).unwrap_or((digits, ""));
    if digits.contains(',') && tail.len() == 3 && !whole.is_empty() && whole != "0" {
        return Err(NumberProblem::AmbiguousComma);
    }
    if tail.contains([',', '.']) || (whole.is_empty() && tail.is_empty()) {
        return Err(NumberProblem::NotANumber);
    }
    // JSON's own reader is in the program already; the standard library's would come with a table of ten
    // kilobytes. JSON wants exactly one zero before a point, and a digit behind it.
    let json = format!("{}.{tail}0", whole.trim_start_matches('0'));
    let json = if json.starts_with('.') { format!("0{json}") } else { json };
    let size: f64 = serde_json::from_str(&json).map_err(|_| NumberProblem::NotANumber)?;
    if !size.is_finite() {
        return Err(NumberProblem::NotANumber);
    }
    Ok(if digits.len() == text.len() { size } else { -size })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn what_people_type() {
        let cases = [
            ("147", Ok(147.0)),
            ("147.", Ok(147.0)),
            ("007", Ok(7.0)),
            ("00,50", Ok(0.5)),
            ("0", Ok(0.0)),
            (".5", Ok(0.5)),
            ("0,125", Ok(0.125)),
            ("-40", Ok(-40.0)),
            ("\u{2212}3", Ok(-3.0)),
            ("", Err(NumberProblem::Blank)),
            ("   ", Err(NumberProblem::Blank)),
            ("abc", Err(NumberProblem::NotANumber)),
            ("14 7", Err(NumberProblem::NotANumber)),
            ("1.2.3", Err(NumberProblem::NotANumber)),
            ("-", Err(NumberProblem::NotANumber)),
            (".", Err(NumberProblem::NotANumber)),
            ("inf", Err(NumberProblem::NotANumber)),
            ("2,500", Err(NumberProblem::AmbiguousComma)),
        ];
        for (text, expected) in cases {
            assert_eq!(number(text), expected, "typed {text:?}");
        }
    }

    proptest! {
        #[test]
        fn never_panics_and_never_yields_a_non_number(text in ".*") {
            if let Ok(value) = number(&text) {
                prop_assert!(value.is_finite());
            }
        }

        #[test]
        fn reads_back_what_it_wrote(value in -9999.0..9999.0_f64) {
            let text = format!("{value:.2}");
            // The standard library's reader, which this one does without.
            prop_assert_eq!(number(&text).unwrap(), text.parse::<f64>().unwrap());
        }
    }
}
