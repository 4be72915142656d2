use cook_model::quantity::{LengthUnit, MassUnit, TemperatureUnit};
use leptos::prelude::*;

use crate::device::prefs::{Hand, Theme};
use crate::parts::{Choice, Heading};
use crate::preferences;
use crate::words::Language;
use crate::words::wording;

/// Units, look, hand and language.
#[component]
pub fn Settings() -> impl IntoView {
    view! {
        <section class="screen settings">
            <Heading text=wording("settings-title") />
            <UnitChoices />
            <Choice
                name="look"
                label=wording("settings-look")
                options=vec![
                    (Theme::Light, wording("look-light")),
                    (Theme::Dark, wording("look-dark")),
                    (Theme::Sun, wording("look-sun")),
                    (Theme::Phone, wording("look-auto")),
                ]
                chosen=|| preferences::current().theme
                on_choose=move |theme| preferences::change(|chosen| chosen.theme = theme)
            />
            <Choice
                name="hand"
                label=wording("settings-hand")
                options=vec![
                    (Hand::Left, wording("hand-left")),
                    (Hand::Right, wording("hand-right")),
                ]
                chosen=|| preferences::current().hand
                on_choose=move |hand| preferences::change(|chosen| chosen.hand = hand)
            />
            <Choice
                name="language"
                label=wording("settings-language")
                options=vec![
                    (Language::English, wording("language-en")),
                    (Language::Spanish, wording("language-es")),
                ]
                chosen=preferences::language
                on_choose=preferences::speak
            />
        </section>
    }
}

/// One choice for each kind of quantity.
#[component]
fn UnitChoices() -> impl IntoView {
    view! {
        <Choice
            name="temperature-unit"
            label=wording("settings-temperature")
            options=vec![
                (TemperatureUnit::Fahrenheit, wording("unit-f")),
                (TemperatureUnit::Celsius, wording("unit-c")),
            ]
            chosen=|| preferences::units().temperature
            on_choose=move |unit| preferences::change(|chosen| chosen.units.temperature = unit)
        />
        <Choice
            name="mass-unit"
            label=wording("settings-weight")
            options=vec![
                (MassUnit::Ounce, wording("unit-oz")),
                (MassUnit::Gram, wording("unit-g")),
            ]
            chosen=|| preferences::units().mass
            on_choose=move |unit| preferences::change(|chosen| chosen.units.mass = unit)
        />
        <Choice
            name="length-unit"
            label=wording("settings-length")
            options=vec![
                (LengthUnit::Inch, wording("unit-in")),
                (LengthUnit::Millimetre, wording("unit-mm")),
            ]
            chosen=|| preferences::units().length
            on_choose=move |unit| preferences::change(|chosen| chosen.units.length = unit)
        />
    }
}
