use serde::{Deserialize, Serialize};

/// The scale a person reads temperatures on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TemperatureUnit {
    /// Degrees Fahrenheit.
    #[default]
    Fahrenheit,
    /// Degrees Celsius.
    Celsius,
}

/// The unit a person measures thickness in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LengthUnit {
    /// Inches.
    #[default]
    Inch,
    /// Millimetres.
    Millimetre,
}

/// The unit a person weighs in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MassUnit {
    /// Ounces (sixteen to the pound).
    #[default]
    Ounce,
    /// Grams.
    Gram,
}

/// The person's own units, one for each kind of quantity.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Units {
    /// For temperatures.
    pub temperature: TemperatureUnit,
    /// For thickness, width and length.
    pub length: LengthUnit,
    /// For weights.
    pub mass: MassUnit,
}

impl Units {
    /// Fahrenheit, inches and ounces.
    pub const CUSTOMARY: Self = Self {
        temperature: TemperatureUnit::Fahrenheit,
        length: LengthUnit::Inch,
        mass: MassUnit::Ounce,
    };
    /// Celsius, millimetres and grams.
    pub const METRIC: Self = Self {
        temperature: TemperatureUnit::Celsius,
        length: LengthUnit::Millimetre,
        mass: MassUnit::Gram,
    };
}
