//! The offsets found by checking the thermometers, and what they do to readings.

use super::CookState;
use crate::history::{Instrument, PieceHistory};
use crate::quantity::{Temperature, TemperatureDifference};

/// What was found of one thermometer.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Found {
    /// The offset in force.
    now: TemperatureDifference,
    /// The most any check found it to read high; never above zero.
    lowest: TemperatureDifference,
}

/// What was found of both.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Offsets {
    instant_read: Found,
    leave_in: Found,
}

impl Offsets {
    fn of(&self, instrument: Instrument) -> Found {
        match instrument {
            Instrument::InstantRead => self.instant_read,
            Instrument::LeaveIn => self.leave_in,
        }
    }

    pub(super) fn set(&mut self, instrument: Instrument, offset: TemperatureDifference) {
        let found = match instrument {
            Instrument::InstantRead => &mut self.instant_read,
            Instrument::LeaveIn => &mut self.leave_in,
        };
        found.now = offset;
        if offset < found.lowest {
            found.lowest = offset;
        }
    }

    /// What a thermometer's showing means by the offset in force.
    pub(super) fn correct(&self, shown: Temperature, instrument: Instrument) -> Temperature {
        shown + self.of(instrument).now
    }

    /// Says what a proof may take each reading for. A thermometer found to read high by a later
    /// check read high before it too, as far as anyone knows; one found to read low gets no
    /// credit for it.
    pub(super) fn settle(&self, pieces: &mut [PieceHistory]) {
        for reading in pieces.iter_mut().flat_map(|piece| &mut piece.readings) {
            let lowest = reading.shown + self.of(reading.instrument).lowest;
            reading.for_proof = reading.shown.min(reading.temperature).min(lowest);
        }
    }
}

impl CookState {
    /// What is added to what a thermometer shows, by its last check; nothing if it was not checked.
    pub fn offset(&self, instrument: Instrument) -> TemperatureDifference {
        self.offsets.of(instrument).now
    }
}
