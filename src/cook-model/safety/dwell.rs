//! How long chicken must stay at a temperature: the agency's table, as far as we have seen it.

use serde::{Deserialize, Serialize};

use crate::quantity::{Span, Temperature};

/// A column of the table, by the fat in the meat. A raw boneless breast has about 2.6 % (USDA
/// SR28), so the published 1 % column would be too short for it and is not offered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FatColumn {
    /// 5 % fat.
    Five,
    /// 12 % fat, for meat whose fat is not known: the longest times.
    #[default]
    Twelve,
}

/// One row: a temperature, and how long at it or above it gives the reduction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DwellRow {
    /// The temperature.
    pub at_least: Temperature,
    /// The time.
    pub dwell: Span,
}

const fn row(fahrenheit: f64, milliseconds: i64) -> DwellRow {
    DwellRow { at_least: Temperature::from_f(fahrenheit), dwell: Span::milliseconds(milliseconds) }
}

/// 12 % fat. Only rows read in a copy of the table; where copies disagree (142 to 144 F) the
/// longer time. Between two rows the colder one holds, so a gap only lengthens the wait.
/// Source: USDA FSIS, Time-Temperature Tables for Cooking Ready-to-Eat Poultry Products (2005),
/// chicken, 7-log10 reduction of *Salmonella*.
const TWELVE: [DwellRow; 11] = [
    row(136.0, 4_884_000),
    row(137.0, 3_930_000),
    row(138.0, 3_174_000),
    row(139.0, 2_580_000),
    row(140.0, 2_100_000),
    row(141.0, 1_722_000),
    row(142.0, 1_422_000),
    row(143.0, 1_188_000),
    row(144.0, 996_000),
    row(149.0, 324_000),
    row(150.0, 252_000),
];

/// 5 % fat, chosen and sourced likewise. That the copy read is of this column is from memory.
const FIVE: [DwellRow; 6] = [
    row(136.0, 4_104_000),
    row(140.0, 1_650_000),
    row(145.0, 552_000),
    row(150.0, 168_000),
    row(155.0, 47_700),
    row(160.0, 14_800),
];

/// The coldest temperature at which time counts in any column.
pub const LOWEST_HELD: Temperature = TWELVE[0].at_least;

/// The rows of a column, coldest first.
pub const fn dwell_rows(fat: FatColumn) -> &'static [DwellRow] {
    match fat {
        FatColumn::Five => &FIVE,
        FatColumn::Twelve => &TWELVE,
    }
}

/// How long a piece held at this temperature must stay there: the time of the nearest row that
/// is no hotter. None below the table.
pub fn dwell_at(temperature: Temperature, fat: FatColumn) -> Option<Span> {
    dwell_rows(fat).iter().rev().find(|row| temperature >= row.at_least).map(|row| row.dwell)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hotter_is_never_longer_and_more_fat_is_never_shorter() {
        for fat in [FatColumn::Five, FatColumn::Twelve] {
            for pair in dwell_rows(fat).windows(2) {
                assert!(pair[0].at_least < pair[1].at_least && pair[0].dwell > pair[1].dwell);
            }
        }
        for (five, twelve) in [(0, 0), (1, 4), (3, 10)] {
            let (five, twelve) = (FIVE[five], TWELVE[twelve]);
            assert_eq!(five.at_least, twelve.at_least);
            assert!(five.dwell < twelve.dwell);
        }
    }

    #[test]
    fn between_two_rows_the_colder_one_holds() {
        let at = |f: f64| dwell_at(Temperature::from_f(f), FatColumn::Twelve);
        assert_eq!(at(135.9), None);
        assert_eq!(at(148.9), at(144.0));
        assert_eq!(at(164.9), at(150.0));
    }
}
