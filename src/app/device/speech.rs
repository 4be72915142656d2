//! Speaks what calls, so that a phone on the table need not be looked at. Only by voices that the phone
//! has itself: those of a network would be silent where there is none, and would hear what is cooked.

use std::cell::{Cell, RefCell};

use gloo_timers::callback::Timeout;
use leptos::ev;
use leptos::prelude::{document, window, window_event_listener};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{SpeechSynthesis, SpeechSynthesisUtterance, SpeechSynthesisVoice};

use super::{feature, prefs};

thread_local! {
    /// What is to be spoken, and was since it was last quiet.
    static TOLD: RefCell<Vec<Timeout>> = const { RefCell::new(Vec::new()) };
    static TAPPED: Cell<bool> = const { Cell::new(false) };
}

/// Whether this phone has a voice of its own that speaks the page's language.
pub fn is_offered() -> bool {
    browsers().is_some_and(|speech| own_voice(&speech).is_some())
}

/// Calls back whenever the browser has found voices: some look for them only once they are asked.
pub fn on_voices(found: impl Fn() + 'static) {
    if let Some(speech) = browsers() {
        let found = Closure::<dyn Fn()>::new(found).into_js_value();
        speech.set_onvoiceschanged(found.dyn_ref());
        speech.get_voices();
    }
}

/// Has the browser look for its voices, and at the first tap lets it speak later without one. That an
/// iPhone wants that is from memory, not tried.
pub fn get_ready() {
    let is_wanted = || prefs::load().spoken;
    if is_wanted()
        && let Some(speech) = browsers()
    {
        speech.get_voices();
    }
    drop(window_event_listener(ev::click, move |_| {
        if is_wanted() && !TAPPED.replace(true) {
            utter("");
        }
    }));
}

/// Speaks these words once, in so many milliseconds.
pub fn speak(words: String, after: u32) {
    let speaking = Timeout::new(after, move || utter(&words));
    TOLD.with_borrow_mut(|told| told.push(speaking));
}

/// Stops speaking.
pub fn hush() {
    if !TOLD.take().is_empty()
        && let Some(speech) = browsers()
    {
        speech.cancel();
    }
}

fn utter(words: &str) {
    let Some(speech) = browsers() else { return };
    let Some(voice) = own_voice(&speech) else { return };
    if let Ok(utterance) = SpeechSynthesisUtterance::new_with_text(words) {
        utterance.set_lang(&voice.lang());
        utterance.set_voice(Some(&voice));
        speech.speak(&utterance);
    }
}

fn browsers() -> Option<SpeechSynthesis> {
    feature::window_has("speechSynthesis").then(|| window().speech_synthesis().ok()).flatten()
}

/// A voice of the phone's own in the page's language, of the phone's own country where it has one. Tags
/// are told apart by their language alone: "es-MX", "es_MX" and "es" all read Spanish.
fn own_voice(speech: &SpeechSynthesis) -> Option<SpeechSynthesisVoice> {
    let page = document().document_element()?.get_attribute("lang")?;
    let phone = window().navigator().language().unwrap_or_default();
    let voices = speech.get_voices();
    let mut voices: Vec<SpeechSynthesisVoice> = voices.iter().map(JsCast::unchecked_into).collect();
    let language = |tag: &str| tag.get(..2).map(str::to_ascii_lowercase);
    voices.retain(|voice| voice.local_service() && language(&voice.lang()) == language(&page));
    let place = voices.iter().position(|voice| voice.lang() == phone);
    (!voices.is_empty()).then(|| voices.swap_remove(place.unwrap_or(0)))
}
