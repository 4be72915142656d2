//! What the person chose for this phone. It is no part of a cook.

use cook_model::quantity::Units;
use leptos::prelude::window;
use serde::{Deserialize, Serialize};

use super::small_store;

const KEY: &str = "prefs";

/// The person's choices on this phone.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Prefs {
    /// The units to read and type in.
    pub units: Units,
    /// Dark text on light, or the reverse.
    pub theme: Theme,
    /// The hand that holds the phone.
    pub hand: Hand,
    /// The language of the app, as a BCP 47 tag; none means the phone's.
    pub language: Option<String>,
    /// Whether alarms make a sound.
    pub sound: bool,
    /// Whether a voice says what an alarm is about.
    pub spoken: bool,
    /// Whether the screen is kept awake while a piece is on the pit.
    pub stay_awake: bool,
}

/// Dark text on light, or the reverse.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// As the phone is set.
    Phone,
    /// Dark text on light ground, which glare hurts least.
    #[default]
    Light,
    /// Light text on dark.
    Dark,
    /// Black on white with thick lines, for full sun.
    Sun,
}

/// The hand that holds the phone.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hand {
    /// The right hand.
    #[default]
    Right,
    /// The left hand.
    Left,
}

impl Default for Prefs {
    fn default() -> Self {
        Self {
            units: usual_units(),
            theme: Theme::default(),
            hand: Hand::default(),
            language: None,
            sound: true,
            spoken: false,
            stay_awake: true,
        }
    }
}

/// The choices kept on this phone; where none are kept or they cannot be read, the usual ones.
pub fn load() -> Prefs {
    small_store::get(KEY).and_then(|text| serde_json::from_str(&text).ok()).unwrap_or_default()
}

/// Keeps the choices; false if the browser refused, so that they last only until the page closes.
pub fn save(prefs: &Prefs) -> bool {
    serde_json::to_string(prefs).is_ok_and(|text| small_store::set(KEY, &text))
}

/// Customary units where the phone's language is that of the United States, metric elsewhere.
fn usual_units() -> Units {
    match window().navigator().language() {
        Some(tag) if !tag.eq_ignore_ascii_case("en-US") => Units::METRIC,
        _ => Units::CUSTOMARY,
    }
}
