//! Breast meat as this simulator sees it: measured whole-muscle figures rather than a sum of
//! components.

use crate::breast::DENSITY;
use crate::solid::Material;

/// Breast meat.
#[derive(Clone, Copy, Debug)]
pub struct Meat {
    /// Conductivity of this piece over the usual one.
    pub conductivity_scale: f64,
}

/// Heat to warm raw breast, J/(kg K) (from memory, about 3500 for poultry at 74 % water).
const SPECIFIC_HEAT: f64 = 3500.0;
/// Heat taken up as the proteins denature, spread as a bump around 65 C: about 4 kJ/kg of meat
/// (from memory: some 17 J/g of protein).
const DENATURING_PEAK: f64 = 170.0;
const DENATURING_CENTRE: f64 = 65.0;
const DENATURING_WIDTH: f64 = 8.0;

impl Material for Meat {
    /// White chicken meat, k = 0.476 + 0.00060 T (Sweat, Haugh and Stadelman 1973, measured from 0
    /// to 20 C), carried on to cooking temperatures.
    fn conductivity(&self, celsius: f64) -> f64 {
        self.conductivity_scale * (0.476 + 0.000_60 * celsius)
    }

    fn heat_capacity(&self, celsius: f64) -> f64 {
        let from_centre = (celsius - DENATURING_CENTRE) / DENATURING_WIDTH;
        DENSITY * (SPECIFIC_HEAT + DENATURING_PEAK / (1.0 + from_centre * from_centre))
    }
}
