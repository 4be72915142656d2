//! How the phone's own region writes the app's language: the locale, and by it the decimal mark and
//! large numbers. Spanish of Mexico and the United States has a point where that of Spain has a comma.

use std::cell::RefCell;

use js_sys::Intl::DateTimeFormat;
use js_sys::{Array, Number, Object, Reflect};

use crate::preferences;
use crate::words::Language;

/// The locale in which numbers and times are written: the phone's own where it speaks the app's
/// language, since it knows best how its region writes it; else the one that most read the app in.
pub fn locale() -> String {
    let language = preferences::language();
    let phone = DateTimeFormat::new(&Array::new(), &Object::new()).resolved_options();
    let own = Reflect::get(&phone, &"locale".into()).ok().and_then(|tag| tag.as_string());
    let speaks =
        |tag: &String| Language::of_tag(tag) == language && tag.starts_with(language.tag());
    own.filter(speaks).unwrap_or_else(|| language.usual_locale().to_owned())
}

thread_local! {
    /// The decimal mark and the language it is of: a phone's locale stays while a page is open.
    static MARK: RefCell<Option<(Language, char)>> = const { RefCell::new(None) };
}

/// The decimal mark. Reactive, as the language is.
pub fn decimal_mark() -> char {
    let language = preferences::language();
    MARK.with_borrow_mut(|kept| match kept {
        Some((of, mark)) if *of == language => *mark,
        _ => kept.insert((language, mark_of(&locale()))).1,
    })
}

/// One of the three decimal marks there are (Unicode CLDR).
fn mark_of(locale: &str) -> char {
    let half = String::from(Number::from(0.5).to_locale_string(locale));
    half.chars().find(|letter| matches!(letter, '.' | ',' | '\u{66b}')).unwrap_or('.')
}

/// A large whole number with its groups: "20,000".
pub fn grouped(number: usize) -> String {
    Number::from(number as f64).to_locale_string(&locale()).into()
}
