//! Quantities only heat transfer needs, each with its SI unit in the type.

/// Declares a quantity stored in one SI unit, with a constructor and an accessor named after it.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $from:ident, $to:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("From ", $unit, ".")]
            pub const fn $from(value: f64) -> Self {
                Self(value)
            }

            #[doc = concat!("In ", $unit, ".")]
            pub const fn $to(self) -> f64 {
                self.0
            }
        }
    };
}

quantity!(
    /// Heat passing a surface per area and degree of difference, h.
    HeatTransferCoefficient,
    from_w_per_m2k,
    w_per_m2k,
    "watts per square metre and kelvin"
);
quantity!(
    /// Thermal conductivity, k.
    Conductivity,
    from_w_per_mk,
    w_per_mk,
    "watts per metre and kelvin"
);
quantity!(
    /// Density.
    Density,
    from_kg_per_m3,
    kg_per_m3,
    "kilograms per cubic metre"
);
quantity!(
    /// Specific heat capacity at constant pressure.
    HeatCapacity,
    from_j_per_kgk,
    j_per_kgk,
    "joules per kilogram and kelvin"
);
quantity!(
    /// Thermal diffusivity, k / (density x specific heat capacity).
    Diffusivity,
    from_m2_per_s,
    m2_per_s,
    "square metres per second"
);
quantity!(
    /// A partial pressure of water vapour.
    VapourPressure,
    from_kpa,
    kpa,
    "kilopascals"
);
quantity!(
    /// Mass of water per area of surface.
    AreaMass,
    from_kg_per_m2,
    kg_per_m2,
    "kilograms per square metre"
);
quantity!(
    /// Heat per area of surface.
    AreaHeat,
    from_j_per_m2,
    j_per_m2,
    "joules per square metre"
);
