//! Every text of the app, by its name. The texts themselves are in `en.ftl` and `es.ftl`, in the
//! Fluent language, which has each tongue's own plurals.

use std::cell::OnceCell;
use std::rc::Rc;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource};
use unic_langid::LanguageIdentifier;

use crate::preferences;

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

    /// The decimal mark.
    pub const fn decimal_mark(self) -> char {
        match self {
            Self::English => '.',
            Self::Spanish => ',',
        }
    }

    const fn texts(self) -> &'static str {
        match self {
            Self::English => include_str!("en.ftl"),
            Self::Spanish => include_str!("es.ftl"),
        }
    }
}

/// The texts of one language, ready to be filled in.
type Texts = FluentBundle<FluentResource>;

thread_local! {
    static ENGLISH: OnceCell<Rc<Texts>> = const { OnceCell::new() };
    static SPANISH: OnceCell<Rc<Texts>> = const { OnceCell::new() };
}

fn texts(language: Language) -> Rc<Texts> {
    let cell = match language {
        Language::English => &ENGLISH,
        Language::Spanish => &SPANISH,
    };
    cell.with(|cell| cell.get_or_init(|| Rc::new(read(language))).clone())
}

/// Reads a language's file. A line that Fluent cannot read is left out; a browser test finds it.
fn read(language: Language) -> Texts {
    let id: LanguageIdentifier = language.tag().parse().unwrap_or_default();
    let mut bundle = FluentBundle::new(vec![id]);
    // The marks that keep left-to-right and right-to-left text apart: neither tongue needs them.
    bundle.set_use_isolating(false);
    let resource = match FluentResource::try_new(language.texts().to_owned()) {
        Ok(resource) => resource,
        Err((resource, _)) => resource,
    };
    bundle.add_resource_overriding(resource);
    bundle
}

/// The text of this name in the person's language. Prefer [`say!`](crate::say).
///
/// Reads the language reactively: a text drawn inside a closure changes with it.
pub fn text(name: &'static str, args: Option<&FluentArgs>) -> String {
    let chosen = preferences::language();
    filled(chosen, name, args)
        .or_else(|| filled(Language::English, name, args))
        .unwrap_or_else(|| name.to_owned())
}

fn filled(language: Language, name: &str, args: Option<&FluentArgs>) -> Option<String> {
    let texts = texts(language);
    let pattern = texts.get_message(name)?.value()?;
    let mut errors = Vec::new();
    Some(texts.format_pattern(pattern, args, &mut errors).into_owned())
}

/// The text of this name in the person's language, its gaps filled:
/// `say!("ago", span = "12 min")`.
#[macro_export]
macro_rules! say {
    ($name:literal) => {
        $crate::words::text($name, None)
    };
    ($name:literal, $($gap:ident = $value:expr),+ $(,)?) => {{
        let mut args = fluent_bundle::FluentArgs::new();
        $(args.set(stringify!($gap), $value);)+
        $crate::words::text($name, Some(&args))
    }};
}
