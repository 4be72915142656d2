//! What the app does, in one look: a still of the live screen, in the same words and shapes.

use cook_model::quantity::{Span, Temperature};
use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::{say, show};

/// A usual pull temperature, to show what one looks like.
const PULL: Temperature = Temperature::from_f(162.0);

/// A card and a row as they look in the middle of a cook. Nothing in it can be tapped, and a screen
/// reader passes over it: the words beneath it say the same.
#[component]
pub fn Still() -> impl IntoView {
    let cook = open_cook();
    let later = move |minutes| cook.now() + Span::minutes(minutes);
    let check = || {
        let numbers = say!("list-and", first = "1", last = "3");
        say!("do-check", pieces = say!("the-pieces", numbers = numbers))
    };
    let then = move || {
        let what = say!("do-pull", pieces = say!("the-piece", number = 2));
        say!("live-then", what = what, time = show::the_time(later(12)))
    };
    let window = move || {
        let window = show::clock_range(later(10), later(17));
        say!("live-pull-window", temperature = show::temperature(PULL), window = window)
    };
    view! {
        <div class="still" aria-hidden="true">
            <div class="next due">
                <p class="what">{check}</p>
                <p class="then">{then}</p>
            </div>
            <div class="piece on">
                <p class="name">{move || say!("piece", number = 2)}</p>
                <p class="window">{window}</p>
            </div>
        </div>
    }
}
