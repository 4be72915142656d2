//! Thermal properties of a food from its composition.
//!
//! Component equations: Choi & Okos 1986, "Effects of temperature and composition on the thermal
//! properties of foods", in Le Maguer & Jelen (eds), Food Engineering and Process Applications
//! vol. 1, pp. 93-101, as reprinted in ASHRAE Handbook Refrigeration 2006, chapter 9, tables 1-2
//! (chapter 19 since 2010). Valid from -40 to 150 C, unfrozen water here.

use super::units::{Conductivity, Density, Diffusivity, HeatCapacity};
use crate::quantity::Temperature;

/// Heat of fusion of water at 0 C, J/kg (handbook value, 333.6 kJ/kg).
pub(crate) const FUSION: f64 = 333.6e3;
/// Water that protein holds so that it does not freeze, kg per kg of protein (Pham 1987, as in
/// ASHRAE Handbook Refrigeration, Thermal Properties of Foods; from memory).
const BOUND: f64 = 0.4;

/// A quadratic in degrees Celsius: constant, linear and square coefficient.
type Quadratic = [f64; 3];

/// One component of a food: conductivity W/mK, density kg/m3, heat capacity kJ/kgK.
struct Component {
    conductivity: Quadratic,
    density: Quadratic,
    capacity: Quadratic,
}

const WATER: Component = Component {
    conductivity: [0.57109, 1.7625e-3, -6.7036e-6],
    density: [997.18, 3.1439e-3, -3.7574e-3],
    capacity: [4.1289, -9.0864e-5, 5.4731e-6],
};
const PROTEIN: Component = Component {
    conductivity: [0.17881, 1.1958e-3, -2.7178e-6],
    density: [1329.9, -0.5184, 0.0],
    capacity: [2.0082, 1.2089e-3, -1.3129e-6],
};
// The linear term of the conductivity is negative in the printed handbook; copies that lost the
// sign move the conductivity of lean meat by under 0.2 %.
const FAT: Component = Component {
    conductivity: [0.18071, -2.7604e-4, -1.7749e-7],
    density: [925.59, -0.41757, 0.0],
    capacity: [1.9842, 1.4733e-3, -4.8008e-6],
};
const CARBOHYDRATE: Component = Component {
    conductivity: [0.20141, 1.3874e-3, -4.3312e-6],
    density: [1599.1, -0.31046, 0.0],
    capacity: [1.5488, 1.9625e-3, -5.9399e-6],
};
const ASH: Component = Component {
    conductivity: [0.32962, 1.4011e-3, -2.9069e-6],
    density: [2423.8, -0.28063, 0.0],
    capacity: [1.0926, 1.8896e-3, -3.6817e-6],
};

fn at(q: &Quadratic, celsius: f64) -> f64 {
    q[0] + celsius * (q[1] + celsius * q[2])
}

/// What a food is made of, as parts by mass; the parts need not sum to one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Composition {
    /// Water.
    pub water: f64,
    /// Protein.
    pub protein: f64,
    /// Fat.
    pub fat: f64,
    /// Carbohydrate.
    pub carbohydrate: f64,
    /// Ash: minerals, salt.
    pub ash: f64,
}

impl Composition {
    /// Raw chicken breast, skinless and boneless: USDA National Nutrient Database SR28, "Chicken,
    /// broilers or fryers, breast, meat only, raw": water 73.90, protein 22.50, fat 2.62 %; the
    /// ash, 1.1 %, from memory.
    pub const RAW_BREAST: Self =
        Self { water: 73.90, protein: 22.50, fat: 2.62, carbohydrate: 0.0, ash: 1.1 };

    /// Water only: the limit in which the component equations must give water's own properties.
    pub const WATER: Self =
        Self { water: 1.0, protein: 0.0, fat: 0.0, carbohydrate: 0.0, ash: 0.0 };

    /// The components with their mass fractions, which sum to one.
    fn parts(&self) -> [(&'static Component, f64); 5] {
        let sum = self.water + self.protein + self.fat + self.carbohydrate + self.ash;
        [
            (&WATER, self.water / sum),
            (&PROTEIN, self.protein / sum),
            (&FAT, self.fat / sum),
            (&CARBOHYDRATE, self.carbohydrate / sum),
            (&ASH, self.ash / sum),
        ]
    }

    /// The part by mass that is water and can freeze.
    pub(crate) fn freezable(&self) -> f64 {
        let sum = self.water + self.protein + self.fat + self.carbohydrate + self.ash;
        (self.water - BOUND * self.protein).max(0.0) / sum
    }

    /// Density: `1 / sum(x_i / rho_i)`, components mixing without change of volume.
    pub fn density(&self, t: Temperature) -> Density {
        let volume: f64 = self.parts().iter().map(|(c, x)| x / at(&c.density, t.c())).sum();
        Density::from_kg_per_m3(1.0 / volume)
    }

    /// Specific heat capacity: `sum(x_i c_i)`.
    pub fn heat_capacity(&self, t: Temperature) -> HeatCapacity {
        let kj: f64 = self.parts().iter().map(|(c, x)| x * at(&c.capacity, t.c())).sum();
        HeatCapacity::from_j_per_kgk(1e3 * kj)
    }

    /// Conductivity with the components lying parallel to the flow of heat, `sum(v_i k_i)` over
    /// volume fractions: the upper bound, which handbooks use.
    pub fn parallel_conductivity(&self, t: Temperature) -> Conductivity {
        let density = self.density(t).kg_per_m3();
        let k: f64 = self
            .parts()
            .iter()
            .map(|(c, x)| x * density / at(&c.density, t.c()) * at(&c.conductivity, t.c()))
            .sum();
        Conductivity::from_w_per_mk(k)
    }

    /// Conductivity of solids dispersed in water (Maxwell-Eucken):
    ///
    /// ```text
    /// k = kc (2 kc + kd - 2 v (kc - kd)) / (2 kc + kd + v (kc - kd))
    /// ```
    ///
    /// where `kc` is water's, `kd` the solids' parallel mean and `v` the solids' share of the
    /// volume. It gives 0.479 W/mK at 5 C for raw breast, as Sweat, Haugh & Stadelman 1973
    /// (J. Food Sci.) measured on white chicken; the parallel mean is 3.5 % higher.
    pub fn conductivity(&self, t: Temperature) -> Conductivity {
        let density = self.density(t).kg_per_m3();
        let (mut share, mut solids) = (0.0, 0.0);
        for (c, x) in &self.parts()[1..] {
            let v = x * density / at(&c.density, t.c());
            share += v;
            solids += v * at(&c.conductivity, t.c());
        }
        let kc = at(&WATER.conductivity, t.c());
        if share <= 0.0 {
            return Conductivity::from_w_per_mk(kc);
        }
        let kd = solids / share;
        let k =
            kc * (2.0 * kc + kd - 2.0 * share * (kc - kd)) / (2.0 * kc + kd + share * (kc - kd));
        Conductivity::from_w_per_mk(k)
    }

    /// Thermal diffusivity, `k / (rho c)`.
    pub fn diffusivity(&self, t: Temperature) -> Diffusivity {
        let volumetric = self.density(t).kg_per_m3() * self.heat_capacity(t).j_per_kgk();
        Diffusivity::from_m2_per_s(self.conductivity(t).w_per_mk() / volumetric)
    }
}
