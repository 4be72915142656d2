//! The offsets found by checking the thermometers, and what they do to readings.

use super::CookState;
use super::limits::OFFSET;
use crate::history::{Instrument, PieceHistory};
use crate::quantity::{Moment, Temperature, TemperatureDifference};
use crate::safety::lower_offset;

/// What was found of one thermometer, until another took its place.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Found {
    /// Since when it is in use; none for the first one.
    since: Option<Moment>,
    /// What the last check found, if there was one.
    last: Option<TemperatureDifference>,
    /// The offset in force: the lower of what the last two checks found, so that only a third takes
    /// back what one of them said.
    now: TemperatureDifference,
    /// The most any check found it to read high; never above zero.
    lowest: TemperatureDifference,
    /// A check found it further out than can be made good.
    barred: bool,
}

impl Found {
    fn nothing(since: Option<Moment>) -> Self {
        let zero = TemperatureDifference::ZERO;
        Self { since, last: None, now: zero, lowest: zero, barred: false }
    }

    fn add(&mut self, offset: TemperatureDifference) {
        if !OFFSET.contains(&offset) {
            self.barred = true;
            return;
        }
        self.now = self.last.map_or(offset, |last| lower_offset(last, offset));
        self.last = Some(offset);
        self.lowest = lower_offset(self.lowest, offset);
    }
}

/// What was found of both, of each that was in use.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Offsets {
    instant_read: Vec<Found>,
    leave_in: Vec<Found>,
}

impl Default for Offsets {
    fn default() -> Self {
        let new = || vec![Found::nothing(None)];
        Self { instant_read: new(), leave_in: new() }
    }
}

impl Offsets {
    fn of(&self, instrument: Instrument) -> &[Found] {
        match instrument {
            Instrument::InstantRead => &self.instant_read,
            Instrument::LeaveIn => &self.leave_in,
        }
    }

    fn of_mut(&mut self, instrument: Instrument) -> &mut Vec<Found> {
        match instrument {
            Instrument::InstantRead => &mut self.instant_read,
            Instrument::LeaveIn => &mut self.leave_in,
        }
    }

    /// What was found of the one in use at a moment. They are in order of time.
    fn in_use(&self, instrument: Instrument, at: Moment) -> Found {
        let all = self.of(instrument);
        let then = all.iter().rfind(|found| found.since.is_none_or(|since| since <= at));
        then.copied().unwrap_or(Found::nothing(None))
    }

    fn now(&self, instrument: Instrument) -> Found {
        self.of(instrument).last().copied().unwrap_or(Found::nothing(None))
    }

    pub(super) fn set(&mut self, instrument: Instrument, offset: TemperatureDifference) {
        if let Some(found) = self.of_mut(instrument).last_mut() {
            found.add(offset);
        }
    }

    /// Another thermometer, or the same with a new battery.
    pub(super) fn replace(&mut self, instrument: Instrument, at: Moment) {
        self.of_mut(instrument).push(Found::nothing(Some(at)));
    }

    /// What a thermometer's showing means by the offset in force.
    pub(super) fn correct(&self, shown: Temperature, instrument: Instrument) -> Temperature {
        shown + self.now(instrument).now
    }

    /// Says what a proof may take each reading for. A thermometer found to read high by a later
    /// check read high before it too, as far as anyone knows; one found to read low gets no
    /// credit for it; one found too far out proved nothing.
    pub(super) fn settle(&self, pieces: &mut [PieceHistory]) {
        for reading in pieces.iter_mut().flat_map(|piece| &mut piece.readings) {
            let found = self.in_use(reading.instrument, reading.at);
            reading.for_proof = reading.shown + found.lowest;
            reading.barred = found.barred;
        }
    }
}

impl CookState {
    /// What is added to what a thermometer shows, by its last two checks; nothing if it was not
    /// checked.
    pub fn offset(&self, instrument: Instrument) -> TemperatureDifference {
        self.offsets.now(instrument).now
    }

    /// Whether the thermometer in use was checked.
    pub fn was_checked(&self, instrument: Instrument) -> bool {
        let found = self.offsets.now(instrument);
        found.last.is_some() || found.barred
    }

    /// Whether a check found a thermometer further out than can be made good: until it is replaced,
    /// it proves nothing.
    pub fn is_barred(&self, instrument: Instrument) -> bool {
        self.offsets.now(instrument).barred
    }
}
