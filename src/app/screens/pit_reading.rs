use cook_model::cook::{What, limits};
use leptos::prelude::*;

use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{BackToCook, Heading, Keypad};
use crate::typed::quantity;
use crate::words::wording;
use crate::{say, show};

/// The number pad for the pit thermometer.
#[component]
pub fn PitReading() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let text = RwSignal::new(String::new());
    let bad = RwSignal::new(None);
    let aim = move || cook.state().read().settings.pit_target;
    let back = move || navigation.replace(Screen::Live);
    let store = move |()| match quantity(
        &text.get_untracked(),
        &limits::PIT,
        cook.state().read_untracked().settings.pit_target,
    ) {
        Ok(temperature) => {
            cook.record(What::PitRead { temperature });
            back();
        }
        Err(message) => bad.set(Some(message)),
    };
    view! {
        <section class="screen reading">
            <div class="side entry">
                <header class="top">
                    <BackToCook />
                    <div>
                        <Heading text=wording("pad-title-pit") />
                        <p class="about">
                            {move || say!("pad-pit-about", temperature = show::temperature(aim()))}
                        </p>
                    </div>
                </header>
                <Keypad
                    name="pit-reading"
                    text=text
                    bad=bad
                    on_store=store
                />
            </div>
        </section>
    }
}
