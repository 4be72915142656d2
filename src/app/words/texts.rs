//! The texts of one language: its file, and each text filled in. Of the Fluent language (Fluent Syntax
//! 1.0) this reads what the two files are written in: gaps, choices by number, and a quoted space. A whole
//! Fluent with the plurals of two hundred tongues would weigh the program down; the tests hold the two
//! side by side.

use std::cmp::Ordering;
use std::ops::Range;

use cook_model::sorting::sort_by;

/// What fills a gap of a text.
pub enum Gap {
    /// Words, set in as they are.
    Words(String),
    /// A whole number, by which a text may also choose its plural.
    Number(i64),
}

/// A gap's name, and what fills it.
pub type Filled = (&'static str, Gap);

/// The texts of one language.
pub struct Texts {
    file: String,
    /// Where in the file each name and its text are, in the order of the names.
    places: Vec<(Range<usize>, Range<usize>)>,
}

impl Texts {
    /// Finds the texts in a language's file. What is none is passed over.
    pub fn of(file: String) -> Self {
        let mut places: Vec<(Range<usize>, Range<usize>)> = Vec::new();
        let (mut at, mut open) = (0, false);
        for line in file.split_inclusive('\n') {
            let (start, end) = (at, at + line.len());
            at = end;
            match line.bytes().next() {
                Some(b'a'..=b'z') => {
                    let name = line.find(" = ");
                    open = name.is_some();
                    places.extend(name.map(|long| (start..start + long, start + long + 3..end)));
                }
                Some(b'#') => open = false,
                _ => {
                    if let Some((_, text)) = places.last_mut().filter(|_| open) {
                        text.end = end;
                    }
                }
            }
        }
        sort_by(&mut places, |(one, _), (other, _)| file[one.clone()].cmp(&file[other.clone()]));
        Self { file, places }
    }

    /// The text of this name with its gaps filled, if there is one.
    pub fn filled(&self, name: &str, gaps: &[Filled]) -> Option<String> {
        let order = |(one, _): &(Range<usize>, _)| -> Ordering { self.file[one.clone()].cmp(name) };
        let (_, place) = &self.places[self.places.binary_search_by(order).ok()?];
        let mut filling = Filling { rest: self.file[place.clone()].trim_end(), gaps };
        Some(filling.text())
    }
}

/// A text while its gaps are filled.
struct Filling<'a> {
    /// What was not read yet.
    rest: &'a str,
    gaps: &'a [Filled],
}

impl<'a> Filling<'a> {
    /// All of it.
    fn text(&mut self) -> String {
        let mut told = String::new();
        while let Some((plain, rest)) = self.rest.split_once('{') {
            told += plain;
            self.rest = rest.trim_start();
            self.gap(&mut told);
        }
        told + self.rest
    }

    /// What stands in braces, the first of which was read.
    fn gap(&mut self, told: &mut String) {
        if self.take("\"") {
            *told += self.until('"');
        } else if self.take("$") {
            let name = self.take_while(|c| c.is_ascii_alphanumeric() || c == '-' || c == '_');
            let filling = self.gaps.iter().find(|(gap, _)| *gap == name).map(|(_, with)| with);
            self.rest = self.rest.trim_start();
            if self.take("->") {
                *told += &self.chosen(filling);
            } else {
                match filling {
                    Some(Gap::Words(words)) => *told += words,
                    Some(Gap::Number(number)) => *told += &number.to_string(),
                    None => *told = format!("{told}{{${name}}}"),
                }
            }
        }
        self.until('}');
    }

    /// The first of several texts that is for this filling, or else the one marked with a star.
    fn chosen(&mut self, by: Option<&Gap>) -> String {
        let (mut fitting, mut usual) = (None, "");
        loop {
            self.rest = self.rest.trim_start();
            let is_usual = self.take("*");
            if !self.take("[") {
                break;
            }
            let key = self.until(']').trim();
            let (text, rest) = self.rest.split_at(end_of_choice(self.rest));
            self.rest = rest;
            if fitting.is_none() && by.is_some_and(|by| fits(key, by)) {
                fitting = Some(text);
            }
            if is_usual {
                usual = text;
            }
        }
        Filling { rest: fitting.unwrap_or(usual).trim(), gaps: self.gaps }.text()
    }

    fn take(&mut self, mark: &str) -> bool {
        let rest = self.rest.strip_prefix(mark);
        self.rest = rest.unwrap_or(self.rest);
        rest.is_some()
    }

    fn take_while(&mut self, belongs: impl Fn(char) -> bool) -> &'a str {
        let (taken, rest) =
            self.rest.split_at(self.rest.find(|c| !belongs(c)).unwrap_or(self.rest.len()));
        self.rest = rest;
        taken
    }

    /// What stands before a mark, which is passed.
    fn until(&mut self, mark: char) -> &'a str {
        let (taken, rest) = self.rest.split_once(mark).unwrap_or((self.rest, ""));
        self.rest = rest;
        taken
    }
}

/// A choice ends before a line that begins with another, or before the brace that ends them all.
fn end_of_choice(text: &str) -> usize {
    let mut depth = 0_usize;
    for (at, letter) in text.char_indices() {
        match letter {
            '{' => depth += 1,
            '}' if depth == 0 => return at,
            '}' => depth -= 1,
            '\n' if depth == 0 && text[at..].trim_start().starts_with(['[', '*']) => return at,
            _ => {}
        }
    }
    text.len()
}

/// Whether a choice is for this filling: by the number itself, or by its plural. English and Spanish
/// both have "one" for 1 and "other" for the rest of whole numbers (Unicode CLDR, plural rules; the
/// Spanish "many", of millions, is not said here).
fn fits(key: &str, by: &Gap) -> bool {
    match by {
        Gap::Words(words) => words == key,
        Gap::Number(number) => match key {
            "one" => number.unsigned_abs() == 1,
            "other" => number.unsigned_abs() != 1,
            key => key.parse() == Ok(*number),
        },
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

    use super::*;

    const FILES: [(&str, &str); 2] =
        [("en", include_str!("en.ftl")), ("es", include_str!("es.ftl"))];

    /// As a whole Fluent reads it: an implementation of the published syntax that is not ours.
    fn whole(language: &str, file: &str) -> FluentBundle<FluentResource> {
        let mut bundle = FluentBundle::new(vec![language.parse().unwrap()]);
        bundle.set_use_isolating(false);
        bundle.add_resource(FluentResource::try_new(file.to_owned()).unwrap()).unwrap();
        bundle
    }

    fn names(texts: &Texts) -> Vec<&str> {
        texts.places.iter().map(|(name, _)| &texts.file[name.clone()]).collect()
    }

    /// Every gap of a file.
    fn gaps(file: &'static str) -> BTreeSet<&'static str> {
        let after = file.split('$').skip(1);
        after.map(|rest| rest.split(|c: char| !c.is_ascii_alphanumeric()).next().unwrap()).collect()
    }

    #[test]
    fn every_text_is_what_a_whole_fluent_makes_of_it() {
        for (language, file) in FILES {
            let (whole, texts) = (whole(language, file), Texts::of(file.to_owned()));
            let fillings =
                [Some(0), Some(1), Some(2), Some(5), Some(21), Some(-1), Some(1_000), None];
            for number in fillings {
                let (mut args, mut filled) = (FluentArgs::new(), Vec::new());
                for gap in gaps(file) {
                    match number {
                        Some(number) => {
                            args.set(gap, FluentValue::from(number));
                            filled.push((gap, Gap::Number(number)));
                        }
                        None => {
                            args.set(gap, "the {words}");
                            filled.push((gap, Gap::Words("the {words}".to_owned())));
                        }
                    }
                }
                for name in names(&texts) {
                    let pattern = whole.get_message(name).unwrap().value().unwrap();
                    let theirs = whole.format_pattern(pattern, Some(&args), &mut Vec::new());
                    assert_eq!(
                        texts.filled(name, &filled).unwrap(),
                        theirs,
                        "{language} {name} {number:?}"
                    );
                }
            }
        }
    }

    #[test]
    fn no_text_is_missed() {
        for (language, file) in FILES {
            let resource = FluentResource::try_new(file.to_owned()).unwrap();
            let ours = Texts::of(file.to_owned());
            assert_eq!(names(&ours).len(), resource.entries().count(), "{language}");
        }
    }

    #[test]
    fn a_text_or_a_gap_that_is_not_there_is_told_by_its_name() {
        let texts = Texts::of("a = { $b }, { $c }\n".to_owned());
        assert_eq!(texts.filled("a", &[("c", Gap::Number(2))]).unwrap(), "{$b}, 2");
        assert_eq!(texts.filled("b", &[]), None);
    }
}
