//! The calendar file, read back by a parser that shares no code with its writer, and held to the
//! letter of RFC 5545 where that is easy to get wrong.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use calcard::icalendar::{ICalendar, ICalendarComponentType, ICalendarProperty, ICalendarValue};
use calcard::{Entry, Parser};
use chrono::{DateTime, Utc};
use cook_model::calendar::{Reminder, calendar};
use cook_model::quantity::{Moment, Span, minutes};

fn at(text: &str) -> Moment {
    text.parse::<DateTime<Utc>>().unwrap()
}

fn reminders() -> Vec<Reminder> {
    vec![
        Reminder {
            uid: "light-1@pull-order".to_owned(),
            sequence: 1,
            at: at("2026-10-25T00:30:00Z"), // an hour before clocks go back in Europe
            lasts: minutes(40.0),
            summary: "Light the fire; then wait, 40 minutes".to_owned(),
            details: "One line\nand a second, with a comma and a very long tail that has to be \
                      folded because no line may be longer than 75 octets, not even with \u{e9}\u{e9}\u{e9}"
                .to_owned(),
        },
        Reminder {
            uid: "eat-1@pull-order".to_owned(),
            sequence: 1,
            at: at("2026-12-31T23:59:00Z"),
            lasts: Span::zero(),
            summary: "Dinner".to_owned(),
            details: String::new(),
        },
    ]
}

fn parsed(text: &str) -> ICalendar {
    match Parser::new(text).entry() {
        Entry::ICalendar(calendar) => calendar,
        other => panic!("not a calendar: {other:?}"),
    }
}

#[test]
fn an_independent_parser_reads_back_what_was_written() {
    let written = reminders();
    let text = calendar(&written, at("2026-10-01T12:00:00Z"));
    let read = parsed(&text);
    let events: Vec<_> = read
        .components
        .iter()
        .filter(|component| component.component_type == ICalendarComponentType::VEvent)
        .collect();
    assert_eq!(events.len(), written.len());
    for (event, reminder) in events.iter().zip(&written) {
        let text_of = |property: &ICalendarProperty| {
            let entry = event.entries.iter().find(|entry| entry.name == *property)?;
            match entry.values.first()? {
                ICalendarValue::Text(text) => Some(text.clone()),
                _ => None,
            }
        };
        let time_of = |property: &ICalendarProperty| {
            let entry = event.entries.iter().find(|entry| entry.name == *property)?;
            match entry.values.first()? {
                ICalendarValue::PartialDateTime(time) => time.to_timestamp(),
                _ => None,
            }
        };
        assert_eq!(text_of(&ICalendarProperty::Uid).as_deref(), Some(reminder.uid.as_str()));
        assert_eq!(text_of(&ICalendarProperty::Summary), Some(reminder.summary.clone()));
        assert_eq!(text_of(&ICalendarProperty::Description).unwrap_or_default(), reminder.details);
        assert_eq!(time_of(&ICalendarProperty::Dtstart), Some(reminder.at.timestamp()));
        assert!(time_of(&ICalendarProperty::Dtend).unwrap() > reminder.at.timestamp());
    }
    let alarms = read
        .components
        .iter()
        .filter(|component| component.component_type == ICalendarComponentType::VAlarm);
    assert_eq!(alarms.count(), written.len(), "each reminder rings");
}

#[test]
fn lines_end_in_crlf_and_are_at_most_75_octets() {
    // RFC 5545, 3.1.
    let text = calendar(&reminders(), at("2026-10-01T12:00:00Z"));
    assert!(text.ends_with("\r\n"));
    assert!(!text.replace("\r\n", "").contains(['\r', '\n']));
    for line in text.split("\r\n") {
        assert!(line.len() <= 75, "{} octets: {line}", line.len());
    }
}

#[test]
fn the_same_reminders_give_the_same_file() {
    let written = at("2026-10-01T12:00:00Z");
    assert_eq!(calendar(&reminders(), written), calendar(&reminders(), written));
}
