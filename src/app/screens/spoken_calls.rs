//! Whether calls are spoken, and how that sounds.

use leptos::prelude::*;

use super::alarms_here::OnOff;
use crate::device::speech;
use crate::parts::If;
use crate::words::wording;
use crate::{preferences, say};

/// The choice to have calls spoken, where this phone has a voice for it; where not, that it has none.
#[component]
pub fn SpokenCalls() -> impl IntoView {
    let voices = RwSignal::new(());
    speech::on_voices(move || _ = voices.try_set(()));
    let offered = move || {
        voices.track();
        preferences::language();
        speech::is_offered()
    };
    let try_out = move |_| speech::speak(say!("alarms-spoken-trial"), 0);
    view! {
        <If
            holds=offered
            otherwise=|| view! { <p class="no-voice">{wording("alarms-spoken-none")}</p> }
        >
            <OnOff
                name="spoken"
                label=wording("alarms-spoken")
                chosen=|| preferences::current().spoken
                on_choose=|on| preferences::change(|chosen| chosen.spoken = on)
            />
            <p class="hint">{wording("alarms-spoken-hint")}</p>
            <button class="second-action" on:click=try_out>
                {wording("alarms-spoken-try")}
            </button>
        </If>
    }
}
