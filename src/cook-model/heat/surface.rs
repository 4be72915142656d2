//! What passes the surface of a piece: convection, radiation, evaporation.

use super::units::{AreaMass, HeatTransferCoefficient, VapourPressure};

/// Stefan-Boltzmann constant, W/m2K4 (CODATA 2018, exact).
const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;
/// Ice point, K.
const ICE_POINT_K: f64 = 273.15;
/// Standard atmosphere, kPa.
const ATMOSPHERE: f64 = 101.325;
/// Heat capacity of moist air at a pit's temperature, J/kgK (textbook value, from memory).
const AIR_CAPACITY: f64 = 1013.0;
/// Lewis number of water vapour in air to the two-thirds (textbook value, from memory).
const LEWIS_TWO_THIRDS: f64 = 0.90;
/// Molar mass of water over that of air.
const MOLAR_RATIO: f64 = 0.622;
/// Heat of vaporisation of water at 0 C, J/kg, and its fall per degree (linear between the steam
/// table's 2501 kJ/kg at 0 C and 2257 kJ/kg at 100 C).
const VAPORISATION: [f64; 2] = [2.501e6, 2440.0];
/// Below this, C, air may hold less vapour than a pit at work has.
const COLD_AIR: f64 = 60.0;
/// The share of the way to boiling, some 88 C, beyond which the logarithm of the diffusion law is
/// not followed: at boiling it would be without bound, where what leaves is limited by what comes
/// from inside. Beyond it the drive levels off, no higher than `LEVEL` more.
const LEVELS_FROM: f64 = 0.65;
const LEVEL: f64 = 1.0;

/// Evaporation from a surface that starts wet and dries.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Evaporation {
    /// Partial pressure of water vapour in the air around the piece.
    pub vapour: VapourPressure,
    /// Water lost per area after which the surface evaporates half as fast as when wet.
    pub halves_after: AreaMass,
}

/// How a surface exchanges heat with what is around it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surface {
    /// Convective heat transfer coefficient.
    pub convection: HeatTransferCoefficient,
    /// Emissivity for heat radiation between the surface and walls at the air's temperature, 0 to 1.
    pub emissivity: f64,
    /// Evaporation, where the surface is open to air.
    pub evaporation: Option<Evaporation>,
}

/// Heat and water passing a surface at one moment.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Flux {
    /// Heat to the surface by convection and radiation, W/m2.
    pub sensible: f64,
    /// Its derivative by surface temperature, W/m2K (negative).
    pub sensible_slope: f64,
    /// Water leaving, kg/m2s; negative where it condenses.
    pub water: f64,
    /// Its derivative by surface temperature, kg/m2sK.
    pub water_slope: f64,
    /// Heat of vaporisation at this temperature, J/kg.
    pub vaporisation: f64,
}

impl Flux {
    /// Net heat into the body, W/m2.
    #[inline]
    pub fn net(&self) -> f64 {
        self.sensible - self.vaporisation * self.water
    }

    /// Derivative of the net heat by surface temperature, W/m2K.
    #[inline]
    pub fn net_slope(&self) -> f64 {
        self.sensible_slope - self.vaporisation * self.water_slope
    }
}

impl Surface {
    /// A surface with convection only: a water bath, or a textbook's boundary.
    pub const fn convective(h: HeatTransferCoefficient) -> Self {
        Self { convection: h, emissivity: 0.0, evaporation: None }
    }

    /// The exchange at a surface temperature and an air temperature, both C, after `lost` kg/m2
    /// have evaporated:
    ///
    /// ```text
    /// q = h (Ta - Ts) + eps sigma (Ta^4 - Ts^4) - r m
    /// m = w h / (cp Le^(2/3)) 0.622 ln[(P - pv) / (P - pvs)]
    /// w = 1 / (1 + lost / halves_after)
    /// ```
    ///
    /// the Lewis relation with Stefan's correction for high rates, times the wetness `w` of a
    /// surface that dries as it loses water. Condensation finds the surface wet.
    #[inline]
    pub(super) fn flux(&self, surface: f64, air: f64, lost: f64) -> Flux {
        let h = self.convection.w_per_m2k();
        let mut flux =
            Flux { sensible: h * (air - surface), sensible_slope: -h, ..Flux::default() };
        if self.emissivity > 0.0 {
            let (ts, ta) = (surface + ICE_POINT_K, air + ICE_POINT_K);
            let (ts2, ta2) = (ts * ts, ta * ta);
            let black = self.emissivity * STEFAN_BOLTZMANN;
            flux.sensible += black * (ta2 + ts2) * (ta2 - ts2);
            flux.sensible_slope -= 4.0 * black * ts2 * ts;
        }
        if let Some(evaporation) = &self.evaporation {
            evaporation.add_to(&mut flux, h, surface, air, lost);
        }
        flux
    }
}

impl Evaporation {
    /// Vapour pressure, kPa, in air at a temperature in C: cold air holds no more than saturates it.
    #[inline]
    fn vapour_in(&self, air: f64) -> f64 {
        let vapour = self.vapour.kpa();
        if air < COLD_AIR { vapour.min(saturation(air).0) } else { vapour }
    }

    #[inline]
    fn add_to(&self, flux: &mut Flux, h: f64, surface: f64, air: f64, lost: f64) {
        let vapour = self.vapour_in(air);
        let (saturated, saturated_slope) = saturation(surface);
        let room = ATMOSPHERE - vapour;
        let share = (saturated - vapour) / room;
        let wet = h * MOLAR_RATIO / (AIR_CAPACITY * LEWIS_TWO_THIRDS);
        let drying = if share > 0.0 {
            let half = self.halves_after.kg_per_m2();
            half / (half + lost.max(0.0))
        } else {
            1.0
        };
        let logged = share.min(LEVELS_FROM);
        let mut drive = -libm::log(1.0 - logged);
        let mut drive_slope = 1.0 / (1.0 - logged);
        if share > LEVELS_FROM {
            let fading = libm::exp((logged - share) * drive_slope / LEVEL);
            drive += LEVEL * (1.0 - fading);
            drive_slope *= fading;
        }
        flux.water = wet * drying * drive;
        flux.water_slope = wet * drying * drive_slope * saturated_slope / room;
        flux.vaporisation = VAPORISATION[0] - VAPORISATION[1] * surface;
    }
}

/// Saturation pressure of water, kPa, and its slope, kPa/K, at a temperature in C: Antoine's
/// equation with the constants handbooks give for 1 to 100 C (8.07131, 1730.63, 233.426 for mmHg
/// and decimal logarithms; from memory, tested against the steam table).
fn saturation(celsius: f64) -> (f64, f64) {
    const A: f64 = 16.569_89; // ln(kPa): (8.07131 ln 10) + ln(0.133322)
    const B: f64 = 3984.923; // 1730.63 ln 10
    const C: f64 = 233.426;
    let below = celsius + C;
    let pressure = libm::exp(A - B / below);
    (pressure, pressure * B / (below * below))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn saturation_pressure_follows_the_steam_table() {
        // Steam table, kPa: the usual rows (0.01 C triple point; 100 C at one atmosphere).
        for (c, kpa, within) in
            [(0.01, 0.6117, 0.02), (25.0, 3.169, 0.01), (60.0, 19.94, 0.01), (100.0, 101.33, 0.01)]
        {
            let (p, slope) = saturation(c);
            assert!((p / kpa - 1.0).abs() < within, "{p} kPa for {kpa} at {c} C");
            let step = (saturation(c + 0.01).0 - saturation(c - 0.01).0) / 0.02;
            assert!((slope / step - 1.0).abs() < 1e-4);
        }
    }

    #[test]
    fn slopes_are_the_derivatives() {
        let surface = Surface {
            convection: HeatTransferCoefficient::from_w_per_m2k(10.0),
            emissivity: 0.9,
            evaporation: Some(Evaporation {
                vapour: VapourPressure::from_kpa(3.0),
                halves_after: AreaMass::from_kg_per_m2(0.05),
            }),
        };
        let net = |t: f64| surface.flux(t, 121.0, 0.1).net();
        for t in [5.0, 40.0, 75.0] {
            let slope = (net(t + 0.01) - net(t - 0.01)) / 0.02;
            // The heat of vaporisation is taken constant in the slope: 0.1 % per degree.
            assert!((surface.flux(t, 121.0, 0.1).net_slope() / slope - 1.0).abs() < 0.02);
        }
    }
}
