//! How much of the bacteria a core temperature over time would kill: information, never proof.

use serde::Serialize;

use crate::quantity::{Moment, Span, Temperature, TemperatureDifference, to_seconds};

/// How fast bacteria die in meat: their D-value at one temperature and their z-value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeathKinetics {
    /// The temperature of the D-value.
    pub reference: Temperature,
    /// The D-value: the time in which nine of ten die at the reference temperature.
    pub d_value: Span,
    /// The z-value: how much hotter makes the D-value ten times shorter.
    pub z_value: TemperatureDifference,
}

/// *Salmonella* in ground chicken thigh and leg meat: D 43.33 min at 55 C, z 5.34 C, measured to
/// 70 C. Source: Murphy et al. 2004, Poultry Science 83:1218 (abstract).
pub const SALMONELLA_IN_CHICKEN: DeathKinetics = DeathKinetics {
    reference: Temperature::from_c(55.0),
    d_value: Span::milliseconds(2_599_800),
    z_value: TemperatureDifference::from_c(5.34),
};

/// What the agency asks of cooked poultry. Source: FSIS Cooking Guideline for Meat and Poultry
/// Products (Revised Appendix A, 2021): 7-log10 reduction of *Salmonella*.
pub const ASKED_OF_POULTRY: Lethality = Lethality(7.0);

/// Decimal reductions: 3 means that one in a thousand is left.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize)]
#[serde(transparent)]
pub struct Lethality(f64);

impl Lethality {
    /// The number of decimal reductions, zero or more.
    pub const fn log10(self) -> f64 {
        self.0
    }
}

impl DeathKinetics {
    /// Decimal reductions a second at a temperature: `10^((T - T_ref) / z) / D`.
    fn rate(&self, temperature: Temperature) -> f64 {
        let z = (temperature - self.reference).c() / self.z_value.c();
        libm::pow(10.0, z) / to_seconds(self.d_value)
    }

    /// The lethality of a core temperature over time, straight between the moments given. Give
    /// the unfavourable side of a forecast's band. A step back in time adds nothing.
    ///
    /// Bigelow's model (1921): the integral of `10^((T - T_ref) / z) / D` over time.
    pub fn lethality(&self, core: &[(Moment, Temperature)]) -> Lethality {
        let steps = core.windows(2).map(|pair| {
            let [(from, cool), (to, warm)] = [pair[0], pair[1]];
            let span = to_seconds(to - from).max(0.0);
            span * mean_rate(self.rate(cool), self.rate(warm))
        });
        Lethality(steps.sum())
    }

    /// How long a constant temperature takes to reach a lethality; microseconds at the finest.
    pub fn time_for(&self, target: Lethality, temperature: Temperature) -> Span {
        crate::quantity::seconds(target.0 / self.rate(temperature))
    }
}

/// The mean of a rate whose logarithm goes straight from one value to the other.
fn mean_rate(from: f64, to: f64) -> f64 {
    // Below this the logarithmic mean and the plain one agree to the last digits.
    const NEARLY_EQUAL: f64 = 1e-6;
    let ratio = to / from;
    if !ratio.is_finite() || (ratio - 1.0).abs() <= NEARLY_EQUAL {
        (from + to) / 2.0
    } else {
        (to - from) / libm::log(ratio)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{minutes, seconds};
    use proptest::prelude::*;

    fn at(minute: f64) -> Moment {
        chrono::DateTime::from_timestamp(1_780_000_000, 0).unwrap() + minutes(minute)
    }

    #[test]
    fn one_d_value_at_the_reference_is_one_reduction() {
        let k = SALMONELLA_IN_CHICKEN;
        let held = [(at(0.0), k.reference), (at(0.0) + k.d_value, k.reference)];
        assert!((k.lethality(&held).log10() - 1.0).abs() < 1e-12);
        let hotter = k.reference + k.z_value;
        assert!((k.time_for(Lethality(1.0), hotter) - k.d_value / 10).abs() <= seconds(1e-3));
    }

    proptest! {
        #[test]
        fn a_slope_cut_into_small_steps_adds_up_the_same(
            from in 20.0..80.0_f64, to in 20.0..80.0_f64, span in 10.0..120.0_f64
        ) {
            let k = SALMONELLA_IN_CHICKEN;
            let point = |part: f64| {
                (at(span * part), Temperature::from_c(from + (to - from) * part))
            };
            let whole = k.lethality(&[point(0.0), point(1.0)]).log10();
            let cut: Vec<_> = (0..=100).map(|i| point(f64::from(i) / 100.0)).collect();
            let parts = k.lethality(&cut).log10();
            // Each of the hundred spans is read to the millisecond.
            prop_assert!((whole - parts).abs() <= 2e-4 * whole, "{} {}", whole, parts);
        }

        #[test]
        fn hotter_or_longer_never_kills_less(
            celsius in prop::collection::vec(20.0..90.0_f64, 2..20), more in 0.0..10.0_f64
        ) {
            let k = SALMONELLA_IN_CHICKEN;
            let trace = |add: f64| -> Vec<_> {
                let points = celsius.iter().enumerate();
                points.map(|(i, c)| (at(i as f64), Temperature::from_c(c + add))).collect()
            };
            let full = k.lethality(&trace(0.0));
            prop_assert!(k.lethality(&trace(more)) >= full);
            prop_assert!(k.lethality(&trace(0.0)[1..]) <= full);
        }
    }
}
