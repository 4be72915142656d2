//! The cook's own rub: how much to mix for the day's pieces, and how salty it makes them.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::amounts::{Area, Fraction, SaltLevel, Volume};
use super::spice::Spice;
use super::surface_area;
use crate::piece::Piece;
use crate::quantity::Mass;

/// One line of a recipe.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Ingredient {
    /// The cook's own name for it.
    pub name: String,
    /// What it is.
    #[serde(flatten)]
    pub spice: Spice,
    /// How many parts.
    pub parts: f64,
}

/// What a part is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Measure {
    /// Equal volumes: spoons or cups.
    #[default]
    Volume,
    /// Equal weights.
    Weight,
}

/// A rub in parts.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Recipe {
    /// The cook's own name for it.
    pub name: String,
    /// What a part is.
    pub measure: Measure,
    /// Its lines.
    pub ingredients: Vec<Ingredient>,
}

/// How thickly the rub goes on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Coat {
    /// A dusting: the meat shows through.
    Light,
    /// An even cover: about a tablespoon to the pound (common practice, no source).
    #[default]
    Medium,
    /// Packed on, twice as much.
    Heavy,
}

impl Coat {
    /// Rub on the surface, g per cm2. Medium is a tablespoon of rub (some 9 g) on a pound of
    /// breast, which has some 450 cm2; light is half of it and heavy twice.
    const fn grams_per_cm2(self) -> f64 {
        match self {
            Self::Light => 0.010,
            Self::Medium => 0.020,
            Self::Heavy => 0.040,
        }
    }
}

/// Oil that makes a rub stick, cm3 on a cm2: a film of a twentieth of a millimetre, about a
/// teaspoon and a half to three pieces (common practice, no source).
const OIL_FILM_CM: f64 = 0.005;

/// The limit a cook starts with: what a dry brine gives, 1 to 1.5 % (common practice, no source).
pub const USUAL_LIMIT: SaltLevel = SaltLevel::from_g_per_100g(1.5);

/// One line of what to measure out.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// The cook's own name for it.
    pub name: String,
    /// By weight.
    pub weight: Mass,
    /// By the spoon.
    pub volume: Volume,
}

/// What to mix for the day's pieces.
#[derive(Clone, Debug, PartialEq)]
pub struct Mix {
    /// Each ingredient, in the recipe's order.
    pub measured: Vec<Measured>,
    /// The whole of it.
    pub weight: Mass,
    /// The salt in it.
    pub salt: Mass,
    /// How salty the meat is with it all together.
    pub level: SaltLevel,
    /// How salty the saltiest piece is with it: the smallest has the most surface for its weight.
    pub saltiest: SaltLevel,
    /// Whether the saltiest piece passes the cook's limit.
    pub over_limit: bool,
    /// Oil to make it stick.
    pub oil: Volume,
}

/// Why a rub could not be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum RubProblem {
    /// Nothing in the recipe.
    #[error("the recipe has no parts yet; one or more parts of one ingredient are accepted")]
    Empty,
    /// An amount of parts that is not one.
    #[error("parts must be 0 or more, such as 2 or 0.5")]
    Parts,
    /// A salt share that is not one.
    #[error("the salt in a blend must be 0 to 100 %")]
    SaltShare,
    /// No pieces to rub.
    #[error("there are no pieces to rub; set out at least one")]
    NoPieces,
}

impl Recipe {
    /// How much of the rub is salt.
    ///
    /// # Errors
    /// [`RubProblem`] where the recipe is empty or a number in it is not possible.
    pub fn salt_share(&self) -> Result<Fraction, RubProblem> {
        let shares = self.shares()?;
        Ok(shares.iter().zip(&self.ingredients).map(|(share, i)| *share * i.spice.salt()).sum())
    }

    /// How much of the rub each ingredient is; together they are all of it.
    fn shares(&self) -> Result<Vec<Fraction>, RubProblem> {
        let mut weights = Vec::with_capacity(self.ingredients.len());
        for Ingredient { spice, parts, .. } in &self.ingredients {
            if !(parts.is_finite() && *parts >= 0.0) {
                return Err(RubProblem::Parts);
            }
            if !spice.salt().is_possible() {
                return Err(RubProblem::SaltShare);
            }
            weights.push(match self.measure {
                Measure::Weight => *parts,
                Measure::Volume => spice.weight(Volume::from_teaspoons(*parts)).g(),
            });
        }
        let sum: f64 = weights.iter().sum();
        if sum > 0.0 && sum.is_finite() {
            let percent = |weight: f64| Fraction::from_percent(100.0 * weight / sum);
            Ok(weights.into_iter().map(percent).collect())
        } else {
            Err(RubProblem::Empty)
        }
    }

    /// What to mix for these pieces, which hold so much salt already.
    ///
    /// # Errors
    /// [`RubProblem`] where the recipe is empty or impossible, or no piece is set out.
    pub fn mix(
        &self,
        pieces: &[Piece],
        coat: Coat,
        limit: SaltLevel,
        held: SaltLevel,
    ) -> Result<Mix, RubProblem> {
        let shares = self.shares()?;
        let salt_share = self.salt_share()?;
        if pieces.is_empty() {
            return Err(RubProblem::NoPieces);
        }
        let rub_on = |piece: &Piece| Mass::from_g(surface_area(piece).cm2() * coat.grams_per_cm2());
        let weight: Mass = pieces.iter().map(rub_on).sum();
        let meat: Mass = pieces.iter().map(|piece| piece.weight).sum();
        let area: Area = pieces.iter().map(surface_area).sum();
        let level_of =
            |piece: &Piece| held + SaltLevel::of(salt_share.of(rub_on(piece)), piece.weight);
        let saltiest =
            pieces.iter().map(level_of).fold(SaltLevel::NONE, |a, b| if b > a { b } else { a });
        let measured = self.ingredients.iter().zip(&shares).map(|(ingredient, share)| {
            let weight = share.of(weight);
            let volume = ingredient.spice.volume(weight);
            Measured { name: ingredient.name.clone(), weight, volume }
        });
        Ok(Mix {
            measured: measured.collect(),
            weight,
            salt: salt_share.of(weight),
            level: held + SaltLevel::of(salt_share.of(weight), meat),
            saltiest,
            over_limit: saltiest > limit,
            oil: Volume::from_ml(area.cm2() * OIL_FILM_CM),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::piece::Shape;
    use crate::quantity::Temperature;
    use proptest::prelude::*;

    fn breast(grams: f64) -> Piece {
        Piece {
            weight: Mass::from_g(grams),
            thickest: None,
            shape: Shape::Natural,
            start: Temperature::from_f(40.0),
            icy: false,
        }
    }

    /// A rub of salt and paprika with this share of salt by weight.
    fn rub(salt: f64) -> Recipe {
        let line = |name: &str, spice, parts| Ingredient { name: name.to_owned(), spice, parts };
        Recipe {
            name: "plain".to_owned(),
            measure: Measure::Weight,
            ingredients: vec![
                line("salt", Spice::TableSalt, salt),
                line("paprika", Spice::Paprika, 1.0 - salt),
            ],
        }
    }

    #[test]
    fn a_medium_coat_is_about_a_tablespoon_to_the_pound() {
        // Common practice, no source. A tablespoon of an ordinary rub weighs 8 to 11 g.
        let pound = [breast(226.8), breast(226.8)];
        let mix = rub(0.2).mix(&pound, Coat::Medium, USUAL_LIMIT, SaltLevel::NONE).unwrap();
        assert!((7.0..12.0).contains(&mix.weight.g()), "{:?}", mix.weight);
    }

    #[test]
    fn rubs_under_a_fifth_of_salt_can_go_on_heavily() {
        // Common practice, no source; and a much saltier rub cannot.
        let pieces = [breast(180.0), breast(250.0), breast(320.0)];
        let low = rub(0.2).mix(&pieces, Coat::Heavy, USUAL_LIMIT, SaltLevel::NONE).unwrap();
        assert!(!low.over_limit, "{:?}", low.saltiest);
        let high = rub(0.5).mix(&pieces, Coat::Heavy, USUAL_LIMIT, SaltLevel::NONE).unwrap();
        assert!(high.over_limit, "{:?}", high.saltiest);
    }

    #[test]
    fn salt_that_the_meat_holds_already_counts() {
        // A coat that a plain breast bears, on one that was sold salted: past the limit.
        let pieces = [breast(180.0), breast(250.0)];
        let held = SaltLevel::from_g_per_100g(0.75);
        let plain = rub(0.2).mix(&pieces, Coat::Heavy, USUAL_LIMIT, SaltLevel::NONE).unwrap();
        let salted = rub(0.2).mix(&pieces, Coat::Heavy, USUAL_LIMIT, held).unwrap();
        let more = |with: SaltLevel, without: SaltLevel| with.g_per_100g() - without.g_per_100g();
        assert!((more(salted.level, plain.level) - 0.75).abs() < 1e-9);
        assert!((more(salted.saltiest, plain.saltiest) - 0.75).abs() < 1e-9);
        assert!(salted.over_limit && !plain.over_limit);
        assert_eq!(salted.salt, plain.salt, "it is no part of the rub");
    }

    #[test]
    fn a_part_by_volume_weighs_what_a_spoon_of_it_does() {
        let mut recipe = rub(0.5);
        recipe.measure = Measure::Volume;
        // Equal spoons: 6 g of salt to 2.3 g of paprika.
        assert!((recipe.salt_share().unwrap().percent() - 600.0 / 8.3).abs() < 1e-9);
        let mix = recipe.mix(&[breast(250.0)], Coat::Light, USUAL_LIMIT, SaltLevel::NONE).unwrap();
        let [salt, paprika] = &mix.measured[..] else { panic!("two lines") };
        assert!((salt.volume.ml() - paprika.volume.ml()).abs() < 1e-9);
    }

    #[test]
    fn impossible_recipes_are_refused() {
        let pieces = [breast(250.0)];
        let mix = |recipe: &Recipe| {
            recipe.mix(&pieces, Coat::Light, USUAL_LIMIT, SaltLevel::NONE).unwrap_err()
        };
        assert_eq!(mix(&Recipe::default()), RubProblem::Empty);
        let mut recipe = rub(0.2);
        recipe.ingredients[0].parts = -1.0;
        assert_eq!(mix(&recipe), RubProblem::Parts);
        recipe.ingredients[0].parts = f64::NAN;
        assert_eq!(mix(&recipe), RubProblem::Parts);
        recipe.ingredients[0].parts = 1.0;
        recipe.ingredients[0].spice = Spice::Blend { salt: Fraction::from_percent(2000.0) };
        assert_eq!(mix(&recipe), RubProblem::SaltShare);
        let none = rub(0.2).mix(&[], Coat::Light, USUAL_LIMIT, SaltLevel::NONE).unwrap_err();
        assert_eq!(none, RubProblem::NoPieces);
    }

    #[test]
    fn a_recipe_survives_being_stored() {
        let mut recipe = rub(0.3);
        recipe.ingredients[1].spice = Spice::Blend { salt: Fraction::from_percent(15.0) };
        let text = serde_json::to_string(&recipe).unwrap();
        assert_eq!(serde_json::from_str::<Recipe>(&text).unwrap(), recipe);
    }

    proptest! {
        #[test]
        fn more_meat_needs_more_rub(a in 80.0..500.0_f64, more in 1.0..200.0_f64) {
            let mix = |g| rub(0.2).mix(&[breast(g)], Coat::Medium, USUAL_LIMIT, SaltLevel::NONE).unwrap();
            prop_assert!(mix(a + more).weight > mix(a).weight);
            // ... but a larger piece is less salty: it has less surface for its weight.
            prop_assert!(mix(a + more).level < mix(a).level);
        }

        #[test]
        fn the_parts_make_up_the_whole(salt in 0.0..1.0_f64, n in 1_usize..20) {
            let pieces: Vec<Piece> = (0..n).map(|i| breast(150.0 + 10.0 * i as f64)).collect();
            let mix = rub(salt).mix(&pieces, Coat::Heavy, USUAL_LIMIT, SaltLevel::NONE).unwrap();
            let sum: Mass = mix.measured.iter().map(|m| m.weight).sum();
            prop_assert!((sum.g() - mix.weight.g()).abs() < 1e-9);
            prop_assert!((mix.salt.g() - salt * mix.weight.g()).abs() < 1e-9);
            prop_assert!(mix.saltiest >= mix.level);
        }
    }
}
