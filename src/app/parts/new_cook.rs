//! The way into another cook, which must not let go of meat that is still out.

use cook_model::cook::{CookState, Log, Stage};
use leptos::prelude::*;

use super::If;
use crate::beside::beside;
use crate::device::storage::CookId;
use crate::gear;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::words::{Words, wording};
use crate::{say, show};

/// Begins another cook; while meat is on the pit or rests it first says so, and asks.
#[component]
pub fn NewCook(
    /// How the button looks.
    class: &'static str,
    /// What it says.
    words: Words,
) -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let beside = beside();
    let asks = RwSignal::new(false);
    let under_way = move || {
        let others = beside.others().get_untracked();
        let here = (!untrack(|| cook.is_demo())).then(|| cook.state().get_untracked());
        here.iter().chain(others.iter().map(|other| &other.state)).filter_map(meat_out).collect()
    };
    let told = RwSignal::new(Vec::<String>::new());
    let begin = move || {
        asks.set(false);
        cook.open(CookId::fresh(), Log::default());
        gear::use_in(cook);
        navigation.go(Screen::SetOut);
    };
    let tap = move |_| {
        told.set(under_way());
        if told.read_untracked().is_empty() { begin() } else { asks.set(true) }
    };
    view! {
        <button class=class on:click=tap>
            {words}
        </button>
        <If holds=move || asks.get()>
            <section class="question" aria-labelledby="new-cook-ask">
                <h2 id="new-cook-ask">{wording("new-cook-ask")}</h2>
                <div role="alert">
                    {move || told.get().into_iter().map(|one| view! { <p>{one}</p> }).collect_view()}
                    <p>{wording("new-cook-alarms")}</p>
                </div>
                <div class="pair">
                    <button on:click=move |_| asks.set(false)>{wording("new-cook-stay")}</button>
                    <button on:click=move |_| begin()>{wording("new-cook-go")}</button>
                </div>
            </section>
        </If>
    }
}

/// What of a cook is on the pit and what rests, in words, if anything is.
fn meat_out(state: &CookState) -> Option<String> {
    let named = |stage| Some(state.at_stage(stage)).filter(|ids| !ids.is_empty());
    let on =
        named(Stage::On).map(|ids| say!("new-cook-on", pieces = show::the_pieces(state, &ids)));
    let resting = named(Stage::Resting);
    let resting =
        resting.map(|ids| say!("new-cook-resting", pieces = show::the_pieces(state, &ids)));
    let told: Vec<String> = [on, resting].into_iter().flatten().collect();
    (!told.is_empty()).then(|| told.join(" "))
}
