//! The conducting stuff itself, in the form the solver wants.

use super::composition::Composition;
use super::units::{Conductivity, Density, Diffusivity, HeatCapacity};
use crate::quantity::Temperature;

/// Where the fitted cubics meet the component equations, C: Chebyshev points of -5..155 C, the
/// range a surface can see.
const FIT_AT: [f64; 4] = [1.1, 44.4, 105.6, 148.9];
/// Newton steps from a linear first guess to the last bit of a nearly straight cubic.
const NEWTON_STEPS: usize = 6;

/// A conducting medium: conductivity against temperature, and temperature against heat content.
///
/// The heat content is per volume at the raw density, counted from 0 C: a piece keeps its mass as
/// it warms, so the density that counts is the one its size was taken at. Both curves are cubics
/// through the component equations, which they follow to better than 0.01 %; evaluating them costs
/// a tenth of the equations themselves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Medium {
    /// Temperature, C, as a cubic in heat content, J/m3.
    temperature: [f64; 4],
    /// Conductivity, W/mK, as a cubic in temperature, C.
    conductivity: [f64; 4],
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
        let k = FIT_AT.map(|c| composition.conductivity(Temperature::from_c(c)).w_per_mk());
        Self {
            temperature: cubic_through(&heat, &FIT_AT),
            conductivity: cubic_through(&FIT_AT, &k),
        }
    }

    /// A medium whose properties do not change with temperature, as worked examples have it.
    pub fn constant(k: Conductivity, density: Density, capacity: HeatCapacity) -> Self {
        Self {
            temperature: [0.0, 1.0 / (density.kg_per_m3() * capacity.j_per_kgk()), 0.0, 0.0],
            conductivity: [k.w_per_mk(), 0.0, 0.0, 0.0],
        }
    }

    /// A medium of constant conductivity and diffusivity.
    pub fn of_diffusivity(k: Conductivity, alpha: Diffusivity) -> Self {
        Self {
            temperature: [0.0, alpha.m2_per_s() / k.w_per_mk(), 0.0, 0.0],
            conductivity: [k.w_per_mk(), 0.0, 0.0, 0.0],
        }
    }

    /// Conductivity, W/mK, at a temperature in C.
    #[inline]
    pub(super) fn k(&self, celsius: f64) -> f64 {
        cubic(&self.conductivity, celsius)
    }

    /// Temperature, C, at a heat content in J/m3.
    #[inline]
    pub(super) fn celsius(&self, heat: f64) -> f64 {
        cubic(&self.temperature, heat)
    }

    /// Rise of temperature with heat content, K m3/J: one over the volumetric heat capacity.
    #[inline]
    pub(super) fn slope(&self, heat: f64) -> f64 {
        let [_, a, b, c] = self.temperature;
        a + heat * (2.0 * b + heat * 3.0 * c)
    }

    /// Heat content, J/m3, at a temperature in C.
    pub(super) fn heat(&self, celsius: f64) -> f64 {
        let mut heat = (celsius - self.temperature[0]) / self.temperature[1];
        for _ in 0..NEWTON_STEPS {
            heat -= (self.celsius(heat) - celsius) / self.slope(heat);
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

#[inline]
fn cubic(p: &[f64; 4], x: f64) -> f64 {
    p[0] + x * (p[1] + x * (p[2] + x * p[3]))
}

/// The cubic through four points (Newton's divided differences, expanded).
fn cubic_through(x: &[f64; 4], y: &[f64; 4]) -> [f64; 4] {
    let mut d = *y;
    for order in 1..4 {
        for i in (order..4).rev() {
            d[i] = (d[i] - d[i - 1]) / (x[i] - x[i - order]);
        }
    }
    let mut p = [d[3], 0.0, 0.0, 0.0];
    for i in (0..3).rev() {
        // p <- p (X - x_i) + d_i
        for j in (1..4).rev() {
            p[j] = p[j - 1] - x[i] * p[j];
        }
        p[0] = d[i] - x[i] * p[0];
    }
    p
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Largest departure of the fitted cubics from the component equations, as a fraction.
    const FIT: f64 = 1e-3;
    /// The same for temperature over heat content, kelvin.
    const FIT_K: f64 = 0.01;

    #[test]
    fn the_cubics_follow_the_component_equations() {
        let meat = Medium::raw_breast();
        let density = Composition::RAW_BREAST.density(Temperature::from_c(5.0)).kg_per_m3();
        for c in 0..=150 {
            let c = f64::from(c);
            let k = Composition::RAW_BREAST.conductivity(Temperature::from_c(c)).w_per_mk();
            assert!((meat.k(c) / k - 1.0).abs() < FIT, "k at {c} C: {} for {k}", meat.k(c));
            let heat = density * specific_enthalpy(&Composition::RAW_BREAST, c);
            assert!((meat.celsius(heat) - c).abs() < FIT_K, "{} for {c} C", meat.celsius(heat));
            assert!((meat.celsius(meat.heat(c)) - c).abs() < 1e-9);
        }
    }
}
