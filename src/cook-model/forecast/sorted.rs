//! Readings that do not fit: slips, or a model that is wrong?

use crate::history::EntryId;
use crate::quantity::{Moment, Span};

/// Readings this close together were made in one go.
const IN_ONE_GO: Span = Span::minutes(5);

/// Whether what was read at these moments was read in one go.
pub(super) fn in_one_go(one: Moment, other: Moment) -> bool {
    (one - other).abs() <= IN_ONE_GO
}

/// A reading that does not fit.
#[derive(Clone, Copy, Debug)]
pub(super) struct Misfit {
    /// Which of its piece's readings it is.
    pub number: usize,
    pub entry: EntryId,
    pub at: Moment,
    /// Whether it is lower than the others let expect.
    pub low: bool,
}

/// What has been made out of readings that do not fit.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Sorted {
    /// Taken as slips, and left out.
    pub slips: Vec<EntryId>,
    /// Taken as right, whatever the model says; older readings give way to them.
    pub believed: Vec<EntryId>,
}

impl Sorted {
    /// Sorts the readings that do not fit, given by piece. One that stands alone is a slip. Where
    /// several of one go are all low, or all high, or two in a row of one piece are, it is the model
    /// that is wrong: the fire went out, the lid stood open.
    pub(super) fn of(misfits: &[Vec<Misfit>]) -> Self {
        let mut sorted = Self::default();
        let all: Vec<&Misfit> = misfits.iter().flatten().collect();
        for piece in misfits {
            for misfit in piece {
                let alike = |other: &Misfit| other.entry != misfit.entry && other.low == misfit.low;
                let in_a_row = |other: &Misfit| other.number.abs_diff(misfit.number) == 1;
                let company =
                    all.iter().any(|other| alike(other) && in_one_go(other.at, misfit.at))
                        || piece.iter().any(|other| alike(other) && in_a_row(other));
                let list = if company { &mut sorted.believed } else { &mut sorted.slips };
                list.push(misfit.entry);
            }
        }
        sorted
    }

    /// Whether every reading fits.
    pub(super) fn is_empty(&self) -> bool {
        self.slips.is_empty() && self.believed.is_empty()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::history::DeviceId;
    use chrono::DateTime;

    fn misfit(number: usize, minute: i64, low: bool) -> Misfit {
        let entry = EntryId { count: 100 * minute as u64 + number as u64, device: DeviceId(1) };
        Misfit { number, entry, at: DateTime::UNIX_EPOCH + Span::minutes(minute), low }
    }

    #[test]
    fn one_alone_is_a_slip_and_company_is_believed() {
        let cases = [
            (vec![vec![misfit(3, 40, true)], vec![]], 1),
            // Two pieces swapped.
            (vec![vec![misfit(3, 40, true)], vec![misfit(4, 41, false)]], 2),
            // Two slips far apart.
            (vec![vec![misfit(1, 20, true), misfit(3, 50, true)]], 2),
            // The lid stood open.
            (vec![vec![misfit(3, 40, true)], vec![misfit(4, 41, true)]], 0),
            (vec![vec![misfit(3, 40, true), misfit(4, 50, true)]], 0),
        ];
        for (misfits, slips) in cases {
            assert_eq!(Sorted::of(&misfits).slips.len(), slips, "{misfits:?}");
        }
    }
}
