use cook_model::cook::{What, limits};
use cook_model::quantity::Temperature;
use leptos::prelude::*;

use super::Keypad;
use crate::open_cook::open_cook;
use crate::typed::quantity;
use crate::{say, show};

/// The number pad for the pit thermometer.
#[component]
pub fn PitPad(
    /// Called with what was typed, once it is on its way into the log.
    #[prop(into)]
    on_stored: Callback<Temperature>,
) -> impl IntoView {
    let cook = open_cook();
    let text = RwSignal::new(String::new());
    let bad = RwSignal::new(None);
    let aim = move || cook.state().read().settings.pit_target;
    let store = move |()| match quantity(
        &text.get_untracked(),
        &limits::PIT,
        cook.state().read_untracked().settings.pit_target,
    ) {
        Ok(temperature) => {
            cook.record(What::PitRead { temperature });
            on_stored.run(temperature);
        }
        Err(message) => bad.set(Some(message)),
    };
    view! {
        <p class="about">{move || say!("pad-pit-about", temperature = show::temperature(aim()))}</p>
        <Keypad name="pit-reading" text=text bad=bad on_store=store />
    }
}
