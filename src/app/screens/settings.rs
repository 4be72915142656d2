use cook_model::quantity::{LengthUnit, MassUnit, TemperatureUnit};
use leptos::prelude::*;

use crate::device::prefs::{Hand, Theme};
use crate::parts::{Choice, Heading};
use crate::words::Language;
use crate::{preferences, say};

/// Units, look, hand and language.
#[component]
pub fn Settings() -> impl IntoView {
    view! {
        <section class="screen settings">
            <Heading text=Signal::derive(|| say!("settings-title")) />
            <UnitChoices />
            <Choice
                name="look"
                label=Signal::derive(|| say!("settings-look"))
                options=vec![
                    (Theme::Light, Signal::derive(|| say!("look-light"))),
                    (Theme::Dark, Signal::derive(|| say!("look-dark"))),
                    (Theme::Sun, Signal::derive(|| say!("look-sun"))),
                    (Theme::Phone, Signal::derive(|| say!("look-auto"))),
                ]
                chosen=Signal::derive(|| preferences::current().theme)
                on_choose=move |theme| preferences::change(|chosen| chosen.theme = theme)
            />
            <Choice
                name="hand"
                label=Signal::derive(|| say!("settings-hand"))
                options=vec![
                    (Hand::Left, Signal::derive(|| say!("hand-left"))),
                    (Hand::Right, Signal::derive(|| say!("hand-right"))),
                ]
                chosen=Signal::derive(|| preferences::current().hand)
                on_choose=move |hand| preferences::change(|chosen| chosen.hand = hand)
            />
            <Choice
                name="language"
                label=Signal::derive(|| say!("settings-language"))
                options=vec![
                    (Language::English, Signal::derive(|| say!("language-en"))),
                    (Language::Spanish, Signal::derive(|| say!("language-es"))),
                ]
                chosen=Signal::derive(preferences::language)
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
            label=Signal::derive(|| say!("settings-temperature"))
            options=vec![
                (TemperatureUnit::Fahrenheit, Signal::derive(|| say!("unit-f"))),
                (TemperatureUnit::Celsius, Signal::derive(|| say!("unit-c"))),
            ]
            chosen=Signal::derive(|| preferences::units().temperature)
            on_choose=move |unit| preferences::change(|chosen| chosen.units.temperature = unit)
        />
        <Choice
            name="mass-unit"
            label=Signal::derive(|| say!("settings-weight"))
            options=vec![
                (MassUnit::Ounce, Signal::derive(|| say!("unit-oz"))),
                (MassUnit::Gram, Signal::derive(|| say!("unit-g"))),
            ]
            chosen=Signal::derive(|| preferences::units().mass)
            on_choose=move |unit| preferences::change(|chosen| chosen.units.mass = unit)
        />
        <Choice
            name="length-unit"
            label=Signal::derive(|| say!("settings-length"))
            options=vec![
                (LengthUnit::Inch, Signal::derive(|| say!("unit-in"))),
                (LengthUnit::Millimetre, Signal::derive(|| say!("unit-mm"))),
            ]
            chosen=Signal::derive(|| preferences::units().length)
            on_choose=move |unit| preferences::change(|chosen| chosen.units.length = unit)
        />
    }
}
