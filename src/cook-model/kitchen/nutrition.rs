//! What is in a portion: energy, protein, fat, salt.

use serde::{Deserialize, Serialize};

use crate::quantity::Mass;

/// Parts of raw chicken breast by weight, and its sodium: USDA National Nutrient Database for
/// Standard Reference 28, "Chicken, broilers or fryers, breast, meat only, raw" (protein and fat
/// as listed; sodium, 45 mg per 100 g, from memory).
const RAW_PROTEIN: f64 = 0.2250;
const RAW_FAT: f64 = 0.0262;
const RAW_SODIUM: f64 = 0.00045;

/// Energy of meat's protein and fat, kcal per g: Atwater specific factors (Merrill & Watt 1973,
/// USDA Agriculture Handbook 74, table 13; from memory).
const KCAL_PER_G_PROTEIN: f64 = 4.27;
const KCAL_PER_G_FAT: f64 = 9.02;

/// Grams of salt that hold one gram of sodium: molar masses 58.44 / 22.99.
const SALT_PER_SODIUM: f64 = 58.44 / 22.99;

/// Food energy. Serialised in kilocalories.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Energy(f64);

impl Energy {
    /// Kilocalories, the Calories of a US label.
    pub const fn kcal(self) -> f64 {
        self.0
    }

    /// Kilojoules (4.184 to the kilocalorie).
    pub const fn kj(self) -> f64 {
        self.0 * 4.184
    }
}

/// What a portion holds. An estimate: no two birds are alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nutrition {
    /// Energy of protein and fat; a rub's sugar is left out.
    pub energy: Energy,
    /// Protein.
    pub protein: Mass,
    /// Fat, without oil put on.
    pub fat: Mass,
    /// Salt: the meat's own, and what was rubbed on, all of it taken as eaten.
    pub salt: Mass,
}

/// What a portion of cooked meat holds, from the raw meat it came from and the salt put on that.
///
/// What a piece loses in cooking is taken as water: protein and fat stay. That is why it goes by
/// the raw weight, and why a drier piece holds more of each in 100 g.
pub fn nutrition(raw: Mass, salt_put_on: Mass) -> Nutrition {
    let protein = raw * RAW_PROTEIN;
    let fat = raw * RAW_FAT;
    Nutrition {
        energy: Energy(protein.g() * KCAL_PER_G_PROTEIN + fat.g() * KCAL_PER_G_FAT),
        protein,
        fat,
        salt: raw * (RAW_SODIUM * SALT_PER_SODIUM) + salt_put_on,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn raw_meat_has_the_tables_energy() {
        // USDA SR28, breast, meat only, raw: 120 kcal per 100 g (from memory).
        let raw = nutrition(Mass::from_g(100.0), Mass::ZERO);
        assert!((raw.energy.kcal() - 120.0).abs() < 1.0, "{:?}", raw.energy);
    }

    #[test]
    fn roasted_meat_follows_from_its_yield() {
        // USDA SR28, breast, meat only, roasted: protein 31.02, fat 3.57 g, 165 kcal (from
        // memory) per 100 g; the yield that keeps all protein is 22.50 / 31.02.
        let raw = Mass::from_g(100.0 * 31.02 / 22.50);
        let roasted = nutrition(raw, Mass::ZERO);
        assert!((roasted.protein.g() - 31.02).abs() < 1e-9);
        assert!((roasted.fat.g() - 3.57).abs() < 0.1, "{:?}", roasted.fat);
        assert!((roasted.energy.kcal() - 165.0).abs() < 2.0, "{:?}", roasted.energy);
    }

    #[test]
    fn salt_put_on_adds_to_the_meats_own() {
        let plain = nutrition(Mass::from_g(200.0), Mass::ZERO);
        let rubbed = nutrition(Mass::from_g(200.0), Mass::from_g(2.0));
        assert!((rubbed.salt.g() - plain.salt.g() - 2.0).abs() < 1e-12);
        assert!(plain.salt.g() > 0.2 && plain.salt.g() < 0.25);
    }
}
