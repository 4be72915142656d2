//! What the worlds take meat to be: three laws, none of them a sum of components.

use twin::solid::Material;

/// Density of raw breast, kg/m3 (common figure for lean poultry, from memory).
pub const DENSITY: f64 = 1055.0;

/// Conductivity and heat capacity of meat.
#[derive(Clone, Copy, Debug)]
pub enum Meat {
    /// Neither changes with temperature: W/mK, J/kgK.
    Constant {
        /// W/mK.
        conductivity: f64,
        /// J/kgK.
        capacity: f64,
    },
    /// Conductivity rises as measured in raw breast (Sweat, Haugh & Stadelman 1973, from 0 to 20 C)
    /// and is carried on.
    Rising {
        /// Over the measured one.
        scale: f64,
        /// J/kgK.
        capacity: f64,
    },
    /// Cooked meat conducts worse than raw: water leaves its fibres between 55 and 75 C.
    Drier {
        /// W/mK raw.
        conductivity: f64,
        /// J/kgK raw.
        capacity: f64,
        /// The part of both that is lost.
        lost: f64,
    },
}

/// Where meat gives its water up, C, and over how wide a range.
const GIVES_UP: f64 = 65.0;
const OVER: f64 = 5.0;

impl Meat {
    /// The highest diffusivity it has, m2/s.
    pub fn fastest(&self) -> f64 {
        let at = |celsius| self.conductivity(celsius) / self.heat_capacity(celsius);
        at(0.0).max(at(100.0)).max(at(50.0))
    }

    fn kept(lost: f64, celsius: f64) -> f64 {
        1.0 - lost / (1.0 + (-(celsius - GIVES_UP) / OVER).exp())
    }
}

impl Material for Meat {
    fn conductivity(&self, celsius: f64) -> f64 {
        match self {
            Self::Constant { conductivity, .. } => *conductivity,
            Self::Rising { scale, .. } => scale * (0.476 + 0.000_60 * celsius),
            Self::Drier { conductivity, lost, .. } => conductivity * Self::kept(*lost, celsius),
        }
    }

    fn heat_capacity(&self, celsius: f64) -> f64 {
        DENSITY
            * match self {
                Self::Constant { capacity, .. } | Self::Rising { capacity, .. } => *capacity,
                Self::Drier { capacity, lost, .. } => capacity * Self::kept(*lost, celsius),
            }
    }
}
