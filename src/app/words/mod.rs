//! Every text of the app, by its name. The texts themselves are in `en.ftl` and `es.ftl`, in the
//! Fluent language, which has each tongue's own plurals. They are files of the site beside the
//! program, kept offline with it, and only the tongue in use is read.

mod texts;

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen::JsValue;

use crate::device::{site_file, small_store};
use crate::getter::Getter;
use crate::preferences;
pub use texts::Gap;
use texts::Texts;

/// A tongue the app speaks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
}

impl Language {
    /// The one that a language tag (BCP 47) asks for; English for any that the app does not speak.
    pub fn of_tag(tag: &str) -> Self {
        match tag.split('-').next() {
            Some(first) if first.eq_ignore_ascii_case("es") => Self::Spanish,
            _ => Self::English,
        }
    }

    /// Its tag, as the page's `lang` wants it.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The locale of most of those who read the app in it.
    pub const fn usual_locale(self) -> &'static str {
        match self {
            Self::English => "en-US",
            Self::Spanish => "es-MX",
        }
    }
}

/// Under which the phone keeps which file was read last, for `start.js` to fetch it early.
const LAST_READ: &str = "texts";

thread_local! {
    static LOADED: RefCell<Vec<(Language, Rc<Texts>)>> = const { RefCell::new(Vec::new()) };
}

/// Gets a language's texts, so that it can be spoken from now on.
///
/// # Errors
/// The browser's own, if the site's file cannot be had.
pub async fn load(language: Language) -> Result<(), JsValue> {
    if loaded(language).is_none() {
        let file = format!("{}.ftl", language.tag());
        let text = site_file::read(&file).await?;
        if small_store::get(LAST_READ).is_none_or(|last| last != file) {
            // Where the browser refuses, the next start takes a little longer.
            small_store::set(LAST_READ, &file);
        }
        let texts = Rc::new(Texts::of(text));
        LOADED.with_borrow_mut(|loaded| loaded.push((language, texts)));
    }
    Ok(())
}

fn loaded(language: Language) -> Option<Rc<Texts>> {
    LOADED.with_borrow(|loaded| {
        loaded.iter().find(|(one, _)| *one == language).map(|(_, texts)| Rc::clone(texts))
    })
}

impl From<String> for Gap {
    fn from(words: String) -> Self {
        Self::Words(words)
    }
}

impl From<&str> for Gap {
    fn from(words: &str) -> Self {
        Self::Words(words.to_owned())
    }
}

macro_rules! gap_from_number {
    ($($number:ty),+) => {$(
        impl From<$number> for Gap {
            fn from(number: $number) -> Self {
                Self::Number(number as i64)
            }
        }
    )+};
}

// A count on the screen is far below where the widest of these would not fit.
gap_from_number!(u8, u16, u32, u64, usize, i32, i64);

const TWO_POINTS: &str = "m..";
const ONE_POINT: &str = "m.";

/// The text of this name in the person's language. Prefer [`say!`](crate::say).
///
/// Reads the language reactively: a text drawn inside a closure changes with it.
pub fn text(name: &'static str, gaps: &[(&'static str, Gap)]) -> String {
    let texts = loaded(preferences::language());
    let filled =
        texts.and_then(|texts| texts.filled(name, gaps)).unwrap_or_else(|| name.to_owned());
    // A sentence that ends with "p.m." has one point there, not two (Ortografía de la lengua española).
    if filled.contains(TWO_POINTS) { filled.replace(TWO_POINTS, ONE_POINT) } else { filled }
}

/// Words that a part of the screen shows, kept in the person's language.
pub type Words = Getter<String>;

/// The text of this name, without gaps, as a part of the screen that follows the language.
pub fn wording(name: &'static str) -> Words {
    Words::from(move || text(name, &[]))
}

/// The text of this name in the person's language, its gaps filled:
/// `say!("ago", span = "12 min")`.
#[macro_export]
macro_rules! say {
    ($name:literal) => {
        $crate::words::text($name, &[])
    };
    ($name:literal, $($gap:ident = $value:expr),+ $(,)?) => {
        $crate::words::text($name, &[$((stringify!($gap), $value.into())),+])
    };
}
