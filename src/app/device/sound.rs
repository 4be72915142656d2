//! The sound of an alarm, made by the browser's own oscillator.
//!
//! A browser lets a page make sound only after a tap, and may take that back while the page is
//! hidden or a call comes in: so each tap makes sure of it again. Between tunes the browser's audio is put to sleep: awake
//! it renders silence all the time, at some two percent of a core.

use std::cell::RefCell;

use gloo_timers::callback::Timeout;
use js_sys::Reflect;
use leptos::ev;
use leptos::prelude::{window, window_event_listener};
use web_sys::{AudioContext, AudioContextState, OscillatorType};

use super::feature;

thread_local! {
    static CONTEXT: RefCell<Option<AudioContext>> = const { RefCell::new(None) };
    static SLEEP: RefCell<Option<Timeout>> = const { RefCell::new(None) };
}

/// How loud and how long an alarm sounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tune {
    /// One short note: to hear that there is sound at all.
    Note,
    /// Two rising notes, twice.
    Call,
    /// Three high notes, four times.
    Urgent,
}

/// One note: its pitch in hertz, when it begins and how long it sounds, in seconds.
struct Note(f32, f64, f64);

/// How loud a note is, of 1: a square wave at full strength is harsh.
const LOUDNESS: f32 = 0.5;
/// How long a note takes to swell and fade, in seconds; without it, it would click.
const SWELL: f64 = 0.01;
/// How long the audio stays awake after a tap or a tune, in milliseconds: it needs a moment to start.
const LINGER_MS: u32 = 1_000;

impl Tune {
    fn notes(self) -> Vec<Note> {
        let (pitches, times): (&[f32], u32) = match self {
            Self::Note => (&[880.0], 1),
            Self::Call => (&[660.0, 990.0], 2),
            Self::Urgent => (&[1320.0, 1320.0, 1320.0], 4),
        };
        let group = pitches.len() as f64 * 0.2 + 0.3;
        (0..times)
            .flat_map(|time| {
                let begin = f64::from(time) * group;
                pitches
                    .iter()
                    .zip(0..)
                    .map(move |(pitch, place)| Note(*pitch, begin + f64::from(place) * 0.2, 0.16))
            })
            .collect()
    }
}

/// Makes sure at each tap that sound is allowed.
pub fn unlock_with_each_tap() {
    drop(window_event_listener(ev::click, |_| unlock()));
}

/// Asks the browser to allow sound. It does so only while a tap is handled.
pub fn unlock() {
    if !feature::window_has("AudioContext") {
        return;
    }
    sound_though_muted();
    let new = CONTEXT.with_borrow_mut(|context| {
        let new = context.is_none();
        if new {
            *context = AudioContext::new().ok();
        }
        new
    });
    // A new one may begin awake. What plays is left to end: its own sleep comes later.
    if new || !is_ready() {
        stay_awake(0);
    }
}

/// Asks to be heard as music is. On an iPhone the switch at its side mutes what a page plays otherwise
/// (W3C Audio Session, "playback"; that the switch obeys it is from memory, not tried). Only browsers
/// that tell kinds of sound apart have this.
fn sound_though_muted() {
    if let Ok(session) = Reflect::get(&window().navigator(), &"audioSession".into())
        && session.is_object()
    {
        // Refused, the sound is as it would have been.
        let _ = Reflect::set(&session, &"type".into(), &"playback".into());
    }
}

/// Whether what plays now is heard, unless the phone is muted: no page can know that.
pub fn is_ready() -> bool {
    CONTEXT.with_borrow(|context| {
        context.as_ref().is_some_and(|context| context.state() == AudioContextState::Running)
    })
}

/// Sounds a tune, where the browser allows it. Returns for how long, in milliseconds.
pub fn play(tune: Tune) -> u32 {
    CONTEXT.with_borrow(|context| {
        let Some(context) = context else { return 0 };
        let notes = tune.notes();
        // A note that the browser refuses is not heard, and there is no one to tell.
        let played = notes.iter().filter(|note| play_note(context, note).is_ok());
        let lasts = played.fold(0.0, |end: f64, Note(_, begin, lasts)| end.max(begin + lasts));
        let lasts = (lasts * 1e3) as u32;
        stay_awake(lasts);
        lasts
    })
}

/// Wakes the audio for so many milliseconds and a little more. Refused, it stays silent, and
/// [`is_ready`] says so.
fn stay_awake(millis: u32) {
    let _ = CONTEXT.with_borrow(|context| Some(context.as_ref()?.resume()));
    SLEEP.set(Some(Timeout::new(millis + LINGER_MS, || {
        let _ = CONTEXT.with_borrow(|context| Some(context.as_ref()?.suspend()));
    })));
}

fn play_note(
    context: &AudioContext,
    Note(pitch, begin, lasts): &Note,
) -> Result<(), wasm_bindgen::JsValue> {
    let begin = context.current_time() + begin;
    let end = begin + lasts;
    let oscillator = context.create_oscillator()?;
    oscillator.set_type(OscillatorType::Square);
    oscillator.frequency().set_value(*pitch);
    let gain = context.create_gain()?;
    let loudness = gain.gain();
    loudness.set_value_at_time(0.0, begin)?;
    loudness.linear_ramp_to_value_at_time(LOUDNESS, begin + SWELL)?;
    loudness.set_value_at_time(LOUDNESS, end - SWELL)?;
    loudness.linear_ramp_to_value_at_time(0.0, end)?;
    oscillator.connect_with_audio_node(&gain)?;
    gain.connect_with_audio_node(&context.destination())?;
    oscillator.start_with_when(begin)?;
    oscillator.stop_with_when(end)
}
