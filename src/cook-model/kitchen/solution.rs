//! What store chicken holds before anyone salts it: much of it is sold with water and salt worked in.

use core::ops::RangeInclusive;

use serde::{Deserialize, Serialize};

use super::amounts::{Fraction, SaltLevel};

/// How much of such a solution is salt. An estimate: chicken sold with 15 % of it states 330 to 440 mg of
/// sodium on 112 g, and plain chicken 50 to 75 (package labels, from memory), which is 4 to 6 % of salt.
const SALT_IN_IT: Fraction = Fraction::from_percent(5.0);

/// What is taken to be in where nobody knows: the most that is common (common practice, no source), so that
/// nothing turns out saltier than was said.
const UNKNOWN: Fraction = Fraction::from_percent(15.0);

/// What a package can state.
pub const STATED: RangeInclusive<Fraction> =
    Fraction::from_percent(0.5)..=Fraction::from_percent(40.0);

/// What a package says of a solution added to the chicken. The water that it may have kept from chilling
/// ("retained water") is another thing, and holds no salt.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Solution {
    /// Nothing of one.
    #[default]
    None,
    /// The package is gone, or was not read.
    Unknown,
    /// So much of the weight, within [`STATED`].
    Stated(Fraction),
}

impl Solution {
    /// How salty the meat is by it alone.
    pub fn salt(self) -> SaltLevel {
        let share = match self {
            Self::None => Fraction::NONE,
            Self::Unknown => UNKNOWN,
            Self::Stated(share) => share,
        };
        SaltLevel::from_g_per_100g((share * SALT_IN_IT).percent())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::kitchen::nutrition::nutrition;
    use crate::quantity::Mass;

    // Package labels, from memory: chicken with 15 % of a solution states 330 to 440 mg of sodium on 4 oz (113 g).
    // Salt is 39.3 % sodium (atomic weights 22.99 and 35.45).
    #[test]
    fn a_serving_holds_the_sodium_that_its_label_states() {
        let serving = Mass::from_g(113.4);
        let solution = Solution::Stated(Fraction::from_percent(15.0));
        let salt = nutrition(serving, solution.salt().salt_on(serving)).salt;
        let sodium_mg = salt.g() * 393.0;
        assert!((330.0..=440.0).contains(&sodium_mg), "{sodium_mg} mg");
        assert!(nutrition(serving, Solution::None.salt().salt_on(serving)).salt.g() * 393.0 < 75.0);
    }

    #[test]
    fn who_does_not_know_is_not_surprised_by_salt() {
        assert_eq!(Solution::Unknown.salt(), Solution::Stated(Fraction::from_percent(15.0)).salt());
        let text = serde_json::to_string(&Solution::Stated(Fraction::from_percent(8.0))).unwrap();
        let read: Solution = serde_json::from_str(&text).unwrap();
        assert_eq!(read, Solution::Stated(Fraction::from_percent(8.0)));
    }
}
