//! What the person chose for the screens, as a signal: units, look, hand, language.

use std::cell::Cell;
use std::mem;

use cook_model::quantity::Units;
use leptos::prelude::*;
use leptos::reactive::graph::Observer;
use leptos::task::spawn_local;

use crate::device::media;
use crate::device::prefs::{self, Hand, Prefs, Theme};
use crate::words::{self, Language};

thread_local! {
    /// The one signal. It is read from places that have no reactive owner (a stored tap's answer),
    /// where a context could not be found.
    static CHOSEN: Cell<Option<RwSignal<Prefs>>> = const { Cell::new(None) };
    /// The phone's own, asked for once: every text on the screen wants to know.
    static PHONE_LANGUAGE: Language =
        Language::of_tag(&window().navigator().language().unwrap_or_default());
}

/// Reads what was chosen before, and lets the page follow it from now on.
pub fn start() {
    let chosen = RwSignal::new(prefs::load());
    CHOSEN.set(Some(chosen));
    let dark = RwSignal::new(media::holds(media::DARK));
    // As long as the page lives.
    mem::forget(media::watch(media::DARK, move |is_dark| dark.set(is_dark)));
    Effect::new(move || chosen.with(|chosen| show_on_page(chosen, dark.get())));
}

/// What was chosen. Reactive where something is being drawn; a tap's answer reads it just once.
pub fn current() -> Prefs {
    read(Prefs::clone)
}

fn read<T>(what: fn(&Prefs) -> T) -> T {
    let Some(chosen) = CHOSEN.get() else { return what(&Prefs::default()) };
    if Observer::get().is_some() { chosen.with(what) } else { chosen.with_untracked(what) }
}

/// The language of the screens: the one chosen, or the phone's, or English. Reactive.
pub fn language() -> Language {
    read(language_of)
}

/// The language that was chosen before, for the time before anything is drawn.
pub fn kept_language() -> Language {
    language_of(&prefs::load())
}

fn language_of(chosen: &Prefs) -> Language {
    match &chosen.language {
        Some(tag) => Language::of_tag(tag),
        None => PHONE_LANGUAGE.with(|language| *language),
    }
}

/// Speaks another language as soon as its texts are there; if they cannot be had, the screens stay
/// as they are.
pub fn speak(language: Language) {
    spawn_local(async move {
        if words::load(language).await.is_ok() {
            change(|chosen| chosen.language = Some(language.tag().to_owned()));
        }
    });
}

/// The units chosen. Reactive.
pub fn units() -> Units {
    read(|chosen| chosen.units)
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
fn look_name(theme: Theme, phone_is_dark: bool) -> &'static str {
    match theme {
        Theme::Phone if phone_is_dark => "dark",
        Theme::Light | Theme::Phone => "light",
        Theme::Dark => "dark",
        Theme::Sun => "sun",
    }
}

/// Tells the style sheet and the screen reader.
fn show_on_page(chosen: &Prefs, phone_is_dark: bool) {
    let Some(page) = document().document_element() else { return };
    let hand = match chosen.hand {
        Hand::Right => "right",
        Hand::Left => "left",
    };
    let look = look_name(chosen.theme, phone_is_dark);
    for (name, value) in [("lang", language().tag()), ("data-look", look), ("data-hand", hand)] {
        // The page's own element takes any of these; there is nothing to do if it would not.
        let _ = page.set_attribute(name, value);
    }
}
