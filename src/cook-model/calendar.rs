//! Reminders as a standard calendar file (iCalendar, RFC 5545), which rings from the phone's own
//! calendar when this app cannot.

use ics::properties::{Description, DtEnd, DtStart, Sequence, Summary, Trigger};
use ics::{Alarm, Event, ICalendar, escape_text};

use crate::quantity::{Moment, Span};

/// Says who made the file, in the form that RFC 5545 (3.7.3) asks for.
const MADE_BY: &str = "-//Pull Order//Cook plan//EN";
/// The shortest event written: calendars hide those of no length.
const SHORTEST: Span = Span::minutes(5);

/// The longest line allowed, without its end (RFC 5545, 3.1).
const LINE_OCTETS: usize = 75;

/// One reminder.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reminder {
    /// Names it: the same reminder written again replaces the one before.
    pub uid: String,
    /// Which writing of it this is: a later one has the higher number.
    pub sequence: u32,
    /// When it rings.
    pub at: Moment,
    /// How long what it reminds of takes.
    pub lasts: Span,
    /// What to do, in a few words.
    pub summary: String,
    /// More about it; may be empty.
    pub details: String,
}

/// The reminders as the text of a calendar file, as of the moment given. Times are written in UTC,
/// so that a change of time zone or of daylight saving moves none of them.
pub fn calendar(reminders: &[Reminder], written: Moment) -> String {
    let mut calendar = ICalendar::new("2.0", MADE_BY);
    for reminder in reminders {
        let mut event = Event::new(escape_text(reminder.uid.as_str()), utc(written));
        event.push(Sequence::new(reminder.sequence.to_string()));
        event.push(DtStart::new(utc(reminder.at)));
        event.push(DtEnd::new(utc(reminder.at + reminder.lasts.max(SHORTEST))));
        event.push(Summary::new(escape_text(reminder.summary.as_str())));
        if !reminder.details.is_empty() {
            event.push(Description::new(escape_text(reminder.details.as_str())));
        }
        event.add_alarm(Alarm::display(
            Trigger::new("PT0S"),
            Description::new(escape_text(reminder.summary.as_str())),
        ));
        calendar.add_event(event);
    }
    folded(&calendar.to_string())
}

/// The text with its lines folded anew: the crate that wrote it counts the space that begins a
/// folded line as none, and so goes one octet past what RFC 5545 (3.1) allows.
fn folded(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    let mut octets = 0;
    for letter in text.replace("\r\n ", "").chars() {
        if octets + letter.len_utf8() > LINE_OCTETS && !letter.is_control() {
            folded.push_str("\r\n ");
            octets = 1;
        }
        folded.push(letter);
        octets = if letter == '\n' { 0 } else { octets + letter.len_utf8() };
    }
    folded
}

/// A moment in UTC, as RFC 5545 (3.3.5, form 2) writes it.
fn utc(at: Moment) -> String {
    at.format("%Y%m%dT%H%M%SZ").to_string()
}
