//! The kitchen's screens, one file each.

mod bag;
mod bag_file;
mod brine;
mod chill;
mod home;
mod labels;
mod lot_card;
mod pack;
mod pieces;
mod portions;
mod reheat;
mod rub;
mod rub_mix;
mod solution;

use leptos::prelude::*;

use crate::navigate::Screen;

/// The view of one of the kitchen's screens; nothing for any other.
pub fn view_of(screen: Screen) -> AnyView {
    match screen {
        Screen::Kitchen => home::Home().into_any(),
        Screen::Rub => rub::Rub().into_any(),
        Screen::Portions => portions::Portions().into_any(),
        Screen::Chill => chill::Chill().into_any(),
        Screen::Labels => labels::Labels().into_any(),
        Screen::Bag(bag) => view! { <bag::Bag bag=bag /> }.into_any(),
        Screen::Reheat(Ok(card)) => view! { <reheat::Reheat card=card /> }.into_any(),
        Screen::Reheat(Err(problem)) => {
            view! { <reheat::DamagedLabel problem=problem /> }.into_any()
        }
        _ => ().into_any(),
    }
}
