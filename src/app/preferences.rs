//! What the person chose for the screens, as a signal: units, look, hand, language.

use std::cell::Cell;

use cook_model::quantity::Units;
use leptos::prelude::*;
use leptos::reactive::graph::Observer;

use crate::device::prefs::{self, Hand, Prefs, Theme};
use crate::words::Language;

thread_local! {
    /// The one signal. It is read from places that have no reactive owner (a stored tap's answer),
    /// where a context could not be found.
    static CHOSEN: Cell<Option<RwSignal<Prefs>>> = const { Cell::new(None) };
}

/// Reads what was chosen before, and lets the page follow it from now on.
pub fn start() {
    let chosen = RwSignal::new(prefs::load());
    CHOSEN.set(Some(chosen));
    Effect::new(move || chosen.with(show_on_page));
}

/// What was chosen. Reactive where something is being drawn; a tap's answer reads it just once.
pub fn current() -> Prefs {
    let Some(chosen) = CHOSEN.get() else { return Prefs::default() };
    if Observer::get().is_some() { chosen.get() } else { chosen.get_untracked() }
}

/// The language of the screens: the one chosen, or the phone's, or English. Reactive.
pub fn language() -> Language {
    let tag = current().language.or_else(|| window().navigator().language());
    Language::of_tag(&tag.unwrap_or_default())
}

/// The units chosen. Reactive.
pub fn units() -> Units {
    current().units
}

/// Changes what was chosen, and keeps it.
pub fn change(how: impl FnOnce(&mut Prefs)) {
    if let Some(chosen) = CHOSEN.get() {
        chosen.update(how);
        // Where the browser refuses, the choice lasts until the page closes.
        prefs::save(&chosen.get_untracked());
    }
}

/// The name that the style sheet knows a look by.
pub const fn look_name(theme: Theme) -> &'static str {
    match theme {
        Theme::Phone => "phone",
        Theme::Light => "light",
        Theme::Dark => "dark",
        Theme::Sun => "sun",
    }
}

/// Tells the style sheet and the screen reader.
fn show_on_page(chosen: &Prefs) {
    let Some(page) = document().document_element() else { return };
    let hand = match chosen.hand {
        Hand::Right => "right",
        Hand::Left => "left",
    };
    for (name, value) in
        [("lang", language().tag()), ("data-look", look_name(chosen.theme)), ("data-hand", hand)]
    {
        // The page's own element takes any of these; there is nothing to do if it would not.
        let _ = page.set_attribute(name, value);
    }
}
