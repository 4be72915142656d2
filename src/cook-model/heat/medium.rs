//! The conducting stuff itself, in the form the solver wants.

use super::composition::{Composition, FUSION};
use super::units::{Conductivity, Density, Diffusivity, HeatCapacity};
use crate::quantity::Temperature;

/// Where the fitted curves meet the component equations, C: Chebyshev points of -5..155 C, the
/// range a surface can see in a pit that cooks rather than burns.
const FIT_AT: [f64; 5] = [-1.1, 28.0, 75.0, 122.0, 151.1];
/// Where ice melts, C: the lowest of those points. Handbooks list lean meat from -1 to -2 C.
const MELTS_AT: f64 = FIT_AT[0];
/// Newton steps from a linear first guess to the last bit of a nearly straight curve.
const NEWTON_STEPS: usize = 6;

/// A polynomial of the fourth degree, constant coefficient first.
type Quartic = [f64; 5];

/// A conducting medium, by its heat content per volume, counted from 0 C at the raw density: a
/// piece keeps its mass as it warms, so the density that counts is the one its size was taken at.
///
/// Two curves describe it: the temperature, and the conduction potential `U = integral of k dT`
/// from 0 C (Kirchhoff's transformation), whose differences drive the flow of heat exactly where
/// differences of temperature would need a mean conductivity. Both are quartics through the
/// component equations, which they follow to better than 0.01 %, at a tenth of their cost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Medium {
    /// Temperature, C, by heat content, J/m3.
    temperature: Quartic,
    /// Conduction potential, W/m, by heat content, J/m3.
    potential: Quartic,
    /// The range of heat contents the curves hold in, J/m3; both go straight on beyond it.
    holds: [f64; 2],
    /// Heat that melts all of its ice, J/m3.
    latent: f64,
}

/// A medium's temperature and potential at one heat content, and their slopes.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Point {
    /// Temperature, C.
    pub celsius: f64,
    /// Its rise with heat content, K m3/J: one over the volumetric heat capacity.
    pub slope: f64,
    /// The potential's rise with heat content, m2/s: the diffusivity.
    pub diffusivity: f64,
}

impl Point {
    /// Conductivity, W/mK.
    pub fn conductivity(&self) -> f64 {
        self.diffusivity / self.slope
    }
}

impl Medium {
    /// Raw chicken breast.
    pub fn raw_breast() -> Self {
        Self::of(&Composition::RAW_BREAST)
    }

    /// An unfrozen food of the given composition, at its density at 5 C.
    pub fn of(composition: &Composition) -> Self {
        let density = composition.density(Temperature::from_c(5.0)).kg_per_m3();
        let heat = FIT_AT.map(|c| density * specific_enthalpy(composition, c));
        let potential = FIT_AT.map(|c| potential(composition, c));
        Self {
            temperature: through_points(&heat, &FIT_AT),
            potential: through_points(&heat, &potential),
            holds: [heat[0], heat[4]],
            latent: density * FUSION * composition.freezable(),
        }
    }

    /// A medium whose properties do not change with temperature, as worked examples have it.
    pub fn constant(k: Conductivity, density: Density, capacity: HeatCapacity) -> Self {
        let volumetric = density.kg_per_m3() * capacity.j_per_kgk();
        Self::of_diffusivity(k, Diffusivity::from_m2_per_s(k.w_per_mk() / volumetric))
    }

    /// A medium of constant conductivity and diffusivity.
    pub fn of_diffusivity(k: Conductivity, alpha: Diffusivity) -> Self {
        let line = |slope: f64| [0.0, slope, 0.0, 0.0, 0.0];
        Self {
            temperature: line(alpha.m2_per_s() / k.w_per_mk()),
            potential: line(alpha.m2_per_s()),
            holds: [f64::NEG_INFINITY, f64::INFINITY],
            latent: 0.0,
        }
    }

    /// Temperature, C, at a heat content in J/m3.
    #[inline]
    pub(super) fn celsius(&self, heat: f64) -> f64 {
        self.value(&self.temperature, heat)
    }

    /// What a thermometer shows, C, at a heat content in J/m3: it stands still while ice melts.
    pub(super) fn reading(&self, heat: f64) -> f64 {
        self.celsius(heat.max(self.holds[0]))
    }

    /// Heat content, J/m3, where a part of the freezable water, 0 to 1, is still ice.
    ///
    /// The heat that melting it takes is what it lacks. Heat flows to it as if it were that much
    /// colder: with no kink in the curves the steps stay as long as they are, all the ice's heat
    /// has to come, and once it has the difference soon fades.
    pub(super) fn melting(&self, ice: f64) -> f64 {
        self.heat(MELTS_AT) - ice * self.latent
    }

    /// Conduction potential, W/m, at a heat content in J/m3.
    #[inline]
    pub(super) fn potential(&self, heat: f64) -> f64 {
        self.value(&self.potential, heat)
    }

    /// Conduction potentials, W/m, at heat contents in J/m3.
    #[inline]
    pub(super) fn potentials(&self, heat: &[f64], potentials: &mut [f64]) {
        self.values(&self.potential, heat, potentials);
    }

    /// Temperatures, C, at heat contents in J/m3.
    #[inline]
    pub(super) fn temperatures(&self, heat: &[f64], celsius: &mut [f64]) {
        self.values(&self.temperature, heat, celsius);
    }

    /// Slopes of temperature over heat content, K m3/J, at heat contents in J/m3.
    #[inline]
    pub(super) fn slopes(&self, heat: &[f64], slopes: &mut [f64]) {
        for (slope, heat) in slopes.iter_mut().zip(heat) {
            *slope = rise(&self.temperature, self.within(*heat));
        }
    }

    /// Diffusivities, m2/s, at heat contents in J/m3.
    #[inline]
    pub(super) fn diffusivities(&self, heat: &[f64], diffusivities: &mut [f64]) {
        for (diffusivity, heat) in diffusivities.iter_mut().zip(heat) {
            *diffusivity = self.diffusivity(*heat);
        }
    }

    /// A curve at several heat contents, of which hardly ever one is out of its range: without a
    /// question for each, a compiler can do several at once.
    #[inline]
    fn values(&self, curve: &Quartic, heat: &[f64], values: &mut [f64]) {
        let [low, high] = self.holds;
        let hold = heat.iter().fold(true, |all, heat| all & (*heat >= low) & (*heat <= high));
        for (value, heat) in values.iter_mut().zip(heat) {
            *value = if hold { self::value(curve, *heat) } else { self.value(curve, *heat) };
        }
    }

    /// The potential's rise with heat content, m2/s: the diffusivity.
    #[inline]
    pub(super) fn diffusivity(&self, heat: f64) -> f64 {
        rise(&self.potential, self.within(heat))
    }

    /// Temperature and slopes at a heat content in J/m3.
    #[inline]
    pub(super) fn at(&self, heat: f64) -> Point {
        Point {
            celsius: self.celsius(heat),
            slope: rise(&self.temperature, self.within(heat)),
            diffusivity: self.diffusivity(heat),
        }
    }

    #[inline]
    fn within(&self, heat: f64) -> f64 {
        heat.max(self.holds[0]).min(self.holds[1])
    }

    #[inline]
    fn value(&self, curve: &Quartic, heat: f64) -> f64 {
        let within = self.within(heat);
        value(curve, within) + rise(curve, within) * (heat - within)
    }

    /// Heat content, J/m3, at a temperature in C.
    pub(super) fn heat(&self, celsius: f64) -> f64 {
        let mut heat = (celsius - self.temperature[0]) / self.temperature[1];
        for _ in 0..NEWTON_STEPS {
            let at = self.at(heat);
            heat -= (at.celsius - celsius) / at.slope;
        }
        heat
    }
}

/// Enthalpy, J/kg, above 0 C: the integral of the heat capacity, by Simpson's rule, which is exact
/// for its quadratic.
fn specific_enthalpy(composition: &Composition, celsius: f64) -> f64 {
    let c = |t: f64| composition.heat_capacity(Temperature::from_c(t)).j_per_kgk();
    celsius / 6.0 * (c(0.0) + 4.0 * c(celsius / 2.0) + c(celsius))
}

/// Integral of the conductivity, W/m, from 0 C, by Simpson's rule on either half: the conductivity
/// is nearly a quadratic.
fn potential(composition: &Composition, celsius: f64) -> f64 {
    let k = |part: f64| composition.conductivity(Temperature::from_c(part * celsius)).w_per_mk();
    celsius / 12.0 * (k(0.0) + 4.0 * k(0.25) + 2.0 * k(0.5) + 4.0 * k(0.75) + k(1.0))
}

#[inline]
fn value(p: &Quartic, x: f64) -> f64 {
    p[0] + x * (p[1] + x * (p[2] + x * (p[3] + x * p[4])))
}

#[inline]
fn rise(p: &Quartic, x: f64) -> f64 {
    p[1] + x * (2.0 * p[2] + x * (3.0 * p[3] + x * 4.0 * p[4]))
}

/// The quartic through five points (Newton's divided differences, expanded).
fn through_points(x: &[f64; 5], y: &[f64; 5]) -> Quartic {
    let mut d = *y;
    for order in 1..5 {
        for i in (order..5).rev() {
            d[i] = (d[i] - d[i - 1]) / (x[i] - x[i - order]);
        }
    }
    let mut p = [d[4], 0.0, 0.0, 0.0, 0.0];
    for i in (0..4).rev() {
        // p <- p (X - x_i) + d_i
        for j in (1..5).rev() {
            p[j] = p[j - 1] - x[i] * p[j];
        }
        p[0] = d[i] - x[i] * p[0];
    }
    p
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Largest departure of the fitted curves from the component equations, as a fraction.
    const FIT: f64 = 1e-3;
    /// The same for temperature over heat content, kelvin.
    const FIT_K: f64 = 0.01;

    #[test]
    fn the_curves_follow_the_component_equations() {
        let meat = Medium::raw_breast();
        let density = Composition::RAW_BREAST.density(Temperature::from_c(5.0)).kg_per_m3();
        for c in 0..=150 {
            let c = f64::from(c);
            let heat = density * specific_enthalpy(&Composition::RAW_BREAST, c);
            let at = meat.at(heat);
            assert!((at.celsius - c).abs() < FIT_K, "{} for {c} C", at.celsius);
            let k = Composition::RAW_BREAST.conductivity(Temperature::from_c(c)).w_per_mk();
            assert!((at.conductivity() / k - 1.0).abs() < FIT, "{} for {k}", at.conductivity());
            assert!((meat.celsius(meat.heat(c)) - c).abs() < 1e-9);
        }
    }

    #[test]
    fn melting_ice_keeps_its_temperature_and_takes_its_heat() {
        let meat = Medium::raw_breast();
        for ice in [0.0, 0.1, 0.5, 1.0] {
            assert!((meat.reading(meat.melting(ice)) - MELTS_AT).abs() < 1e-6);
        }
        // 333.6 kJ/kg for each of the 0.648 kg of water that is not bound, in 1060 kg/m3.
        let all = meat.melting(0.0) - meat.melting(1.0);
        assert!((all / (333.6e3 * 0.648 * 1060.0) - 1.0).abs() < 0.005, "{all}");
    }
}
