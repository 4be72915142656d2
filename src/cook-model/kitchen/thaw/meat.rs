use crate::heat::{Composition, Conductivity, Density, FUSION, HeatCapacity};
use crate::quantity::Temperature;

/// Heat capacity of ice, J/kgK (handbook value at -10 C, from memory).
const ICE_CAPACITY: f64 = 2040.0;
/// Initial freezing point. Handbooks list lean meat from -1 to -2 C and advise -1 C for moist food
/// where nothing better is known (Handbook of Frozen Food Processing and Packaging, 2006); with it
/// the ice fraction follows Riedel's measurements on lean meat. A lower one thaws sooner.
const FREEZING_POINT: Temperature = Temperature::from_c(-1.0);
/// Conductivity of frozen chicken along the fibre at -20 C: 1.07 - 0.0149 T - 1.04e-4 T^2 W/mK
/// (Sweat, Haugh & Stadelman 1973, J. Food Sci. 38; white meat).
const COLD: Temperature = Temperature::from_c(-20.0);
const COLD_CONDUCTIVITY: f64 = 1.326;

/// Heat by mass: of melting, or between two temperatures.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct HeatByMass(f64);

impl HeatByMass {
    /// From kilojoules per kilogram.
    pub const fn from_kj_per_kg(value: f64) -> Self {
        Self(value)
    }

    /// In kilojoules per kilogram.
    pub const fn kj_per_kg(self) -> f64 {
        self.0
    }
}

/// The unfrozen state of a meat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unfrozen {
    /// Heat capacity.
    pub capacity: HeatCapacity,
    /// Conductivity at the freezing point.
    pub conductivity: Conductivity,
    /// What the conductivity gains with each degree above it.
    pub conductivity_per_degree: Conductivity,
}

/// The state of a meat with all its ice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frozen {
    /// Heat capacity, without the latent heat.
    pub capacity: HeatCapacity,
    /// Conductivity.
    pub conductivity: Conductivity,
}

/// A meat that freezes over a range of temperatures below its initial freezing point.
///
/// Ice appears as in an ideal dilute solution, `1 - Tf/T` of all that can freeze (Schwartzberg
/// 1976), so that per mass
///
/// ```text
/// h = cu (T - Tf)                          above Tf
/// h = cf (T - Tf) - latent (1 - Tf/T)      below Tf
/// ```
///
/// with temperatures in C, and the conductivity runs from the unfrozen to the frozen one with the
/// same share of ice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FreezingMeat {
    density: f64,
    freezing: f64,
    /// Latent heat of all ice, J/kg.
    latent: f64,
    unfrozen_capacity: f64,
    frozen_capacity: f64,
    unfrozen_k: f64,
    unfrozen_k_slope: f64,
    frozen_k: f64,
}

impl FreezingMeat {
    /// A meat of given properties, as worked examples have it. `latent` is the heat of all the ice
    /// it can form; a freezing point at or above 0 C is taken just below it.
    pub fn new(
        density: Density,
        freezing_point: Temperature,
        latent: HeatByMass,
        unfrozen: Unfrozen,
        frozen: Frozen,
    ) -> Self {
        Self {
            density: density.kg_per_m3(),
            freezing: freezing_point.c().min(-1e-3),
            latent: latent.kj_per_kg() * 1e3,
            unfrozen_capacity: unfrozen.capacity.j_per_kgk(),
            frozen_capacity: frozen.capacity.j_per_kgk(),
            unfrozen_k: unfrozen.conductivity.w_per_mk(),
            unfrozen_k_slope: unfrozen.conductivity_per_degree.w_per_mk(),
            frozen_k: frozen.conductivity.w_per_mk(),
        }
    }

    /// Meat of a composition, unfrozen as the heat model has it.
    pub fn of(composition: &Composition) -> Self {
        let freezable = composition.freezable();
        let (cool, warm) = (Temperature::from_c(5.0), Temperature::from_c(60.0));
        let k = |t| composition.conductivity(t).w_per_mk();
        let slope = (k(warm) - k(cool)) / (warm - cool).c();
        let unfrozen_k = k(cool) + slope * (FREEZING_POINT - cool).c();
        // What freezes gives up water's capacity for that of ice.
        let water = Composition::WATER.heat_capacity(cool).j_per_kgk();
        let capacity = composition.heat_capacity(cool).j_per_kgk();
        let ice_when_cold = 1.0 - FREEZING_POINT.c() / COLD.c();
        Self {
            density: composition.density(cool).kg_per_m3(),
            freezing: FREEZING_POINT.c(),
            latent: FUSION * freezable,
            unfrozen_capacity: composition.heat_capacity(Temperature::from_c(30.0)).j_per_kgk(),
            frozen_capacity: capacity - freezable * (water - ICE_CAPACITY),
            unfrozen_k,
            unfrozen_k_slope: slope,
            frozen_k: unfrozen_k + (COLD_CONDUCTIVITY - unfrozen_k) / ice_when_cold,
        }
    }

    /// The share of the freezable water that is ice, 0 to 1.
    pub fn ice(&self, t: Temperature) -> f64 {
        self.ice_at(t.c())
    }

    /// Conductivity.
    pub fn conductivity(&self, t: Temperature) -> Conductivity {
        Conductivity::from_w_per_mk(self.k(t.c()))
    }

    /// Heat it takes to bring it from one temperature to another.
    pub fn heat_between(&self, from: Temperature, to: Temperature) -> HeatByMass {
        let heat = (self.heat(to.c()) - self.heat(from.c())) / self.density;
        HeatByMass(heat / 1e3)
    }

    /// Heat content, J/m3, above the freezing point, at a temperature in C.
    pub(super) fn heat(&self, celsius: f64) -> f64 {
        let rise = celsius - self.freezing;
        self.density
            * if rise >= 0.0 {
                self.unfrozen_capacity * rise
            } else {
                self.frozen_capacity * rise - self.latent * self.ice_at(celsius)
            }
    }

    /// Temperature, C, at a heat content in J/m3: below the freezing point the lower root of the
    /// quadratic that `heat` makes when multiplied by the temperature.
    pub(super) fn celsius(&self, heat: f64) -> f64 {
        let h = heat / self.density;
        if h >= 0.0 {
            return self.freezing + h / self.unfrozen_capacity;
        }
        let c = self.frozen_capacity;
        let b = c * self.freezing + self.latent + h;
        let root = libm::sqrt(b * b - 4.0 * c * self.latent * self.freezing);
        // The same root either way; this one does not cancel while `b` is positive.
        if b > 0.0 {
            2.0 * self.latent * self.freezing / (b + root)
        } else {
            (b - root) / (2.0 * c)
        }
    }

    /// Conductivity, W/mK, at a temperature in C.
    pub(super) fn k(&self, celsius: f64) -> f64 {
        let rise = celsius - self.freezing;
        if rise >= 0.0 {
            self.unfrozen_k + self.unfrozen_k_slope * rise
        } else {
            self.unfrozen_k + (self.frozen_k - self.unfrozen_k) * self.ice_at(celsius)
        }
    }

    /// The quickest diffusivity anywhere, m2/s: it limits the time step.
    pub(super) fn quickest(&self) -> f64 {
        let frozen = self.frozen_k / self.frozen_capacity;
        let hot = self.k(100.0) / self.unfrozen_capacity;
        frozen.max(hot) / self.density
    }

    fn ice_at(&self, celsius: f64) -> f64 {
        if celsius < self.freezing { 1.0 - self.freezing / celsius } else { 0.0 }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn heat_and_temperature_are_each_others_inverse(celsius in -40.0..80.0_f64) {
            let meat = FreezingMeat::of(&Composition::RAW_BREAST);
            prop_assert!((meat.celsius(meat.heat(celsius)) - celsius).abs() < 1e-9);
        }

        #[test]
        fn warmer_holds_more(celsius in -40.0..80.0_f64, rise in 0.01..10.0_f64) {
            let meat = FreezingMeat::of(&Composition::RAW_BREAST);
            prop_assert!(meat.heat(celsius + rise) > meat.heat(celsius));
        }
    }
}
