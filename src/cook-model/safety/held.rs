//! Proof by time at temperature.

use serde::Serialize;

use super::dwell::{DwellRow, FatColumn, dwell_rows};
use super::proof::Proof;
use super::witness::Witnesses;
use crate::history::{CoreReading, EntryId, History, Instrument, PieceHistory};
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference};

/// Readings further apart say too little of what was in between.
pub const LONGEST_GAP: Span = Span::minutes(15);
/// A time so important must be typed as it is read.
const TYPED_WITHIN: Span = Span::minutes(2);
/// The core must come from 50 to 130 F within 6 h, or the table does not apply; we count from when
/// the piece first went on to the first reading of the hold. Source: FSIS Cooking Guideline for
/// Meat and Poultry Products (Revised Appendix A, 2021), come-up time.
const LONGEST_COME_UP: Span = Span::hours(6);

/// How far a piece has come towards a proof by time.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct HoldProgress {
    /// No reading may be below this.
    #[serde(rename = "at_least_c")]
    pub at_least: Temperature,
    /// When the hold began.
    pub since: Moment,
    /// A reading at this moment or after it, if still no lower, completes the proof.
    pub complete_at: Moment,
    /// The next reading must come by then, or the hold begins anew.
    pub read_by: Moment,
}

/// The proof, if the readings were held at some row of the table for as long as it says.
pub(super) fn held(witnesses: Witnesses<'_>, fat: FatColumn) -> Option<Proof> {
    let rows = dwell_rows(fat).iter();
    let holds = rows.flat_map(|row| holds_at(witnesses, *row));
    let done = holds.filter(|hold| hold.credited >= hold.row.dwell);
    done.min_by_key(|hold| (hold.last.at, hold.last.entry)).map(|hold| Proof {
        entry: hold.last.entry,
        at: hold.last.at,
        temperature: hold.lowest,
        held_since: Some(hold.first.entry),
    })
}

/// How far the last readings have come towards a proof by time, by the row that is soonest
/// complete. None where the last reading is below the table or cannot count.
pub fn hold_progress(
    history: &History,
    piece: &PieceHistory,
    fat: FatColumn,
    doubted: &[EntryId],
) -> Option<HoldProgress> {
    let witnesses = Witnesses::of(history, piece, doubted)?;
    let last = witnesses.in_spell().next_back()?.entry;
    let rows = dwell_rows(fat).iter();
    let current = rows.filter_map(|row| holds_at(witnesses, *row).pop());
    current
        .filter(|hold| hold.last.entry == last)
        .map(|hold| HoldProgress {
            at_least: hold.row.at_least + tolerance(history, Instrument::InstantRead),
            since: hold.first.at,
            complete_at: hold.last.at + (hold.row.dwell - hold.credited).max(Span::zero()),
            read_by: hold.last.at + LONGEST_GAP,
        })
        .min_by_key(|progress| progress.complete_at)
}

/// A run of readings, none below a row of the table.
#[derive(Clone, Copy)]
struct Hold<'a> {
    row: DwellRow,
    first: &'a CoreReading,
    last: &'a CoreReading,
    lowest: Temperature,
    credited: Span,
}

/// Each state of each run at this row, as it grew reading by reading.
fn holds_at(witnesses: Witnesses<'_>, row: DwellRow) -> Vec<Hold<'_>> {
    let mut states: Vec<Hold<'_>> = Vec::new();
    let mut run: Option<Hold<'_>> = None;
    for reading in witnesses.in_spell() {
        let too_slow = witnesses.piece.on().is_none_or(|on| reading.at - on > LONGEST_COME_UP);
        if counts(witnesses, reading, row.at_least) {
            let grown = run.and_then(|run| grow(run, reading, witnesses));
            let begun = Hold {
                row,
                first: reading,
                last: reading,
                lowest: reading.for_proof,
                credited: Span::zero(),
            };
            run = grown.or((!too_slow).then_some(begun));
            states.extend(run);
        } else if witnesses.doubts(reading) {
            // It ends the run as it would if it were right and could not be joined to it, for to doubt
            // a reading may prove nothing. That a colder one ends it stands in `grow`.
            run = None;
        }
    }
    states
}

fn counts(witnesses: Witnesses<'_>, reading: &CoreReading, row: Temperature) -> bool {
    reading.typed - reading.at <= TYPED_WITHIN
        && surely(witnesses, reading) >= row
        && witnesses.shortfall(reading, row).is_none()
}

/// What the core surely was: the agency's times are for the true temperature, and a thermometer may
/// show as much more as its maker says.
fn surely(witnesses: Witnesses<'_>, reading: &CoreReading) -> Temperature {
    reading.for_proof - tolerance(witnesses.history, reading.instrument)
}

fn tolerance(history: &History, instrument: Instrument) -> TemperatureDifference {
    match instrument {
        Instrument::InstantRead => history.tolerances.instant_read,
        Instrument::LeaveIn => history.tolerances.leave_in,
    }
}

/// The run with one more reading, if the time between is to be trusted: one phone wrote both, in
/// the order of their times, its clock did not jump since (nor were entries written in another order
/// than typed, which counts as a jump), it was watched from one to the other, and they are not too
/// far apart. The shorter of the spans between reading and between typing is credited.
fn grow<'a>(run: Hold<'a>, next: &'a CoreReading, witnesses: Witnesses<'_>) -> Option<Hold<'a>> {
    let Witnesses { history, piece, .. } = witnesses;
    let last = run.last;
    let (read, typed) = (next.at - last.at, next.typed - last.typed);
    let span = read.min(typed);
    let trusted = last.entry.device == next.entry.device
        && last.entry <= next.entry
        && history.clock_jumps.last().is_none_or(|jump| jump.entry < last.entry)
        && !history.clock_unwatched.iter().any(|note| (last.entry..next.entry).contains(note))
        // A colder one between them by its time, whatever it was read with, and though by its id it is
        // of another spell.
        && !piece.readings.iter().any(|r| {
            (last.at..=next.at).contains(&r.at) && surely(witnesses, r) < run.row.at_least
        })
        && span >= Span::zero()
        && read.max(typed) <= LONGEST_GAP;
    trusted.then(|| Hold {
        last: next,
        lowest: run.lowest.min(next.for_proof),
        credited: run.credited + span,
        ..run
    })
}
